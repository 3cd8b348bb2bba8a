#pragma once

#include <QPixmapCache>
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
  ~StepCard() override;

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
  void hideEvent(QHideEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  [[nodiscard]] int hitAt(const QPointF& at) const;
  [[nodiscard]] QString ownOrigin() const;
  [[nodiscard]] bool comesFrom(const QString& origin) const;
  void walk(int direction);
  void activate(int hit);
  void setMarked(int hit);
  void paintWhole(QPainter& painter) const;
  void paintFromPicture(QPainter& painter);
  void dropPicture();

  StepView view_;
  StepLayout layout_;
  QString lit_;
  int marked_ = -1;  ///< the number the keyboard stands on
  int hovered_ = -1;
  int timesLaidOut_ = 0;
  bool isLit_ = false;
  bool isPainted_ = false;  ///< as it is, at least once
  /// The card as it was last painted, without light and keyboard, from the second time on: one that other
  /// steps only push up or down is shown again and not set letter by letter. None of a card that is hidden.
  QPixmapCache::Key picture_;
  Scheme picturedIn_ = Scheme::light;
};

}  // namespace wardchalk::ui
