#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <functional>

#include "tests/ui/practice/pupil.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/reading_order.h"
#include "ui/form/form.h"
#include "ui/record/second_check_view.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/settings_dialog.h"
#include "ui/theme/letters.h"
#include "ui/working/flag_widget.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::reading_order_test {

/// Pages beside the form and its working: Tab meets what is on them as the eye does, and the
/// keys that lead from one part of the window to another land where they say.
class ReadingOrderTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() { nurse_ = std::make_unique<Nurse>(); }
  void cleanup() {
    pupil_.reset();
    nurse_.reset();
    setTextSize(100);
  }

  void tabGoesAsTheEyeDoes_data();
  void tabGoesAsTheEyeDoes();
  void tabGoesThroughTheBuilder();
  void theKeysLand_data();
  void theKeysLand();

 private:
  QWidget* reach(const QString& page);
  QWidget* reachPractice(const QString& page, int percent);
  QWidget* compare(const char* weight);
  QWidget* cover();
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  Form* form() { return nurse_->window().findChild<Form*>(); }
  WorkingPane* pane() { return nurse_->window().findChild<WorkingPane*>(); }

  std::chrono::milliseconds now_{};
  std::unique_ptr<Nurse> nurse_;
  std::unique_ptr<Pupil> pupil_;
};

QWidget* ReadingOrderTest::compare(const char* weight) {
  nurse_->fill(test::usualCase());
  nurse_->press(Qt::Key_F9);
  QStringList again = test::usualCase();
  again[test::weightPlace] = QString::fromLatin1(weight);
  nurse_->fill(again);
  nurse_->press(Qt::Key_F9, Qt::ControlModifier);
  return nurse_->window().findChild<SecondCheckView*>();
}

QWidget* ReadingOrderTest::cover() {
  nurse_->fill(test::usualCase());
  auto* watch = nurse_->window().findChild<IdleWatch*>();
  now_ = {};
  watch->setClock([this] { return ClockReading{now_, now_}; });
  now_ = std::chrono::seconds(301);
  watch->look();
  return nurse_->window().findChild<CoverPage*>();
}

QWidget* ReadingOrderTest::reach(const QString& page) {
  if (page == QStringLiteral("settings")) {
    action("settings")->trigger();
    return nurse_->window().findChild<SettingsDialog*>();
  }
  if (page == QStringLiteral("alike")) return compare("17.2 kg");
  if (page == QStringLiteral("apart")) return compare("12.7 kg");
  QWidget* covered = cover();
  if (page == QStringLiteral("facts"))
    nurse_->window().findChild<QPushButton*>(QStringLiteral("cover-show"))->click();
  return covered;
}

QWidget* ReadingOrderTest::reachPractice(const QString& page, int percent) {
  pupil_ = std::make_unique<Pupil>(percent);
  Pupil& pupil = *pupil_;
  if (page == QStringLiteral("plan")) return &pupil.window();
  if (page == QStringLiteral("set"))
    return pupil.push(QStringLiteral("make-set")) ? &pupil.window() : nullptr;
  const bool test = page == QStringLiteral("review");
  if (!pupil.begin({QStringLiteral("dose-by-bsa"), QStringLiteral("bsa")}, 2, 5, test)) return nullptr;
  if (page == QStringLiteral("problem")) return &pupil.window();
  pupil.write(0, QStringLiteral("0.46 m²"));
  if (page == QStringLiteral("review"))
    return pupil.push(QStringLiteral("review")) ? &pupil.window() : nullptr;
  pupil.enter();
  for (int i = 0; i < 4; ++i) pupil.press(Qt::Key_H, Qt::ControlModifier);
  if (page == QStringLiteral("hint")) return &pupil.window();
  for (int presses = 0; presses < 6 && !pupil.isOn("summary-page"); ++presses)
    pupil.press(Qt::Key_Return, Qt::ControlModifier);
  return pupil.isOn("summary-page") ? &pupil.window() : nullptr;
}

