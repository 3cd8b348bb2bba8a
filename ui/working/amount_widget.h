#pragma once

#include <QStringList>
#include <QWidget>
#include <optional>
#include <vector>

#include "core/check/answers.h"
#include "core/check/worksheet.h"
#include "core/words/amount_words.h"
#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

class AmountText;
class QuestionList;

/// The amount to give, or why there is none. When the order must be asked about, the amount stays folded
/// until every question is settled. Ticks are what is being answered; that it is settled is told from
/// outside.
class AmountWidget : public QWidget {
  Q_OBJECT

 public:
  explicit AmountWidget(QWidget* parent);

  /// The ticks of another case, of other house rules or of other questions go.
  void show(const Worksheet& sheet, const Answers& answers = {});
  using QWidget::show;
  /// How the questions are settled now.
  void showAnswers(const Answers& answers);

  /// Takes every tick back; the amount folds away.
  void voidTicks();

  [[nodiscard]] int heightAt(int width);
  void setScale(double scale);
  void setScheme(Scheme scheme);

  /// Whether an amount can be read now.
  [[nodiscard]] bool showsAmount() const;

  /// Whether there are questions to tick before an amount is shown.
  [[nodiscard]] bool asks() const { return !words_.asks.empty(); }

  /// With whom each question was asked, once every one is settled.
  [[nodiscard]] std::optional<QStringList> asked() const;

  /// What takes the keyboard, in reading order.
  [[nodiscard]] QList<QWidget*> focusOrder() const;

 Q_SIGNALS:
  /// A question was ticked with whom it was asked, or is open again.
  void answered(FindingCode question, std::optional<Answer> how);
  /// Ticks have changed what is shown, and with it the height.
  void changed();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void tellAnswers();
  [[nodiscard]] bool isSettled() const;
  void refresh();
  void arrange(int width);

  QuestionList* questions_;
  AmountText* text_;
  AmountWords words_;
  std::vector<FindingCode> asked_;  // of each question, in their order
  Answers answers_;
  Case given_;
  HouseRules rules_;
  Scheme scheme_ = Scheme::light;
};

}  // namespace wardchalk::ui
