#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <string_view>
#include <vector>

#include "core/check/finding.h"
#include "core/check/worksheet.h"

namespace wardchalk {

/// How a question was settled: with whom it was asked, or what was looked at again. Never a name. `other` is
/// somebody or something that has no word of its own here.
enum class Answer : std::uint8_t {
  prescriber,
  pharmacist,
  seniorNurse,
  chart,
  weighedAgain,
  labelReadAgain,
  other,
};

inline constexpr std::array<std::string_view, 7> answerIds = {
    "prescriber", "pharmacist", "senior-nurse", "chart", "weighed-again", "label-read-again", "other"};

[[nodiscard]] constexpr std::string_view idOf(Answer answer) {
  return answerIds[static_cast<std::size_t>(answer)];
}

/// The answers to the questions of one worksheet. A question is known by the code of its finding; where two
/// findings have one code, one answer is for both.
struct Answers {
  std::map<FindingCode, Answer> given;

  [[nodiscard]] bool isSettled(FindingCode question) const { return given.contains(question); }
  [[nodiscard]] bool areSettled(const std::vector<FindingCode>& questions) const;

  friend bool operator==(const Answers&, const Answers&) = default;
};

/// What must be asked before an amount is shown, in the order in which it is told; nothing unless the verdict
/// is ask.
[[nodiscard]] std::vector<FindingCode> questionsOf(const Worksheet& sheet);

}  // namespace wardchalk
