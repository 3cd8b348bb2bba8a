#pragma once

#include <QStringList>
#include <QWidget>
#include <optional>

#include "core/check/worksheet.h"
#include "core/words/amount_words.h"
#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

class AmountText;
class QuestionList;

/// The amount to give, or why there is none. When the order must be asked about, the amount stays folded
/// until every question is ticked as asked; any change of the case voids the ticks.
class AmountWidget : public QWidget {
  Q_OBJECT

 public:
  explicit AmountWidget(QWidget* parent);

  void show(const Worksheet& sheet);
  using QWidget::show;

  /// Takes every tick back; the amount folds away.
  void voidTicks();

  [[nodiscard]] int heightAt(int width);
  void setScale(double scale);
  void setScheme(Scheme scheme);

  /// Whether an amount can be read now.
  [[nodiscard]] bool showsAmount() const;

  /// Whether there are questions to tick before an amount is shown.
  [[nodiscard]] bool asks() const { return !words_.asks.empty(); }

  /// With whom each question was asked, once every one is answered.
  [[nodiscard]] std::optional<QStringList> asked() const;

  /// What takes the keyboard, in reading order.
  [[nodiscard]] QList<QWidget*> focusOrder() const;

 Q_SIGNALS:
  /// Ticks have changed what is shown, and with it the height.
  void changed();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void refresh();
  void arrange(int width);

  QuestionList* questions_;
  AmountText* text_;
  AmountWords words_;
  Case given_;
  HouseRules rules_;
  Scheme scheme_ = Scheme::light;
};

}  // namespace wardchalk::ui
