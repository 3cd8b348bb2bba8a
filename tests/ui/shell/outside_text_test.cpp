#include <QAction>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTextDocument>
#include <QTimer>

#include "core/practice/sessions/set_file.h"
#include "core/record/rules_file.h"
#include "tests/ui/practice/pupil.h"
#include "tests/ui/shell/everything_said.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/record/cases_window.h"
#include "ui/record/reference_picker.h"
#include "ui/record/rules_editor.h"
#include "ui/shell/idle_watch.h"
#include "ui/theme/plain_tip.h"

namespace wardchalk::ui::outside_text_test {

using test::everythingSaid;
using test::firstFound;
using test::markupFaults;

namespace {

/// A name that would be drawn as a picture from the disk, and whose ampersand would name a key. There is no
/// such picture: where this test fails it shall not fill the memory.
const QString outside = QStringLiteral("<img src='/no/such.png'><b>K&Zq</b>");
const QString mark = QStringLiteral("&Zq");
/// The same as far as a file may be called so, with signs that fillings and window titles use.
const QString outsideFile = QStringLiteral("<b>K&Zq<br>[*]%1%2%n");

QJsonObject listEntry(const QString& medicine, const QString& ageFrom) {
  return {{QStringLiteral("medicine"), medicine},
          {QStringLiteral("indication"), outside},
          {QStringLiteral("high"), QStringLiteral("90 mg/m2/dose")},
          {QStringLiteral("schedule"), QStringLiteral("every 12 h")},
          {QStringLiteral("route"), QStringLiteral("oral")},
          {QStringLiteral("age_from"), ageFrom},
          {QStringLiteral("source"), QJsonObject{{QStringLiteral("title"), outside},
                                                 {QStringLiteral("edition"), outside},
                                                 {QStringLiteral("date"), QStringLiteral("2020-01-15")},
                                                 {QStringLiteral("page"), QStringLiteral("<b>&Zq")}}},
          {QStringLiteral("checked_by"), outside},
          {QStringLiteral("checked_on"), QStringLiteral("2020-02-01")},
          {QStringLiteral("review_by"), QStringLiteral("2021-02-01")}};
}

}  // namespace

/// H53: text from files and from the keyboard is shown as it is, in every window: never as markup, and no
/// file is opened by what it says.
class OutsideTextTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { nurse_.reset(); }

  void theWalkerSeesMarkup();
  void tipsAreShownAsTheyAre_data();
  void tipsAreShownAsTheyAre();
  void theWindowItsBoardAndItsSheet();
  void theRules();
  void theRememberedRulesAtStart();
  void thePicker();
  void theReport();
  void theCases();
  void theSecondCheck();
  void theCover();
  void theMessages();
  void practice();

 private:
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  QString write(const QString& ending, const QByteArray& text) {
    QString name = nurse_->folder() + u'/' + outsideFile + ending;
    QFile file(name);
    if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size()) qFatal("no file");
    return name;
  }
  QString listFile() {
    QJsonArray entries{listEntry(outside, QStringLiteral("1 month")),
                       listEntry(outside, QStringLiteral("2 year")),
                       listEntry(QStringLiteral("Wren"), QStringLiteral("1 month"))};
    const QJsonObject list{{QStringLiteral("format"), QStringLiteral("wardchalk.reference-list")},
                           {QStringLiteral("version"), 1},
                           {QStringLiteral("title"), outside},
                           {QStringLiteral("entries"), entries}};
    return write(QStringLiteral(".json"), QJsonDocument(list).toJson());
  }
  QString rulesFile() {
    HouseRules rules = exactRules();
    rules.name = outside.toStdString();
    rules.agreedBy = outside.toStdString();
    rules.agreedOn = "2026-10-01";
    rules.rateDecimals = 0;
    return write(QStringLiteral(".json"), QByteArray::fromStdString(writeRules(rules)));
  }
  static QStringList hostileCase() {
    QStringList fields = test::usualCase();
    fields[3] = outside;
    fields[10] = outside;
    return fields;
  }
  /// Nothing could be drawn as markup, and the text itself stands somewhere as it was written.
  static void look() {
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
    const QStringList faults = markupFaults(mark);
    QVERIFY2(faults.isEmpty(), qPrintable(faults.join(u'\n')));
    QVERIFY(!firstFound(everythingSaid(), {outside, outsideFile}).isEmpty());
  }

  std::unique_ptr<Nurse> nurse_;
};

void OutsideTextTest::init() {
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
}

/// The test can fail: what is looked for is found where it is.
void OutsideTextTest::theWalkerSeesMarkup() {
  QVERIFY(markupFaults(mark).isEmpty());
  QWidget window;
  QLabel automatic(outside, &window);
  QLabel rich(&window);
  rich.setTextFormat(Qt::RichText);
  rich.setText(QStringLiteral("a<b>c"));
  window.setToolTip(outside);
  const QPushButton button(QStringLiteral("K&Zq"), &window);
  const QMessageBox box(&window);
  QListWidget list(&window);
  (new QListWidgetItem(QStringLiteral("a"), &list))->setToolTip(outside);
  QCOMPARE(markupFaults(mark).size(), 6);
}

