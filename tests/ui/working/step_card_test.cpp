#include "ui/working/step_card.h"

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/support/qt_class.h"
#include "tests/ui/working/sample_cases.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui::test::step_card_test {

namespace {

StepView viewOf(const char* sampleName, StepId id) {
  for (StepView& view : stepViews(sample(sampleName)))
    if (view.step.id == id) return std::move(view);
  return {};
}

/// A card on screen with the keyboard on it.
struct Shown {
  explicit Shown(const StepView& view) : card(nullptr) {
    card.show(view);
    card.resize(900, card.heightAt(900));
    card.show();
    card.activateWindow();
    card.setFocus();
  }
  StepCard card;
};

QPoint middleOf(const StepCard& card, const QString& origin) {
  for (const HitArea& hit : card.layout().drawing.hits)
    if (hit.origin == origin) return hit.rect.center().toPoint();
  return {};
}

}  // namespace

class StepCardTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void isLaidOutOnceForOneWidth();
  void isLaidOutAgainOnlyWhenSomethingChanged();
  void clickGoesToWhereANumberComesFrom();
  void pointingLightsAndLeavingPutsOut();
  void arrowsWalkTheNumbersAndEnterGoesThere();
  void ownResultLeadsNowhere();
  void lightingPaintsOnlyWhereTheNumberIs();
  void isPaintedTheSameHoweverOften();
  void isReadAsItsNumberAndSentence();
  void changeReachesAListener();
  void focusCanBeSeen();
};

void StepCardTest::isLaidOutOnceForOneWidth() {
  Shown shown(viewOf("usual", StepId::limitDose));
  QVERIFY(QTest::qWaitForWindowExposed(&shown.card));
  shown.card.grab();
  QCOMPARE(shown.card.timesLaidOut(), 1);
}

void StepCardTest::isLaidOutAgainOnlyWhenSomethingChanged() {
  Shown shown(viewOf("usual", StepId::limitDose));
  QVERIFY(!shown.card.show(viewOf("usual", StepId::limitDose)));
  shown.card.heightAt(900);
  QCOMPARE(shown.card.timesLaidOut(), 1);
  QVERIFY(shown.card.show(viewOf("household", StepId::limitDose)));
  shown.card.heightAt(900);
  QCOMPARE(shown.card.timesLaidOut(), 2);
  shown.card.setScale(2);
  const int high = shown.card.heightAt(900);
  QCOMPARE(shown.card.timesLaidOut(), 3);
  QVERIFY(high > shown.card.fontMetrics().height() * 4);
}

void StepCardTest::clickGoesToWhereANumberComesFrom() {
  Shown shown(viewOf("usual", StepId::limitDose));
  const QSignalSpy activated(&shown.card, &StepCard::originActivated);
  QTest::mouseClick(&shown.card, Qt::LeftButton, {}, middleOf(shown.card, QStringLiteral("reference.high")));
  QTest::mouseClick(&shown.card, Qt::LeftButton, {}, {890, 4});
  QCOMPARE(activated.size(), 1);
  QCOMPARE(activated.first().first().toString(), QStringLiteral("reference.high"));
}

void StepCardTest::pointingLightsAndLeavingPutsOut() {
  Shown shown(viewOf("usual", StepId::limitDose));
  QVERIFY(QTest::qWaitForWindowExposed(&shown.card));
  const QSignalSpy lit(&shown.card, &StepCard::lit);
  QTest::mouseMove(&shown.card, middleOf(shown.card, QStringLiteral("step:bsa")));
  QTRY_COMPARE(lit.size(), 1);
  QTest::mouseMove(&shown.card, {890, 4});
  QTRY_COMPARE(lit.size(), 2);
  QCOMPARE(lit.at(0).first().toString(), QStringLiteral("step:bsa"));
  QCOMPARE(lit.at(1).first().toString(), QString());
}

void StepCardTest::arrowsWalkTheNumbersAndEnterGoesThere() {
  Shown shown(viewOf("usual", StepId::limitDose));
  QVERIFY(QTest::qWaitForWindowActive(&shown.card));
  const QSignalSpy lit(&shown.card, &StepCard::lit);
  const QSignalSpy activated(&shown.card, &StepCard::originActivated);
  for (int i = 0; i < 5; ++i)
    QTest::keyClick(&shown.card, Qt::Key_Right);  // three numbers; the walk ends at the last
  QTest::keyClick(&shown.card, Qt::Key_Return);
  QTest::keyClick(&shown.card, Qt::Key_Left);
  QTest::keyClick(&shown.card, Qt::Key_Return);
  QCOMPARE(lit.size(), 4);
  QCOMPARE(activated.size(), 2);
  QCOMPARE(activated.at(0).first().toString(), QStringLiteral("step:bsa"));
  QCOMPARE(activated.at(1).first().toString(), QStringLiteral("reference.high"));
  QVERIFY(shown.card.accessibleDescription().contains(QStringLiteral("reference")));
}

