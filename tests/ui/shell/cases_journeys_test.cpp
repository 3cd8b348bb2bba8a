#include <sys/stat.h>

#include <QAbstractItemView>
#include <QFile>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QTimer>

#include "core/record/batch.h"
#include "tests/support/table_rows.h"
#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/shell/dialog_pictures.h"
#include "tests/ui/shell/dialog_sweep.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "ui/record/cases_window.h"

namespace wardchalk::ui::cases_journeys_test {

namespace {

constexpr int unread = 5;  // its place among the counts

QString demo(const char* name) {
  return QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/demo/") + QLatin1String(name);
}

QByteArray contentOf(const QString& file) {
  QFile in(file);
  return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

/// A class set of `count` rows, of which every hundredth cannot be read.
QByteArray classSet(int count) {
  QByteArray text =
      "title,child.height,child.weight,order.medicine,order.dose,order.route,order.schedule,reference.high,"
      "reference.schedule,stock.kind,stock.strength\r\n";
  for (int i = 0; i < count; ++i) {
    const QByteArray weight = i % 100 == 50 ? "\"17,2 kg\"" : "17.2 kg";
    text += "Bench " + QByteArray::number(i + 1) + ",103 cm," + weight + ",Plover," +
            QByteArray::number(60 + i % 40) +
            " mg,oral,every 12 h,120 mg/m2/dose,every 12 h,liquid,25 mg/1 mL\r\n";
  }
  return text;
}

}  // namespace

/// Several cases in a list: read, stepped through, printed, written.
class CasesJourneysTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() { nurse_ = std::make_unique<Nurse>(); }
  void cleanup() { nurse_.reset(); }

  void aClassSetWithBadRowsIsReadWhole();
  void theWindowAnswersWhileItReads();
  void readingCanBeStopped();
  void enterOpensARowAndPagesStepOn();
  void whatIsNotSavedIsAskedAbout();
  void aRowThatIsNotOpenedIsNotSelected();
  void openingAfterACoverAsksNothing();
  void theTitleAndWhatWasNotCheckedAreShown();
  void filesOfEveryKindStandInOneList();
  void formulasAndDamageAreShownAndNeverStopTheRest();
  void resultsAreThoseOfTheBatch();
  void allSheetsStandInOnePdf();
  void writingCanBeStopped();
  void whatIsNoFileIsToldAndNotWaitedFor();
  void nothingIsWrittenOntoWhatWasRead();
  void whySheetsCannotBeSavedIsSaid();
  void nothingStaysWhenItCloses();
  void theDialogIsReachedAndNamed();
  void shoots();

 private:
  [[nodiscard]] CasesWindow* window() { return nurse_->window().findChild<CasesWindow*>(); }
  template <typename T>
  [[nodiscard]] T* part(const char* name) {
    return window()->findChild<T*>(QLatin1String(name));
  }
  [[nodiscard]] QString cell(int row, int column) {
    return window()->model().index(row, column).data().toString();
  }
  QString write(const char* name, const QByteArray& content);
  [[nodiscard]] bool showWindow();
  [[nodiscard]] bool page(Qt::Key key);
  [[nodiscard]] bool start(const QStringList& files);
  [[nodiscard]] bool read(const QStringList& files);

