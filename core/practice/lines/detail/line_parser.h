#pragma once

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

/// Puts the pieces together by the grammar of student_line.h.
[[nodiscard]] std::variant<ParsedLine, LineFault> parseLine(std::string_view line,
                                                            const std::vector<Token>& tokens);

}  // namespace wardchalk::practice
