#include <algorithm>

#include "core/check/detail/giving.h"
#include "core/check/detail/telling.h"

namespace wardchalk::detail {

namespace {

Finding* told(Notebook& notes, FindingCode code) {
  const auto found = std::ranges::find(notes.findings, code, &Finding::code);
  return found == notes.findings.end() ? nullptr : &*found;
}

bool isSizeInDoubt(const Notebook& notes) {
  return std::ranges::any_of(notes.findings, [](const Finding& finding) {
    return doubtsSize(finding.code) && finding.severity != Severity::note;
  });
}

/// The smallest part of a solid that can be given; of a tablet of which nobody says whether it may be cut,
/// the smallest that any is cut into.
Number smallestPart(const Stock& stock) {
  return Number::ratio(1, stock.isCapsule() ? 1 : stock.dividesInto.value_or(4));
}

/// Whether a dose of so many times the ordered one is over any limit.
bool isOverALimit(const Checks& checks, const Number& times) {
  return std::ranges::any_of(checks.bounds, [&](const DoseBound& bound) {
    return bound.relation == Relation::atMost && !bound.holdsFor(times);
  });
}

}  // namespace

void noteALittleLess(Notebook& notes, Checks& checks) {
  Finding* below = told(notes, FindingCode::belowLow);
  if (!below || isSizeInDoubt(notes)) return;
  const Number least = notes.rules.askLowPercent / Number(100);
  if (*checks.check(CheckId::low).ratio < least) return;
  below->severity = Severity::note;
  for (DoseBound& bound : checks.bounds)
    if (bound.check == CheckId::low) bound.filled = bound.filled / least;
}

void noteTheMostThatFits(Notebook& notes, const Checks& checks, const std::optional<Give>& give) {
  Finding* below = told(notes, FindingCode::belowUsual);
  const Stock& stock = notes.given.stock;
  if (!below || !give || !give->measured || stock.kind != StockKind::solid || isSizeInDoubt(notes)) return;
  const Number next = *give->measured + smallestPart(stock);
  if (!isOverALimit(checks, next / give->exact.value)) return;
  below->severity = Severity::note;
  below->arguments.push_back({"next", Quantity{next, give->exact.unit}});
}

}  // namespace wardchalk::detail
