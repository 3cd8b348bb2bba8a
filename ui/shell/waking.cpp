#include "ui/shell/waking.h"

#ifdef WARDCHALK_DBUS
#include <QDBusConnection>
#endif

#include <utility>

namespace wardchalk::ui {

void Waking::listen() {
  if (std::exchange(listens_, true)) return;
#ifdef WARDCHALK_DBUS
  QDBusConnection bus = QDBusConnection::systemBus();
  if (!bus.isConnected()) return;  // a container, or no bus on this system: the clocks are asked all the same
  bus.connect(QStringLiteral("org.freedesktop.login1"), QStringLiteral("/org/freedesktop/login1"),
              QStringLiteral("org.freedesktop.login1.Manager"), QStringLiteral("PrepareForSleep"), this,
              SLOT(prepareForSleep(bool)));
#endif
}

void Waking::prepareForSleep(bool begins) {
  if (!begins) Q_EMIT woken();
}

}  // namespace wardchalk::ui
