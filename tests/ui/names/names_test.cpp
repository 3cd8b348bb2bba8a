// H46: whatever writing a name from outside is in, the figures beside it read from left to right, wherever
// they stand.
#include <QAccessible>
#include <QFile>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>
#include <map>

#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/reference_list.h"
#include "core/words/case_facts.h"
#include "tests/ui/paper/pdf_text.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/outside_names.h"
#include "tests/ui/support/painted_text.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/board/board_surface.h"
#include "ui/paper/copies.h"
#include "ui/paper/paint_sheet.h"
#include "ui/record/cases_model.h"
#include "ui/record/cases_window.h"
#include "ui/record/reference_picker.h"
#include "ui/shell/cover_page.h"
#include "ui/theme/text.h"

namespace wardchalk::ui::test::names_test {

namespace {

constexpr QSize ward(1366, 768);
const SheetMade made{QStringLiteral("2026-11-29 13:40"), QStringLiteral("1.2.3"), {}};

/// A case with this name wherever a case has free text.
QByteArray caseWith(const QString& name) {
  const QString text = QStringLiteral(
      R"({"format": "wardchalk.case", "version": 1, "title": "%1", "child": {"height": "103 cm", "weight": "17.2 kg"},
  "order": {"medicine": "%1", "dose": "80 mg", "route": "oral", "schedule": "every 12 h"},
  "reference": {"high": "120 mg/m2/dose", "schedule": "every 12 h", "source": "%1, p. 4"},
  "stock": {"kind": "liquid", "strength": "25 mg/1 mL"}})");
  return text.arg(name).toUtf8();
}

Worksheet worked(const QString& name) {
  const Result<Case> inputs = readCase(caseWith(name).toStdString());
  if (!inputs) qFatal("the case is refused");
  return workOut(*inputs, exactRules());
}

/// How often each figure of the case is seen, read from left to right. Number and unit never break apart.
std::map<QString, qsizetype> figuresIn(const QStringList& lines) {
  std::map<QString, qsizetype> seen;
  const QString all = lines.join(u'\n');
  for (const char* figure :
       {"103 cm", "17.2 kg", "80 mg in each dose", "80 mg", "120 mg for each m²", "84 mg", "25 mg", "1 mL",
        "3.2 mL", "12 h", "0.70 m²", "2028-02-01", "2026-11-29 13:40"})
    seen[QString::fromUtf8(figure)] = all.count(QString::fromUtf8(figure));
  return seen;
}

QString differenceOf(const QStringList& plain, const QStringList& named) {
  const auto expected = figuresIn(plain);
  const auto found = figuresIn(named);
  QStringList told;
  for (const auto& [figure, times] : expected)
    if (found.at(figure) != times)
      told << QStringLiteral("%1: %2 times beside Plover, %3 here")
                  .arg(figure)
                  .arg(times)
                  .arg(found.at(figure));
  return told.isEmpty() ? QString() : told.join(u'\n') + QStringLiteral("\nin\n") + named.join(u'\n');
}

bool holdsLabel(const QStringList& lines) {
  return lines.filter(QStringLiteral("25 mg in 1 mL")).join(u' ').contains(QStringLiteral("25 mg in 1 mL"));
}

QStringList boardLines(const QString& name, bool atEnd) {
  Board board(worked(name), false, 0);
  board.resize(ward);
  board.show();
  if (atEnd) board.surface()->goTo(board.story().last());
  return paintedLines(board);
}

QStringList sheetLines(const QString& name) {
  const SheetLayout sheet = layOutSheet(sheetContent(worked(name), made), paperFormat(PaperSize::a4));
  QStringList lines;
  for (const SheetPage& page : sheet.pages) {
    PaintedText painted(QSize(800, 1200));
    QPainter painter(&painted);
    paintPage(painter, page);
    painter.end();
    lines << painted.lines();
  }
  return lines;
}

const QString plover = QStringLiteral("Plover");

void shoot(QWidget& widget, const char* what) {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) return;
  const QString row = QString::fromUtf8(QTest::currentDataTag()).replace(u' ', u'-').remove(u',');
  widget.grab().save(QStringLiteral("%1/names-%2-%3.png").arg(folder, QLatin1String(what), row));
}

}  // namespace

class NamesTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void aTurnedFigureIsSeenByThisTest();
  void turnNothingInTheWindow_data() { addNames(); }
  void turnNothingInTheWindow();
  void turnNothingOnTheBoard_data() { addNames(); }
  void turnNothingOnTheBoard();
  void turnNothingOnTheSheet_data() { addNames(); }
  void turnNothingOnTheSheet();
  void turnNothingInThePdf_data() { addNames(); }
  void turnNothingInThePdf();
  void turnNothingInTheListOfReferences_data() { addNames(); }
  void turnNothingInTheListOfReferences();
  void turnNothingOnTheCover_data() { addNames(); }
  void turnNothingOnTheCover();
  void turnNothingInTheListOfCases_data() { addNames(); }
  void turnNothingInTheListOfCases();
  void areSpokenWithoutMarks_data() { addNames(); }
  void areSpokenWithoutMarks();

 private:
  static void addNames() {
    QTest::addColumn<QString>("name");
    for (const OutsideName& row : outsideNames) QTest::newRow(row.writing) << QString::fromUtf8(row.name);
  }

  /// The window with a case open, at the size of a ward's screen.
  void open(Nurse& nurse, const QString& name) {
    const QString file = folder_.filePath(QStringLiteral("case.json"));
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly)) qFatal("no room for a case");
    out.write(caseWith(name));
    out.close();
    nurse.window().resize(ward);
    nurse.window().openFile(file);
    QCoreApplication::processEvents();
    // a form that finds itself wider is laid out once more
    QStringList before;
    const auto isSettled = [&] {
      const QStringList now = paintedLines(nurse.window());
      return std::exchange(before, now) == now;
    };
    QVERIFY(QTest::qWaitFor(isSettled));
  }

  QTemporaryDir folder_;
};

/// What this test could not see it could not hold.
void NamesTest::aTurnedFigureIsSeenByThisTest() {
  const auto painted = [](const QString& text) {
    PaintedText paper(QSize(600, 100));
    QPainter painter(&paper);
    painter.setLayoutDirection(Qt::LeftToRight);
    painter.drawText(QPointF(10, 40), text);
    painter.end();
    return paper.lines().join(u'\n');
  };
  QCOMPARE(painted(QStringLiteral("Plover 25 mg in 1 mL")), QStringLiteral("Plover 25 mg in 1 mL"));
  QVERIFY(!painted(QStringLiteral("Plover \u202E25 mg in 1 mL")).contains(QStringLiteral("25 mg in 1 mL")));
  QVERIFY(!painted(QStringLiteral("read: חוחית 25 mg in 1 mL")).contains(QStringLiteral("25 mg in 1 mL")));
  QVERIFY(!painted(QStringLiteral("read: زقزاق 25 mg in 1 mL")).contains(QStringLiteral("25 mg in 1 mL")));
  QVERIFY(painted(outside(QStringLiteral("חוחית")) + QStringLiteral(" 25 mg in 1 mL"))
              .contains(QStringLiteral("25 mg in 1 mL")));
}

void NamesTest::turnNothingInTheWindow() {
  QFETCH(QString, name);
  Nurse latin;
  open(latin, plover);
  Nurse nurse;
  open(nurse, name);
  const QStringList lines = paintedLines(nurse.window());
  shoot(nurse.window(), "window");
  QVERIFY2(holdsLabel(lines), qPrintable(lines.join(u'\n')));
  QCOMPARE(differenceOf(paintedLines(latin.window()), lines), QString());
}

void NamesTest::turnNothingOnTheBoard() {
  QFETCH(QString, name);
  for (const bool atEnd : {false, true}) {
    const QStringList lines = boardLines(name, atEnd);
    QCOMPARE(differenceOf(boardLines(plover, atEnd), lines), QString());
    QVERIFY2(!atEnd || holdsLabel(lines), qPrintable(lines.join(u'\n')));
  }
}

void NamesTest::turnNothingOnTheSheet() {
  QFETCH(QString, name);
  const QStringList lines = sheetLines(name);
  QVERIFY2(holdsLabel(lines), qPrintable(lines.join(u'\n')));
  QCOMPARE(differenceOf(sheetLines(plover), lines), QString());
}

