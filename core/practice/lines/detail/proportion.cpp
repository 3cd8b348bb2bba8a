#include "core/practice/lines/detail/proportion.h"

#include <array>
#include <string>

#include "core/number/ascii.h"
#include "core/practice/lines/detail/places.h"

namespace wardchalk::practice {

namespace {

std::string_view trimmed(std::string_view text) {
  while (text.starts_with(' ')) text.remove_prefix(1);
  while (text.ends_with(' ')) text.remove_suffix(1);
  return text;
}

using Pair = std::array<std::string_view, 2>;

/// What stands on the two sides of a sign that stands once.
std::optional<Pair> halves(std::string_view text, std::string_view sign) {
  const std::size_t at = text.find(sign);
  if (at == std::string_view::npos || text.find(sign, at + sign.size()) != std::string_view::npos)
    return std::nullopt;
  return Pair{trimmed(text.substr(0, at)), trimmed(text.substr(at + sign.size()))};
}

/// "x", "x mL", "xmL".
bool isUnknown(std::string_view term) {
  if (term.empty() || lowered(term[0]) != 'x') return false;
  for (const char c : term)
    if (isDigit(c) || c == ':' || c == '=') return false;
  return true;
}

/// Both terms of a ratio or of a fraction.
std::optional<Pair> termsOf(std::string_view side) {
  if (const auto ratio = halves(side, ":")) return ratio;
  return halves(side, "/");
}

std::string solved(std::string_view a, std::string_view b, std::string_view under) {
  return "(" + std::string(a) + ") × (" + std::string(b) + ") / (" + std::string(under) + ")";
}

/// Of a : b = c : d the line that works the unknown one out; a·d = b·c.
std::optional<std::string> workedOut(const Pair& left, const Pair& right) {
  const std::array terms = {left[0], left[1], right[0], right[1]};
  int unknowns = 0;
  for (const std::string_view term : terms) unknowns += isUnknown(term) ? 1 : 0;
  if (unknowns != 1) return std::nullopt;
  if (isUnknown(terms[0])) return solved(terms[1], terms[2], terms[3]);
  if (isUnknown(terms[1])) return solved(terms[0], terms[3], terms[2]);
  if (isUnknown(terms[2])) return solved(terms[0], terms[3], terms[1]);
  return solved(terms[1], terms[2], terms[0]);
}

}  // namespace

std::optional<StudentLine> readProportion(std::string_view text, Gram gram) {
  auto sides = halves(text, "::");
  if (!sides) sides = halves(text, "=");
  if (!sides) return std::nullopt;
  const auto left = termsOf((*sides)[0]);
  const auto right = termsOf((*sides)[1]);
  const auto line = left && right ? workedOut(*left, *right) : std::nullopt;
  if (!line) return std::nullopt;
  ReadLine read = readStudentLine(*line, gram);
  auto* found = std::get_if<StudentLine>(&read);
  if (!found || found->sides.size() != 1) return std::nullopt;
  LineSide& side = found->sides.front();
  side.unitsOpen = true;
  side.units = {};
  standAt(*found, {0, text.size()});
  return std::move(*found);
}

}  // namespace wardchalk::practice
