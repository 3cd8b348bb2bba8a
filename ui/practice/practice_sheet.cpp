#include "ui/practice/practice_sheet.h"

#include <algorithm>
#include <utility>

#include "core/practice/sessions/lesson_words.h"
#include "core/words/isolated.h"
#include "core/words/sentences.h"
#include "ui/paper/paint_sheet.h"
#include "ui/practice/detail/sheet_flow.h"
#include "ui/theme/text.h"
#include "ui/working/box.h"
#include "ui/working/step_layout.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui {

namespace {

using detail::SheetPart;

constexpr double letters = 0.86;  // body of about 10 points
constexpr double indent = 22;
/// Room to work a line by hand, and how far apart its rules stand.
constexpr int ruledLines = 2;
constexpr double ruleApart = 28;

class SheetWriter {
 public:
  SheetWriter(const PracticeSet& set, PracticeSheetKind kind, double width, const Phrasebook& book)
      : set_(set), kind_(kind), book_(book), metrics_{width, letters, {}, 1} {}

  std::vector<SheetPart> parts() {
    head();
    for (int place = 0; place < set_.count; ++place) problem(problemInSet(set_, place), place);
    return std::move(parts_);
  }

  [[nodiscard]] const Metrics& metrics() const { return metrics_; }
  QString words(PhraseId id) const { return fromCore(say(book_, id)); }

  /// "PRACTICE: invented medicines" in a hatched band, at the head of every page.
  SheetPart banner() const {
    SheetPart part;
    Box said = textBox(words(PhraseId::practiceSheet_banner), FontRole::question, Ink::text, metrics_);
    const double high = said.height() + metrics_.px(12);
    const double left = (metrics_.width - said.width) / 2;
    const double gap = metrics_.px(16);
    for (const QRectF& edge :
         {QRectF(0, 0, left - gap, high), QRectF(left + said.width + gap, 0, left - gap, high)})
      part.drawing.areas.push_back({corners(edge), 0, Area::Fill::hatched, Ink::line, 0, Ink::line, 0});
    part.drawing.add(std::move(said.drawing), {left, metrics_.px(6) + said.above});
    part.height = high + metrics_.px(12);
    return part;
  }

  SheetPart foot(int page, int pages) const {
    SheetPart part;
    Box number = textBox(fromCore(say(book_, PhraseId::practiceSheet_page,
                                      {{"n", std::to_string(page)}, {"m", std::to_string(pages)}})),
                         FontRole::tag, Ink::text, metrics_);
    Box caution = paragraph(words(PhraseId::practiceSheet_caution), FontRole::tag, Ink::text, metrics_,
                            metrics_.width - number.width - metrics_.px(24));
    part.height = caution.height() + metrics_.px(6);
    rule(part, 0, 0, metrics_.width);
    const double base = metrics_.px(6) + caution.above;
    part.drawing.add(std::move(caution.drawing), {0, base});
    part.drawing.add(std::move(number.drawing), {metrics_.width - number.width, base});
    return part;
  }

 private:
  static void rule(SheetPart& part, double y, double from, double to) {
    part.drawing.bars.push_back({Bar::Kind::rule, {from, y}, {to, y}, 0.75, Ink::line, 0});
  }

  void put(Box box, double left, double gap, bool staysWithNext = false) {
    SheetPart part;
    part.height = box.height();
    part.gapBefore = metrics_.px(gap);
    part.staysWithNext = staysWithNext;
    part.drawing.add(std::move(box.drawing), {left, box.above});
    parts_.push_back(std::move(part));
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
    say_(fromCore(say(book_, PhraseId::practiceSheet_made,
                      {{"seed", std::to_string(set_.seed)},
                       {"level", std::to_string(set_.level)},
                       {"words", levelWord(set_.level, book_)},
                       {"rules", set_.rules.name}})),
         FontRole::tag, 4);
    if (key) return;
    say_(words(PhraseId::practiceSheet_how), FontRole::body, 8);
    nameLine();
  }

