#pragma once

#include <QObject>

#include "core/session/questioning.h"
#include "ui/working/amount_widget.h"

namespace wardchalk::ui::test {

/// Keeps the answers to an amount's questions outside it, as the window does.
class KeptAnswers : public QObject {
 public:
  explicit KeptAnswers(AmountWidget& amount) {
    connect(&amount, &AmountWidget::answered, this,
            [this, &amount](FindingCode question, std::optional<Answer> how) {
              questioning_.answer(question, how);
              amount.showAnswers(questioning_.answers());
            });
  }

  /// This sheet stands now; the answers that are left.
  const Answers& follow(const Worksheet& sheet) {
    questioning_.follow(sheet);
    return questioning_.answers();
  }

 private:
  Questioning questioning_;
};

}  // namespace wardchalk::ui::test
