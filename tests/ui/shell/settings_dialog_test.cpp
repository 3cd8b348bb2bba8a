#include "ui/shell/settings_dialog.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QTest>

#include "core/record/case_draft.h"
#include "tests/ui/shell/dialog_sweep.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/geometry.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/form/choice_box.h"
#include "ui/practice/practice_window.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/practice_desk.h"
#include "ui/theme/letters.h"

namespace wardchalk::ui::settings_dialog_test {

namespace {

constexpr const char* wardRules =
    R"({"format": "wardchalk.house-rules", "version": 1, "name": "ward 5", "agreed_by": "pharmacy and ward",
        "unit_system": "metric", "idle_minutes": 4})";

QString middleOf(const QWidget& widget) {
  const QImage seen = const_cast<QWidget&>(widget).grab().toImage();
  long lightness = 0;
  for (int x = 0; x < seen.width(); x += 7)
    for (int y = 0; y < seen.height(); y += 7) lightness += seen.pixelColor(x, y).lightness();
  const long points = ((seen.width() + 6) / 7) * long((seen.height() + 6) / 7);
  return lightness / points < 128 ? QStringLiteral("dark") : QStringLiteral("light");
}

}  // namespace

/// The settings in one place, with nothing but a keyboard.
class SettingsDialogTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void opensByItsKeyAndClosesByEscape();
  void everyControlHasANameAndIsReached();
  void aReaderHearsWhatIsAskedAndWhatIsChosen();
  void lettersGrowAtOnce();
  void growsWithItsLettersAndComesBack_data();
  void growsWithItsLettersAndComesBack();
  void keepsTheSizeItWasDrawnTo();
  void coloursReachEveryWindow_data();
  void coloursReachEveryWindow();
  void theDesktopIsFollowedAgain();
  void ownColoursOutweighAThemeInTheEnvironment();
  void unitsCountUntilTheNextChild();
  void houseRulesCountAtOnce();
  void aFileOfRulesIsOpenedFromHere();
  void theEditorOpensAboveIt();
  void aFileThatVanishedIsSaid();
  void aFileThatWasGoneAtTheStartIsSaid();
  void minutesAreOnlyEverSooner();
  void paperReachesPractice();
  void escapeLeavesEverythingAsChosen();
  void nothingOfAChildIsKept();
  void aSecondPersonChangesNoRules();
  void nothingIsCutAtAnySize_data();
  void nothingIsCutAtAnySize();

 private:
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  SettingsDialog* open();
  SettingsDialog* dialog() { return nurse_->window().findChild<SettingsDialog*>(); }
  ChoiceBox* box(const char* name) {
    return dialog()->findChild<ChoiceBox*>(QStringLiteral("setting:") + QLatin1String(name));
  }
  bool walkTo(const QWidget* wanted);
  bool choose(const char* name, const QString& words);
  QString said(const char* name) { return box(name)->accessibleDescription(); }
  QString rulesInForce() { return nurse_->window().findChild<QLabel*>(QStringLiteral("rules-name"))->text(); }
  QString writeRules(const QByteArray& text);

  std::unique_ptr<Nurse> nurse_;
  QPalette before_ = QApplication::palette();
};

void SettingsDialogTest::init() {
  qunsetenv("GTK_THEME");
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
}

void SettingsDialogTest::cleanup() {
  nurse_.reset();
  qunsetenv("GTK_THEME");
  useColours(Colours::desktop);
  QApplication::setPalette(before_);
  setTextSize(100);
}

SettingsDialog* SettingsDialogTest::open() {
  QTest::keySequence(&nurse_->window(), QKeySequence(QStringLiteral("Ctrl+,")));
  SettingsDialog* opened = dialog();
  if (!opened) qFatal("the settings do not open");
  opened->activateWindow();
  if (!hasKeyboard(opened)) qFatal("they do not have the keyboard");
  return opened;
}

bool SettingsDialogTest::walkTo(const QWidget* wanted) {
  for (int steps = 0; steps < 40 && QApplication::focusWidget() != wanted; ++steps)
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  return QApplication::focusWidget() == wanted;
}

bool SettingsDialogTest::choose(const char* name, const QString& words) {
  ChoiceBox* one = box(name);
  if (one->findText(words) < 0 || !walkTo(one)) return false;
  QTest::keyClick(one, Qt::Key_Home);
  for (int i = 0; i < one->count() && one->currentText() != words; ++i) QTest::keyClick(one, Qt::Key_Down);
  return one->currentText() == words;
}