void ReadingOrderTest::tabGoesAsTheEyeDoes_data() {
  QTest::addColumn<QString>("page");
  QTest::addColumn<bool>("practice");
  QTest::addColumn<int>("percent");
  QTest::addColumn<QSize>("size");
  const auto add = [](const char* page, bool practice, int percent, const QSize& size) {
    QTest::addRow("%s, %d %%, %dx%d", page, percent, size.width(), size.height())
        << QString::fromLatin1(page) << practice << percent << size;
  };
  const QSize ward(1366, 768);
  const QSize small(800, 600);
  for (const char* page : {"settings", "alike", "apart", "cover", "facts"}) {
    add(page, false, 100, ward);
    add(page, false, 200, small);
  }
  for (const char* page : {"plan", "set", "problem", "hint", "review", "summary"}) {
    add(page, true, 100, ward);
    add(page, true, 200, small);
  }
}

void ReadingOrderTest::tabGoesAsTheEyeDoes() {
  QFETCH(QString, page);
  QFETCH(bool, practice);
  QFETCH(int, percent);
  QFETCH(QSize, size);
  for (int step = 100; step < percent; step += 10) nurse_->press(Qt::Key_Plus, Qt::ControlModifier);
  nurse_->window().resize(size);
  QWidget* seen = practice ? reachPractice(page, percent) : reach(page);
  QVERIFY(seen);
  seen->window()->resize(seen->window()->size().boundedTo(size));
  QCoreApplication::processEvents();
  if (page == QStringLiteral("cover")) {  // there is one button, and it has the keyboard
    QCOMPARE(nurse_->focused(), QStringLiteral("cover-show"));
    return;
  }
  const auto flow = practice ? test::Flow::columns : test::Flow::rows;
  QTRY_COMPARE(test::orderFault(*seen, flow), QString());
}

/// It waits for an answer, so it is looked at from within.
void ReadingOrderTest::tabGoesThroughTheBuilder() {
  QVERIFY(reachPractice(QStringLiteral("hint"), 100));
  QString fault = QStringLiteral("no builder");
  QTimer::singleShot(0, this, [&fault] {
    QWidget* builder = QApplication::activeModalWidget();
    if (!builder) return;
    fault = test::orderFault(*builder, test::Flow::columns);
    builder->close();
  });
  pupil_->press(Qt::Key_B, Qt::ControlModifier);
  QCOMPARE(fault, QString());
}

void ReadingOrderTest::theKeysLand_data() {
  QTest::addColumn<QString>("state");
  QTest::addColumn<QSize>("size");
  for (const QSize& size : {QSize(1366, 768), QSize(700, 600)})
    for (const char* state : {"case", "second person", "asking", "refused", "after the cover"})
      QTest::addRow("%s, %d", state, size.width()) << QString::fromLatin1(state) << size;
}

void ReadingOrderTest::theKeysLand() {
  QFETCH(QString, state);
  QFETCH(QSize, size);
  nurse_->window().resize(size);
  QStringList entries = test::usualCase();
  if (state == QStringLiteral("asking")) entries[5] = QStringLiteral("55 mg");
  if (state == QStringLiteral("refused")) entries[1] = QStringLiteral("17,2 kg");
  if (state == QStringLiteral("after the cover")) {
    cover();
    nurse_->window().findChild<QPushButton*>(QStringLiteral("cover-show"))->click();
    nurse_->window().findChild<QPushButton*>(QStringLiteral("cover-go-on"))->click();
    QVERIFY(form()->isAncestorOf(QApplication::focusWidget()));
  } else {
    nurse_->fill(entries);
  }
  if (state == QStringLiteral("second person")) {
    nurse_->press(Qt::Key_F9);
    QCOMPARE(nurse_->focused(), QStringLiteral("child.height:text"));
    nurse_->fill({QStringLiteral("103 cm")});
  }
  QWidget* from = QApplication::focusWidget();
  nurse_->press(Qt::Key_F6);
  QCOMPARE(QApplication::focusWidget(), pane()->flag());
  nurse_->press(Qt::Key_F6);
  QCOMPARE(QApplication::focusWidget(), from);
  nurse_->press(Qt::Key_F7);
  QCOMPARE(QApplication::focusWidget(), pane()->flag());
  nurse_->press(Qt::Key_F5);
  const bool refused = state == QStringLiteral("refused");
  QCOMPARE(nurse_->focused(), refused ? QStringLiteral("child.weight:text") : from->objectName());
}

WARDCHALK_QT_TEST(ReadingOrderTest)

}  // namespace wardchalk::ui::reading_order_test

#include "reading_order_test.moc"
