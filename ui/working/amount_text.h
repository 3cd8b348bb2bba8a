#pragma once

#include "core/words/amount_words.h"
#include "ui/working/box.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

/// The words in the place of the amount: what to measure and how, or why there is nothing to measure.
class AmountText : public SpokenWidget {
  Q_OBJECT

 public:
  explicit AmountText(QWidget* parent);

  void show(const AmountWords& words);
  using QWidget::show;

  /// Whether an amount can be read here now.
  [[nodiscard]] bool showsAmount() const { return showsAmount_; }
  [[nodiscard]] const Drawing& drawing() const { return drawing_; }

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  double layOutAmount(const Metrics& metrics);
  double putBeside(Box headline, Box lines, const Metrics& metrics);

  Drawing drawing_;
  QString sentence_;  ///< stands alone when there is no amount to read
  QString done_;
  QString measure_;
  QString dose_;
  QString prepare_;
  QString run_;
  QString label_;
  QString device_;
  QString when_;
  QString rounding_;
  bool showsAmount_ = false;
};

}  // namespace wardchalk::ui