QString SettingsDialogTest::writeRules(const QByteArray& text) {
  const QString name = nurse_->folder() + QStringLiteral("/ward.json");
  QFile file(name);
  if (!file.open(QIODevice::WriteOnly)) qFatal("no file");
  file.write(text);
  return name;
}

void SettingsDialogTest::opensByItsKeyAndClosesByEscape() {
  const QPointer<SettingsDialog> opened = open();
  QCOMPARE(opened->windowTitle(), QStringLiteral("Settings"));
  QCOMPARE(QApplication::focusWidget(), box("text-size"));
  nurse_->press(Qt::Key_Escape);
  QTRY_VERIFY(!opened);
  QVERIFY(nurse_->goBack());
}

void SettingsDialogTest::everyControlHasANameAndIsReached() {
  nurse_->dialogs().rules = writeRules(wardRules);
  nurse_->rules().openFile();
  QCOMPARE(faultsOf(*open()).join(QStringLiteral("; ")), QString());
}

/// Label for a name, choice for a value, what is to be known beside it for a description.
void SettingsDialogTest::aReaderHearsWhatIsAskedAndWhatIsChosen() {
  open();
  const std::pair<const char*, std::pair<QString, QString>> wanted[] = {
      {"text-size", {QStringLiteral("Size of letters"), QStringLiteral("100 %: as the desktop")}},
      {"colours", {QStringLiteral("Colours"), QStringLiteral("As the desktop")}},
      {"units", {QStringLiteral("Units offered"), QStringLiteral("None: every line says its unit")}},
      {"house-rules", {QStringLiteral("House rules"), QStringLiteral("Exact: as shipped")}},
      {"cover",
       {QStringLiteral("Cover when no key is pressed"),
        QStringLiteral("As the house rules say: after 5 minutes")}},
      {"paper", {QStringLiteral("Paper"), QStringLiteral("A4")}}};
  for (const auto& [name, said] : wanted) {
    QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(box(name));
    QVERIFY2(heard, name);
    QCOMPARE(heard->text(QAccessible::Name), said.first);
    QCOMPARE(heard->text(QAccessible::Value), said.second);
    QVERIFY2(!heard->text(QAccessible::Description).isEmpty(), name);
  }
}

void SettingsDialogTest::lettersGrowAtOnce() {
  const double before = QApplication::font().pointSizeF();
  const int high = nurse_->window().findChild<QLabel*>(QStringLiteral("caution"))->sizeHint().height();
  open();
  QVERIFY(choose("text-size", QStringLiteral("200 %")));
  QCOMPARE(QApplication::font().pointSizeF(), 2 * before);
  QTRY_VERIFY(box("paper")->fontInfo().pointSizeF() > 1.8 * before);
  QTRY_VERIFY(nurse_->window().findChild<QLabel*>(QStringLiteral("caution"))->sizeHint().height() >
              1.5 * high);
  QVERIFY(nurse_->settingsLeft().contains("zoom=200"));
}

void SettingsDialogTest::growsWithItsLettersAndComesBack_data() {
  QTest::addColumn<QSize>("window");
  QTest::addColumn<double>("grows");
  QTest::addRow("where there is room") << QSize(1920, 1080) << 1.9;
  QTest::addRow("where there is some") << QSize(1366, 768) << 1.5;
  QTest::addRow("where there is little") << QSize(800, 600) << 1.3;
  QTest::addRow("where there is none") << QSize(700, 440) << 1.0;
}

/// Every part of it is again where it was, and as high.
void SettingsDialogTest::growsWithItsLettersAndComesBack() {
  QFETCH(QSize, window);
  QFETCH(double, grows);
  nurse_->window().resize(window);
  SettingsDialog* opened = open();
  const auto places = [opened] {
    QStringList all;
    for (const QWidget* one : opened->findChildren<QWidget*>()) {
      if (!one->isVisibleTo(opened)) continue;
      const QRect place(one->mapTo(opened, QPoint()), one->size());
      all << QStringLiteral("%1 %2: %3,%4 %5x%6")
                 .arg(QLatin1String(one->metaObject()->className()), one->objectName())
                 .arg(place.x())
                 .arg(place.y())
                 .arg(place.width())
                 .arg(place.height());
    }
    return all;
  };
  QCoreApplication::processEvents();
  const QSize before = opened->size();
  const QStringList placed = places();
  QVERIFY(choose("text-size", QStringLiteral("200 %")));
  QTRY_VERIFY(opened->height() >= grows * before.height());
  QVERIFY(opened->width() <= window.width() && opened->height() <= window.height());
  QVERIFY(choose("text-size", QStringLiteral("100 %: as the desktop")));
  QTRY_COMPARE(opened->size(), before);
  QTRY_COMPARE(places(), placed);
}

