#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/practice/lines/student_line.h"
#include "core/unit/unit_product.h"

namespace wardchalk::practice {

enum class TokenKind : std::uint8_t {
  number,
  unit,
  times,
  divide,
  slash,
  plus,
  minus,
  root,
  rootBefore,  // "^0.5" behind a parenthesis
  open,
  close,
  relation,
  end,
};

/// A piece of a line with what it means.
struct Token {
  TokenKind kind = TokenKind::end;
  Span at;
  Number value;       ///< of a number
  int decimals = 0;   ///< of a number: decimals typed; -1 for a fraction such as ½
  UnitProduct units;  ///< of a unit: one, or a power written out ("m⁴" is m2, m2)
  LineRelation relation = LineRelation::equal;
};

/// The pieces of a line, closed by one of kind `end`, and what to remark about their spelling.
struct Tokens {
  std::string label;
  std::vector<Token> list;
  std::vector<LineRemark> remarks;
};

/// Cuts a line into its pieces, or says which one cannot be read. A "g" is medicine's.
[[nodiscard]] std::variant<Tokens, LineFault> tokensOf(std::string_view line);

/// A fault at a place of the line, with the beginning of what stands there.
[[nodiscard]] LineFault faultAt(LineFaultCode code, std::string_view line, Span at, std::string instead = {});

}  // namespace wardchalk::practice
