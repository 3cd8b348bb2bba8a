#pragma once

#include <QWidget>
#include <optional>

#include "core/check/shown.h"
#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

class AmountText;
class QuestionList;

/// The amount to give, or why there is none. When the order must be asked about, the questions stand in its
/// place, and the amount is nowhere in here until each of them is settled.
class AmountWidget : public QWidget {
  Q_OBJECT

 public:
  explicit AmountWidget(QWidget* parent);

  void show(const Shown& shown);
  using QWidget::show;

  [[nodiscard]] int heightAt(int width);
  void setScale(double scale);
  void setScheme(Scheme scheme);

  /// Whether an amount can be read now.
  [[nodiscard]] bool showsAmount() const;

  [[nodiscard]] AmountText* text() const { return text_; }
  /// What takes the keyboard, in reading order.
  [[nodiscard]] QList<QWidget*> focusOrder() const;

 Q_SIGNALS:
  /// How a question was settled was chosen, or that it is open again.
  void answered(FindingCode question, std::optional<Answer> how);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void arrange(int width);

  QuestionList* questions_;
  AmountText* text_;
  Scheme scheme_ = Scheme::light;
};

}  // namespace wardchalk::ui
