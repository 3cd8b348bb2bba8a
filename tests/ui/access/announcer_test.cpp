#include <QDialog>
#include <QLineEdit>
#include <QTest>

#include "tests/ui/support/heard.h"
#include "tests/ui/support/qt_class.h"
#include "ui/access/announcer.h"

namespace wardchalk::ui::announcer_test {

/// What is heard, when, and what is gone again. Nothing waits for time: what must not be heard would come
/// before something that is waited for.
class AnnouncerTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void aTextIsHeardAndTheKeyboardStays();
  void ofABurstTheLastIsHeard();
  void theSameTextIsHeardTwice();
  void whatIsForgottenIsNeitherHeardNorThere();
  void againSaysTheLast();
  void aWindowBehindAnotherIsNotHeard();
  void marksOfIsolatesAreNotSaid();
  void itHasNoPlaceOnTheScreen();

 private:
  Announcer& announcer() { return Announcer::of(*line_); }

  std::unique_ptr<QWidget> window_;
  QLineEdit* line_ = nullptr;
  std::unique_ptr<test::Listener> listener_;
};

void AnnouncerTest::init() {
  listener_ = std::make_unique<test::Listener>();
  window_ = std::make_unique<QWidget>();
  line_ = new QLineEdit(window_.get());
  window_->show();
  line_->setFocus();
  QVERIFY(QTest::qWaitForWindowActive(window_.get()));
}

void AnnouncerTest::cleanup() {
  window_.reset();
  listener_.reset();
}

void AnnouncerTest::aTextIsHeardAndTheKeyboardStays() {
  announce(*line_, QStringLiteral("SAFE by this reference"));
  QCOMPARE(listener_->heard(), QStringList());  // not before what a reader says of the keyboard
  QTRY_COMPARE(listener_->heard(), QStringList{QStringLiteral("SAFE by this reference")});
  QVERIFY(line_->hasFocus());
}

void AnnouncerTest::ofABurstTheLastIsHeard() {
  for (const char* text : {"one", "two", "three"}) announce(*line_, QString::fromLatin1(text));
  QTRY_COMPARE(listener_->heard(), QStringList{QStringLiteral("three")});
}

void AnnouncerTest::theSameTextIsHeardTwice() {
  announce(*line_, QStringLiteral("UNSAFE"));
  QTRY_COMPARE(listener_->heard().size(), 1);
  announce(*line_, QStringLiteral("UNSAFE"));
  QTRY_COMPARE(listener_->heard().size(), 2);
}

void AnnouncerTest::whatIsForgottenIsNeitherHeardNorThere() {
  announce(*line_, QStringLiteral("SAFE, 55 mg"));
  QTRY_COMPARE(test::stillThere(), QStringList{QStringLiteral("SAFE, 55 mg")});
  announce(*line_, QStringLiteral("SAFE, 59 mg"));
  announcer().forget();
  QCOMPARE(test::stillThere(), QStringList());
  announcer().again();
  announce(*line_, QStringLiteral("UNSAFE, 599 mg"));
  QTRY_COMPARE(listener_->heard(),
               QStringList({QStringLiteral("SAFE, 55 mg"), QStringLiteral("UNSAFE, 599 mg")}));
  announce(*line_, {});  // nothing to say
  announcer().say(QStringLiteral("at once"), Announcer::Wait::none);
  QCOMPARE(listener_->last(), QStringLiteral("at once"));
}

void AnnouncerTest::againSaysTheLast() {
  announcer().again();  // nothing was said
  announce(*line_, QStringLiteral("Line 1: not yet"));
  QTRY_COMPARE(listener_->heard().size(), 1);
  announcer().again();
  QCOMPARE(listener_->heard(),
           QStringList({QStringLiteral("Line 1: not yet"), QStringLiteral("Line 1: not yet")}));
  QCOMPARE(announcer().last(), QStringLiteral("Line 1: not yet"));
}

void AnnouncerTest::aWindowBehindAnotherIsNotHeard() {
  QDialog dialog(window_.get());
  dialog.show();
  dialog.activateWindow();
  QTRY_VERIFY(dialog.isActiveWindow() && !window_->isActiveWindow());
  announcer().say(QStringLiteral("behind"), Announcer::Wait::none);
  announce(dialog, QStringLiteral("in front"));
  QTRY_COMPARE(listener_->heard(), QStringList{QStringLiteral("in front")});
}

void AnnouncerTest::marksOfIsolatesAreNotSaid() {
  announcer().say(QString(QChar(0x2068)) + QStringLiteral("Plover") + QChar(0x2069) + QStringLiteral(", 80") +
                      QChar(QChar::Nbsp) + QStringLiteral("mg"),
                  Announcer::Wait::none);
  QCOMPARE(listener_->last(), QStringLiteral("Plover, 80 mg"));
}

void AnnouncerTest::itHasNoPlaceOnTheScreen() {
  announcer().say(QStringLiteral("SAFE"), Announcer::Wait::none);
  int seen = 0;
  for (const QWidget* widget : window_->findChildren<QWidget*>()) {
    if (widget == line_) continue;
    ++seen;
    QVERIFY(widget->focusPolicy() == Qt::NoFocus);
    QVERIFY(widget->visibleRegion().isEmpty());
  }
  QCOMPARE(seen, 3);  // the bar, the note and its text
}

WARDCHALK_QT_TEST(AnnouncerTest)

}  // namespace wardchalk::ui::announcer_test

#include "announcer_test.moc"