void NamesTest::turnNothingInThePdf() {
  QFETCH(QString, name);
  // Letters that no font of the machine has make pdftotext begin a line: the order of words is what counts.
  const auto textOf = [this](const QString& of) {
    const QString file = folder_.filePath(QStringLiteral("sheet.pdf"));
    const SheetContent content = sheetContent(worked(of), made);
    if (!writePdf(file, content, PaperSize::a4)) return QStringList();
    return QStringList(pagesOfPdf(file).join(u' ').replace(QChar::Nbsp, u' ').simplified());
  };
  const QStringList lines = textOf(name);
  QVERIFY2(holdsLabel(lines), qPrintable(lines.join(u'\n')));
  QCOMPARE(differenceOf(textOf(plover), lines), QString());
}

void NamesTest::turnNothingInTheListOfReferences() {
  QFETCH(QString, name);
  const auto linesOf = [](const QString& of) {
    const QString file =
        QStringLiteral(
            R"({"format": "wardchalk.reference-list", "version": 1, "title": "%1", "entries": [{"medicine": "%1",
  "indication": "%1", "route": "oral", "high": "120 mg/m2/dose", "max_per_dose": "300 mg", "schedule": "every 12 h",
  "source": {"title": "%1", "edition": "3rd", "date": "2026-01-15", "page": "4"}, "checked_by": "%1",
  "checked_on": "2026-02-01", "review_by": "2028-02-01"}]})")
            .arg(of);
    const Result<ReferenceList> list = readReferenceList(file.toStdString());
    if (!list) qFatal("the list is refused");
    ReferencePicker picker({}, {}, exactRules(), Date{2026, 11, 29}, nullptr);
    picker.resize(ward);
    picker.show();
    picker.setList(*list, of + QStringLiteral(".json"));
    picker.search(of);
    QCoreApplication::processEvents();
    shoot(picker, "picker");
    return paintedLines(picker);
  };
  const QStringList lines = linesOf(name);
  QVERIFY2(lines.join(u' ').contains(QStringLiteral(": 1 ")), qPrintable(lines.join(u'\n')));
  QCOMPARE(differenceOf(linesOf(plover), lines), QString());
}

void NamesTest::turnNothingOnTheCover() {
  QFETCH(QString, name);
  const auto linesOf = [](const QString& of) {
    CoverPage cover;
    cover.resize(ward);
    cover.show();
    cover.showFacts(caseFacts(worked(of).given));
    QCoreApplication::processEvents();
    return paintedLines(cover);
  };
  const QStringList lines = linesOf(name);
  QVERIFY2(holdsLabel(lines), qPrintable(lines.join(u'\n')));
  QCOMPARE(differenceOf(linesOf(plover), lines), QString());
}

/// The name of a file is outside text as well, and stands beside the number of a row.
void NamesTest::turnNothingInTheListOfCases() {
  QFETCH(QString, name);
  const QString file = folder_.filePath(name + QStringLiteral(".csv"));
  QFile out(file);
  QVERIFY(out.open(QIODevice::WriteOnly));
  out.write(
      QStringLiteral("title,child.weight,child.height,order.dose,order.schedule,reference.high,stock.kind\n"
                     "%1,17.2 kg,103 cm,80 mg,every 12 h,120 mg/m2/dose,liquid\n")
          .arg(name)
          .toUtf8());
  out.close();
  CasesWindow window(exactRules(), nullptr);
  window.resize(ward);
  window.show();
  window.read({file});
  QTRY_VERIFY(!window.isBusy() && window.model().rowCount() == 1);
  QCoreApplication::processEvents();
  shoot(window, "cases");
  const QString lines = paintedLines(window).join(u'\n');
  QVERIFY2(lines.contains(QStringLiteral(", row 2")), qPrintable(lines));
}

/// A screen reader has no use for a mark of setting, and some name it.
void NamesTest::areSpokenWithoutMarks() {
  QFETCH(QString, name);
  Nurse nurse;
  open(nurse, name);
  QString said;
  for (const SpokenWidget* widget : nurse.window().findChildren<SpokenWidget*>())
    said += widget->spoken() + u'\n';
  QVERIFY2(said.contains(name + QStringLiteral(" 25 mg in 1 mL")), qPrintable(said));
  QVERIFY(!said.contains(QChar(0x2068)) && !said.contains(QChar(0x2069)));
}

WARDCHALK_QT_TEST(NamesTest)

}  // namespace wardchalk::ui::test::names_test

#include "names_test.moc"
