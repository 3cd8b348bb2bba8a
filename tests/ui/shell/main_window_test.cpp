#include <QAction>
#include <QCheckBox>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QTest>

#include "core/record/case_entry.h"
#include "core/record/case_file.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/field_table.h"
#include "ui/form/form.h"
#include "ui/practice/practice_window.h"
#include "ui/shell/other_windows.h"
#include "ui/shell/practice_desk.h"
#include "ui/working/flag_widget.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::main_window_test {

namespace {

constexpr const char* wholeCase =
    R"({"format": "wardchalk.case", "version": 1, "title": "bench 3",
  "child": {"age": "4 year 2 month", "sex": "female", "height": "3 ft 5 in", "weight": "37 lb 4 oz", "bsa": "0.71 m2",
            "weight_method": "measured", "born_early": true, "size_confirmed": true},
  "order": {"medicine": "Plover", "dose": "80 mg", "route": "oral", "schedule": "every 12 h", "as_needed": true,
            "max_doses_per_day": 4},
  "reference": {"low": "100 mg/m2/dose", "high": "120 mg/m2/dose", "schedule": "every 12 h", "route": "oral",
                "max_per_dose": "300 mg", "max_per_day": "600 mg", "age_from": "1 month", "weight_up_to": "40 kg",
                "bsa_below": "1.5 m2", "max_concentration": "30 mg/mL", "min_infusion_time": "5 min", "source": "Bench list"},
  "stock": {"kind": "powder", "strength": "25 mg/mL", "content": "250 mg", "diluent": "9.5 mL", "final_volume": "10 mL",
            "displacement": "0.5 mL"},
  "infusion": {"volume": "50 mL", "over": "30 min", "drop_factor": "20 drop/mL"}})";

void write(const QString& file, const QByteArray& text) {
  QFile out(file);
  QVERIFY(out.open(QIODevice::WriteOnly));
  out.write(text);
}

QByteArray contentOf(const QString& file) {
  QFile in(file);
  return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

}  // namespace

class MainWindowTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void theKeyGoesToTheFirstRefusedAsTheEyeDoes();
  void newChildEmptiesEveryWidget();
  void newChildCannotBeUndone();
  void newChildAsksOnceWhenEntriesAreUnsaved();
  void newChildAsksNothingWhenNothingWasEntered();
  void savesEveryEntryToTheLetter();
  void aCaseWithRefusedTextIsNotSaved();
  void aFileThatCannotBeWrittenIsTold();
  void aRefusedFileLeavesTheOpenCase_data();
  void aRefusedFileLeavesTheOpenCase();
  void titleNamesFileAndChange();
  void aNewCaseIsOfferedTheNameThatADoubleClickOpens();
  void aboutTellsUseAndLicences();
  void keptEntriesSurviveOpening();
  void opensADroppedFile();
  void workedExampleAtOneKey();
  void f6MovesBetweenFormAndWorking();
  void aNumberLeadsToItsField();
  void zoomStaysWithinItsRange();
  void closingAsksWhenEntriesAreUnsaved();
  void settingsHoldNothingOfACase();
  void cautionAndRulesAlwaysStand();
  void practiceIsAWindowOfItsOwn();

 private:
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  QString openWholeCase() {
    const QString file = nurse_->folder() + QStringLiteral("/whole.json");
    write(file, wholeCase);
    nurse_->dialogs().open = file;
    action("open")->trigger();
    return file;
  }
  const CaseDraft& draft() { return nurse_->window().editor().draft(); }

  std::unique_ptr<Nurse> nurse_;
};

void MainWindowTest::init() { nurse_ = std::make_unique<Nurse>(); }
void MainWindowTest::cleanup() { nurse_.reset(); }

/// A case file names the age before the weight; the form does not.
void MainWindowTest::theKeyGoesToTheFirstRefusedAsTheEyeDoes() {
  Nurse nurse;
  nurse.fill({QStringLiteral("103 cm"), QStringLiteral("16.4"), QStringLiteral("4y 2m")});
  nurse.press(Qt::Key_F5);
  QCOMPARE(nurse.focused(), QStringLiteral("child.weight:text"));
}

