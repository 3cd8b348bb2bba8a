#include <QAbstractButton>
#include <QAction>
#include <QCheckBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QPushButton>
#include <QScrollArea>
#include <QTableWidget>
#include <QTest>

#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/choice_box.h"
#include "ui/form/form.h"
#include "ui/record/rules_editor.h"
#include "ui/record/rules_table.h"
#include "ui/record/second_check_view.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/theme/board_palette.h"

namespace wardchalk::ui::dialogs_sweep_test {

/// The editor of house rules, the comparison of a second check and the cover: labels, names, keys, room.
class DialogsSweepTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void everyRuleHasALabelThatLeadsToIt();
  void everyStopHasANameAndIsReached_data() { addPlaces(); }
  void everyStopHasANameAndIsReached();
  void noTwoMnemonicsAreAlike_data() { addPlaces(); }
  void noTwoMnemonicsAreAlike();
  void nothingIsClipped_data() { addPlaces(); }
  void nothingIsClipped();
  void shoots_data();
  void shoots();

 private:
  static void addPlaces() {
    QTest::addColumn<QString>("place");
    for (const char* place : {"rules", "second", "comparison", "cover", "facts"})
      QTest::newRow(place) << QString::fromLatin1(place);
  }
  QWidget* open(const QString& place);
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  void passMinutes() {
    auto* watch = nurse_->window().findChild<IdleWatch*>();
    now_ = {};
    watch->setClock([this] { return ClockReading{now_, now_}; });
    now_ = std::chrono::seconds(301);
    watch->look();
  }

  std::chrono::milliseconds now_{};
  QPalette before_ = QApplication::palette();
  QFont font_ = QApplication::font();
  std::unique_ptr<Nurse> nurse_;
};

void DialogsSweepTest::init() {
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
}

void DialogsSweepTest::cleanup() {
  nurse_.reset();
  QApplication::setPalette(before_);
  QApplication::setFont(font_);
}

/// Opens one of the places with a case in it; the widget whose stops and texts are looked at.
QWidget* DialogsSweepTest::open(const QString& place) {
  MainWindow& window = nurse_->window();
  if (place == QStringLiteral("rules")) {
    action("rules-edit")->trigger();
    auto* editor = window.findChild<RulesEditor*>();
    editor->activateWindow();
    if (!QTest::qWaitFor([&] { return QApplication::activeWindow() == editor; })) qFatal("it is not active");
    return editor;
  }
  nurse_->fill(test::usualCase());
  if (place == QStringLiteral("cover") || place == QStringLiteral("facts")) {
    passMinutes();
    if (place == QStringLiteral("facts"))
      window.findChild<QPushButton*>(QStringLiteral("cover-show"))->click();
    return window.findChild<CoverPage*>();
  }
  nurse_->press(Qt::Key_F9);
  if (place == QStringLiteral("second")) return window.findChild<QWidget*>(QStringLiteral("second-notice"));
  QStringList again = test::usualCase();
  again[test::weightPlace] = QStringLiteral("12.7 kg");
  again[0] = QStringLiteral("1.03 m");
  nurse_->fill(again);
  nurse_->press(Qt::Key_F9, Qt::ControlModifier);
  if (place != QStringLiteral("differs")) return window.findChild<SecondCheckView*>();
  window.findChild<QCheckBox*>(QStringLiteral("second-alone"))->click();
  window.findChild<QPushButton*>(QStringLiteral("second-finish"))->click();
  return window.centralWidget();
}

void DialogsSweepTest::everyRuleHasALabelThatLeadsToIt() {
  QWidget* editor = open(QStringLiteral("rules"));
  QSet<QWidget*> led;
  for (const QLabel* label : editor->findChildren<QLabel*>())
    if (label->buddy() && label->isVisible() && !label->text().isEmpty()) led << label->buddy();
  int rules = 0;
  for (QWidget* box : editor->findChildren<QWidget*>()) {
    if (!box->objectName().startsWith(QStringLiteral("rule:"))) continue;
    ++rules;
    QVERIFY2(led.contains(box), qPrintable(box->objectName()));
  }
  QCOMPARE(rules, static_cast<int>(ruleTable().size()));
}

