#pragma once

#include <QObject>
#include <utility>

#include "core/session/questioning.h"
#include "ui/working/amount_widget.h"

namespace wardchalk::ui::test {

/// Keeps the answers to a view's questions outside it, as the window does, and shows it what may be seen.
template <typename View>
class KeptAnswers : public QObject {
 public:
  KeptAnswers(View& view, const AmountWidget& amount) : view_(view) {
    connect(&amount, &AmountWidget::answered, this, [this](FindingCode question, std::optional<Answer> how) {
      questioning_.answer(question, how);
      refresh();
    });
  }

  /// This sheet stands now.
  void follow(Worksheet sheet) {
    sheet_ = std::move(sheet);
    forget(sheet_);
    refresh();
  }
  /// Another sheet stands, which the view has not heard of.
  void forget(const Worksheet& sheet) { questioning_.follow(sheet); }
  [[nodiscard]] const Answers& answers() const { return questioning_.answers(); }

 private:
  void refresh() { view_.show(Shown(sheet_, questioning_.answers())); }

  View& view_;
  Worksheet sheet_;
  Questioning questioning_;
};

}  // namespace wardchalk::ui::test