void MainWindowTest::newChildEmptiesEveryWidget() {
  openWholeCase();
  action("more-fields")->trigger();
  int filled = 0;
  for (const QLineEdit* box : nurse_->window().findChildren<QLineEdit*>())
    filled += box->text().isEmpty() ? 0 : 1;
  QVERIFY(filled > 30);
  action("new-child")->trigger();
  for (const QLineEdit* box : nurse_->window().findChildren<QLineEdit*>())
    QVERIFY2(box->text().isEmpty(), qPrintable(box->objectName()));
  for (const QCheckBox* box : nurse_->window().findChildren<QCheckBox*>())
    QVERIFY2(!box->isChecked(), qPrintable(box->objectName()));
  QCOMPARE(nurse_->sheet().given, Case{});
}

void MainWindowTest::newChildCannotBeUndone() {
  nurse_->fill({QStringLiteral("103 cm")});
  nurse_->dialogs().answer = Unsaved::discard;
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QVERIFY(!action("undo")->isEnabled());
  nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  QVERIFY(draft().isEmpty());
}

void MainWindowTest::newChildAsksOnceWhenEntriesAreUnsaved() {
  nurse_->fill({QStringLiteral("103 cm")});
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QCOMPARE(nurse_->dialogs().asked, 1);
  QVERIFY(!draft().isEmpty());
}

void MainWindowTest::newChildAsksNothingWhenNothingWasEntered() {
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  openWholeCase();
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QCOMPARE(nurse_->dialogs().asked, 0);
  QVERIFY(draft().isEmpty());
}

void MainWindowTest::savesEveryEntryToTheLetter() {
  openWholeCase();
  const QString copy = nurse_->folder() + QStringLiteral("/copy.json");
  nurse_->dialogs().save = copy;
  action("save-as")->trigger();
  const auto before = readCaseFile(wholeCase);
  const auto after = readCaseFile(contentOf(copy).toStdString());
  QVERIFY(before && after);
  QCOMPARE(after->inputs, before->inputs);
  for (const WrittenEntry& entry : before->entries)
    QVERIFY2(std::find(after->entries.begin(), after->entries.end(), entry) != after->entries.end(),
             entry.path.c_str());
}

void MainWindowTest::aCaseWithRefusedTextIsNotSaved() {
  nurse_->fill({QStringLiteral("103 cm"), QStringLiteral(".5 kg")});
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/none.json");
  nurse_->press(Qt::Key_S, Qt::ControlModifier);
  QVERIFY(!QFile::exists(nurse_->dialogs().save));
  QVERIFY(nurse_->dialogs().told.value(0).contains(QStringLiteral("child.weight")));
  QCOMPARE(nurse_->focused(), QStringLiteral("child.weight:text"));
}

void MainWindowTest::aFileThatCannotBeWrittenIsTold() {
  nurse_->fill({QStringLiteral("103 cm")});
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/no such folder/case.json");
  nurse_->press(Qt::Key_S, Qt::ControlModifier);
  QCOMPARE(nurse_->dialogs().told.size(), 1);
  QVERIFY(nurse_->window().isWindowModified());
}

void MainWindowTest::aRefusedFileLeavesTheOpenCase_data() {
  QTest::addColumn<QByteArray>("text");
  QTest::addColumn<QString>("path");
  QTest::newRow("not JSON") << QByteArray("hello") << "";
  QTest::newRow("unknown key") << QByteArray(
                                      R"({"format":"wardchalk.case","version":1,"child":{"name":"x"}})")
                               << "child.name";
  QTest::newRow("comma") << QByteArray(
                                R"({"format":"wardchalk.case","version":1,"child":{"weight":"17,2 kg"}})")
                         << "child.weight";
  QTest::newRow("newer") << QByteArray(R"({"format":"wardchalk.case","version":2})") << "";
}

