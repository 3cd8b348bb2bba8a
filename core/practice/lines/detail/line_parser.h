#pragma once

#include <cstdint>
#include <string_view>
#include <variant>
#include <vector>

#include "core/practice/lines/detail/line_part.h"
#include "core/practice/lines/detail/line_tokens.h"

namespace wardchalk::practice {

/// The sides of a line, and the relations between them.
struct ParsedLine {
  std::vector<Part> sides;
  std::vector<Token> relations;
  std::vector<LineRemark> remarks;  ///< on numbers, which depend on the unit beside them
};

/// What becomes of fractions that could be read in two ways.
enum class Slashes : std::uint8_t { clear, leftToRight };

/// Puts the pieces together by the grammar of student_line.h.
[[nodiscard]] std::variant<ParsedLine, LineFault> parseLine(std::string_view line,
                                                            const std::vector<Token>& tokens,
                                                            Slashes slashes);

}  // namespace wardchalk::practice
