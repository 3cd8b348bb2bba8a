#include "ui/theme/desktop_wishes.h"

#ifdef WARDCHALK_DBUS
#include <QDBusConnection>
#include <QDBusMetaType>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#endif

#include <utility>

#include "ui/theme/colours.h"

namespace wardchalk::ui {

#ifdef WARDCHALK_DBUS

namespace {

using Groups = QMap<QString, QVariantMap>;

QString portal() { return QStringLiteral("org.freedesktop.portal.Desktop"); }
QString place() { return QStringLiteral("/org/freedesktop/portal/desktop"); }
QString settings() { return QStringLiteral("org.freedesktop.portal.Settings"); }
QString appearance() { return QStringLiteral("org.freedesktop.appearance"); }
/// Where GNOME 43 keeps high contrast: its portal (1.16, of Debian 12) passes this on, and no `contrast` yet.
QString gnomeAccess() { return QStringLiteral("org.gnome.desktop.a11y.interface"); }

/// What is not known counts as no wish, as the portal asks for.
DesktopWish wishOf(const Groups& groups) {
  const auto number = [keys = groups.value(appearance())](const QString& key) {
    const QVariant value = keys.value(key);
    return value.typeId() == QMetaType::UInt ? value.toUInt() : 0;
  };
  const QVariant gnome = groups.value(gnomeAccess()).value(QStringLiteral("high-contrast"));
  DesktopWish wish;
  const bool gnomeHigh = gnome.typeId() == QMetaType::Bool && gnome.toBool();
  const uint ground = number(QStringLiteral("color-scheme"));
  if (ground == 1) wish.ground = DesktopWish::Ground::dark;
  if (ground == 2) wish.ground = DesktopWish::Ground::light;
  wish.highContrast = number(QStringLiteral("contrast")) == 1 || gnomeHigh;
  return wish;
}

}  // namespace

void DesktopWishes::listen() {
  if (std::exchange(listens_, true)) return;
  QDBusConnection bus = QDBusConnection::sessionBus();
  if (!bus.isConnected()) return;
  qDBusRegisterMetaType<Groups>();
  bus.connect(portal(), place(), settings(), QStringLiteral("SettingChanged"), this,
              SLOT(settingChanged(QString)));
  ask();
}

/// All in one answer: the way to ask for one key is another in each version of the portal.
void DesktopWishes::ask() {
  QDBusMessage call =
      QDBusMessage::createMethodCall(portal(), place(), settings(), QStringLiteral("ReadAll"));
  call << QStringList{appearance(), gnomeAccess()};
  auto* answer = new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(call), this);
  connect(answer, &QDBusPendingCallWatcher::finished, this, [answer] {
    answer->deleteLater();
    const QDBusPendingReply<Groups> reply = *answer;
    if (!reply.isError() && !reply.value().isEmpty()) followDesktop(wishOf(reply.value()));
  });
}

void DesktopWishes::settingChanged(const QString& group) {
  if (group == appearance() || group == gnomeAccess()) ask();
}

#else

void DesktopWishes::listen() { listens_ = true; }
void DesktopWishes::ask() {}
void DesktopWishes::settingChanged(const QString&) {}

#endif

}  // namespace wardchalk::ui
