#include "core/medicine/case.h"

#include <algorithm>

#include "core/medicine/paths.h"
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

/// An edge of a band on one scale; an open edge is not itself within.
struct Edge {
  Number at;
  bool open;
};

bool leavesNothing(const std::optional<Edge>& lower, const std::optional<Edge>& upper) {
  if (!lower || !upper) return false;
  return lower->at > upper->at || (lower->at == upper->at && (lower->open || upper->open));
}

template <typename T, typename ToNumber>
std::optional<Edge> edge(const std::optional<T>& stated, bool open, ToNumber toNumber) {
  if (!stated) return std::nullopt;
  return Edge{toNumber(*stated), open};
}

struct BandPaths {
  std::string_view below;
  std::string_view upTo;
};

/// No value can lie in the band: the path of the upper edge that is too low.
template <typename T, typename ToNumber>
std::optional<Refusal> badBand(const Band<T>& band, const BandPaths& paths, std::optional<Edge> upTo,
                               ToNumber toNumber) {
  const auto from = edge(band.from, /*open=*/false, toNumber);
  const auto over = edge(band.over, /*open=*/true, toNumber);
  const auto below = edge(band.below, /*open=*/true, toNumber);
  if (leavesNothing(from, below) || leavesNothing(over, below))
    return refuse(RefusalCode::bandBackwards, std::string(paths.below));
  if (leavesNothing(from, upTo) || leavesNothing(over, upTo))
    return refuse(RefusalCode::bandBackwards, std::string(paths.upTo));
  return std::nullopt;
}

Number inKg(const MixedQuantity& mixed) {
  Number kg;
  for (const Quantity& part : mixed.parts) kg = kg + *converted(part.value, part.unit, Unit::kg);
  return kg;
}

Number inM2(const Quantity& area) { return area.value; }

Number inDays(const Age& age) { return age.days(); }

std::optional<Refusal> badBands(const Reference& reference) {
  std::optional<Edge> ageEnd;
  if (const auto& upTo = reference.age.upTo) ageEnd = Edge{upTo->endDays(), upTo->endIsOpen()};
  if (auto bad = badBand(reference.age, {path::ageBelow, path::ageUpTo}, ageEnd, inDays)) return bad;
  const auto weightEnd = edge(reference.weight.upTo, /*open=*/false, inKg);
  if (auto bad = badBand(reference.weight, {path::weightBelow, path::weightUpTo}, weightEnd, inKg))
    return bad;
  const auto bsaEnd = edge(reference.bsa.upTo, /*open=*/false, inM2);
  return badBand(reference.bsa, {path::bsaBelow, path::bsaUpTo}, bsaEnd, inM2);
}

std::optional<Refusal> badStock(const Stock& stock) {
  if (stock.isCapsule() && stock.dividesInto.value_or(1) != 1)
    return refuse(RefusalCode::capsuleDivides, "stock.divides_into");
  if (!stock.kind || !stock.strength) return std::nullopt;
  const bool solidStrength = dimensionOf(stock.strength->in.unit) != Dimension::volume;
  if (solidStrength != (*stock.kind == StockKind::solid))
    return refuse(RefusalCode::strengthShape, "stock.strength");
  return std::nullopt;
}

}  // namespace

std::optional<Refusal> contradictionIn(const Case& inputs) {
  if (auto refusal = badLowEnd(inputs.reference)) return refusal;
  if (auto refusal = badBands(inputs.reference)) return refusal;
  return badStock(inputs.stock);
}

std::optional<int> mostDosesOf(const Reference& reference) {
  if (reference.schedule && reference.schedule->isOnce()) return 1;
  return reference.maxDosesPerDay;
}

std::optional<int> mostDosesOf(const Case& inputs) {
  const Order& order = inputs.order;
  if ((order.dose && order.dose->isRate()) || (order.schedule && !order.schedule->isRepeated()))
    return std::nullopt;
  const std::optional<int> allowed = mostDosesOf(inputs.reference);
  if (!allowed || !order.maxDosesPerDay) return allowed ? allowed : order.maxDosesPerDay;
  return std::min(*allowed, *order.maxDosesPerDay);
}

}  // namespace wardchalk
