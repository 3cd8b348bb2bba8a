#include <algorithm>
#include <array>

#include "core/check/detail/telling.h"

namespace wardchalk::detail {

namespace {

/// The entries of the child's size that something is worked out or judged by.
struct SizesUsed {
  bool weight = false;
  bool height = false;
  bool surface = false;  ///< by whichever way it is known
};

/// A limit, a maximum, the order and a band use a size; comparing sizes with one another uses none (R18).
SizesUsed sizesUsed(const Case& given) {
  const Reference& reference = given.reference;
  const auto isPer = [&](PerSize size) {
    return std::ranges::any_of(
        std::array{given.order.dose, reference.high, reference.low, reference.maxPerDose, reference.maxPerDay,
                   reference.maxInfusionRate},
        [size](const auto& dose) { return dose && dose->perSize == size; });
  };
  SizesUsed used;
  used.surface = isPer(PerSize::m2) || reference.bsa.isStated();
  used.height = used.surface && !given.child.bsa;
  used.weight = used.height || isPer(PerSize::kg) || reference.weight.isStated();
  return used;
}

/// Whether anything is worked out or judged by a size that the finding doubts.
bool isUsed(const SizesUsed& used, const Finding& finding) {
  switch (finding.code) {
    case FindingCode::weightUnlikely:
      return used.weight;
    case FindingCode::heightUnlikely:
      return used.height;
    case FindingCode::sizeImplausible:
      if (finding.field == path::bsa) return used.surface;
      if (finding.field == path::height) return used.height;
      return used.weight || used.height;
    case FindingCode::weightUnlikelyForHeight:
      return used.weight || used.height;
    default:
      // the charted surface or the size it is held against is wrong, and either may be the one in use
      return used.weight || used.surface;
  }
}

bool saysTooLittle(FindingCode code) {
  return code == FindingCode::belowLow || code == FindingCode::belowUsual;
}

}  // namespace

void judgeSizeDoubts(Notebook& notes) {
  const SizesUsed used = sizesUsed(notes.given);
  bool doubted = false;
  for (Finding& finding : notes.findings) {
    if (!doubtsSize(finding.code)) continue;
    if (!isUsed(used, finding)) finding.severity = Severity::note;
    doubted = doubted || finding.severity != Severity::note;
  }
  if (!doubted) return;
  for (Finding& finding : notes.findings)
    if (saysTooLittle(finding.code)) finding.arguments.push_back({"by", ArgumentWord::sizeEntered});
}

}  // namespace wardchalk::detail