void MainWindowTest::aRefusedFileLeavesTheOpenCase() {
  QFETCH(QByteArray, text);
  QFETCH(QString, path);
  openWholeCase();
  const std::vector<WrittenEntry> before = draft().entries();
  const QString title = nurse_->window().windowTitle();
  nurse_->dialogs().open = nurse_->folder() + QStringLiteral("/bad.json");
  write(nurse_->dialogs().open, text);
  action("open")->trigger();
  QCOMPARE(draft().entries(), before);
  QCOMPARE(nurse_->window().windowTitle(), title);
  QCOMPARE(nurse_->dialogs().told.size(), 1);
  QVERIFY2(nurse_->dialogs().told.first().contains(path), qPrintable(nurse_->dialogs().told.first()));
}

void MainWindowTest::titleNamesFileAndChange() {
  QVERIFY(!nurse_->window().isWindowModified());
  nurse_->fill({QStringLiteral("103 cm")});
  QVERIFY(nurse_->window().isWindowModified());
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/plover.json");
  nurse_->press(Qt::Key_S, Qt::ControlModifier);
  QVERIFY(!nurse_->window().isWindowModified());
  QVERIFY(nurse_->window().windowTitle().contains(QStringLiteral("plover.json")));
  nurse_->press(Qt::Key_Z, Qt::ControlModifier);
  QVERIFY(nurse_->window().isWindowModified());
}

void MainWindowTest::aNewCaseIsOfferedTheNameThatADoubleClickOpens() {
  nurse_->fill({QStringLiteral("103 cm")});
  nurse_->press(Qt::Key_S, Qt::ControlModifier);
  QCOMPARE(nurse_->dialogs().suggested, QStringLiteral("case.wardchalk"));
}

void MainWindowTest::aboutTellsUseAndLicences() {
  const QString version = QCoreApplication::applicationVersion();
  QCoreApplication::setApplicationVersion(QStringLiteral("7.5.3"));
  action("about")->trigger();
  QCoreApplication::setApplicationVersion(version);
  const QString about = nurse_->dialogs().told.value(0);
  for (const char* words : {"Wardchalk 7.5.3", "For nurses, nursing students", "Not for parents or patients",
                            "not for resuscitation", "independent second check", "no network",
                            "Apache License, version 2", "LGPL 3", "LGPL 2.1", "licences are installed"})
    QVERIFY2(about.contains(QLatin1String(words)), words);
}

void MainWindowTest::keptEntriesSurviveOpening() {
  nurse_->fill({QStringLiteral("103 cm")});
  openWholeCase();
  QCOMPARE(nurse_->dialogs().asked, 1);
  QCOMPARE(draft().entries().size(), std::size_t(1));
}

void MainWindowTest::opensADroppedFile() {
  const QString file = nurse_->folder() + QStringLiteral("/dropped.json");
  write(file, wholeCase);
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(file)});
  QDragEnterEvent comes(QPoint(20, 20), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&nurse_->window(), &comes);
  QVERIFY(comes.isAccepted());
  QDropEvent drop(QPointF(20, 20), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(&nurse_->window(), &drop);
  QVERIFY(!draft().isEmpty());
}

void MainWindowTest::workedExampleAtOneKey() {
  nurse_->press(Qt::Key_F2);
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QVERIFY(!nurse_->window().isWindowModified());
}

void MainWindowTest::f6MovesBetweenFormAndWorking() {
  nurse_->fill({QStringLiteral("103 cm")});
  auto* pane = nurse_->window().findChild<WorkingPane*>();
  nurse_->press(Qt::Key_F6);
  QCOMPARE(QApplication::focusWidget(), pane->flag());
  nurse_->press(Qt::Key_F6);
  QCOMPARE(nurse_->focused(), QStringLiteral("child.weight:text"));
  nurse_->press(Qt::Key_F7);
  QCOMPARE(QApplication::focusWidget(), pane->flag());
}

