#include "core/check/detail/doses.h"
#include "core/check/detail/factors.h"

namespace wardchalk::detail {

std::optional<Chain> rateChain(Notebook& notes, const Size& size, const Doses& doses, const DoseAmount& rate,
                               StaticText path, Unit time) {
  Chain chain{{doseFactor(rate, path)}};
  if (!doses.inOrderUnit(rate.amount) || !addSizeFactor(notes, size, chain, rate.perSize))
    return std::nullopt;
  convertAbove(chain, rate.amount.unit, *doses.unit);
  convertBelow(chain, unitOf(rate.perTime), time);
  return chain;
}

std::optional<Quantity> endsWithinDay(const Infusion& infusion) {
  const auto& over = infusion.over;
  if (!over || *converted(over->value, over->unit, Unit::day) >= Number(1)) return std::nullopt;
  return over;
}

std::vector<Factor> runningInDay(const Infusion& infusion, Unit time) {
  Chain chain;
  if (const auto over = endsWithinDay(infusion)) {
    chain.factors.push_back(
        rateFactor(over->value, over->unit, Unit::day, Origin::field(path::infusionOver)));
    convertAbove(chain, over->unit, time);
  } else {
    convertBelow(chain, time, Unit::day);
  }
  return chain.factors;
}

}  // namespace wardchalk::detail
