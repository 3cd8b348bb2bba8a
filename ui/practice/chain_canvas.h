#pragma once

#include "core/practice/lines/chain_builder.h"
#include "ui/working/spoken_widget.h"
#include "ui/working/step_layout.h"

namespace wardchalk::ui {

/// A chain as it is being put together, painted like a step of the working: units strike out as they meet,
/// and what is left over stands behind it. One factor is chosen; Left and Right choose another. It never says
/// what the chain comes to: that is for the student to work out.
class ChainCanvas : public SpokenWidget {
  Q_OBJECT

 public:
  explicit ChainCanvas(QWidget* parent);

  /// Shows the chain with this factor chosen; -1: none.
  void show(const ChainWork& work, int chosen);
  using QWidget::show;
  [[nodiscard]] int chosen() const { return chosen_; }
  [[nodiscard]] const StepLayout& layout() const { return layout_; }

 Q_SIGNALS:
  void chosenChanged(int factor);
  void turnWanted();

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void walk(int direction);
  [[nodiscard]] QRectF factorRect(int factor) const;
  [[nodiscard]] int factorAt(const QPointF& at) const;
  [[nodiscard]] QString toldOf(const ChainWork& work) const;

  ChainWork work_;
  StepLayout layout_;
  int chosen_ = -1;
};

/// What stands beneath a chain: "Left over: mg²/mL — not mL." Empty for an empty chain.
[[nodiscard]] QString leftOverOf(const ChainWork& work);

}  // namespace wardchalk::ui