  std::unique_ptr<Nurse> nurse_;
};

QString CasesJourneysTest::write(const char* name, const QByteArray& content) {
  const QString file = nurse_->folder() + QLatin1Char('/') + QLatin1String(name);
  QFile out(file);
  if (!out.open(QIODevice::WriteOnly) || out.write(content) != content.size())
    qFatal("cannot write a test file");
  return file;
}

bool CasesJourneysTest::showWindow() {
  if (!nurse_->goBack()) return false;
  QTest::keyClick(&nurse_->window(), Qt::Key_L, Qt::ControlModifier);
  return window() && hasKeyboard(window());
}

/// From the form, which has the keyboard when a case was opened in it.
bool CasesJourneysTest::page(Qt::Key key) {
  if (!hasKeyboard(&nurse_->window())) return false;
  QTest::keyClick(&nurse_->window(), key, Qt::ControlModifier);
  return true;
}

bool CasesJourneysTest::start(const QStringList& files) {
  if (!window() && !showWindow()) return false;
  nurse_->dialogs().chosen << files;
  part<QPushButton>("open-cases")->click();
  return true;
}

bool CasesJourneysTest::read(const QStringList& files) {
  return start(files) && QTest::qWaitFor([this] { return !window()->isBusy(); }, 60'000);
}

void CasesJourneysTest::aClassSetWithBadRowsIsReadWhole() {
  QVERIFY(read({write("set.csv", classSet(1000))}));
  QCOMPARE(window()->model().rowCount(), 1000);
  QCOMPARE(window()->model().counts()[unread], 10);
  QVERIFY(part<QLabel>("counts")->text().startsWith(QStringLiteral("1000 cases")));
  QCOMPARE(cell(50, CasesModel::verdict), QStringLiteral("cannot be read"));
  QVERIFY(cell(50, CasesModel::reason).startsWith(QStringLiteral("child.weight: 17,2 has a comma")));
  QCOMPARE(cell(50, CasesModel::place), QStringLiteral("set.csv, row 52"));
  QCOMPARE(cell(0, CasesModel::title), QStringLiteral("Bench 1"));
  QCOMPARE(cell(24, CasesModel::verdict), QStringLiteral("SAFE by this reference"));
  QCOMPARE(cell(25, CasesModel::verdict), QStringLiteral("UNSAFE by this reference"));
}

void CasesJourneysTest::theWindowAnswersWhileItReads() {
  int ticks = 0;
  QTimer timer;
  connect(&timer, &QTimer::timeout, this, [&] { ++ticks; });
  timer.start(0);
  QVERIFY(start({write("set.csv", classSet(20'000))}));
  QVERIFY(window()->findChild<QProgressBar*>()->isVisible());
  QVERIFY(!part<QPushButton>("save-sheets")->isEnabled());
  QTRY_VERIFY_WITH_TIMEOUT(!window()->isBusy(), 60'000);
  QCOMPARE(window()->model().rowCount(), 20'000);
  QVERIFY(ticks > 20);
  QVERIFY(!window()->findChild<QProgressBar*>()->isVisible());
}

void CasesJourneysTest::readingCanBeStopped() {
  QVERIFY(start({write("set.csv", classSet(200'000))}));
  QTRY_VERIFY(window()->model().rowCount() > 0);
  part<QPushButton>("stop")->click();
  QTRY_VERIFY(!window()->isBusy());
  QVERIFY(window()->model().rowCount() < 200'000);
  QVERIFY(start(
      {write("set.csv", classSet(200'000))}));  // and a window that closes meanwhile leaves nothing running
  window()->close();
  QTRY_VERIFY(!window());
}

void CasesJourneysTest::enterOpensARowAndPagesStepOn() {
  QVERIFY(read({demo("class_set.csv")}));
  QCOMPARE(window()->currentRow(), 0);
  part<QTableView>("cases")->setFocus();
  QTest::keyClick(part<QTableView>("cases"), Qt::Key_Down);
  QTest::keyClick(part<QTableView>("cases"), Qt::Key_Return);
  QCOMPARE(nurse_->sheet().given.title, std::string("Bench 2"));
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::unsafe);
  QVERIFY(window() && !window()->isVisible());  // the case is seen and not the list over it
  QVERIFY(page(Qt::Key_PageDown));
  QCOMPARE(nurse_->sheet().given.title, std::string("Bench 3"));
  QVERIFY(page(Qt::Key_PageDown));  // cannot be read
  QCOMPARE(nurse_->dialogs().told.size(), 1);
  QCOMPARE(nurse_->sheet().given.title, std::string("Bench 3"));
  QVERIFY(page(Qt::Key_PageDown));
  QCOMPARE(nurse_->sheet().given.title, std::string("Bench 5"));
  for (int back = 0; back < 3; ++back) QVERIFY(page(Qt::Key_PageUp));
  QCOMPARE(nurse_->sheet().given.title, std::string("Bench 2"));
  QVERIFY(page(Qt::Key_PageUp));
  QVERIFY(page(Qt::Key_PageUp));  // the first is the end
  QCOMPARE(nurse_->sheet().given.title, std::string("Bench 1"));
  QCOMPARE(nurse_->dialogs().asked, 0);
}

void CasesJourneysTest::whatIsNotSavedIsAskedAbout() {
  nurse_->fill({QStringLiteral("99 cm")});
  QVERIFY(read({demo("class_set.csv")}));
  part<QPushButton>("open-row")->click();
  QCOMPARE(nurse_->dialogs().asked, 1);
  QVERIFY(nurse_->sheet().given.title.empty());
  nurse_->dialogs().answer = Unsaved::discard;
  part<QPushButton>("open-row")->click();
  QCOMPARE(nurse_->sheet().given.title, std::string("Bench 1"));
}

void CasesJourneysTest::aRowThatIsNotOpenedIsNotSelected() {
  nurse_->fill({QStringLiteral("99 cm")});
  QVERIFY(read({demo("class_set.csv")}));
  part<QPushButton>("next")->click();
  QCOMPARE(nurse_->dialogs().asked, 1);
  QCOMPARE(window()->currentRow(), 0);
  nurse_->dialogs().answer = Unsaved::discard;
  part<QPushButton>("next")->click();
  QCOMPARE(window()->currentRow(), 1);
}

/// What was put away and came back is as it was: a case that was opened has nothing to be saved.
void CasesJourneysTest::openingAfterACoverAsksNothing() {
  nurse_->fill({QStringLiteral("99 cm")});
  CaseEditor& editor = nurse_->window().editor();
  const Shelved away = editor.shown();
  editor.clear();
  editor.restore(away);
  QVERIFY(editor.isModified());
  editor.open({{"child.weight", "20 kg"}});
  QVERIFY(!editor.isModified());
  editor.restore({CaseDraft(), true});
  editor.clear();
  QVERIFY(!editor.isModified());
}

void CasesJourneysTest::theTitleAndWhatWasNotCheckedAreShown() {
  QVERIFY(read({demo("class_set.csv")}));
  QCOMPARE(cell(3, CasesModel::title), QStringLiteral("Bench 4, with a decimal comma"));
  QVERIFY2(part<QLabel>("detail")->text().contains(QStringLiteral("NOT checked: ")),
           qPrintable(part<QLabel>("detail")->text()));
}

void CasesJourneysTest::filesOfEveryKindStandInOneList() {
  const QString lines =
      write("lines.jsonl", "{\"format\":\"wardchalk.case\",\"version\":1,\"title\":\"a line\"}\n\nnothing\n");
  const QString plover = QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/cases/plover.json");
  const QString odd = write("odd.csv", "child.name\r\nx\r\n");
  QVERIFY(
      read({plover, lines, nurse_->folder() + QStringLiteral("/absent.json"), odd, demo("class_set.csv")}));
  QCOMPARE(window()->model().rowCount(), 1 + 3 + 1 + 1 + 6);
  QCOMPARE(cell(0, CasesModel::verdict), QStringLiteral("SAFE by this reference"));
  QCOMPARE(cell(1, CasesModel::title), QStringLiteral("a line"));
  QCOMPARE(cell(2, CasesModel::place), QStringLiteral("lines.jsonl, row 2"));
  QVERIFY(cell(4, CasesModel::reason).contains(QStringLiteral("absent.json")));
  QVERIFY(cell(5, CasesModel::reason).contains(QStringLiteral("child.name")));
  QCOMPARE(cell(6, CasesModel::title), QStringLiteral("Bench 1"));
  QCOMPARE(cell(11, CasesModel::needs), QStringLiteral("enter the weight"));
  const QString results = nurse_->folder() + QStringLiteral("/results.csv");
  nurse_->dialogs().chosen << QStringList{results};
  part<QPushButton>("save-table")->click();
  QTRY_VERIFY(!window()->isBusy());
  QCOMPARE(wardchalk::test::tableRows(contentOf(results).toStdString()).size(), std::size_t{13});
}

void CasesJourneysTest::formulasAndDamageAreShownAndNeverStopTheRest() {
  QVERIFY(
      read({write("bad.csv", "title,order.dose\r\n=cmd|' /C calc'!A1,5 mg\r\n\"x\"y,1 mg\r\n\xFF,1 mg\r\n" +
                                 QByteArray(2'000'000, 'z') + "\r\nlast,5 mg\r\n")}));
  QCOMPARE(window()->model().rowCount(), 5);
  QCOMPARE(window()->model().counts()[unread], 3);
  QCOMPARE(cell(4, CasesModel::title), QStringLiteral("last"));
  const QString results = nurse_->folder() + QStringLiteral("/results.csv");
  nurse_->dialogs().chosen << QStringList{results};
  part<QPushButton>("save-table")->click();
  QTRY_VERIFY(!window()->isBusy());
  QCOMPARE(wardchalk::test::tableRows(contentOf(results).toStdString()).at(1).cells.at(0),
           std::string("'=cmd|' /C calc'!A1"));
}

/// The table that is saved is what the console's batch would write, but for the order of the columns.
void CasesJourneysTest::resultsAreThoseOfTheBatch() {
  const QByteArray set = classSet(300);
  QVERIFY(read({write("set.csv", set)}));
  const QString results = nurse_->folder() + QStringLiteral("/results.csv");
  nurse_->dialogs().chosen << QStringList{results};
  part<QPushButton>("save-table")->click();
  QTRY_VERIFY(!window()->isBusy());
  std::string batched;
  Batch batch(exactRules(), {StreamKind::table}, [&](std::string_view text) { batched.append(text); });
  batch.take(set.toStdString());
  batch.end();
  QCOMPARE(contentOf(results),
           QByteArray::fromStdString(batched));  // its columns stand in the order of the papers already
}

void CasesJourneysTest::allSheetsStandInOnePdf() {
  QVERIFY(read({demo("class_set.csv")}));
  nurse_->dialogs().pdf = nurse_->folder() + QStringLiteral("/sheets.pdf");
  part<QPushButton>("save-sheets")->click();
  QVERIFY(window()->isBusy());
  QTRY_VERIFY_WITH_TIMEOUT(!window()->isBusy(), 60'000);
  const QString text = wardchalk::ui::test::pagesOfPdf(nurse_->dialogs().pdf).join(QLatin1Char(' '));
  for (const char* title : {"Bench 1", "Bench 2", "Bench 3", "Bench 5", "Bench 6, without a weight"})
    QVERIFY2(text.contains(QLatin1String(title)), title);
  QVERIFY(!text.contains(QStringLiteral("Bench 4")));  // cannot be read
  QVERIFY(nurse_->dialogs().told.isEmpty());
  QCOMPARE(part<QLabel>("counts")->text(),
           QStringLiteral("5 sheets saved in sheets.pdf. Left out, cannot be read: class_set.csv, row 5."));
}

/// The test would not end if anything waited for the other end of a pipe.
void CasesJourneysTest::whatIsNoFileIsToldAndNotWaitedFor() {
  QStringList files;
  for (const char* name : {"pipe.csv", "pipe.jsonl", "pipe.json"}) {
    files << nurse_->folder() + QLatin1Char('/') + QLatin1String(name);
    QCOMPARE(mkfifo(QFile::encodeName(files.last()).constData(), 0600), 0);
  }
  QVERIFY(read(files + QStringList{write("set.csv", classSet(2))}));
  QCOMPARE(window()->model().rowCount(), 5);
  for (int row = 0; row < 3; ++row)
    QVERIFY2(cell(row, CasesModel::reason).contains(QStringLiteral("is a pipe, not a file")),
             qPrintable(cell(row, CasesModel::reason)));
}

void CasesJourneysTest::nothingIsWrittenOntoWhatWasRead() {
  const QByteArray set = classSet(3);
  const QString file = write("set.csv", set);
  const QString link = nurse_->folder() + QStringLiteral("/link.csv");
  QVERIFY(QFile::link(file, link));
  QVERIFY(read({file}));
  int told = 0;
  for (const QString& target : {file, link, nurse_->folder() + QStringLiteral("/./set.csv")}) {
    nurse_->dialogs().chosen << QStringList{target};
    part<QPushButton>("save-table")->click();
    QTRY_VERIFY(!window()->isBusy());
    nurse_->dialogs().pdf = target;
    part<QPushButton>("save-sheets")->click();
    QTRY_VERIFY(!window()->isBusy());
    QCOMPARE(nurse_->dialogs().told.size(), told += 2);
    for (const QString& text : nurse_->dialogs().told)
      QVERIFY2(text.contains(QStringLiteral("is the file that was read")), qPrintable(text));
    QCOMPARE(contentOf(file), set);
  }
}

void CasesJourneysTest::whySheetsCannotBeSavedIsSaid() {
  QVERIFY(read({write("set.csv", classSet(2))}));
  nurse_->dialogs().pdf = nurse_->folder() + QStringLiteral("/none/sheets.pdf");
  part<QPushButton>("save-sheets")->click();
  QTRY_VERIFY(!window()->isBusy());
  QVERIFY2(nurse_->dialogs().told.value(0).contains(QStringLiteral("is not there any more")),
           qPrintable(nurse_->dialogs().told.value(0)));
}

void CasesJourneysTest::writingCanBeStopped() {
  QVERIFY(read({write("set.csv", classSet(3000))}));
  nurse_->dialogs().pdf = nurse_->folder() + QStringLiteral("/sheets.pdf");
  part<QPushButton>("save-sheets")->click();
  part<QPushButton>("stop")->click();
  QTRY_VERIFY(!window()->isBusy());
  QVERIFY(!QFile::exists(nurse_->dialogs().pdf));
  nurse_->dialogs().pdf = nurse_->folder() + QStringLiteral("/no such folder/sheets.pdf");
  part<QPushButton>("save-sheets")->click();
  QTRY_VERIFY(!window()->isBusy());
  QCOMPARE(nurse_->dialogs().told.size(), 1);
  nurse_->dialogs().chosen << QStringList{nurse_->folder() + QStringLiteral("/no such folder/results.csv")};
  part<QPushButton>("save-table")->click();
  QTRY_COMPARE(nurse_->dialogs().told.size(), 2);
}

void CasesJourneysTest::nothingStaysWhenItCloses() {
  QVERIFY(read({demo("class_set.csv")}));
  window()->close();
  QTRY_VERIFY(!window());
  QVERIFY(showWindow());
  QCOMPARE(window()->model().rowCount(), 0);
  QVERIFY(!nurse_->settingsLeft().contains("class_set"));
}

void CasesJourneysTest::theDialogIsReachedAndNamed() {
  QVERIFY(read({demo("class_set.csv")}));
  QCOMPARE(faultsOf(*window()).join(QStringLiteral("; ")), QString());
}

void CasesJourneysTest::shoots() {
  const bool shot = shootDialog(QStringLiteral("cases"), [this] {
    nurse_ = std::make_unique<Nurse>();
    return read({demo("class_set.csv")}) ? static_cast<QWidget*>(window()) : nullptr;
  });
  if (!shot) QSKIP("no folder for pictures is named");
}

WARDCHALK_QT_TEST(CasesJourneysTest)

}  // namespace wardchalk::ui::cases_journeys_test

#include "cases_journeys_test.moc"
