#include "ui/practice/practice_sheet.h"

#include <algorithm>
#include <utility>

#include "core/practice/sessions/lesson_words.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/rules_words.h"
#include "core/words/sentences.h"
#include "ui/paper/page_setter.h"
#include "ui/paper/paint_sheet.h"
#include "ui/theme/text.h"
#include "ui/working/box.h"
#include "ui/working/step_layout.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui {

namespace {

constexpr double letters = 0.86;  // body of about 10 points
constexpr double indent = 22;
/// Room to work a line by hand: a fraction is written over and under the first rule, so that each side of it
/// has about a centimetre.
constexpr int ruledLines = 2;
constexpr double ruleApart = 46;

/// What the house rules say wherever a problem of the set uses them, each sentence once.
std::string rulesOf(const std::vector<Problem>& problems) {
  std::vector<std::string> told;
  std::string text;
  for (const Problem& problem : problems)
    for (const std::string& sentence : rulesWords(problem.key))
      if (std::ranges::find(told, sentence) == told.end()) {
        told.push_back(sentence);
        text.append(text.empty() ? "" : " ").append(sentence);
      }
  return text;
}

std::size_t pointsOf(const std::vector<Problem>& problems) {
  std::size_t points = 0;
  for (const Problem& problem : problems) points += problem.asks.size();
  return points;
}

class SheetWriter {
 public:
  SheetWriter(const PracticeSet& set, PracticeSheetKind kind, double width)
      : set_(set), kind_(kind), metrics_{width, letters, {}, 1} {
    for (int place = 0; place < set.count; ++place) problems_.push_back(problemInSet(set, place));
  }

  std::vector<SheetBlock> blocks() {
    head();
    for (std::size_t place = 0; place < problems_.size(); ++place) problem(problems_[place], place);
    return std::move(blocks_);
  }

  [[nodiscard]] const Metrics& metrics() const { return metrics_; }
  QString words(PhraseId id) const { return fromCore(say(id)); }

  /// "PRACTICE: invented medicines" in a hatched band, at the head of every page.
  SheetBlock banner() const {
    SheetBlock block;
    Box said = textBox(words(PhraseId::practiceSheet_banner), FontRole::question, Ink::text, metrics_);
    const double high = said.height() + metrics_.px(12);
    const double left = (metrics_.width - said.width) / 2;
    const double gap = metrics_.px(16);
    for (const QRectF& edge :
         {QRectF(0, 0, left - gap, high), QRectF(left + said.width + gap, 0, left - gap, high)})
      block.drawing.areas.push_back({corners(edge), 0, Area::Fill::hatched, Ink::line, 0, Ink::line, 0});
    block.drawing.add(std::move(said.drawing), {left, metrics_.px(6) + said.above});
    block.height = high + metrics_.px(12);
    return block;
  }

  SheetBlock foot(int page, int pages) const {
    SheetBlock block;
    Box number = textBox(fromCore(say(PhraseId::practiceSheet_page,
                                      {{"n", std::to_string(page)}, {"m", std::to_string(pages)}})),
                         FontRole::tag, Ink::text, metrics_);
    Box caution = paragraph(words(PhraseId::practiceSheet_caution), FontRole::tag, Ink::text, metrics_,
                            metrics_.width - number.width - metrics_.px(24));
    block.height = caution.height() + metrics_.px(6);
    rule(block, 0, 0, metrics_.width);
    const double base = metrics_.px(6) + caution.above;
    block.drawing.add(std::move(caution.drawing), {0, base});
    block.drawing.add(std::move(number.drawing), {metrics_.width - number.width, base});
    return block;
  }

 private:
  static void rule(SheetBlock& block, double y, double from, double to) {
    block.drawing.bars.push_back({Bar::Kind::rule, {from, y}, {to, y}, 0.75, Ink::line, 0});
  }

  void put(Box box, double left, double gap, bool staysWithNext = false) {
    SheetBlock block;
    block.height = box.height();
    block.gapBefore = metrics_.px(gap);
    block.staysWithNext = staysWithNext;
    block.drawing.add(std::move(box.drawing), {left, box.above});
    blocks_.push_back(std::move(block));
  }

  void say_(const QString& text, FontRole role, double gap, bool staysWithNext = false, double left = 0) {
    if (!text.isEmpty())
      put(paragraph(text, role, Ink::text, metrics_, metrics_.width - left), left, gap, staysWithNext);
  }

  void head() {
    const bool key = kind_ == PracticeSheetKind::key;
    const QString kind = words(key ? PhraseId::practiceSheet_key : PhraseId::practiceSheet_questions);
    const QString title = held(isolated(set_.title));
    say_(title.isEmpty() ? kind : title, FontRole::flag, 0, true);
    if (!title.isEmpty()) say_(kind, FontRole::question, 2, true);
    say_(fromCore(say(PhraseId::practiceSheet_made, {{"seed", std::to_string(set_.seed)},
                                                     {"level", std::to_string(set_.level)},
                                                     {"words", levelWord(set_.level)},
                                                     {"rules", set_.rules.name}})),
         FontRole::tag, 4);
    say_(fromCore(say(PhraseId::practiceSheet_rules, {{"rules", rulesOf(problems_)}})), FontRole::aside, 4);
    if (key) return;
    say_(words(PhraseId::practiceSheet_how), FontRole::body, 8);
    nameLine();
  }