void SettingsDialogTest::keepsTheSizeItWasDrawnTo() {
  nurse_->window().resize(1920, 1080);
  SettingsDialog* opened = open();
  opened->resize(opened->size() + QSize(30, 50));
  const QSize drawn = opened->size();
  QVERIFY(choose("text-size", QStringLiteral("150 %")));
  QTRY_VERIFY(box("paper")->fontInfo().pixelSize() > 15);
  QCOMPARE(opened->size(), drawn);
}

void SettingsDialogTest::coloursReachEveryWindow_data() {
  QTest::addColumn<QString>("words");
  QTest::addColumn<QString>("seen");
  QTest::addColumn<QByteArray>("kept");
  QTest::newRow("light") << "Light"
                         << "light" << QByteArray("colours=light");
  QTest::newRow("dark") << "Dark"
                        << "dark" << QByteArray("colours=dark");
  QTest::newRow("contrast light") << "High contrast, light"
                                  << "light" << QByteArray("colours=contrast-light");
  QTest::newRow("contrast dark") << "High contrast, dark"
                                 << "dark" << QByteArray("colours=contrast-dark");
}

/// The window, board, practice, the dialog itself and one that opens afterwards; again at the next start.
void SettingsDialogTest::coloursReachEveryWindow() {
  QFETCH(QString, words);
  QFETCH(QString, seen);
  QFETCH(QByteArray, kept);
  nurse_->fill(test::usualCase());
  nurse_->window().showBoard();
  action("practice")->trigger();
  action("settings")->trigger();
  dialog()->activateWindow();
  QVERIFY(hasKeyboard(dialog()));
  QVERIFY(choose("colours", words));
  const auto* practice = nurse_->window().findChild<PracticeDesk*>()->window();
  QTRY_COMPARE(middleOf(nurse_->window()), seen);
  QTRY_COMPARE(middleOf(*nurse_->window().findChild<Board*>()), seen);
  QTRY_COMPARE(middleOf(*practice), seen);
  QTRY_COMPARE(middleOf(*dialog()), seen);
  const QByteArray left = nurse_->settingsLeft();
  QVERIFY2(left.contains(kept), left.constData());
  useColours(Colours::desktop);
  nurse_ = std::make_unique<Nurse>(left);
  QTRY_COMPARE(middleOf(nurse_->window()), seen);
}

/// Also what it changed in the meantime, which was not its own to see.
void SettingsDialogTest::theDesktopIsFollowedAgain() {
  open();
  QVERIFY(choose("colours", QStringLiteral("Dark")));
  QTRY_COMPARE(middleOf(nurse_->window()), QStringLiteral("dark"));
  QVERIFY(areColoursOwn());
  QVERIFY(choose("colours", QStringLiteral("As the desktop")));
  QTRY_COMPARE(middleOf(nurse_->window()), QStringLiteral("light"));
  QVERIFY(!areColoursOwn());
  QApplication::setPalette(ownPalette(Scheme::dark));
  QTRY_COMPARE(middleOf(nurse_->window()), QStringLiteral("dark"));
}

void SettingsDialogTest::ownColoursOutweighAThemeInTheEnvironment() {
  qputenv("GTK_THEME", "HighContrast");
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::contrastLight);
  open();
  QVERIFY(choose("colours", QStringLiteral("Light")));
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::light);
  QVERIFY(choose("colours", QStringLiteral("As the desktop")));
  QCOMPARE(schemeFor(QApplication::palette()), Scheme::contrastLight);
}

void SettingsDialogTest::unitsCountUntilTheNextChild() {
  const CaseDraft& draft = nurse_->window().editor().draft();
  open();
  QVERIFY(choose("units", QStringLiteral("Household: feet and pounds")));
  QCOMPARE(draft.offered(), (BareUnits{Unit::in, std::nullopt}));
  QVERIFY(action("units-household")->isChecked());
  nurse_->press(Qt::Key_Escape);
  QVERIFY(nurse_->goBack());
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QCOMPARE(draft.offered(), BareUnits());
  open();
  QCOMPARE(box("units")->currentText(), QStringLiteral("None: every line says its unit"));
}

