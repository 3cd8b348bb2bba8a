#include "ui/practice/practice_sheet.h"

#include <QTemporaryDir>
#include <QTest>
#include <algorithm>

#include "core/practice/sessions/lesson_words.h"
#include "core/words/phrasebook.h"
#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/support/qt_class.h"
#include "ui/theme/text.h"

namespace wardchalk::ui::test::practice_sheet_test {

namespace {

PracticeSet setOf(std::vector<Topic> topics, int level, int count) {
  PracticeSet set;
  set.title = "Week 3, bench 2";
  set.topics = std::move(topics);
  set.level = level;
  set.count = count;
  set.seed = 11;
  return set;
}

std::vector<Topic> allTopics() {
  std::vector<Topic> topics;
  for (std::size_t i = 0; i < topicIds.size(); ++i) topics.push_back(static_cast<Topic>(i));
  return topics;
}

}  // namespace

class PracticeSheetTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void saysOnEveryPageThatAllIsInvented();
  void holdsEveryProblemAndQuestion();
  void questionsHoldNoAnswer();
  void theKeyWorksEveryLine();
  void isNoBedsideSheet();
  void staysInsideTheMargins_data();
  void staysInsideTheMargins();
  void writesNothingThatCouldBeMisread();
  void noProblemBreaksFromItsStory_data() { staysInsideTheMargins_data(); }
  void noProblemBreaksFromItsStory();
  void aFractionHasRoom();
  void eachLineHasItsPoint();
  void theRulesAreExplained();

 private:
  QString text(const PracticeSet& set, PracticeSheetKind kind, PaperSize paper = PaperSize::a4) {
    const QString file = folder_.filePath(QStringLiteral("sheet.pdf"));
    if (!writePracticePdf(file, set, kind, paper)) qFatal("no sheet");
    pages_ = pagesOfPdf(file);
    return pages_.join(u'\n');
  }
  QTemporaryDir folder_;
  QStringList pages_;
};

void PracticeSheetTest::saysOnEveryPageThatAllIsInvented() {
  for (const auto kind : {PracticeSheetKind::questions, PracticeSheetKind::key}) {
    text(setOf(allTopics(), 2, 14), kind);
    QVERIFY(pages_.size() > 2);
    for (int i = 0; i < pages_.size(); ++i) {
      const QString page = unspaced(pages_[i]);
      QVERIFY2(page.contains(unspaced(QStringLiteral("PRACTICE: invented medicines"))),
               qPrintable(pages_[i]));
      QVERIFY(page.contains(unspaced(QStringLiteral("Nothing here may be used for a child"))));
      QVERIFY(page.contains(unspaced(QStringLiteral("page %1 of %2").arg(i + 1).arg(pages_.size()))));
    }
  }
}

void PracticeSheetTest::holdsEveryProblemAndQuestion() {
  const PracticeSet set = setOf(allTopics(), 3, 14);
  for (const auto kind : {PracticeSheetKind::questions, PracticeSheetKind::key}) {
    const QString all = unspaced(text(set, kind));
    for (int place = 0; place < set.count; ++place) {
      const Problem problem = problemInSet(set, place);
      for (const QString& paragraph : fromCore(problem.story).split(u'\n', Qt::SkipEmptyParts))
        QVERIFY2(all.contains(unspaced(paragraph)), qPrintable(paragraph));
      for (const Ask& ask : problem.asks)
        QVERIFY(all.contains(unspaced(fromCore(lineQuestion(ask, problem)))));
    }
  }
}

void PracticeSheetTest::questionsHoldNoAnswer() {
  PracticeSet set = setOf({Topic::bsa}, 1, 1);
  set.title.clear();
  const QString all = text(set, PracticeSheetKind::questions);
  const Problem problem = problemInSet(set, 0);
  const QString answer = fromCore(lineAnswer(problem.asks[0], problem));
  QVERIFY2(!unspaced(all).contains(unspaced(answer)), qPrintable(answer));
  QVERIFY(all.contains(QStringLiteral("Name:")));
  QVERIFY(all.contains(QStringLiteral("Questions")));
}

void PracticeSheetTest::theKeyWorksEveryLine() {
  const PracticeSet set = setOf(allTopics(), 2, 14);
  const QString all = unspaced(text(set, PracticeSheetKind::key));
  for (int place = 0; place < set.count; ++place) {
    const Problem problem = problemInSet(set, place);
    for (const Ask& ask : problem.asks) {
      QString answer = fromCore(lineAnswer(ask, problem));
      if (answer.startsWith(u'≈')) answer = answer.mid(1);
      QVERIFY2(all.contains(unspaced(answer)), qPrintable(answer));
    }
  }
  QVERIFY(!all.contains(QStringLiteral("Name:")));
}

/// No room for a ward's label, no line to sign for a dose.
void PracticeSheetTest::isNoBedsideSheet() {
  const QString all = text(setOf(allTopics(), 2, 6), PracticeSheetKind::key);
  for (const PhraseId id :
       {PhraseId::sheet_ownLabel, PhraseId::sheet_workedBy, PhraseId::sheet_secondBy, PhraseId::sheet_title})
    QVERIFY(!unspaced(all).contains(unspaced(fromCore(say(id)))));
}

void PracticeSheetTest::staysInsideTheMargins_data() {
  QTest::addColumn<PaperSize>("paper");
  QTest::addColumn<PracticeSheetKind>("kind");
  QTest::newRow("questions, A4") << PaperSize::a4 << PracticeSheetKind::questions;
  QTest::newRow("questions, Letter") << PaperSize::letter << PracticeSheetKind::questions;
  QTest::newRow("key, A4") << PaperSize::a4 << PracticeSheetKind::key;
  QTest::newRow("key, Letter") << PaperSize::letter << PracticeSheetKind::key;
}