  void nameLine() {
    SheetBlock block;
    block.gapBefore = metrics_.px(18);
    Box name = textBox(words(PhraseId::practiceSheet_name), FontRole::body, Ink::text, metrics_);
    Box date = textBox(words(PhraseId::practiceSheet_date), FontRole::body, Ink::text, metrics_);
    const double base = name.above;
    Box points =
        textBox(fromCore(say(PhraseId::practiceSheet_total, {{"n", std::to_string(pointsOf(problems_))}})),
                FontRole::body, Ink::text, metrics_);
    const double second = metrics_.width * 0.46;
    const double third = metrics_.width * 0.74;
    const double gap = metrics_.px(8);
    block.height = name.height();
    rule(block, base + 2, name.width + gap, second - metrics_.px(20));
    rule(block, base + 2, second + date.width + gap, third - metrics_.px(20));
    rule(block, base + 2, third + points.width + gap, metrics_.width);
    block.drawing.add(std::move(name.drawing), {0, base});
    block.drawing.add(std::move(date.drawing), {second, base});
    block.drawing.add(std::move(points.drawing), {third, base});
    blocks_.push_back(std::move(block));
  }

  /// Its papers, its lines and the room for them are on one page.
  void problem(const Problem& problem, std::size_t place) {
    const std::size_t first = blocks_.size();
    tellProblem(problem, place);
    for (std::size_t i = first; i + 1 < blocks_.size(); ++i) blocks_[i].staysWithNext = true;
  }

  void tellProblem(const Problem& problem, std::size_t place) {
    say_(fromCore(say(PhraseId::practiceSheet_problem,
                      {{"n", std::to_string(place + 1)}, {"topic", topicWord(problem.topic)}})),
         FontRole::question, 22, true);
    const QStringList paragraphs = fromCore(problem.story).split(u'\n', Qt::SkipEmptyParts);
    for (const QString& one : paragraphs) say_(held(isolated(one.toStdString())), FontRole::body, 4, true);
    const std::vector<StepView> views =
        kind_ == PracticeSheetKind::key ? stepViews(problem.key) : std::vector<StepView>();
    for (std::size_t i = 0; i < problem.asks.size(); ++i) line(problem, i, views);
  }

  void line(const Problem& problem, std::size_t place, const std::vector<StepView>& views) {
    const Ask& ask = problem.asks[place];
    QString asked = QStringLiteral("%1  %2").arg(place + 1).arg(held(lineQuestion(ask, problem)));
    const QString unit = fromCore(lineUnit(ask));
    if (!unit.isEmpty()) asked += QStringLiteral("  (%1)").arg(unit);
    askFor(asked);
    if (kind_ == PracticeSheetKind::key) return answer(problem, ask, views);
    if (ask.isVerdict())
      return say_(words(PhraseId::practiceSheet_choices), FontRole::body, 8, false, indent);
    SheetBlock room;
    room.height = ruledLines * metrics_.px(ruleApart);
    for (int i = 1; i <= ruledLines; ++i) rule(room, i * metrics_.px(ruleApart), indent, metrics_.width);
    blocks_.push_back(std::move(room));
  }

  /// The question, and at the right edge what its line is worth: as much as any other, as in a table of
  /// results.
  void askFor(const QString& asked) {
    Box points = textBox(fromCore(say(PhraseId::practiceSheet_points, {{"n", "1"}}, 1)), FontRole::tag,
                         Ink::text, metrics_);
    Box question = paragraph(asked, FontRole::body, Ink::text, metrics_,
                             metrics_.width - points.width - metrics_.px(24));
    SheetBlock block;
    block.height = question.height();
    block.gapBefore = metrics_.px(10);
    block.staysWithNext = true;
    const double base = question.above;
    block.drawing.add(std::move(question.drawing), {0, base});
    block.drawing.add(std::move(points.drawing), {metrics_.width - points.width, base});
    blocks_.push_back(std::move(block));
  }

  void answer(const Problem& problem, const Ask& ask, const std::vector<StepView>& views) {
    const auto view = std::find_if(views.begin(), views.end(),
                                   [&](const StepView& one) { return ask.step && one.step.id == *ask.step; });
    if (view == views.end()) {
      say_(held(lineAnswer(ask, problem)), FontRole::badge, 2, false, indent);
      if (ask.isVerdict()) say_(held(verdictReason(problem.key)), FontRole::aside, 1, false, indent);
      return;
    }
    Metrics inner = metrics_;
    inner.width = metrics_.width - indent;
    StepLayout worked = layOutBody(*view, inner);
    SheetBlock block;
    block.gapBefore = metrics_.px(4);
    block.height = worked.size.height();
    block.drawing.add(std::move(worked.drawing), {indent, 0});
    blocks_.push_back(std::move(block));
  }

  const PracticeSet& set_;
  std::vector<Problem> problems_;
  PracticeSheetKind kind_;
  Metrics metrics_;
  std::vector<SheetBlock> blocks_;
};

}  // namespace

SheetLayout layOutPracticeSheet(const PracticeSet& set, PracticeSheetKind kind, const PaperFormat& format) {
  SheetWriter writer(set, kind, format.content().width());
  PageFrame frame;
  frame.firstHead = frame.head = writer.banner();
  frame.foot = [&](int page, int pages) { return writer.foot(page, pages); };
  frame.aboveFoot = 8;
  return {format, setOnPages(writer.blocks(), frame, format)};
}

Result<Done> writePracticePdf(const QString& file, const PracticeSet& set, PracticeSheetKind kind,
                              PaperSize paper) {
  const SheetLayout sheet = layOutPracticeSheet(set, kind, paperFormat(paper));
  return writePdf(file, sheet, paper, fromCore(say(PhraseId::practiceSheet_banner)),
                  QStringLiteral("Wardchalk"));
}

}  // namespace wardchalk::ui
