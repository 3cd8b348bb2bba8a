#pragma once

#include <QStringList>
#include <QWidget>
#include <optional>
#include <vector>

#include "core/check/answers.h"
#include "ui/theme/board_palette.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;

namespace wardchalk::ui {

/// The questions that must have been asked before an amount is shown, each with a tick and with whom it was
/// asked.
class QuestionList : public QWidget {
  Q_OBJECT

 public:
  explicit QuestionList(QWidget* parent);

  /// Shows these questions, unticked.
  void setQuestions(const QStringList& questions);
  void voidTicks();

  [[nodiscard]] bool isEmpty() const { return rows_.empty(); }
  [[nodiscard]] bool allAnswered() const;
  /// How each is answered, in their order; nothing for one that is not.
  [[nodiscard]] std::vector<std::optional<Answer>> answers() const;
  /// With whom each was asked, in their order.
  [[nodiscard]] QStringList whomAsked() const;

  /// What takes the keyboard, in reading order.
  [[nodiscard]] QList<QWidget*> focusOrder() const;

  void setScale(double scale);
  void setScheme(Scheme scheme);

 Q_SIGNALS:
  void answered();

 private:
  struct Row {
    QCheckBox* tick;
    QLabel* question;
    QComboBox* whom;
  };
  void addRow(const QString& question);
  void style(const Row& row) const;

  QGridLayout* grid_;
  std::vector<Row> rows_;
  Scheme scheme_ = Scheme::light;
  double scale_ = 1;
};

}  // namespace wardchalk::ui
