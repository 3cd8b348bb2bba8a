#pragma once

#include "ui/paper/sheet_layout.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

/// Pages painted under one another on a grey ground; what they say can be read by assistive technology.
class SheetPages : public SpokenWidget {
  Q_OBJECT

 public:
  explicit SheetPages(QWidget* parent) : SpokenWidget(parent) {}

  /// Shows these pages; `spoken` is what they say.
  void show(SheetLayout sheet, const QString& spoken);
  using QWidget::show;
  [[nodiscard]] const SheetLayout& sheet() const { return sheet_; }

  /// 1 is the size of the paper.
  void setZoom(double zoom);
  [[nodiscard]] double zoom() const { return zoom_; }

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void fit();

  SheetLayout sheet_;
  double zoom_ = 1;
};

}  // namespace wardchalk::ui
