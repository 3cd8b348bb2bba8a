#pragma once

#include <QScrollBar>

namespace wardchalk::ui {

/// A scroll bar in plain colours. The one that the style "fusion" draws blends its slopes of colour in
/// several threads, which took a fifth of the time from a key to the painted pane: there the bar changes with
/// nearly every key; and it shades them from the window, so that in dark and in high contrast nothing is seen
/// of them. In other styles it is the desktop's own.
class PlainScrollBar : public QScrollBar {
 public:
  explicit PlainScrollBar(Qt::Orientation orientation, QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wardchalk::ui
