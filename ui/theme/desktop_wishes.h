#pragma once

#include <QObject>

namespace wardchalk::ui {

/// Hears whether the desktop wishes for a dark or light ground and for high contrast, where it tells: the
/// settings portal of freedesktop.org, over the session bus. Elsewhere it says nothing.
///
/// Source: its interface org.freedesktop.portal.Settings, keys color-scheme and contrast of
/// org.freedesktop.appearance (https://flatpak.github.io/xdg-desktop-portal/docs/).
class DesktopWishes : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  /// Asks now, and again whenever something of it changed; the answer is followed when it comes. Only the
  /// first time does anything.
  void listen();

 private Q_SLOTS:
  void settingChanged(const QString& group);

 private:
  void ask();

  bool listens_ = false;
};

}  // namespace wardchalk::ui
