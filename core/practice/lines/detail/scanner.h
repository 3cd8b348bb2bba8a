#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/number/ascii.h"
#include "core/practice/lines/detail/line_tokens.h"

namespace wardchalk::practice {

/// A line being cut into pieces: how far it has come, and what was found so far.
struct Scanner {
  std::string_view line;
  std::size_t at = 0;
  Tokens tokens;

  [[nodiscard]] std::string_view rest() const { return line.substr(at); }
  [[nodiscard]] bool startsWith(std::string_view piece) const { return rest().starts_with(piece); }
  [[nodiscard]] char charAt(std::size_t place) const { return place < line.size() ? line[place] : '\0'; }
  [[nodiscard]] bool lastIs(TokenKind kind) const {
    return !tokens.list.empty() && tokens.list.back().kind == kind;
  }

  /// Adds a piece that ends at `end`, and goes on from there.
  Token& add(TokenKind kind, std::size_t end);
  /// Passes over space of every kind.
  void skipSpaces();
  void remark(LineRemarkCode code, Span where, std::string instead);
  [[nodiscard]] LineFault fault(LineFaultCode code, Span where, std::string instead = {}) const;
};

/// Bytes of the UTF-8 character at the front of `text`; 0 if its bytes make none.
[[nodiscard]] std::size_t characterLength(std::string_view text);

/// Whether a number begins here: a digit, a point before a digit, or a fraction such as ½.
[[nodiscard]] bool beginsNumber(const Scanner& scanner);
/// Reads the number that begins here.
[[nodiscard]] std::optional<LineFault> scanNumber(Scanner& scanner);

/// Whether a word or the sign of a unit begins here: letters, µ, # and the marks of feet and inches.
[[nodiscard]] bool beginsWord(const Scanner& scanner);
/// Reads the word that begins here: a unit with its power, or "per", "times", "sqrt" …
[[nodiscard]] std::optional<LineFault> scanWord(Scanner& scanner);

/// Whether a unit, by any spelling, stands here.
[[nodiscard]] bool unitFollows(const Scanner& scanner);

/// Reads a sign: × ÷ / + − √ ( ) = ≈ …
[[nodiscard]] std::optional<LineFault> scanSign(Scanner& scanner);

/// The label a line begins with ("BSA ="); empty, and nothing passed over, where there is none.
[[nodiscard]] std::string scanLabel(Scanner& scanner);

}  // namespace wardchalk::practice
