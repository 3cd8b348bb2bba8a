#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QPointer>
#include <QTest>

#include "core/check/work_out.h"
#include "core/words/amount_words.h"
#include "core/words/step_words.h"
#include "tests/support/golden_cases.h"
#include "tests/support/settled.h"
#include "tests/ui/shell/everything_said.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/settling.h"
#include "ui/board/board.h"
#include "ui/board/board_surface.h"
#include "ui/form/form.h"
#include "ui/paper/sheet_preview.h"
#include "ui/theme/text.h"
#include "ui/working/amount_widget.h"
#include "ui/working/finding_row.h"
#include "ui/working/working_pane.h"

// H44: the amount is read before the question is asked. Every golden case that is asked about is opened in
// the window; nothing that any widget, action, accessible object, copy, board or sheet holds tells the amount
// before each question is settled, and afterwards it is told.

namespace wardchalk::ui::asked_first_test {

using test::everythingSaid;
using test::firstFound;
using wardchalk::test::GoldenCase;
using wardchalk::test::goldenCases;
using wardchalk::test::goldenFolder;
using wardchalk::test::settled;

namespace {

/// What may be measured, drawn up into or set, and the steps that come to it. Not the label: it was entered.
QStringList tellTales(const Worksheet& whole) {
  const AmountWords words = amountWords(settled(whole));
  QStringList tales;
  for (const std::string& text : {words.measure, words.device, words.run})
    if (!text.empty()) tales << fromCore(text);
  for (const Step& step : whole.steps)
    if (tellsAmount(step.id)) tales << fromCore(question(step, whole));
  return tales;
}

}  // namespace

class AskedFirstTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() {
    nurse_ = std::make_unique<Nurse>();
    QApplication::clipboard()->clear();
  }
  void cleanup() { nurse_.reset(); }

  void theWindowTellsNothing_data() { addCases(); }
  void theWindowTellsNothing();
  void noCopyTells_data() { addCases(); }
  void noCopyTells();
  void theBoardTellsNothing_data() { addCases(); }
  void theBoardTellsNothing();
  void theSheetTellsNothing_data() { addCases(); }
  void theSheetTellsNothing();
  void aClickThatEndsWhatItIsOnIsHarmless();

 private:
  static void addCases();
  /// Opens the case of this row; what would tell its amount.
  QStringList open();
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  AmountWidget* amount() { return nurse_->window().findChild<WorkingPane*>()->amount(); }

  std::unique_ptr<Nurse> nurse_;
};

void AskedFirstTest::addCases() {
  QTest::addColumn<QString>("name");
  int cases = 0;
  for (const GoldenCase& golden : goldenCases()) {
    if (golden.rules != exactRules()) continue;  // the window opens with those
    const Worksheet sheet = workOut(golden.given, golden.rules);
    if (sheet.verdict != VerdictKind::ask || tellTales(sheet).isEmpty()) continue;
    if (settled(sheet).isOpen()) continue;  // settled by an entry alone
    QTest::newRow(golden.name.c_str()) << QString::fromStdString(golden.name);
    ++cases;
  }
  QVERIFY(cases > 10);
}

QStringList AskedFirstTest::open() {
  QFETCH(QString, name);
  const QString file =
      QString::fromStdString(goldenFolder().string()) + u'/' + name + QStringLiteral(".case.json");
  if (!nurse_->window().openFile(file)) qFatal("not opened");
  return tellTales(nurse_->sheet());
}

void AskedFirstTest::theWindowTellsNothing() {
  const QStringList tales = open();
  QVERIFY(!amount()->showsAmount());
  QCOMPARE(firstFound(everythingSaid(), tales), QString());
  const QList<QComboBox*> boxes = test::settlingBoxes(nurse_->window());
  QVERIFY(!boxes.isEmpty());
  for (int i = 0; i + 1 < boxes.size(); ++i) test::choose(boxes[i], 1);
  QCOMPARE(firstFound(everythingSaid(), tales), QString());
  test::choose(boxes.last(), 1);
  for (const QString& tale : tales)
    QVERIFY2(!firstFound(everythingSaid(), {tale}).isEmpty(), qPrintable(tale));
  test::choose(boxes.first(), 0);  // taken back
  QTRY_COMPARE(firstFound(everythingSaid(), tales), QString());
}

void AskedFirstTest::noCopyTells() {
  const QStringList tales = open();
  for (const char* copy : {"copy-working", "copy-working-mathml", "copy-working-latex", "copy-working-svg"}) {
    QApplication::clipboard()->clear();
    action(copy)->trigger();
    QCOMPARE(firstFound(everythingSaid(), tales), QString());
  }
}

void AskedFirstTest::theBoardTellsNothing() {
  const QStringList tales = open();
  action("board")->trigger();
  auto* board = nurse_->window().findChild<Board*>();
  QVERIFY(board);
  for (BoardPlace place = board->story().first();; place = board->story().next(place, false)) {
    board->surface()->goTo(place);
    QCOMPARE(firstFound(everythingSaid(), tales), QString());
    if (place == board->story().last()) break;
  }
  board->close();
}

void AskedFirstTest::theSheetTellsNothing() {
  const QStringList tales = open();
  action("sheet-preview")->trigger();
  auto* preview = nurse_->window().findChild<SheetPreview*>();
  QVERIFY(preview);
  QCOMPARE(firstFound({spokenSheet(preview->content())}, tales), QString());
  QCOMPARE(firstFound(everythingSaid(), tales), QString());
  preview->close();
}

/// The click leaves a line, the line is judged, and what was clicked on is no more.
void AskedFirstTest::aClickThatEndsWhatItIsOnIsHarmless() {
  QStringList entries = test::usualCase();
  entries[entries.indexOf(QStringLiteral("Bench list, p. 4"))]
      .clear();  // a note says that there is no source
  nurse_->fill(entries);
  QVERIFY(nurse_->sheet().finding(FindingCode::sourceNotStated));
  const QPointer<FindingRow> clicked = nurse_->window().findChildren<FindingRow*>().last();
  QVERIFY(clicked);
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("reference.source"));
  nurse_->type(QStringLiteral("Ward list, p 12"));
  QVERIFY(clicked);
  QTest::mouseClick(clicked, Qt::LeftButton);
  QVERIFY(!nurse_->sheet().finding(FindingCode::sourceNotStated));
  QTRY_VERIFY(!clicked);
}

WARDCHALK_QT_TEST(AskedFirstTest)

}  // namespace wardchalk::ui::asked_first_test

#include "asked_first_test.moc"
