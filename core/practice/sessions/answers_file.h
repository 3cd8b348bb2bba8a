#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/number/refusal.h"

namespace wardchalk {

/// A line as a student wrote it, to the letter.
struct WrittenAnswer {
  std::string id;    ///< of the line that is asked for: a step's, or "verdict"
  std::string text;  ///< empty when nothing was written
  friend bool operator==(const WrittenAnswer&, const WrittenAnswer&) = default;
};

/// Longest line of an answer, in bytes.
inline constexpr std::size_t longestAnswer = 500;

/// Appends the answers as one JSON object on one line, without a line break.
void writeAnswers(std::string& out, const std::vector<WrittenAnswer>& lines);

/// Reads an answers file whole or refuses it whole, with the path of what is wrong. Ids are those of lines;
/// each stands once at most. What was written may be anything: it is for the marking to judge.
[[nodiscard]] Result<std::vector<WrittenAnswer>> readAnswers(std::string_view json);

}  // namespace wardchalk
