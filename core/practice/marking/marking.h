#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/practice/marking/line_mark.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

namespace detail {
struct NumberLine;
}

/// What a student says of the order as a whole.
enum class VerdictWord : std::uint8_t { safe, ask, unsafe, doesNotFit };

/// The verdict in a student's words: "safe", "unsafe", "ask", "too low", "hold and ask", "does not fit"; none
/// if it is none of them. Case and full stops do not matter.
[[nodiscard]] std::optional<VerdictWord> readVerdictWord(std::string_view text);

/// Whether the text says that nothing is to be measured: "do not measure", "hold".
[[nodiscard]] bool saysNothingMeasured(std::string_view text);

/// The verdict that the key gives, or that the student's own numbers give where they were carried on.
[[nodiscard]] VerdictWord verdictWordOf(const Worksheet& key, const Replay& carried);

/// Marks the lines of one problem in their order. Each line is judged on the student's own earlier answers,
/// so that one mistake costs one mark.
class Marking {
 public:
  explicit Marking(const Problem& problem);

  /// Marks the answer to `problem.asks[ask]` and keeps it for the lines after it. An answer given anew
  /// replaces the earlier one; later lines must then be marked again.
  LineMark mark(std::size_t ask, std::string_view text);

  /// The student's own answers before this line, as far as they are numbers.
  [[nodiscard]] std::vector<CarriedAnswer> carriedTo(std::size_t ask) const;

 private:
  [[nodiscard]] LineMark markVerdictWord(const Replay& carried, std::string_view text) const;
  LineMark markNumber(std::size_t ask, StepId step, std::string_view text);
  LineMark markRead(std::size_t ask, StepId step, const StudentLine& line, const Replay& carried);
  LineMark markAnswer(std::size_t ask, StepId step, const detail::NumberLine& number, const Replay& carried);

  const Problem& problem_;
  RightValues right_;
  std::vector<std::optional<CarriedAnswer>> answers_;  // one for each ask
};

/// Marks all answers, given in the order of the asks; an answer that is missing is an empty text.
[[nodiscard]] std::vector<LineMark> markAnswers(const Problem& problem, std::span<const std::string> answers);

}  // namespace wardchalk
