#include "ui/theme/desktop_wishes.h"

#include <QApplication>
#include <QDBusConnection>
#include <QDBusConnectionInterface>
#include <QDBusContext>
#include <QDBusMessage>
#include <QDBusMetaType>
#include <QDBusServiceWatcher>
#include <QDBusVariant>
#include <QProcess>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/support/qt_class.h"
#include "ui/theme/colours.h"

namespace wardchalk::ui::test::desktop_wishes_test {

using Groups = QMap<QString, QVariantMap>;

/// Tells what a desktop tells, as xdg-desktop-portal 1.16 was seen to: one answer for a group, and a signal
/// for each key.
class Portal : public QObject, protected QDBusContext {
  Q_OBJECT
  Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Settings")

 public:
  QVariantMap appearance;
  QVariantMap gnome;
  bool refuses = false;
  int asked = 0;

 public Q_SLOTS:
  QMap<QString, QVariantMap> ReadAll(const QStringList& groups) {
    ++asked;
    if (refuses) sendErrorReply(QDBusError::NotSupported);
    Groups all{{QStringLiteral("org.freedesktop.appearance"), appearance},
               {QStringLiteral("org.gnome.desktop.a11y.interface"), gnome},
               {QStringLiteral("org.example.letters"), {{QStringLiteral("contrast"), QVariant(1U)}}}};
    all.removeIf([&](const auto& group) { return !groups.contains(group.key()) || group.value().isEmpty(); });
    return all;
  }
};

/// A bus of the test's own in the place of the session's, and a portal on it.
class DesktopWishesTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void initTestCase();
  void cleanupTestCase();
  void cleanup();

  void withoutAPortalNothingChanges();
  void whatIsWishedAtTheStartIsFollowed();
  void whatIsWishedLaterIsFollowed();
  void highContrastOfGnomeIsFollowed();
  void whatIsNotAWishIsNone_data();
  void whatIsNotAWishIsNone();
  void aPortalThatComesLaterIsHeard();
  void whoIsNotThePortalIsNotHeard();
  void otherSettingsAreNotAskedFor();

 private:
  static void beHeard();
  void waitUntilSignalsAreDelivered();
  void comes(const QVariantMap& appearance = {});
  void goes();
  static void say(const QDBusConnection& from, const QString& group);
  void wish(const QString& key, const QVariant& value);
  static Scheme scheme() { return schemeFor(QApplication::palette()); }

  QProcess bus_;
  QString address_;
  std::optional<QDBusConnection> desktop_;
  Portal portal_;
};

