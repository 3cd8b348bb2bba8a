#pragma once

#include <QString>
#include <functional>

class QWidget;

namespace wardchalk::ui {

/// Draws the widget that `show` gives on every desktop, at 100 % and with letters of 200 %, into the folder
/// that WARDCHALK_SHOTS names. False when none is named.
bool shootDialog(const QString& name, const std::function<QWidget*()>& show);

}  // namespace wardchalk::ui
