#pragma once

#include <optional>
#include <vector>

#include "core/check/answers.h"
#include "core/check/worksheet.h"

namespace wardchalk {

/// The questions of the worksheet that stands, and how each was settled. Any change of the case, of the house
/// rules or of the questions voids every answer: it was given to another sheet.
class Questioning {
 public:
  /// This worksheet stands now.
  void follow(const Worksheet& sheet);
  /// How a question was settled, or that it is open again. False, and nothing changes, when it is not asked
  /// or not settled so.
  bool answer(FindingCode question, std::optional<Answer> how);
  void voidAnswers() { answers_ = {}; }

  [[nodiscard]] const Answers& answers() const { return answers_; }

 private:
  Case given_;
  HouseRules rules_;
  std::vector<FindingCode> questions_;
  Answers answers_;
};

}  // namespace wardchalk