void SettingsDialogTest::houseRulesCountAtOnce() {
  nurse_->fill({QString(), QStringLiteral("37 lb")});
  QCOMPARE(nurse_->line(QStringLiteral("child.weight")), QStringLiteral("≈ 16.78 kg"));
  open();
  QVERIFY(choose("house-rules", QStringLiteral("Classroom: as often taught")));
  QCOMPARE(rulesInForce(), QStringLiteral("House rules: classroom"));
  QCOMPARE(nurse_->line(QStringLiteral("child.weight")), QStringLiteral("≈ 16.82 kg"));
  QVERIFY(nurse_->settingsLeft().contains("house_rules=classroom"));
}

void SettingsDialogTest::aFileOfRulesIsOpenedFromHere() {
  nurse_->dialogs().rules = writeRules(wardRules);
  open();
  QCOMPARE(box("house-rules")->count(), 2);
  QVERIFY(walkTo(dialog()->findChild<QPushButton*>(QStringLiteral("settings-rules-open"))));
  nurse_->press(Qt::Key_Space);
  QCOMPARE(rulesInForce(), QStringLiteral("House rules: ward 5"));
  QCOMPARE(box("house-rules")->currentText(), QStringLiteral("ward 5"));
  QCOMPARE(said("house-rules"), QStringLiteral("Agreed by pharmacy and ward."));
  QCOMPARE(box("units")->currentText(), QStringLiteral("As the house rules say: metric"));
  QCOMPARE(box("cover")->currentText(), QStringLiteral("As the house rules say: after 4 minutes"));
  QVERIFY(choose("house-rules", QStringLiteral("Exact: as shipped")));
  QCOMPARE(rulesInForce(), QStringLiteral("House rules: exact"));
  QVERIFY(choose("house-rules", QStringLiteral("ward 5")));
  QCOMPARE(rulesInForce(), QStringLiteral("House rules: ward 5"));
  QVERIFY(nurse_->settingsLeft().contains("ward.json"));
}

void SettingsDialogTest::theEditorOpensAboveIt() {
  open();
  QVERIFY(walkTo(dialog()->findChild<QPushButton*>(QStringLiteral("settings-rules-edit"))));
  nurse_->press(Qt::Key_Space);
  auto* editor = dialog()->findChild<QDialog*>(QStringLiteral("rules-editor"));
  QVERIFY(editor && editor->isVisible());
}

void SettingsDialogTest::aFileThatVanishedIsSaid() {
  const QString file = writeRules(wardRules);
  nurse_->dialogs().rules = file;
  nurse_->rules().openFile();
  open();
  QVERIFY(!said("house-rules").contains(file));
  nurse_->press(Qt::Key_Escape);
  QVERIFY(nurse_->goBack());
  QVERIFY(QFile::remove(file));
  open();
  QCOMPARE(box("house-rules")->currentText(), QStringLiteral("ward 5"));
  QVERIFY2(said("house-rules").contains(file) &&
               said("house-rules").contains(QStringLiteral("until the window is closed")),
           qPrintable(said("house-rules")));
  QVERIFY(choose("house-rules", QStringLiteral("Exact: as shipped")));
  QVERIFY(!said("house-rules").contains(file));
}

void SettingsDialogTest::aFileThatWasGoneAtTheStartIsSaid() {
  nurse_ = std::make_unique<Nurse>(QByteArray("[General]\nhouse_rules=/nowhere/ward.json\n"));
  open();
  QCOMPARE(box("house-rules")->currentText(), QStringLiteral("Exact: as shipped"));
  QVERIFY2(said("house-rules").contains(QStringLiteral("/nowhere/ward.json")),
           qPrintable(said("house-rules")));
  QVERIFY(choose("house-rules", QStringLiteral("Classroom: as often taught")));
  QVERIFY(!said("house-rules").contains(QStringLiteral("/nowhere")));
}

/// The house's minutes are the ward's word: nobody at one desk makes them more.
void SettingsDialogTest::minutesAreOnlyEverSooner() {
  open();
  QCOMPARE(box("cover")->findText(QStringLiteral("after 10 minutes")), -1);
  QVERIFY(choose("cover", QStringLiteral("after 2 minutes")));
  nurse_->press(Qt::Key_Escape);
  QVERIFY(nurse_->goBack());
  nurse_->fill(test::usualCase());
  auto* watch = nurse_->window().findChild<IdleWatch*>();
  std::chrono::milliseconds now{};
  watch->setClock([&now] { return ClockReading{now, now}; });
  now = std::chrono::seconds(121);
  watch->look();
  const auto* cover = nurse_->window().findChild<CoverPage*>();
  QVERIFY(cover->isVisible());
  const QString said = cover->said().replace(QChar::Nbsp, u' ');
  QVERIFY2(said.contains(QStringLiteral("2 minutes")), qPrintable(said));
  QVERIFY(!action("settings")->isVisible() && !action("settings")->isEnabled());
  watch->setClock([] { return ClockReading{std::chrono::seconds(121), std::chrono::seconds(121)}; });
  QVERIFY(nurse_->settingsLeft().contains("cover_minutes=2"));

  nurse_ = std::make_unique<Nurse>(QByteArray("[General]\ncover_minutes=60\n"));
  open();
  QCOMPARE(box("cover")->currentText(), QStringLiteral("As the house rules say: after 5 minutes"));
}

