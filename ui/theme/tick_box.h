#pragma once

#include <QCheckBox>

namespace wardchalk::ui {

/// A box to tick whose edge is seen on every desktop: styles draw it as faint as a dark window.
class TickBox : public QCheckBox {
 public:
  using QCheckBox::QCheckBox;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wardchalk::ui
