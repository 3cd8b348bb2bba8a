#pragma once

#include <QComboBox>

namespace wardchalk::ui {

/// A box that changes by nothing but a choice from its open list: no letter chooses, at any speed, no arrow
/// walks over words that are not meant, and no wheel. Space, Enter, arrows and F4 open the list.
class StillBox : public QComboBox {
  Q_OBJECT

 public:
  explicit StillBox(QWidget* parent = nullptr);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
};

}  // namespace wardchalk::ui