void PracticeSheetTest::staysInsideTheMargins() {
  QFETCH(PaperSize, paper);
  QFETCH(PracticeSheetKind, kind);
  const PaperFormat format = paperFormat(paper);
  const SheetLayout sheet = layOutPracticeSheet(setOf(allTopics(), 3, 28), kind, format);
  const QRectF content = format.content().adjusted(-1, -1, 1, 1);
  for (const SheetPage& page : sheet.pages) {
    QList<QRectF> taken;
    for (const Run& run : page.drawing.runs) {
      QVERIFY2(content.contains(run.rect), qPrintable(run.text));
      const QRectF core = run.rect.adjusted(1, run.rect.height() * 0.3, -1, -run.rect.height() * 0.3);
      for (const QRectF& other : taken) QVERIFY2(!other.intersects(core), qPrintable(run.text));
      taken << core;
    }
    for (const Bar& bar : page.drawing.bars) QVERIFY(content.contains(bar.from) && content.contains(bar.to));
  }
}

void PracticeSheetTest::writesNothingThatCouldBeMisread() {
  for (const auto kind : {PracticeSheetKind::questions, PracticeSheetKind::key}) {
    text(setOf(allTopics(), 3, 28), kind);
    for (const QString& page : pages_)
      QVERIFY2(unsafeWriting(page).isEmpty(), qPrintable(unsafeWriting(page)));
  }
}

namespace {

/// The numbers of the problems that begin on a page, and of those that have a line there, from its words.
QString wordsOf(const SheetPage& page) {
  QString words;
  for (const Run& run : page.drawing.runs) words += run.text;
  return unspaced(words);
}

}  // namespace

/// Of every topic at every level: where a problem's heading stands, its last line stands too.
void PracticeSheetTest::noProblemBreaksFromItsStory() {
  QFETCH(PaperSize, paper);
  QFETCH(PracticeSheetKind, kind);
  for (const int level : {1, 2, 3}) {
    const PracticeSet set = setOf(allTopics(), level, 28);
    const SheetLayout sheet = layOutPracticeSheet(set, kind, paperFormat(paper));
    for (int place = 0; place < set.count; ++place) {
      const Problem problem = problemInSet(set, place);
      const QString heading = unspaced(QStringLiteral("Problem %1 ·").arg(place + 1));
      const auto page = std::find_if(sheet.pages.begin(), sheet.pages.end(),
                                     [&](const SheetPage& one) { return wordsOf(one).contains(heading); });
      QVERIFY2(page != sheet.pages.end(), qPrintable(heading));
      const QString after = wordsOf(*page).section(heading, 1);
      const std::size_t last = problem.asks.size() - 1;
      const QString line = unspaced(
          QStringLiteral("%1  %2").arg(last + 1).arg(fromCore(lineQuestion(problem.asks[last], problem))));
      QVERIFY2(after.contains(line), qPrintable(heading + line));
    }
  }
}

/// Over the first rule and under it, in millimetres: a centimetre each.
void PracticeSheetTest::aFractionHasRoom() {
  const PaperFormat format = paperFormat(PaperSize::a4);
  const SheetLayout sheet =
      layOutPracticeSheet(setOf({Topic::amountLiquid}, 1, 1), PracticeSheetKind::questions, format);
  QList<double> rules;
  for (const Bar& bar : sheet.pages.front().drawing.bars)
    if (bar.from.x() > format.content().left() + 1 && bar.to.x() >= format.content().right() - 1 &&
        bar.to.x() - bar.from.x() > format.content().width() * 0.8)
      rules << bar.from.y();
  QVERIFY(rules.size() >= 2);
  constexpr double millimetre = 96 / 25.4;
  QVERIFY2(rules[1] - rules[0] >= 10 * millimetre,
           qPrintable(QString::number((rules[1] - rules[0]) / millimetre)));
}

void PracticeSheetTest::eachLineHasItsPoint() {
  const PracticeSet set = setOf(allTopics(), 2, 14);
  qsizetype lines = 0;
  for (int place = 0; place < set.count; ++place)
    lines += static_cast<qsizetype>(problemInSet(set, place).asks.size());
  for (const auto kind : {PracticeSheetKind::questions, PracticeSheetKind::key})
    QCOMPARE(unspaced(text(set, kind)).count(QStringLiteral("1point")), lines);
  QVERIFY(
      unspaced(text(set, PracticeSheetKind::questions)).contains(QStringLiteral("Points,of%1:").arg(lines)));
}

/// What they say of pounds and of rounding, where a problem of the set uses them, and not their name alone.
void PracticeSheetTest::theRulesAreExplained() {
  PracticeSet set = setOf({Topic::doseByWeight}, 2, 6);
  for (const auto kind : {PracticeSheetKind::questions, PracticeSheetKind::key}) {
    set.rules = classroomRules();
    QVERIFY(unspaced(text(set, kind)).contains(unspaced(QStringLiteral("2.2 lb = 1 kg"))));
    QVERIFY(unspaced(text(set, kind)).contains(unspaced(QStringLiteral("Kilograms are rounded once"))));
    set.rules = exactRules();
    QVERIFY(!unspaced(text(set, kind)).contains(unspaced(QStringLiteral("2.2 lb = 1 kg"))));
  }
}

WARDCHALK_QT_TEST(PracticeSheetTest)

}  // namespace wardchalk::ui::test::practice_sheet_test

#include "practice_sheet_test.moc"