void OutsideTextTest::tipsAreShownAsTheyAre_data() {
  QTest::addColumn<QString>("text");
  for (const char* text : {"", "<", "a < b", "&lt;", "<b>", "  <img src=x>", "<!DOCTYPE html>", "<?xml?>",
                           "a\n<b>c</b>", "</p><img src=x>", "Plover, p. 4", "a & b", "x<table"})
    QTest::newRow(text) << QString::fromUtf8(text);
  QTest::newRow("long") << QString(400, u'W');
  QTest::newRow("long in words") << QStringLiteral("Plover and <b>Wren</b> ").repeated(30);
}

void OutsideTextTest::tipsAreShownAsTheyAre() {
  QFETCH(QString, text);
  const QString tip = plainTip(text);
  QString shown = tip;
  if (Qt::mightBeRichText(tip)) {
    QTextDocument document;
    document.setHtml(tip);
    shown = document.toPlainText();
    QVERIFY(!document.toHtml().contains(QStringLiteral("<img")));
  }
  for (const QString& line : shown.split(u'\n')) QVERIFY2(line.size() <= 90, qPrintable(line));
  const auto letters = [](QString all) { return all.remove(u'\n').remove(u' '); };
  QCOMPARE(letters(shown), letters(text));
}

void OutsideTextTest::theWindowItsBoardAndItsSheet() {
  nurse_->fill(hostileCase());
  auto& editor = nurse_->window().editor();
  editor.edit(QStringLiteral("title"), outside);
  editor.finishAll();
  look();
  nurse_->dialogs().save = nurse_->folder() + u'/' + outsideFile + QStringLiteral(".json");
  action("save-as")->trigger();
  QVERIFY2(QFile::exists(nurse_->dialogs().save), qPrintable(nurse_->dialogs().told.join(u'\n')));
  look();
  QVERIFY(nurse_->window().windowTitle().contains(QStringLiteral("[*][*]%1%2%n.json[*]")));
  nurse_->dialogs().open = nurse_->dialogs().save;
  action("open")->trigger();
  look();
  action("board")->trigger();
  auto* board = nurse_->window().findChild<Board*>();
  QVERIFY(board);
  QTest::keyClick(board, Qt::Key_L);
  look();
  board->close();
  action("sheet-preview")->trigger();
  look();
}

void OutsideTextTest::theRules() {
  nurse_->dialogs().rules = rulesFile();
  nurse_->rules().openFile();
  QVERIFY2(nurse_->dialogs().told.isEmpty(), qPrintable(nurse_->dialogs().told.join(u'\n')));
  nurse_->fill(hostileCase());
  look();
  action("rules-edit")->trigger();
  QVERIFY(nurse_->window().findChild<RulesEditor*>());
  look();
}

void OutsideTextTest::theRememberedRulesAtStart() {
  Settings settings(nurse_->folder() + QStringLiteral("/other.ini"));
  settings.setRules(rulesFile());
  {
    MainWindow again(exactRules(), settings, nurse_->dialogs());
    again.show();
    look();
  }
  settings.setRules(nurse_->folder() + u'/' + outsideFile);
  MainWindow again(exactRules(), settings, nurse_->dialogs());
  again.show();
  look();
}

void OutsideTextTest::thePicker() {
  QStringList fields = hostileCase();
  fields[2] = QStringLiteral("4 year");
  nurse_->fill(fields);
  nurse_->dialogs().chosen << QStringList{listFile()};
  action("choose-reference")->trigger();
  auto* picker = nurse_->window().findChild<ReferencePicker*>();
  QVERIFY(picker);
  picker->findChild<QPushButton*>(QStringLiteral("open-list"))->click();
  QVERIFY2(nurse_->dialogs().told.isEmpty(), qPrintable(nurse_->dialogs().told.join(u'\n')));
  picker->search({});
  auto* found = picker->findChild<QListWidget*>(QStringLiteral("found"));
  QCOMPARE(found->count(), 2);
  for (int row = 0; row < found->count(); ++row) {
    found->setCurrentRow(row);
    look();
  }
}

void OutsideTextTest::theReport() {
  const QByteArray cell = '"' + outside.toUtf8() + '"';
  const QByteArray table =
      "medicine,indication,route,high,schedule,source.title,checked_by,checked_on,review_by\r\n" + cell +
      ',' + cell + ",oral,90 mg/m2/dose,every 12 h," + cell + ',' + cell + ",2020-02-01,2021-02-01\r\n" +
      cell + ',' + cell + ',' + cell + ',' + cell + ",every 12 h," + cell + ',' + cell +
      ",2020-02-01,2021-02-01\r\n";
  nurse_->dialogs().chosen << QStringList{write(QStringLiteral(".csv"), table)};
  action("choose-reference")->trigger();
  auto* picker = nurse_->window().findChild<ReferencePicker*>();
  picker->findChild<QPushButton*>(QStringLiteral("import-list"))->click();
  QVERIFY2(nurse_->dialogs().told.isEmpty(), qPrintable(nurse_->dialogs().told.join(u'\n')));
  QVERIFY(picker->findChild<QDialog*>(QStringLiteral("import-report")));
  look();
}

