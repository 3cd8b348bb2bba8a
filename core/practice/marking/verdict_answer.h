#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/number/number.h"
#include "core/practice/lines/student_line.h"

namespace wardchalk {

/// What a student says of the order as a whole.
enum class VerdictWord : std::uint8_t { safe, ask, unsafe, doesNotFit };

/// The reason that is given for it.
enum class VerdictReason : std::uint8_t {
  tooLow,
  tooHigh,
  overMaximum,
  schedule,
  age,
  route,
  tooConcentrated,
  tooFast
};

/// Two amounts held against one another: "200 mg > 180 mg", "300 mg is less than 486 mg", "50 mg is outside
/// 30 mg to 40 mg".
struct StatedComparison {
  enum class Relation : std::uint8_t { below, atMost, above, atLeast, outside, within };
  LineSide left;
  Relation relation = Relation::below;
  LineSide right;
  std::optional<LineSide> upper;  ///< of a range: its other end
};

/// A verdict in a student's words.
struct VerdictAnswer {
  VerdictWord word;  ///< that stands there, or that the reason alone means
  bool wordSaid = true;
  std::optional<VerdictReason> reason;
  std::optional<StatedComparison> compared;
  std::optional<LineSide> figure = {};  ///< the only amount beside it: "safe, under 137.6 mg"
};

/// Reads "safe", "unsafe, too high", "hold and ask: dose too low", "wrong schedule", "safe, 300 mg is less
/// than 486 mg". Words that say nothing of it are passed over. None where a word denies or doubts, or where
/// it says two things at once.
[[nodiscard]] std::optional<VerdictAnswer> readVerdictAnswer(std::string_view text);

/// Its word alone.
[[nodiscard]] std::optional<VerdictWord> readVerdictWord(std::string_view text);

/// Small letters, figures and single spaces: how words are compared.
[[nodiscard]] std::string plainWords(std::string_view text);

}  // namespace wardchalk
