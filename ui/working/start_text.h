#pragma once

#include "ui/working/drawing.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

/// The words of the empty pane.
class StartText : public SpokenWidget {
  Q_OBJECT

 public:
  explicit StartText(QWidget* parent);

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  QString title_;
  QString what_;
  QString first_;
  QString none_;
  Drawing drawing_;
};

}  // namespace wardchalk::ui
