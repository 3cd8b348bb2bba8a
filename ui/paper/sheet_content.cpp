#include "ui/paper/sheet_content.h"

#include <algorithm>

#include "core/check/judgement.h"
#include "core/medicine/paths.h"
#include "core/record/reference_choice.h"
#include "core/words/amount_words.h"
#include "core/words/fact_words.h"
#include "core/words/given_words.h"
#include "core/words/phrasebook.h"
#include "core/words/rules_words.h"
#include "core/words/sentences.h"
#include "ui/form/field_table.h"
#include "ui/theme/text.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui {

namespace {

bool usesLetters(const StepView& view) {
  const auto* solved = std::get_if<Solved>(&view.step.body);
  return solved && !solved->product.pairs.empty();
}

class ContentBuilder {
 public:
  ContentBuilder(const Shown& shown, const SheetMade& made)
      : shown_(shown), sheet_(shown.sheet()), made_(made), amount_(amountWords(shown)) {}

  SheetContent build() {
    putHead();
    putPapers();
    putAmount();
    putFindings();
    putSteps();
    putChecks();
    putRules();
    putFoot();
    return std::move(content_);
  }

 private:
  QString words(PhraseId id) const { return held(say(id)); }
  QString words(PhraseId id, std::string_view name, const std::string& value) const {
    return held(say(id, {{name, value}}));
  }
  QString fact(std::string_view path) const { return held(factWords(path, sheet_.given, sheet_.rules)); }

  void putHead() {
    content_.verdict = sheet_.verdict;
    content_.title = words(PhraseId::sheet_title);
    const Order& order = sheet_.given.order;
    QStringList rest{held(orderWords(order)), held(limitOfUse(sheet_.given))};
    rest.removeAll(QString());
    content_.order = (fact(path::medicine) + u' ' + rest.join(QStringLiteral(", "))).trimmed();
    content_.caseTitle = fact(path::title);
    content_.workedOut = words(PhraseId::sheet_workedOut, "time", made_.time.toStdString());
    content_.ownLabel = words(PhraseId::sheet_ownLabel);
    content_.flag = held(verdictTitle(sheet_));
    content_.reason = held(belowTitle(sheet_));
    content_.notMade = held(checksNotMade(sheet_));
  }

  /// The word of a choice as the form shows it.
  static QString shown(const FieldSpec& spec, const QString& text) {
    for (const ChoiceWord& choice : spec.choices)
      if (fromCore(choice.id) == text) return wordsOf(choice);
    return text;
  }

  /// What a reader of the sheet looks for: where the reference comes from and how the weight was got. "Weight
  /// was … not stated" would be read of the weight itself.
  [[nodiscard]] QString notStated(std::string_view path) const {
    if (path == path::source && sheet_.given.reference.high) return words(PhraseId::sheet_notStated);
    if (path == path::weightMethod && sheet_.given.child.weight)
      return words(PhraseId::sheet_methodNotStated);
    return {};
  }

  void putPapers() {
    for (const FieldSpec& spec : fieldTable()) {
      QString text = spec.path == path::title ? QString() : fact(spec.path);
      if (text.isEmpty()) text = notStated(spec.path);
      if (text.isEmpty()) continue;
      const QString heading = headingOf(spec.group);
      if (content_.papers.empty() || content_.papers.back().heading != heading)
        content_.papers.push_back({heading, {}});
      content_.papers.back().facts.push_back({nameOf(spec), shown(spec, text)});
    }
  }

  void putAmount() {
    for (const QuestionWords& ask : amount_.asks)
      content_.questions.push_back(
          {held(ask.text),
           ask.settled.empty() ? QString() : words(PhraseId::sheet_settled, "how", ask.settled)});
    if (!content_.questions.empty()) content_.askedBy = words(PhraseId::sheet_askedBy);
    if (amount_.measure.empty()) return putNoAmount();
    content_.measure = held(amount_.measure);
    content_.dose = held(amount_.dose);
    const auto line = [&](const std::string& first, const std::string& second) {
      const bool both = !first.empty() && !second.empty();
      const QString text = held(first) + (both ? QStringLiteral(" · ") : QString()) + held(second);
      if (!text.isEmpty()) content_.amountLines << text;
    };
    line(amount_.when, amount_.label);
    line(amount_.device, amount_.rounding);
    line(amount_.prepare, {});
    line(amount_.run, {});
  }

  void putNoAmount() {
    content_.doNotPrepare = words(PhraseId::sheet_doNotPrepare);
    content_.none = held(amount_.none);
    if (!shown_.waits() || sheet_.finding(FindingCode::maxDosesOpen)) return;
    const auto count = static_cast<long>(amount_.asks.size());
    content_.none = held(say(PhraseId::sheet_askFirst, {{"n", std::to_string(count)}}, count));
  }

