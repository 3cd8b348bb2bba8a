#include "core/practice/problem.h"

#include <algorithm>

namespace wardchalk {

std::string_view idOf(const Ask& ask) { return ask.step ? idOf(*ask.step) : std::string_view("verdict"); }

std::optional<Ask> askFor(std::string_view id, const Worksheet& key) {
  if (id == "verdict") return Ask{};
  const auto known = std::find(stepIds.begin(), stepIds.end(), id);
  if (known == stepIds.end()) return std::nullopt;
  const Step* step = key.step(static_cast<StepId>(known - stepIds.begin()));
  if (!step || std::holds_alternative<Comparison>(step->body)) return std::nullopt;
  Ask ask{step->id, step->lookingFor};
  std::erase_if(ask.wanted.under, [](Unit unit) { return unit == Unit::dose || unit == Unit::day; });
  return ask;
}

}  // namespace wardchalk
