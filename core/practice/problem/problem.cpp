#include "core/practice/problem/problem.h"

#include <algorithm>

#include "core/practice/problem/amount_line.h"
#include "core/practice/problem/asked_decimals.h"

namespace wardchalk {

std::string_view idOf(const Ask& ask) { return ask.step ? idOf(*ask.step) : std::string_view("verdict"); }

std::optional<Ask> askFor(std::string_view id, const Worksheet& key) {
  if (id == "verdict") return Ask{};
  const auto known = std::find(stepIds.begin(), stepIds.end(), id);
  if (known == stepIds.end()) return std::nullopt;
  const auto asked = static_cast<StepId>(known - stepIds.begin());
  const Step* step = key.step(asked);
  if (!step && isAmountLine(asked) && key.verdict != VerdictKind::safe)
    if (const auto units = amountUnits(asked, key.given))
      return Ask{asked, *units, askedDecimals(asked, key), askedDecimalsBelowOne(asked, key)};
  if (!step || std::holds_alternative<Comparison>(step->body)) return std::nullopt;
  Ask ask{step->id, step->lookingFor, askedDecimals(asked, key), askedDecimalsBelowOne(asked, key)};
  ask.wanted.under.eraseIf([](Unit unit) { return unit == Unit::dose || unit == Unit::day; });
  return ask;
}

}  // namespace wardchalk
