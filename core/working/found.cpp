#include "core/working/found.h"

namespace wardchalk {

std::optional<Found> foundBy(const Solution& solution, Origin origin) {
  if (solution.units.over.size() != 1) return std::nullopt;
  return Found({solution.product.exact, solution.units.over.front()}, solution.units.under, origin);
}

std::optional<Found> foundBy(const Chain& chain, const Units& wanted, Origin origin) {
  if (wanted.over.size() != 1) return std::nullopt;
  std::optional<Number> value = valueIn(chain, wanted);
  if (!value) return std::nullopt;
  return Found({*std::move(value), wanted.over.front()}, wanted.under, origin);
}

Factor factorOf(const Found& found) {
  Term over{found.value(), {found.amount.unit}, found.origin};
  if (found.under.empty()) return {std::move(over), Term{}};
  return {std::move(over), {Number(1), found.under, found.origin}};
}

std::optional<Found> inOne(Unit unit, const Found& found) {
  if (found.under.size() != 1 || found.under.front() != unit) return std::nullopt;
  return Found(found.amount, {}, found.origin);
}

}  // namespace wardchalk