void DialogsSweepTest::everyStopHasANameAndIsReached() {
  QFETCH(QString, place);
  QWidget* ground = open(place);
  QSet<QWidget*> wanted;
  for (QWidget* one : ground->findChildren<QWidget*>()) {
    const bool stop = one->isVisible() && one->isEnabled() && one->focusPolicy() & Qt::TabFocus;
    if (!stop || !(qobject_cast<QAbstractButton*>(one) || qobject_cast<QLineEdit*>(one) ||
                   qobject_cast<QComboBox*>(one) || qobject_cast<QTableWidget*>(one)))
      continue;
    const auto* button = qobject_cast<QAbstractButton*>(one);
    QVERIFY2(!one->accessibleName().isEmpty() || (button && !button->text().isEmpty()),
             qPrintable(one->objectName()));
    QVERIFY2(one->height() >= 32, qPrintable(one->objectName()));
    wanted << one;
  }
  QVERIFY(!wanted.isEmpty());
  for (int steps = 0; steps < 400 && !wanted.isEmpty(); ++steps) {
    QVERIFY(QApplication::focusWidget());
    wanted.remove(QApplication::focusWidget());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  }
  for (const QWidget* missed : wanted) QVERIFY2(false, qPrintable(missed->objectName()));
}

void DialogsSweepTest::noTwoMnemonicsAreAlike() {
  QFETCH(QString, place);
  QWidget* ground = open(place);
  QHash<QChar, QString> seen;
  const auto check = [&](const QString& text) {
    const qsizetype at = text.indexOf(u'&');
    if (at < 0 || at + 1 == text.size()) return true;
    const QChar letter = text[at + 1].toLower();
    const bool alone = !seen.contains(letter);
    seen.insert(letter, text);
    return alone;
  };
  if (!ground->isWindow())  // the menu bar is in view together with it
    for (const QAction* menu : nurse_->window().menuBar()->actions()) QVERIFY(check(menu->text()));
  for (const QAbstractButton* button : ground->findChildren<QAbstractButton*>())
    if (button->isVisible()) QVERIFY2(check(button->text()), qPrintable(button->text()));
  for (const QLabel* label : ground->findChildren<QLabel*>())
    if (label->isVisible() && label->buddy()) QVERIFY2(check(label->text()), qPrintable(label->text()));
}

void DialogsSweepTest::nothingIsClipped() {
  QFETCH(QString, place);
  QWidget* ground = open(place);
  QCoreApplication::processEvents();
  for (const QLabel* label : ground->findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().trimmed().isEmpty()) continue;
    const int needed = label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
    QVERIFY2(label->height() >= needed, qPrintable(label->text()));
    if (!label->wordWrap()) QVERIFY2(label->width() >= label->sizeHint().width(), qPrintable(label->text()));
  }
  for (const QAbstractButton* button : ground->findChildren<QAbstractButton*>())
    if (button->isVisible() && !button->text().isEmpty())
      QVERIFY2(button->width() >= button->minimumSizeHint().width(), qPrintable(button->text()));
}

void DialogsSweepTest::shoots_data() {
  QTest::addColumn<QString>("place");
  QTest::addColumn<QString>("desktop");
  for (const char* place : {"rules", "second", "comparison", "differs", "cover", "facts"})
    for (const char* desktop : {"light", "dark", "200"})
      QTest::addRow("%s-%s", place, desktop) << QString::fromLatin1(place) << QString::fromLatin1(desktop);
}

/// With WARDCHALK_SHOTS the places are drawn to be looked at.
void DialogsSweepTest::shoots() {
  const QString folder = qEnvironmentVariable("WARDCHALK_SHOTS");
  if (folder.isEmpty()) QSKIP("no folder for pictures is named");
  QFETCH(QString, place);
  QFETCH(QString, desktop);
  if (desktop == QStringLiteral("dark")) {
    QPalette dark(QColor(0x3a, 0x3a, 0x3a), QColor(0x2d, 0x2d, 0x2d));
    dark.setColor(QPalette::Base, QColor(0x1f, 0x1f, 0x1f));
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
      dark.setColor(role, QColor(0xee, 0xee, 0xee));
    QApplication::setPalette(dark);
  }
  if (desktop == QStringLiteral("200")) {
    QFont large = QApplication::font();
    large.setPointSizeF(large.pointSizeF() * 2);
    QApplication::setFont(large);
  }
  nurse_ = std::make_unique<Nurse>();
  nurse_->window().resize(1366, 768);
  QWidget* ground = open(place);
  for (int rounds = 0; rounds < 5; ++rounds) QCoreApplication::processEvents();  // layouts ask one another
  ground->window()->grab().save(QStringLiteral("%1/%2-%3.png").arg(folder, place, desktop));
}

WARDCHALK_QT_TEST(DialogsSweepTest)

}  // namespace wardchalk::ui::dialogs_sweep_test

#include "dialogs_sweep_test.moc"
