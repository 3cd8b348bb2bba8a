#pragma once

#include <optional>
#include <vector>

#include "core/check/answers.h"
#include "core/check/worksheet.h"

namespace wardchalk {

/// What may be seen of a worksheet: on ask, until every question is settled, and where a second check is
/// required, until one agrees, neither amount nor flow, nor the steps that come to them. Every view of a
/// worksheet draws one of these. A worksheet that is handed to a view as it is becomes one without answers:
/// who forgets to ask tells nothing.
class Shown {
 public:
  // NOLINTNEXTLINE(google-explicit-constructor): see above
  Shown(Worksheet whole, Answers answers = {});

  /// What is left of the worksheet.
  [[nodiscard]] const Worksheet& sheet() const { return sheet_; }
  [[nodiscard]] const Worksheet* operator->() const { return &sheet_; }

  /// In the order in which they are told.
  [[nodiscard]] const std::vector<FindingCode>& questions() const { return questions_; }
  /// How a question was settled; no value while it is open.
  [[nodiscard]] std::optional<Answer> answerTo(FindingCode question) const;
  /// Whether a question is not settled yet.
  [[nodiscard]] bool isOpen() const { return open_; }
  /// Whether what is to be measured, or how, is left out until every question is settled.
  [[nodiscard]] bool waits() const { return asksFirst_ && open_; }
  /// Whether what is to be measured is left out until a second check agrees (R27).
  [[nodiscard]] bool awaitsSecondCheck() const { return awaitsSecond_; }
  /// Whether something was, or is, left out for the questions: then they stand where the amount will.
  [[nodiscard]] bool asksFirst() const { return asksFirst_; }

 private:
  Worksheet sheet_;
  Answers answers_;
  std::vector<FindingCode> questions_;
  bool open_;
  bool asksFirst_;
  bool awaitsSecond_;
};

}  // namespace wardchalk