void DesktopWishesTest::initTestCase() {
  qDBusRegisterMetaType<Groups>();
  bus_.start(QStringLiteral("dbus-daemon"),
             {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--print-address")});
  QVERIFY(bus_.waitForStarted());
  QTRY_VERIFY(bus_.canReadLine());
  address_ = QString::fromUtf8(bus_.readLine()).trimmed();
  qputenv("DBUS_SESSION_BUS_ADDRESS", address_.toUtf8());
  QVERIFY(QDBusConnection::sessionBus().isConnected());
  desktop_ = QDBusConnection::connectToBus(address_, QStringLiteral("desktop"));
  QVERIFY(desktop_->registerObject(QStringLiteral("/org/freedesktop/portal/desktop"), &portal_,
                                   QDBusConnection::ExportAllSlots));
  waitUntilSignalsAreDelivered();
}

/// The bus answers in the order in which it was written to: what the program wished to hear before is noted
/// there now, and the news sent before have been read here. Qt 6.4 waits for neither by itself: news of a
/// name pass it by until its wish has been written, and a signal that is read together with the news of its
/// sender is taken for a stranger's.
void DesktopWishesTest::beHeard() {
  QVERIFY(QDBusConnection::sessionBus()
              .interface()
              ->isServiceRegistered(QStringLiteral("org.freedesktop.DBus"))
              .value());
}

/// Qt keeps the signals of the session's bus back until the loop of events runs, and then takes them all at
/// once.
void DesktopWishesTest::waitUntilSignalsAreDelivered() {
  const QString sign = QStringLiteral("org.example.sign");
  const QDBusServiceWatcher watcher(sign, QDBusConnection::sessionBus(),
                                    QDBusServiceWatcher::WatchForRegistration);
  const QSignalSpy seen(&watcher, &QDBusServiceWatcher::serviceRegistered);
  beHeard();
  QVERIFY(desktop_->registerService(sign));
  QTRY_COMPARE(seen.count(), 1);
}

void DesktopWishesTest::cleanupTestCase() {
  bus_.terminate();
  bus_.waitForFinished();
}

void DesktopWishesTest::cleanup() {
  goes();
  followDesktop({});
}

void DesktopWishesTest::comes(const QVariantMap& appearance) {
  portal_.appearance = appearance;
  portal_.gnome.clear();
  portal_.refuses = false;
  portal_.asked = 0;
  beHeard();
  QVERIFY(desktop_->registerService(QStringLiteral("org.freedesktop.portal.Desktop")));
  beHeard();
}

void DesktopWishesTest::goes() {
  desktop_->unregisterService(QStringLiteral("org.freedesktop.portal.Desktop"));
}

void DesktopWishesTest::say(const QDBusConnection& from, const QString& group) {
  QDBusMessage signal = QDBusMessage::createSignal(QStringLiteral("/org/freedesktop/portal/desktop"),
                                                   QStringLiteral("org.freedesktop.portal.Settings"),
                                                   QStringLiteral("SettingChanged"));
  signal << group << QStringLiteral("color-scheme") << QVariant::fromValue(QDBusVariant(QVariant(1U)));
  QVERIFY(from.send(signal));
}

void DesktopWishesTest::wish(const QString& key, const QVariant& value) {
  portal_.appearance.insert(key, value);
  say(*desktop_, QStringLiteral("org.freedesktop.appearance"));
}

void DesktopWishesTest::withoutAPortalNothingChanges() {
  const QPalette before = QApplication::palette();
  DesktopWishes wishes;
  wishes.listen();
  comes();  // answers nothing of the group: asked after the first question was answered by the bus
  say(*desktop_, QStringLiteral("org.freedesktop.appearance"));
  QTRY_COMPARE(portal_.asked, 1);
  portal_.refuses = true;
  say(*desktop_, QStringLiteral("org.freedesktop.appearance"));
  QTRY_COMPARE(portal_.asked, 2);
  QCOMPARE(QApplication::palette(), before);
}

void DesktopWishesTest::whatIsWishedAtTheStartIsFollowed() {
  comes({{QStringLiteral("color-scheme"), QVariant(1U)}, {QStringLiteral("contrast"), QVariant(1U)}});
  DesktopWishes wishes;
  wishes.listen();
  wishes.listen();  // a second time is nothing
  QTRY_COMPARE(scheme(), Scheme::contrastDark);
  QCOMPARE(portal_.asked, 1);
}

void DesktopWishesTest::whatIsWishedLaterIsFollowed() {
  const QPalette before = QApplication::palette();
  comes({{QStringLiteral("color-scheme"), QVariant(0U)}});  // a desktop that knows no contrast
  DesktopWishes wishes;
  wishes.listen();
  QTRY_COMPARE(portal_.asked, 1);
  wish(QStringLiteral("color-scheme"), 1U);
  QTRY_COMPARE(scheme(), Scheme::dark);
  wish(QStringLiteral("contrast"), 1U);
  QTRY_COMPARE(scheme(), Scheme::contrastDark);
  wish(QStringLiteral("color-scheme"), 2U);
  QTRY_COMPARE(scheme(), Scheme::contrastLight);
  wish(QStringLiteral("contrast"), 0U);
  QTRY_COMPARE(scheme(), Scheme::light);
  QCOMPARE(QApplication::palette(), before);
}

void DesktopWishesTest::highContrastOfGnomeIsFollowed() {
  comes({{QStringLiteral("color-scheme"), QVariant(1U)}});
  portal_.gnome = {{QStringLiteral("high-contrast"), QVariant(false)}};
  DesktopWishes wishes;
  wishes.listen();
  QTRY_COMPARE(scheme(), Scheme::dark);
  for (const bool high : {true, false}) {
    portal_.gnome = {{QStringLiteral("high-contrast"), QVariant(high)}};
    say(*desktop_, QStringLiteral("org.gnome.desktop.a11y.interface"));
    QTRY_COMPARE(scheme(), high ? Scheme::contrastDark : Scheme::dark);
  }
  portal_.gnome = {{QStringLiteral("high-contrast"), QVariant(QStringLiteral("true"))}};
  wish(QStringLiteral("color-scheme"), 2U);
  QTRY_COMPARE(scheme(), Scheme::light);
}

/// The portal's page: what is not known counts as no preference.
void DesktopWishesTest::whatIsNotAWishIsNone_data() {
  QTest::addColumn<QVariant>("value");
  QTest::addRow("a number of later days") << QVariant(3U);
  QTest::addRow("the greatest number") << QVariant(0xFFFFFFFFU);
  QTest::addRow("a number of another kind") << QVariant(1);
  QTest::addRow("a word") << QVariant(QStringLiteral("1"));
  QTest::addRow("yes") << QVariant(true);
  QTest::addRow("a list") << QVariant(QStringList{QStringLiteral("1")});
}

void DesktopWishesTest::whatIsNotAWishIsNone() {
  QFETCH(QVariant, value);
  comes({{QStringLiteral("color-scheme"), QVariant(1U)}, {QStringLiteral("contrast"), QVariant(1U)}});
  DesktopWishes wishes;
  wishes.listen();
  QTRY_COMPARE(scheme(), Scheme::contrastDark);
  wish(QStringLiteral("color-scheme"), value);
  QTRY_COMPARE(scheme(), Scheme::contrastLight);
  wish(QStringLiteral("contrast"), value);
  QTRY_COMPARE(scheme(), Scheme::light);
}

void DesktopWishesTest::aPortalThatComesLaterIsHeard() {
  DesktopWishes wishes;
  wishes.listen();
  comes();
  wish(QStringLiteral("color-scheme"), 1U);
  QTRY_COMPARE(scheme(), Scheme::dark);
  goes();
  comes();
  wish(QStringLiteral("color-scheme"), 2U);
  QTRY_COMPARE(scheme(), Scheme::light);
}

void DesktopWishesTest::whoIsNotThePortalIsNotHeard() {
  comes({{QStringLiteral("color-scheme"), QVariant(0U)}});
  DesktopWishes wishes;
  wishes.listen();
  QTRY_COMPARE(portal_.asked, 1);
  const QDBusConnection other = QDBusConnection::connectToBus(address_, QStringLiteral("other"));
  say(other, QStringLiteral("org.freedesktop.appearance"));
  wish(QStringLiteral("color-scheme"), 1U);
  QTRY_COMPARE(scheme(), Scheme::dark);
  QCOMPARE(portal_.asked, 2);
}

void DesktopWishesTest::otherSettingsAreNotAskedFor() {
  comes({{QStringLiteral("color-scheme"), QVariant(0U)}});
  DesktopWishes wishes;
  wishes.listen();
  QTRY_COMPARE(portal_.asked, 1);
  for (const char* group : {"org.example.letters", "org.freedesktop.appearance.more", ""})
    say(*desktop_, QString::fromUtf8(group));
  wish(QStringLiteral("color-scheme"), 1U);
  QTRY_COMPARE(scheme(), Scheme::dark);
  QCOMPARE(portal_.asked, 2);
}

WARDCHALK_QT_TEST(DesktopWishesTest)

}  // namespace wardchalk::ui::test::desktop_wishes_test

#include "desktop_wishes_test.moc"
