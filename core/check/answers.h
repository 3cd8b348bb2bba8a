#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string_view>
#include <vector>

#include "core/check/finding.h"
#include "core/check/worksheet.h"

namespace wardchalk {

/// How a question was settled: whom it was put to, or what was looked at again. Never a name. The list, with
/// the ids of the command line, is in answers.def.
enum class Answer : std::uint8_t {
#define WARDCHALK_ANSWER(name, id) name,
#include "core/check/answers.def"
#undef WARDCHALK_ANSWER
};

inline constexpr std::array answerIds = {
#define WARDCHALK_ANSWER(name, id) std::string_view(id),
#include "core/check/answers.def"
#undef WARDCHALK_ANSWER
};

[[nodiscard]] constexpr std::string_view idOf(Answer answer) {
  return answerIds[static_cast<std::size_t>(answer)];
}

/// No value for a text that is none of the ids.
[[nodiscard]] std::optional<Answer> answerOf(std::string_view id);

/// The answers to the questions of one worksheet. A question is known by the code of its finding; where two
/// findings have one code, one answer is for both.
struct Answers {
  std::map<FindingCode, Answer> given;
  bool secondAgrees = false;  ///< a second person's check was recorded, and agrees

  [[nodiscard]] bool isSettled(FindingCode question) const { return given.contains(question); }
  [[nodiscard]] bool areSettled(const std::vector<FindingCode>& questions) const;

  friend bool operator==(const Answers&, const Answers&) = default;
};

/// What must be asked before an amount is shown, each code once, in the order in which it is told; nothing
/// unless the verdict is ask.
[[nodiscard]] std::vector<FindingCode> questionsOf(const Worksheet& sheet);

/// What settles a question. A doubt about a fact is settled by looking again, and not by anybody's word; what
/// an order or a reference says, by whoever answers for it. Two people who differ settle it by an entry that
/// changes or by another second check, and how many doses in 24 h an order as needed means must stand in the
/// case; neither is settled by an answer: then there is none.
[[nodiscard]] std::vector<Answer> whatSettles(FindingCode question);

[[nodiscard]] bool settles(Answer answer, FindingCode question);

/// Every question of the worksheet with the first of these that settles it; the others stay open.
[[nodiscard]] Answers answersBy(const Worksheet& sheet, const std::vector<Answer>& ways);

}  // namespace wardchalk
