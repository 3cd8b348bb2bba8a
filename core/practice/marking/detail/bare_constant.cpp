#include "core/practice/marking/detail/bare_constant.h"

#include <algorithm>
#include <array>

namespace wardchalk::detail {

namespace {

bool isOneOf(const Number& value, std::initializer_list<Number> constants) {
  return std::ranges::find(constants, value) != constants.end();
}

std::optional<LineNote> noteOf(const Term& term) {
  if (!term.units.empty()) return std::nullopt;
  if (isOneOf(term.value, {Number::ratio(22, 10), Number::ratio(2205, 1000), Number::ratio(22046, 10000),
                           Number::ratio(220462, 100000)}))
    return LineNote::lbPerKgMissing;
  if (isOneOf(term.value, {Number::ratio(4536, 10000), Number::ratio(454, 1000),
                           Number::ratio(453592, 1000000), Number::ratio(45359237, 100000000)}))
    return LineNote::kgPerLbMissing;
  return std::nullopt;
}

}  // namespace

std::optional<LineNote> barePoundsConstant(const StudentWorking& working) {
  for (const StudentLine& line : working.lines)
    for (const LineSide& side : line.sides)
      for (const Factor& factor : side.chain.factors) {
        // the unit of a constant may stand below it: "2.2 lb/kg" is whole, "2.2" is not
        if (!factor.over.units.empty() && !factor.under.units.empty()) continue;
        for (const Term* term : {&factor.over, &factor.under})
          if (const auto note = noteOf(*term)) return note;
      }
  return std::nullopt;
}

}  // namespace wardchalk::detail
