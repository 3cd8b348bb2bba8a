#pragma once

#include "core/check/finding.h"
#include "ui/working/drawing.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

/// One finding in a sentence, with the sign of what it weighs. A click or Enter goes to the entry it is
/// about.
class FindingRow : public SpokenWidget {
  Q_OBJECT

 public:
  explicit FindingRow(QWidget* parent);

  void show(const Finding& finding);
  using QWidget::show;

 Q_SIGNALS:
  void originActivated(const QString& path);

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  Severity severity_ = Severity::note;
  QString text_;
  QString field_;
  Drawing drawing_;
  QRectF sign_;
};

}  // namespace wardchalk::ui