  void putFindings() {
    content_.findingsHeading = words(PhraseId::sheet_findings);
    for (const Finding* finding : findingsBeside(sheet_, sheet_.verdict == VerdictKind::ask))
      content_.findings.push_back({finding->severity, held(sentence(*finding))});
  }

  void putSteps() {
    content_.workingHeading = words(PhraseId::sheet_working);
    content_.steps = stepViews(sheet_);
    if (shown_.waits()) {
      const auto count = static_cast<long>(amount_.asks.size());
      content_.leftOut = held(say(PhraseId::sheet_amountLeftOut, {{"n", std::to_string(count)}}, count));
    }
    if (std::any_of(content_.steps.begin(), content_.steps.end(), usesLetters))
      content_.legend = words(PhraseId::sheet_legend);
  }

  void putChecks() {
    QStringList within, outside, notMade;
    for (const Check& check : sheet_.checks) {
      const std::string name = checkName(check.id);
      if (check.status == CheckStatus::within) within << words(PhraseId::sheet_within, "check", name);
      if (check.status == CheckStatus::outside) outside << words(PhraseId::sheet_outside, "check", name);
      if (check.status == CheckStatus::notChecked || isLowLeftOut(check)) notMade << notMadeText(check, name);
    }
    const auto listed = [&](const QStringList& list) {
      return list.isEmpty() ? words(PhraseId::sheet_none) : list.join(QStringLiteral("; "));
    };
    content_.checksMadeHeading = words(PhraseId::sheet_checksMade);
    content_.checksMade = listed(outside + within);
    content_.checksNotMadeHeading = words(PhraseId::sheet_checksNotMade);
    content_.checksNotMade = listed(notMade);
  }

  QString notMadeText(const Check& check, const std::string& name) const {
    if (!check.why) return held(name);
    return held(say(PhraseId::sheet_notMade, {{"check", name}, {"why", whyNotText(*check.why)}}));
  }

  void putRules() {
    content_.rulesHeading = words(PhraseId::rules_used, "name", rulesTitle(sheet_.rules));
    QStringList lines;
    for (const std::string& line : rulesWords(sheet_)) lines << held(line);
    content_.rules = lines.join(u' ');
  }

  void putFoot() {
    content_.workedBy = words(PhraseId::sheet_workedBy);
    const bool fromList = isFromList(sheet_.given.reference);
    content_.workedWhat = words(fromList ? PhraseId::sheet_workedFromList : PhraseId::sheet_workedWhat);
    content_.secondBy = words(PhraseId::sheet_secondBy);
    content_.second = made_.second.isEmpty() ? words(PhraseId::sheet_secondNotDone) : made_.second;
    content_.signHere = words(PhraseId::sheet_signHere);
    content_.caution = words(PhraseId::caution);
    content_.program = QStringLiteral("Wardchalk ") + made_.version;
    content_.pageOfAll = fromCore(say(PhraseId::sheet_page, {{"n", "%1"}, {"m", "%2"}}));
  }

  const Shown& shown_;
  const Worksheet& sheet_;
  const SheetMade& made_;
  AmountWords amount_;
  SheetContent content_;
};

}  // namespace

QString spokenSheet(const SheetContent& content) {
  QStringList lines{content.title, content.order, content.caseTitle, content.workedOut};
  for (const SheetFacts& paper : content.papers) {
    lines << paper.heading;
    for (const SheetFact& fact : paper.facts) lines << fact.label + QStringLiteral(": ") + fact.text;
  }
  lines << content.flag << content.reason << content.notMade;
  for (const SheetQuestion& question : content.questions)
    lines << question.text << (question.settled.isEmpty() ? content.askedBy : question.settled);
  lines << content.measure + u' ' + content.dose << content.amountLines << content.doNotPrepare
        << content.none;
  for (const SheetFinding& finding : content.findings) lines << finding.text;
  for (const StepView& step : content.steps) lines << step.sentence;
  lines << content.leftOut << content.checksMadeHeading + QStringLiteral(": ") + content.checksMade
        << content.checksNotMadeHeading + QStringLiteral(": ") + content.checksNotMade
        << content.rulesHeading + QStringLiteral(": ") + content.rules << content.workedBy << content.secondBy
        << content.second << content.caution;
  lines.removeIf([](const QString& line) { return line.trimmed().isEmpty(); });
  return loosed(lines.join(u'\n'));
}

SheetContent sheetContent(const Shown& shown, const SheetMade& made) {
  return ContentBuilder(shown, made).build();
}

}  // namespace wardchalk::ui
