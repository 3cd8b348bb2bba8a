#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/practice/lines/student_line.h"

namespace wardchalk::practice {

/// A part of what is said that may be read as a line by itself.
struct SpokenPiece {
  Span at;                 ///< where it stands in the text
  std::string text;        ///< as long: its joining words are blank or signs
  bool continues = false;  ///< it begins with a sign and goes on from the value before it
  bool needed = false;     ///< what is said cannot be understood without it
};

/// Cuts a text in which a sum is talked through ("350 mg ÷ 500 mg/mL gives 0.7 mL", "4 mL, from 2 × 2 mL",
/// "4 mL (2 × 2 mL)", "… so 4 mL") into its parts, each before what follows from it; the last holds the
/// answer. `text` has plain signs. A division by parts (a "rest") is its sum and its answer alone, and what
/// only tries an answer ("check: …") or comments on it is left out.
[[nodiscard]] std::vector<SpokenPiece> spokenPieces(std::string_view text);

/// Whether the answer is not what stands last or is worked last: a division by parts, or an answer that is
/// tried behind it.
[[nodiscard]] bool isTalkedThrough(std::string_view text);

}  // namespace wardchalk::practice
