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

}  // namespace wardchalk::detail
