#include "ui/shell/window_place.h"

#include <QGuiApplication>
#include <QScreen>
#include <QWidget>
#include <algorithm>

namespace wardchalk::ui {

namespace {

/// What a frame takes at most beside the window and above it. How wide it really is is known only when the
/// window is shown.
constexpr int frameBeside = 8;
constexpr int frameAbove = 40;

/// The screen that most of the window would lie on; the first one where none does.
const QScreen* screenUnder(const QRect& place) {
  const QScreen* best = QGuiApplication::primaryScreen();
  qint64 most = 0;
  for (const QScreen* screen : QGuiApplication::screens()) {
    const QRect shared = screen->availableGeometry() & place;
    const qint64 area = shared.isEmpty() ? 0 : qint64{shared.width()} * shared.height();
    if (area > most) best = screen;
    most = std::max(most, area);
  }
  return best;
}

}  // namespace

void restorePlace(QWidget& window, const QByteArray& kept) {
  if (kept.isEmpty()) return;
  QWidget reader;  // is never shown: no figure of a damaged geometry gets to the window unseen
  const bool restored = reader.restoreGeometry(kept);
  const bool maximized = restored && reader.isMaximized();
  const QRect was = maximized ? reader.normalGeometry() : reader.geometry();
  const QRect wanted = restored && was.isValid() ? was : window.geometry();
  const QRect room =
      screenUnder(wanted)->availableGeometry().adjusted(frameBeside, frameAbove, -frameBeside, -frameBeside);
  QRect place(wanted.topLeft(), wanted.size().expandedTo(window.minimumSizeHint()).boundedTo(room.size()));
  place.moveLeft(std::clamp(place.left(), room.left(), room.right() + 1 - place.width()));
  place.moveTop(std::clamp(place.top(), room.top(), room.bottom() + 1 - place.height()));
  window.setGeometry(place);
  if (maximized) window.setWindowState(Qt::WindowMaximized);
}

}  // namespace wardchalk::ui