void StepCardTest::ownResultLeadsNowhere() {
  Shown shown(viewOf("usual", StepId::limitDose));
  const QSignalSpy activated(&shown.card, &StepCard::originActivated);
  const QPoint result = middleOf(shown.card, QStringLiteral("step:limit-dose"));
  QVERIFY(!result.isNull());
  QTest::mouseClick(&shown.card, Qt::LeftButton, {}, result);
  QCOMPARE(activated.size(), 0);
}

void StepCardTest::lightingPaintsOnlyWhereTheNumberIs() {
  Shown shown(viewOf("usual", StepId::limitDose));
  const QImage dark = shown.card.grab().toImage();
  shown.card.light(QStringLiteral("stock.strength"));
  QCOMPARE(shown.card.grab().toImage(), dark);
  shown.card.light(QStringLiteral("reference.high"));
  const QImage lit = shown.card.grab().toImage();
  QVERIFY(lit != dark);
  shown.card.light({});
  QCOMPARE(shown.card.grab().toImage(), dark);
}

/// A card that is painted again may come from a picture, and its words from letters that were set before.
void StepCardTest::isPaintedTheSameHoweverOften() {
  StepView first = viewOf("usual", StepId::limitDose);
  first.question = QStringLiteral("What is painted for the first time?");  // words that nothing has set yet
  StepCard card(nullptr);
  const auto painted = [&] { return card.grab().toImage(); };
  card.show(first);
  card.resize(900, card.heightAt(900));
  const QImage once = painted();
  for (int i = 0; i < 3; ++i) QCOMPARE(painted(), once);
  card.setScheme(Scheme::dark);
  QVERIFY(painted() != once);
  card.setScheme(Scheme::light);
  QCOMPARE(painted(), once);
  card.light(QStringLiteral("reference.high"));
  const QImage lit = painted();
  QVERIFY(lit != once);
  QCOMPARE(painted(), lit);
  StepView other = first;
  other.question = QStringLiteral("What else is lit?");
  card.show(other);  // lit as it was
  const QImage litStill = painted();
  card.light({});
  QVERIFY(painted() != litStill);
  card.show(first);
  QCOMPARE(painted(), once);
  card.setScale(1.5);
  card.resize(900, card.heightAt(900));
  QVERIFY(painted() != once);
}

void StepCardTest::isReadAsItsNumberAndSentence() {
  Shown shown(viewOf("usual", StepId::limitDose));
  QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&shown.card);
  QVERIFY(spoken);
  QCOMPARE(spoken->role(), QAccessible::Client);  // the one that a reader says no word for
  const QString said =
      QStringLiteral("Step %1. %2").arg(shown.card.view().number).arg(shown.card.view().sentence);
  QCOMPARE(spoken->text(QAccessible::Name), said);
  QVERIFY(spoken->text(QAccessible::Name).contains(QStringLiteral("84 milligrams")));
  QVERIFY(!spoken->textInterface());  // or a reader could say both, one after the other
  QVERIFY(!spoken->editableTextInterface());
  QVERIFY(spoken->state().focusable);
}

QStringList heard;
void listen(QAccessibleEvent* event) {
  if (event->type() == QAccessible::NameChanged)
    heard << event->accessibleInterface()->text(QAccessible::Name);
}

void StepCardTest::changeReachesAListener() {
  Shown shown(viewOf("usual", StepId::limitDose));
  const bool heardHere = QGuiApplication::platformName() == QStringLiteral("xcb") &&
                         qEnvironmentVariableIsSet("QT_LINUX_ACCESSIBILITY_ALWAYS_ON");
  if (!heardHere)
    QSKIP("nothing listens here: run on xcb with QT_LINUX_ACCESSIBILITY_ALWAYS_ON=1 and an AT-SPI client");
  QTRY_VERIFY2(QAccessible::isActive(), "the accessibility bus sleeps until a client has connected to it");
  heard.clear();
  const auto before = QAccessible::installUpdateHandler(listen);
  shown.card.show(viewOf("household", StepId::limitDose));
  QAccessible::installUpdateHandler(before);
  QVERIFY(heard.contains(shown.card.spoken()));
}

void StepCardTest::focusCanBeSeen() {
  Shown shown(viewOf("usual", StepId::limitDose));
  QVERIFY(QTest::qWaitForWindowActive(&shown.card));
  const QColor ring = boardPalette(Scheme::light)[Ink::focus];
  QTRY_VERIFY(shown.card.hasFocus());
  const QImage image = shown.card.grab().toImage();
  int thick = 0;
  for (int y = 0; y < 6; ++y)
    if (image.pixelColor(image.width() / 2, y) == ring) ++thick;
  QVERIFY(thick >= 2);
}

WARDCHALK_QT_TEST(StepCardTest)

}  // namespace wardchalk::ui::test::step_card_test

#include "step_card_test.moc"
