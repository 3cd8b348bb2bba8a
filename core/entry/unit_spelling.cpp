#include "core/entry/unit_spelling.h"

#include <algorithm>
#include <array>

#include "core/number/ascii.h"

namespace wardchalk {

namespace {

/// The kinds of entries, one bit each, so that a line of the table can name several.
constexpr unsigned bitOf(SpelledIn where) { return 1U << static_cast<unsigned>(where); }
constexpr unsigned age = bitOf(SpelledIn::age);
constexpr unsigned height = bitOf(SpelledIn::height);
constexpr unsigned time = bitOf(SpelledIn::time);
constexpr unsigned stroke = bitOf(SpelledIn::stroke);
constexpr unsigned line = bitOf(SpelledIn::line);
constexpr unsigned anywhere = ~0U;
constexpr unsigned entries = ~line;

enum class Capitals : std::uint8_t { any, exact };

struct Row {
  std::string_view typed;
  Capitals capitals;
  SpellingUse how;
  Unit unit;
  int over;
  int under;
  unsigned where;
};

constexpr std::array table = {
#define WARDCHALK_SPELLING(typed, capitals, how, unit, over, under, where) \
  Row{typed, Capitals::capitals, SpellingUse::how, Unit::unit, over, under, where},
#include "core/entry/unit_spellings.def"
#undef WARDCHALK_SPELLING
};

constexpr std::size_t longest = [] {
  std::size_t most = 0;
  for (const Row& row : table) most = std::max(most, row.typed.size());
  return most;
}();

/// The rows by the length of what is typed, each length from top to bottom, so that a word is held against
/// few.
struct ByLength {
  std::array<std::uint16_t, table.size()> rows{};
  std::array<std::uint16_t, longest + 2>
      starts{};  ///< where the rows of each length begin; those of the next end it
};
constexpr ByLength byLength = [] {
  ByLength all;
  std::uint16_t filled = 0;
  for (std::size_t length = 0; length <= longest; ++length) {
    all.starts[length] = filled;
    for (std::size_t row = 0; row < table.size(); ++row)
      if (table[row].typed.size() == length) all.rows[filled++] = static_cast<std::uint16_t>(row);
  }
  all.starts[longest + 1] = filled;
  return all;
}();

constexpr std::array<std::string_view, 4> courseWords = {"course", "total", "cycle", "treatment"};

}  // namespace

std::optional<SpelledUnit> spelledUnit(std::string_view typed, SpelledIn where) {
  if (typed.size() > longest) return std::nullopt;
  for (auto i = byLength.starts[typed.size()]; i < byLength.starts[typed.size() + 1]; ++i) {
    const Row& row = table[byLength.rows[i]];
    const bool same = row.capitals == Capitals::any ? isInSmallLetters(typed, row.typed) : row.typed == typed;
    if (same && (row.where & bitOf(where)) != 0)
      return SpelledUnit{row.how, row.unit, Number::ratio(row.over, row.under)};
  }
  return std::nullopt;
}

bool isCourseWord(std::string_view word) {
  return std::find(courseWords.begin(), courseWords.end(), word) != courseWords.end();
}

}  // namespace wardchalk
