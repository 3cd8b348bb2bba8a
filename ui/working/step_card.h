#pragma once

#include <vector>

#include "ui/working/spoken_widget.h"
#include "ui/working/step_layout.h"

namespace wardchalk::ui {

/// One step of the working. It is laid out only when its step, width or size of letters changes.
///
/// Pointing at a number, or walking to it with Left and Right, lights where it came from; a click or Enter
/// goes there.
class StepCard : public SpokenWidget {
  Q_OBJECT

 public:
  explicit StepCard(QWidget* parent);

  /// True if the view differs from the one shown, so that the card is painted anew.
  bool show(const StepView& view);
  using QWidget::show;

  [[nodiscard]] const StepView& view() const { return view_; }
  [[nodiscard]] const StepLayout& layout() const { return layout_; }
  /// How often this card has been laid out.
  [[nodiscard]] int timesLaidOut() const { return timesLaidOut_; }

  /// Lights every number that comes from this origin; empty lights none.
  void light(const QString& origin);

 Q_SIGNALS:
  void lit(const QString& origin);

 protected:
  double layOutAt(int width) override;
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  [[nodiscard]] int hitAt(const QPointF& at) const;
  [[nodiscard]] QString ownOrigin() const;
  void walk(int direction);
  void activate(int hit);
  void setMarked(int hit);

  StepView view_;
  StepLayout layout_;
  QString lit_;
  int marked_ = -1;  ///< the number the keyboard stands on
  int hovered_ = -1;
  int timesLaidOut_ = 0;
};

}  // namespace wardchalk::ui
