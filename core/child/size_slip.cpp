#include "core/child/size_slip.h"

#include <algorithm>

#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

constexpr std::size_t mostSizeSlips = 2;

/// What a weight and a height are multiplied by to undo a slip; none where it does not touch that figure.
struct SizeUndoing {
  std::optional<Number> weight;
  std::optional<Number> height;
};

SizeUndoing undoingOf(SizeSlip slip) {
  static const Number kgInLb = *converted(Number(1), Unit::lb, Unit::kg, Pounds::exact);
  static const Number cmInInch = *converted(Number(1), Unit::in, Unit::cm);
  const Number one(1);
  const Number ten(10);
  switch (slip) {
    case SizeSlip::poundsAsKg:
      return {kgInLb, std::nullopt};
    case SizeSlip::kgAsPounds:
      return {one / kgInLb, std::nullopt};
    case SizeSlip::inchesAsCm:
      return {std::nullopt, cmInInch};
    case SizeSlip::cmAsInches:
      return {std::nullopt, one / cmInInch};
    case SizeSlip::poundsAndInches:
      return {kgInLb, cmInInch};
    case SizeSlip::kgAndCm:
      return {one / kgInLb, one / cmInInch};
    case SizeSlip::weightTenTimesTooMuch:
      return {one / ten, std::nullopt};
    case SizeSlip::weightTenTimesTooLittle:
      return {ten, std::nullopt};
    case SizeSlip::heightTenTimesTooMuch:
      return {std::nullopt, one / ten};
    case SizeSlip::heightTenTimesTooLittle:
      return {std::nullopt, ten};
    case SizeSlip::weightAndHeightSwapped:
      break;
  }
  return {};
}

/// The two figures exchanged, each unit staying in its field.
std::optional<BodySize> exchanged(const Child& child) {
  if (!child.weight || !child.height) return std::nullopt;
  if (child.weight->parts.size() != 1 || child.height->parts.size() != 1) return std::nullopt;
  const Quantity& weight = child.weight->parts.front();
  const Quantity& height = child.height->parts.front();
  return BodySize{converted(height.value, weight.unit, Unit::kg, Pounds::exact),
                  converted(weight.value, height.unit, Unit::cm)};
}

struct Explanation {
  SizeSlip slip;
  double oddness;
};

}  // namespace

std::optional<BodySize> undone(SizeSlip slip, const Child& child) {
  if (slip == SizeSlip::weightAndHeightSwapped) return exchanged(child);
  BodySize size = bodySizeOf(child);
  const SizeUndoing undoing = undoingOf(slip);
  if ((undoing.weight && !size.kg) || (undoing.height && !size.cm)) return std::nullopt;
  if (undoing.weight) size.kg = *size.kg * *undoing.weight;
  if (undoing.height) size.cm = *size.cm * *undoing.height;
  return size;
}

std::vector<SizeSlip> slipsThatExplain(const Child& child) {
  const SizeJudge judge(child);
  std::vector<Explanation> found;
  for (std::size_t i = 0; i < sizeSlipIds.size(); ++i) {
    const auto slip = static_cast<SizeSlip>(i);
    const std::optional<BodySize> meant = undone(slip, child);
    if (!meant) continue;
    const SizeJudgement judged = judge.judge(*meant);
    if (!judged.unlikely.any()) found.push_back({slip, judged.oddness});
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const Explanation& a, const Explanation& b) { return a.oddness < b.oddness; });
  if (found.size() > mostSizeSlips) found.resize(mostSizeSlips);
  std::vector<SizeSlip> slips;
  slips.reserve(found.size());
  for (const Explanation& each : found) slips.push_back(each.slip);
  std::sort(slips.begin(), slips.end());
  return slips;
}

}  // namespace wardchalk
