#pragma once

#include <QByteArray>

class QWidget;

namespace wardchalk::ui {

/// Puts the window where it was when it was closed, as its geometry was kept; nothing kept leaves it as it
/// is. What is kept may be damaged, or of a screen that is not there any more: the window is always brought
/// whole onto a screen, so that the caution at its bottom is seen, and is never without a frame or hidden
/// away.
void restorePlace(QWidget& window, const QByteArray& kept);

}  // namespace wardchalk::ui
