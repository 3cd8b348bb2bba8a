#include "ui/practice/line_feedback.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/practice/marking/hints.h"
#include "core/words/phrasebook.h"
#include "ui/theme/text.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("Practice", text); }

QString rungTitle(int rung) {
  switch (rung) {
    case 1:
      return tr("Where to look");
    case 2:
      return tr("A question");
    case 3:
      return tr("The rule");
    default:
      return tr("The worked line");
  }
}

QString nextRung(int used) {
  switch (used) {
    case 0:
      return tr("Hint 1 of 4: where to look");
    case 1:
      return tr("Hint 2 of 4: a question");
    case 2:
      return tr("Hint 3 of 4: the rule");
    case 3:
      return tr("Hint 4 of 4: the worked line");
    default:
      return {};
  }
}

bool isAnswered(const LineMark& mark) { return !mark.has(LineNote::unanswered); }

/// What each found mistake is called.
QString mistakeNames(const LineMark& mark) {
  QStringList names;
  for (const MistakeId mistake : mark.mistakes) names << fromCore(mistakeName(mistake));
  const QString all = names.join(tr("; or "));
  return mark.mark == Mark::unsure ? tr("It may be one of these: %1.").arg(all) : tr("It was: %1.").arg(all);
}

/// What a right answer still lacks: its unit, or whole drops.
QStringList lackingIn(const LineMark& mark) {
  QStringList lacking;
  const bool constantNamed = mark.has(LineNote::lbPerKgMissing) || mark.has(LineNote::kgPerLbMissing);
  if (mark.has(MistakeId::unitMissingOrOther) && !constantNamed) lacking << fromCore(say(PhraseId::rule_E46));
  if (mark.has(MistakeId::partOfDrop)) lacking << fromCore(say(PhraseId::rule_E54));
  return lacking;
}

/// A right line hears so in whole words; what is better written otherwise comes after.
void sayRight(LineFeedback& feedback, const LineMark& mark) {
  const QStringList lacking = lackingIn(mark);
  const bool writing = mark.standing(Aspect::writing) == Standing::bad || !lacking.isEmpty();
  feedback.said << (writing ? tr("The answer is right. Write it so that nobody can misread it:")
                            : tr("Well worked."));
  feedback.said << lacking;
}

/// Slips of the last step, with which nobody should have to look for a hint: the unit and the rounding.
bool isOfTheEnd(MistakeId mistake) {
  return mistake == MistakeId::unitMissingOrOther || mistake == MistakeId::partOfDrop ||
         infoOf(mistake).spot == Spot::rounding;
}

QString askedOfTheEnd(const LineMark& mark) {
  if (mark.mark != Mark::wrong || mark.mistakes.empty() || !isOfTheEnd(mark.mistakes.front())) return {};
  switch (mark.mistakes.front()) {
    case MistakeId::unitMissingOrOther:
      return fromCore(say(PhraseId::hint_E46));
    case MistakeId::partOfDrop:
      return fromCore(say(PhraseId::hint_E54));
    case MistakeId::sizeRoundedEarly:
      return fromCore(say(PhraseId::hint_E17));
    default:
      return fromCore(say(PhraseId::hint_E42));
  }
}

void sayNotYet(LineFeedback& feedback, const LineMark& mark, Help help) {
  const QString praised = fromCore(praise(mark));
  const QString asked = help == Help::given ? askedOfTheEnd(mark) : QString();
  if (!praised.isEmpty()) feedback.said << praised;
  if (!asked.isEmpty()) {
    feedback.said << asked;
    return;
  }
  if (mark.fault)
    feedback.said << tr("The line cannot be read yet.");
  else if (isAnswered(mark) && praised.isEmpty())
    feedback.said << tr("Something here is worth another look.");
}

