#pragma once

#include "core/check/finding.h"
#include "ui/working/drawing.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

/// One finding in a sentence, with the sign of what it weighs. Its origin is the entry it is about.
class FindingRow : public SpokenWidget {
  Q_OBJECT

 public:
  explicit FindingRow(QWidget* parent);

  void show(const Finding& finding);
  using QWidget::show;

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  Severity severity_ = Severity::note;
  QString text_;
  Drawing drawing_;
  QRectF sign_;
};

}  // namespace wardchalk::ui