void OutsideTextTest::theCases() {
  const QByteArray cell = '"' + outside.toUtf8() + '"';
  QByteArray table =
      "title,child.height,child.weight,order.medicine,order.dose,order.route,order.schedule,reference.high,"
      "reference.schedule,reference.source,stock.kind,stock.strength\r\n";
  for (const QByteArray& weight : {QByteArray("17.2 kg"), cell, QByteArray("9 kg")})
    table += cell + ",103 cm," + weight + ',' + cell + ",80 mg,oral,every 12 h,120 mg/m2/dose,every 12 h," +
             cell + ",liquid,25 mg/1 mL\r\n";
  action("several-cases")->trigger();
  auto* cases = nurse_->window().findChild<CasesWindow*>();
  cases->read({write(QStringLiteral(".csv"), table)});
  QVERIFY(QTest::qWaitFor([&] { return !cases->isBusy(); }));
  QCOMPARE(cases->model().rowCount(), 3);
  QCOMPARE(cases->model().placeOf(1), outsideFile + QStringLiteral(".csv, row 3"));
  for (int row = 0; row < 3; ++row) {
    cases->select(row);
    look();
  }
  nurse_->dialogs().pdf = nurse_->folder() + u'/' + outsideFile + QStringLiteral(".pdf");
  cases->findChild<QPushButton*>(QStringLiteral("save-sheets"))->click();
  QVERIFY(QTest::qWaitFor([&] { return !cases->isBusy(); }));
  look();
}

void OutsideTextTest::theSecondCheck() {
  nurse_->fill(hostileCase());
  action("second-check-begin")->trigger();
  QStringList other = hostileCase();
  other[4] += u'2';
  nurse_->fill(other);
  look();
  action("second-check-compare")->trigger();
  look();
}

void OutsideTextTest::theCover() {
  nurse_->fill(hostileCase());
  std::chrono::milliseconds now{0};
  auto* watch = nurse_->window().findChild<IdleWatch*>();
  watch->setClock([&now] { return ClockReading{now, now}; });
  now = std::chrono::seconds(301);
  watch->look();
  auto* show = nurse_->window().findChild<QPushButton*>(QStringLiteral("cover-show"));
  QVERIFY(show->isVisible());
  show->click();
  look();
}

/// The desktop's own messages, each looked at while it stands and then closed.
void OutsideTextTest::theMessages() {
  DesktopDialogs dialogs;
  int seen = 0;
  QStringList faults;
  QTimer closer;
  connect(&closer, &QTimer::timeout, this, [&] {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (!box) return;
    ++seen;
    faults << markupFaults(mark);
    if (box->text() != outside) faults << QStringLiteral("another text: ") + box->text();
    box->reject();
  });
  closer.start(0);
  dialogs.tell(&nurse_->window(), outside, outside);
  QCOMPARE(dialogs.unsaved(&nurse_->window(), outside), Unsaved::keep);
  QCOMPARE(dialogs.overwrite(&nurse_->window(), outside, true), Overwrite::stop);
  QVERIFY(!dialogs.goesOn(&nurse_->window(),
                          {outside, outside, QStringLiteral("Stop"), QStringLiteral("Go on")}));
  QCOMPARE(seen, 4);
  QVERIFY2(faults.isEmpty(), qPrintable(faults.join(u'\n')));
}

void OutsideTextTest::practice() {
  PracticeSet set;
  set.title = outside.toStdString();
  set.topics = {Topic::amountLiquid};
  set.rules.name = outside.toStdString();
  set.rules.agreedBy = outside.toStdString();
  set.rules.agreedOn = "2026-10-01";
  set.rules.rateDecimals = 0;
  std::string text;
  writeSet(text, set);
  Pupil pupil;
  pupil.files().open = write(QStringLiteral(".json"), QByteArray::fromStdString(text));
  for (const char* name : {"open-set", "make-set"}) {
    auto* button = pupil.window().findChild<QPushButton*>(QLatin1String(name));
    QVERIFY2(button, name);
    button->click();
    look();
  }
  auto* open = pupil.window().findChild<QPushButton*>(QStringLiteral("set-open"));
  open->click();
  QVERIFY2(pupil.files().told.isEmpty(), qPrintable(pupil.files().told.join(u'\n')));
  look();
}

WARDCHALK_QT_TEST(OutsideTextTest)

}  // namespace wardchalk::ui::outside_text_test

#include "outside_text_test.moc"