/// The key's chain of a worked line that says the same as the key; with earlier numbers of the student's own
/// there is none. Which step of the working a number comes from says nothing here.
std::optional<StepView> workedPictureOf(const PracticeProblem& problem, std::size_t place) {
  const std::optional<StepId> step = problem.problem.asks[place].step;
  const MarkedLine& marked = *problem.lines[place].marked;
  if (!step || hint(problem.problem, place, marked.mark, marked.carried, lastRung) !=
                   hint(problem.problem, place, marked.mark, {}, lastRung))
    return std::nullopt;
  for (StepView& view : stepViews(problem.problem.key)) {
    if (view.step.id != *step || !std::holds_alternative<Solved>(view.step.body)) continue;
    view.tags.removeIf([](const auto& tag) { return tag.key().startsWith(QLatin1String("step:")); });
    return view;
  }
  return std::nullopt;
}

ShownRung shownRung(const QString& title, int rung, const PracticeProblem& problem, std::size_t place) {
  const MarkedLine& marked = *problem.lines[place].marked;
  return {title, held(hint(problem.problem, place, marked.mark, marked.carried, rung)),
          rung == lastRung ? workedPictureOf(problem, place) : std::nullopt};
}

void addRungs(LineFeedback& feedback, const PracticeProblem& problem, std::size_t place) {
  for (int rung = 1; rung <= problem.lines[place].rung; ++rung)
    feedback.rungs.push_back(
        shownRung(QStringLiteral("%1 %2").arg(rung).arg(rungTitle(rung)), rung, problem, place));
}

void addWorkedLine(LineFeedback& feedback, const PracticeProblem& problem, std::size_t place) {
  const LineMark& mark = problem.lines[place].marked->mark;
  if (!mark.mistakes.empty()) feedback.said << mistakeNames(mark);
  feedback.rungs.push_back(shownRung(rungTitle(lastRung), lastRung, problem, place));
}

std::optional<Span> pointedIn(const LineMark& mark) {
  if (mark.fault) return mark.fault->at;
  return mark.remarks.empty() ? std::nullopt : std::optional(mark.remarks.front().at);
}

}  // namespace

QString LineFeedback::spokenRung() const {
  if (rungs.empty()) return {};
  const QString title = rungTitle(static_cast<int>(rungs.size()));
  return loosed(title + QStringLiteral(": ") + rungs.back().text);
}

QString LineFeedback::spoken() const {
  QStringList all{word};
  all << said;
  for (const ShownRung& rung : rungs) all << rung.title + QStringLiteral(": ") + rung.text;
  all.removeIf([](const QString& one) { return one.isEmpty(); });
  return all.join(QStringLiteral(". "))
      .replace(QStringLiteral(".. "), QStringLiteral(". "))
      .replace(QStringLiteral("?. "), QStringLiteral("? "))
      .replace(QStringLiteral(":. "), QStringLiteral(": "))
      .replace(QChar::Nbsp, u' ');
}

LineFeedback lineFeedback(const PracticeProblem& problem, std::size_t place, Help help) {
  LineFeedback feedback;
  const PracticeLine& line = problem.lines[place];
  if (!line.marked) {
    if (help == Help::given) feedback.next = nextRung(line.rung);
    return feedback;
  }
  const LineMark& mark = line.marked->mark;
  feedback.mark = mark.mark;
  feedback.word = fromCore(markWord(mark.mark));
  feedback.pointed = pointedIn(mark);
  if (line.isRight())
    sayRight(feedback, mark);
  else
    sayNotYet(feedback, mark, help);
  for (const std::string& remark : remarks(mark)) feedback.said << held(remark);
  if (line.isRight()) return feedback;
  if (problem.handedIn) {
    addWorkedLine(feedback, problem, place);
    return feedback;
  }
  addRungs(feedback, problem, place);
  if (help == Help::given) feedback.next = nextRung(line.rung);
  return feedback;
}

TextRange rangeOf(const Span& span, const std::string& text) {
  const std::size_t begin = std::min(span.begin, text.size());
  const std::size_t end = std::clamp(span.end, begin, text.size());
  const auto before = static_cast<int>(fromCore(std::string_view(text).substr(0, begin)).size());
  return {before, static_cast<int>(fromCore(std::string_view(text).substr(begin, end - begin)).size())};
}

}  // namespace wardchalk::ui