void MainWindowTest::aNumberLeadsToItsField() {
  auto* pane = nurse_->window().findChild<WorkingPane*>();
  Q_EMIT pane->originActivated(QStringLiteral("reference.max_per_day"));
  QCOMPARE(nurse_->focused(), QStringLiteral("reference.max_per_day:text"));
  Q_EMIT pane->originActivated(QStringLiteral("constant:mg-per-g"));
  QCOMPARE(nurse_->focused(), QStringLiteral("reference.max_per_day:text"));
}

void MainWindowTest::zoomStaysWithinItsRange() {
  auto* pane = nurse_->window().findChild<WorkingPane*>();
  for (int i = 0; i < 40; ++i) action("zoom-in")->trigger();
  QCOMPARE(pane->zoom(), 300);
  for (int i = 0; i < 40; ++i) action("zoom-out")->trigger();
  QCOMPARE(pane->zoom(), 80);
  action("zoom-reset")->trigger();
  QCOMPARE(pane->zoom(), 100);
}

void MainWindowTest::closingAsksWhenEntriesAreUnsaved() {
  nurse_->fill({QStringLiteral("103 cm")});
  QVERIFY(!nurse_->window().close());
  nurse_->dialogs().answer = Unsaved::discard;
  QVERIFY(nurse_->window().close());
  QCOMPARE(nurse_->dialogs().asked, 2);
}

void MainWindowTest::settingsHoldNothingOfACase() {
  openWholeCase();
  nurse_->press(Qt::Key_2, Qt::ControlModifier);
  nurse_->window().close();
  const QString file = nurse_->settingsFile();
  nurse_->fill({});
  const QSettings kept(file, QSettings::IniFormat);
  QStringList keys = kept.allKeys();
  keys.sort();
  QCOMPARE(keys,
           QStringList({QStringLiteral("form_width"), QStringLiteral("geometry"), QStringLiteral("zoom")}));
}

/// H33: what is typed here is not seen there, nor the other way round, and the ward's keys do nothing there.
void MainWindowTest::practiceIsAWindowOfItsOwn() {
  nurse_->fill({QStringLiteral("103 cm"), QStringLiteral("17.2 kg")});
  const Worksheet before = nurse_->sheet();
  nurse_->press(Qt::Key_F12);
  const auto* desk = nurse_->window().findChild<PracticeDesk*>();
  PracticeWindow* practice = desk->window();
  QVERIFY(practice && practice->isVisible() && practice->isWindow());
  QVERIFY(!practice->parentWidget());
  QVERIFY(QTest::qWaitForWindowActive(practice));
  QVERIFY(!practice->findChild<Form*>());
  QTest::keyClick(practice, Qt::Key_N, Qt::ControlModifier);
  QTest::keyClick(practice, Qt::Key_P, Qt::ControlModifier);
  QVERIFY(nurse_->sheet().given == before.given);
  QVERIFY(nurse_->dialogs().told.isEmpty());
  for (const QLabel* label : practice->findChildren<QLabel*>())
    QVERIFY2(!label->text().contains(QStringLiteral("17.2")), qPrintable(label->text()));
  const WindowsAway away =
      putOtherWindowsAway(&nurse_->window());  // as when nobody has touched a key for some minutes
  QVERIFY(practice->isVisible());
  const QPointer<PracticeWindow> gone(practice);
  nurse_.reset();
  QVERIFY(!gone);
}

void MainWindowTest::cautionAndRulesAlwaysStand() {
  QVERIFY(nurse_->window().findChild<QWidget*>(QStringLiteral("caution"))->isVisible());
  QVERIFY(nurse_->window()
              .findChild<QLabel*>(QStringLiteral("rules-name"))
              ->text()
              .contains(QStringLiteral("exact")));
}

WARDCHALK_QT_TEST(MainWindowTest)

}  // namespace wardchalk::ui::main_window_test

#include "main_window_test.moc"
