#include "core/medicine/case.h"

#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

Refusal refuse(RefusalCode code, std::string path) { return {code, {}, {}, std::move(path)}; }

std::optional<Refusal> badLowEnd(const Reference& reference) {
  if (!reference.low) return std::nullopt;
  if (reference.limitOnly) return refuse(RefusalCode::lowWithLimitOnly, "reference.limit_only");
  if (!reference.high) return std::nullopt;
  const DoseAmount& low = *reference.low;
  const DoseAmount& high = *reference.high;
  const auto lowInHigh = converted(low.amount.value, low.amount.unit, high.amount.unit);
  if (!lowInHigh || low.perSize != high.perSize || low.perTime != high.perTime)
    return refuse(RefusalCode::lowBasisDiffers, "reference.low");
  if (*lowInHigh > high.amount.value) return refuse(RefusalCode::lowAboveHigh, "reference.low");
  return std::nullopt;
}

bool isCapsule(const Stock& stock) { return stock.strength && stock.strength->in.unit == Unit::capsule; }

std::optional<Refusal> badStock(const Stock& stock) {
  if (isCapsule(stock) && stock.dividesInto != 1) return refuse(RefusalCode::capsuleDivides, "stock.divides_into");
  if (!stock.kind || !stock.strength) return std::nullopt;
  const bool solidStrength = dimensionOf(stock.strength->in.unit) != Dimension::volume;
  if (solidStrength != (*stock.kind == StockKind::solid)) return refuse(RefusalCode::strengthShape, "stock.strength");
  return std::nullopt;
}

}  // namespace

std::optional<Refusal> contradictionIn(const Case& inputs) {
  if (auto refusal = badLowEnd(inputs.reference)) return refusal;
  return badStock(inputs.stock);
}

}  // namespace wardchalk