void SettingsDialogTest::paperReachesPractice() {
  action("practice")->trigger();
  const auto* practice = nurse_->window().findChild<PracticeDesk*>()->window();
  auto* there = practice->findChild<QComboBox*>(QStringLiteral("set-paper"));
  action("settings")->trigger();
  dialog()->activateWindow();
  QVERIFY(hasKeyboard(dialog()));
  QVERIFY(choose("paper", QStringLiteral("Letter")));
  QCOMPARE(there->currentText(), QStringLiteral("Letter"));
  there->setCurrentIndex(0);
  QCOMPARE(box("paper")->currentText(), QStringLiteral("A4"));
  QVERIFY(choose("paper", QStringLiteral("Letter")));
  QVERIFY(nurse_->settingsLeft().contains("paper=letter"));
}

void SettingsDialogTest::escapeLeavesEverythingAsChosen() {
  open();
  QVERIFY(choose("colours", QStringLiteral("Dark")));
  QVERIFY(choose("paper", QStringLiteral("Letter")));
  nurse_->press(Qt::Key_Escape);
  QVERIFY(nurse_->goBack());
  open();
  QCOMPARE(box("colours")->currentText(), QStringLiteral("Dark"));
  QCOMPARE(box("paper")->currentText(), QStringLiteral("Letter"));
}

/// The units were chosen for this child.
void SettingsDialogTest::nothingOfAChildIsKept() {
  nurse_->fill(test::usualCase());
  open();
  QVERIFY(choose("text-size", QStringLiteral("110 %")));
  QVERIFY(choose("units", QStringLiteral("Metric: cm and kg")));
  QVERIFY(choose("cover", QStringLiteral("after 3 minutes")));
  QString left = QString::fromUtf8(nurse_->settingsLeft());
  left.remove(QRegularExpression(QStringLiteral("(geometry|form_width)=[^\n]*\n")));
  QCOMPARE(left, QStringLiteral("[General]\ncover_minutes=3\nzoom=110\n"));
}

void SettingsDialogTest::aSecondPersonChangesNoRules() {
  nurse_->fill(test::usualCase());
  nurse_->press(Qt::Key_F9);
  open();
  QVERIFY(!box("house-rules")->isVisible());
  QVERIFY(!box("cover")->isVisible());
  QVERIFY(!dialog()->findChild<QPushButton*>(QStringLiteral("settings-rules-open"))->isVisible());
  QVERIFY(box("colours")->isVisible() && box("units")->isVisible());
  QCOMPARE(faultsOf(*dialog()).join(QStringLiteral("; ")), QString());
}

void SettingsDialogTest::nothingIsCutAtAnySize_data() {
  QTest::addColumn<QString>("size");
  QTest::addColumn<QSize>("window");
  for (const char* size : {"100 %: as the desktop", "200 %", "300 %"})
    for (const QSize& window : {QSize(800, 600), QSize(1366, 768)})
      QTest::addRow("%s, %dx%d", size, window.width(), window.height())
          << QString::fromLatin1(size) << window;
}

void SettingsDialogTest::nothingIsCutAtAnySize() {
  QFETCH(QString, size);
  QFETCH(QSize, window);
  nurse_->dialogs().rules = writeRules(
      R"({"format": "wardchalk.house-rules", "version": 1,
          "name": "The children's wards of both houses and the day unit, with oncology, from October"})");
  nurse_->rules().openFile();
  nurse_->window().resize(window);
  SettingsDialog* opened = open();
  QVERIFY(choose("text-size", size));
  opened->resize(opened->size().boundedTo(window));
  QVERIFY(opened->width() <= window.width() && opened->height() <= window.height());
  QTRY_COMPARE(test::cut(*opened), QString());
  QTRY_COMPARE(test::sideways(*opened), QString());
  QCOMPARE(test::tooSmall(*opened), QString());
}

WARDCHALK_QT_TEST(SettingsDialogTest)

}  // namespace wardchalk::ui::settings_dialog_test

#include "settings_dialog_test.moc"
