#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/check/answers.h"
#include "core/words/amount_words.h"
#include "ui/theme/board_palette.h"

class QGridLayout;
class QLabel;

namespace wardchalk::ui {

class StillBox;

/// The questions that must be settled before an amount is shown, each with a box to choose how it was. What
/// is chosen is told; that it counts, and what the boxes show, comes from outside.
class QuestionList : public QWidget {
  Q_OBJECT

 public:
  explicit QuestionList(QWidget* parent);

  /// Shows these questions with how each is settled; boxes of questions that stay are kept.
  void show(const std::vector<QuestionWords>& questions, const std::vector<std::optional<Answer>>& answers);
  using QWidget::show;

  [[nodiscard]] bool isEmpty() const { return rows_.empty(); }

  /// What takes the keyboard, in reading order.
  [[nodiscard]] QList<QWidget*> focusOrder() const;

  void setScale(double scale);
  void setScheme(Scheme scheme);

 Q_SIGNALS:
  /// How a question was settled was chosen, or that it is open again.
  void answered(FindingCode question, std::optional<Answer> how);

 private:
  struct Row {
    FindingCode code;
    std::string text;
    QLabel* question;
    StillBox* how;
  };
  [[nodiscard]] bool shows(const std::vector<QuestionWords>& questions) const;
  void addRow(const QuestionWords& question);
  void style(const Row& row) const;

  QGridLayout* grid_;
  std::vector<Row> rows_;
  Scheme scheme_ = Scheme::light;
  double scale_ = 1;
};

}  // namespace wardchalk::ui