  void nameLine() {
    SheetPart part;
    part.gapBefore = metrics_.px(18);
    Box name = textBox(words(PhraseId::practiceSheet_name), FontRole::body, Ink::text, metrics_);
    Box date = textBox(words(PhraseId::practiceSheet_date), FontRole::body, Ink::text, metrics_);
    const double base = name.above;
    const double second = metrics_.width * 0.66;
    const double gap = metrics_.px(8);
    part.height = name.height();
    rule(part, base + 2, name.width + gap, second - metrics_.px(20));
    rule(part, base + 2, second + date.width + gap, metrics_.width);
    part.drawing.add(std::move(name.drawing), {0, base});
    part.drawing.add(std::move(date.drawing), {second, base});
    parts_.push_back(std::move(part));
  }

  void problem(const Problem& problem, int place) {
    say_(fromCore(say(book_, PhraseId::practiceSheet_problem,
                      {{"n", std::to_string(place + 1)}, {"topic", topicWord(problem.topic, book_)}})),
         FontRole::question, 22, true);
    const QStringList paragraphs = fromCore(problem.story).split(u'\n', Qt::SkipEmptyParts);
    for (const QString& one : paragraphs) say_(held(isolated(one.toStdString())), FontRole::body, 4, true);
    const std::vector<StepView> views =
        kind_ == PracticeSheetKind::key ? stepViews(problem.key, book_) : std::vector<StepView>();
    for (std::size_t i = 0; i < problem.asks.size(); ++i) line(problem, i, views);
  }

  void line(const Problem& problem, std::size_t place, const std::vector<StepView>& views) {
    const Ask& ask = problem.asks[place];
    QString asked = QStringLiteral("%1  %2").arg(place + 1).arg(held(lineQuestion(ask, problem, book_)));
    const QString unit = fromCore(lineUnit(ask, book_));
    if (!unit.isEmpty()) asked += QStringLiteral("  (%1)").arg(unit);
    say_(asked, FontRole::body, 10, true);
    if (kind_ == PracticeSheetKind::key) return answer(problem, ask, views);
    if (ask.isVerdict())
      return say_(words(PhraseId::practiceSheet_choices), FontRole::body, 8, false, indent);
    SheetPart room;
    room.height = ruledLines * metrics_.px(ruleApart);
    for (int i = 1; i <= ruledLines; ++i) rule(room, i * metrics_.px(ruleApart), indent, metrics_.width);
    parts_.push_back(std::move(room));
  }

  void answer(const Problem& problem, const Ask& ask, const std::vector<StepView>& views) {
    const auto view = std::find_if(views.begin(), views.end(),
                                   [&](const StepView& one) { return ask.step && one.step.id == *ask.step; });
    if (view == views.end()) {
      say_(held(lineAnswer(ask, problem, book_)), FontRole::badge, 2, false, indent);
      if (ask.isVerdict()) say_(held(verdictReason(problem.key, book_)), FontRole::aside, 1, false, indent);
      return;
    }
    Metrics inner = metrics_;
    inner.width = metrics_.width - indent;
    StepLayout worked = layOutBody(*view, inner);
    SheetPart part;
    part.gapBefore = metrics_.px(4);
    part.height = worked.size.height();
    part.drawing.add(std::move(worked.drawing), {indent, 0});
    parts_.push_back(std::move(part));
  }

  const PracticeSet& set_;
  PracticeSheetKind kind_;
  const Phrasebook& book_;
  Metrics metrics_;
  std::vector<SheetPart> parts_;
};

}  // namespace

SheetLayout layOutPracticeSheet(const PracticeSet& set, PracticeSheetKind kind, const PaperFormat& format,
                                const Phrasebook& book) {
  SheetWriter writer(set, kind, format.content().width(), book);
  std::vector<SheetPart> parts = writer.parts();
  return detail::setOnPages(
      std::move(parts), writer.banner(), [&writer](int page, int pages) { return writer.foot(page, pages); },
      format);
}

Result<Done> writePracticePdf(const QString& file, const PracticeSet& set, PracticeSheetKind kind,
                              PaperSize paper, const Phrasebook& book) {
  const SheetLayout sheet = layOutPracticeSheet(set, kind, paperFormat(paper), book);
  return writePdf(file, sheet, paper, fromCore(say(book, PhraseId::practiceSheet_banner)),
                  QStringLiteral("Wardchalk"));
}

}  // namespace wardchalk::ui
