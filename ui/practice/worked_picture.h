#pragma once

#include "ui/working/spoken_widget.h"
#include "ui/working/step_layout.h"

namespace wardchalk::ui {

/// The worked line of a hint as the working has it: fractions stacked and units struck out. What it says is
/// the same line in words.
class WorkedPicture : public SpokenWidget {
  Q_OBJECT

 public:
  WorkedPicture(StepView view, const QString& spoken, QWidget* parent);

  void setZoom(double zoom);
  [[nodiscard]] const StepLayout& layout() const { return layout_; }

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  StepView view_;
  StepLayout layout_;
};

}  // namespace wardchalk::ui
