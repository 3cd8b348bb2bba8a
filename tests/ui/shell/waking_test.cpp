#include "ui/shell/waking.h"

#include <QDBusConnection>
#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QProcess>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::waking_test {

/// A bus of the test's own in the place of the system's, and a service on it that says what logind says.
class WakingTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void initTestCase();
  void cleanupTestCase();

  void H51_theEndOfSleepIsHeardAndItsBeginningIsNot();
  void whoIsNotTheLoginServiceIsNotHeard();

 private:
  static void say(QDBusConnection& from, bool begins) {
    QDBusMessage signal = QDBusMessage::createSignal(QStringLiteral("/org/freedesktop/login1"),
                                                     QStringLiteral("org.freedesktop.login1.Manager"),
                                                     QStringLiteral("PrepareForSleep"));
    signal << begins;
    QVERIFY(from.send(signal));
  }

  QProcess bus_;
  QString address_;
};

void WakingTest::initTestCase() {
  bus_.start(QStringLiteral("dbus-daemon"),
             {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
  QVERIFY(bus_.waitForStarted());
  QTRY_VERIFY(bus_.canReadLine());
  address_ = QString::fromUtf8(bus_.readLine()).trimmed();
  qputenv("DBUS_SYSTEM_BUS_ADDRESS", address_.toUtf8());
}

void WakingTest::cleanupTestCase() {
  bus_.terminate();
  bus_.waitForFinished();
}

void WakingTest::H51_theEndOfSleepIsHeardAndItsBeginningIsNot() {
  QDBusConnection logind = QDBusConnection::connectToBus(address_, QStringLiteral("logind"));
  QVERIFY(logind.registerService(QStringLiteral("org.freedesktop.login1")));
  Waking waking;
  waking.listen();
  waking.listen();  // a second time is nothing
  const QSignalSpy woken(&waking, &Waking::woken);
  say(logind, true);
  say(logind, false);
  QTRY_COMPARE(woken.count(), 1);
  say(logind, true);
  say(logind, false);
  QTRY_COMPARE(woken.count(), 2);
}

void WakingTest::whoIsNotTheLoginServiceIsNotHeard() {
  QDBusConnection logind = QDBusConnection::connectToBus(address_, QStringLiteral("logind"));
  QDBusConnection other = QDBusConnection::connectToBus(address_, QStringLiteral("other"));
  QVERIFY(logind.registerService(QStringLiteral("org.freedesktop.login1")));
  Waking waking;
  waking.listen();
  const QSignalSpy woken(&waking, &Waking::woken);
  say(other, false);
  other.interface()->isServiceRegistered(
      QStringLiteral("org.example"));  // answered after the signal is passed on
  say(logind, false);
  QTRY_COMPARE(woken.count(), 1);
}

WARDCHALK_QT_CORE_TEST(WakingTest)

}  // namespace wardchalk::ui::waking_test

#include "waking_test.moc"
