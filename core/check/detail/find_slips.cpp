#include <algorithm>

#include "core/check/detail/reckoning.h"
#include "core/check/slips/slip.h"
#include "core/child/size_slip.h"
#include "core/unit/print.h"

namespace wardchalk::detail {

namespace {

constexpr std::size_t mostSlips = 2;

/// Without a low end, a dose that a slip explains is at least this share of the limit (R12).
const Number& leastShare() {
  static const Number share = Number::ratio(9, 10);
  return share;
}

bool isAboutAmount(CheckId id) { return isUpperLimit(id) || id == CheckId::low; }

/// Whether the reference's own limit is what the check compares with, and not a maximum beside it.
bool isByReference(CheckId id) {
  return isUpperLimit(id) && id != CheckId::maxSingle && id != CheckId::maxDaily;
}

/// How far a dose of so many times the ordered one fills the checks that were made.
struct Filled {
  bool outside = false;
  bool byReference = false;  ///< one of them is a limit of the reference itself
  bool lowMade = false;
  Number fullest;
};

Filled filledBy(const Worksheet& sheet, const Number& times) {
  Filled filled;
  for (const Check& check : sheet.checks) {
    if (!isAboutAmount(check.id) || !check.isMade()) continue;
    const Number share = *check.ratio * times;
    const bool upper = check.id != CheckId::low;
    if (upper ? share > Number(1) : share < Number(1)) filled.outside = true;
    if (upper) filled.fullest = larger(filled.fullest, share);
    filled.lowMade = filled.lowMade || !upper;
    filled.byReference = filled.byReference || isByReference(check.id);
  }
  return filled;
}

/// Between low and high, or without a low at 90 to 100 % of the limit (R12).
bool fits(const Worksheet& sheet, const Number& times) {
  const Filled filled = filledBy(sheet, times);
  if (filled.outside || !filled.byReference) return false;
  if (filled.lowMade && sheet.given.reference.low) return true;
  return filled.fullest >= leastShare();
}

bool isAboutChild(CheckId id) {
  switch (id) {
    case CheckId::weightBand:
    case CheckId::bsaBand:
    case CheckId::size:
    case CheckId::bsaCharted:
      return true;
    default:
      return false;
  }
}

/// A size that would be unlikely or outside a band as it was meant is no explanation; one that the slip
/// leaves as it was entered tells nothing of the slip.
bool childStillFits(const Worksheet& entered, const Worksheet& meant) {
  return std::all_of(meant.checks.begin(), meant.checks.end(), [&](const Check& check) {
    const Check& before = entered.check(check.id);
    const bool unchanged = before.status == check.status && before.value == check.value;
    return !isAboutChild(check.id) || check.status != CheckStatus::outside || unchanged;
  });
}

/// The case as it was meant, reckoned and judged like any other.
bool fitsAsMeant(Reckoning& reckoning, Case meant) {
  Worksheet sheet;
  sheet.given = std::move(meant);
  sheet.rules = reckoning.rules;
  Reckoning again(sheet);
  prepareChecks(again);
  findFacts(again);
  compareAmount(again);
  if (fits(sheet, Number(1))) {
    compareBands(again);
    compareSize(again);
  }
  if (again.failed) reckoning.failed = true;
  return fits(sheet, Number(1)) && childStillFits(reckoning.sheet, sheet);
}

std::string_view textArgument(const Finding& finding, std::string_view name) {
  for (const Argument& argument : finding.arguments)
    if (argument.name == name) return std::get<std::string>(argument.value);
  return {};
}

/// The child with the size that was meant, if `id` is that of a slip of weight or height.
std::optional<Case> withSizeMeant(const Case& given, std::string_view id) {
  const auto known = std::find(sizeSlipIds.begin(), sizeSlipIds.end(), id);
  if (known == sizeSlipIds.end()) return std::nullopt;
  const auto size = undone(static_cast<SizeSlip>(known - sizeSlipIds.begin()), given.child);
  if (!size) return std::nullopt;
  Case meant = given;
  if (size->kg) meant.child.weight = MixedQuantity{{{*size->kg, Unit::kg}}};
  if (size->cm) meant.child.height = MixedQuantity{{{*size->cm, Unit::cm}}};
  return meant;
}

/// The check of size has already asked about a slip that explains the dose as well: one cause, one question.
bool isAskedWithSize(Reckoning& reckoning) {
  for (const Finding& finding : reckoning.sheet.findings) {
    if (finding.check != CheckId::size) continue;
    for (const std::string_view name : {"slip", "other_slip"}) {
      std::optional<Case> meant = withSizeMeant(reckoning.given, textArgument(finding, name));
      if (meant && fitsAsMeant(reckoning, std::move(*meant))) return true;
    }
  }
  return false;
}

/// Whether an amount was worked out with the size that the slip is one of; with another nothing would change.
bool countsForAmount(const Reckoning& reckoning, Slip slip) {
  const StaticText field = infoOf(slip).field;
  const bool charted = reckoning.given.child.bsa.has_value();
  if (field == path::weight) return reckoning.kgUsed || (reckoning.m2Used && !charted);
  if (field == path::bsa) return reckoning.m2Used && charted;
  return true;
}

/// A whole dose fits a smaller child no better where it is too much, nor a larger one where it is too little:
/// no such undoing is worth working. Of a dose for each kg or m² nothing of the kind is sure.
bool canExplain(const Reckoning& reckoning, Slip slip, bool tooMuch) {
  if (!countsForAmount(reckoning, slip)) return false;
  if (reckoning.given.order.dose->perSize != PerSize::none) return true;
  switch (slip) {
    case Slip::poundsAsKg:
    case Slip::weightTenTimesTooMuch:
    case Slip::bsaTenTimesTooMuch:
      return !tooMuch;
    case Slip::weightTenTimesTooLittle:
    case Slip::bsaTenTimesTooLittle:
      return tooMuch;
    default:
      return true;
  }
}

bool explains(Reckoning& reckoning, Undoing undoing) {
  if (const auto* factor = std::get_if<Number>(&undoing)) return fits(reckoning.sheet, *factor);
  auto* meant = std::get_if<Case>(&undoing);
  return meant && fitsAsMeant(reckoning, std::move(*meant));
}

SlipGround groundOf(const Reckoning& reckoning) {
  SlipGround ground{reckoning.given, reckoning.rules.pounds, {}, {}, reckoning.n};
  if (reckoning.kg) ground.kg = reckoning.kg->value();
  if (reckoning.m2) ground.m2 = reckoning.m2->value();
  return ground;
}

/// Whether no later slip would be asked about (see keepMost): those of the order come first.
bool areEnough(const std::vector<Slip>& found) {
  return found.size() >= mostSlips && !isOfOrder(found.back());
}

std::vector<Slip> explanations(Reckoning& reckoning) {
  const SlipGround ground = groundOf(reckoning);
  const Worksheet& sheet = reckoning.sheet;
  const bool tooMuch = sheet.check(CheckId::low).status != CheckStatus::outside;
  std::vector<Slip> found;
  for (std::size_t i = 0; i < slipTable.size() && !areEnough(found); ++i) {
    const auto slip = static_cast<Slip>(i);
    if (canExplain(reckoning, slip, tooMuch) && explains(reckoning, undone(slip, ground)))
      found.push_back(slip);
  }
  return found;
}

/// Of more than two, the first of the order and the first of another paper: two questions that are answered
/// on one paper may both miss the slip, and the nurse can look at the other papers herself before she calls.
/// Where all are of one paper, the first two.
void keepMost(std::vector<Slip>& slips) {
  if (slips.size() <= mostSlips) return;
  const bool first = isOfOrder(slips.front());
  const auto other =
      std::find_if(slips.begin(), slips.end(), [&](Slip slip) { return isOfOrder(slip) != first; });
  if (other != slips.end()) slips[1] = *other;
  slips.resize(mostSlips);
}

/// What stands in the entry that the question is about.
std::string entered(const Case& given, StaticText field) {
  if (field == path::schedule) return given.order.schedule->text;
  if (field == path::weight) return printed(*given.child.weight);
  if (field == path::bsa) return printed(*given.child.bsa);
  if (field == path::strength) return printed(*given.stock.strength);
  return printed(*given.order.dose);
}

void tellSlip(Reckoning& reckoning, Slip slip, CheckId check) {
  const Case& given = reckoning.given;
  std::vector<Argument> arguments = {{"slip", std::string(idOf(slip))},
                                     {"entered", entered(given, infoOf(slip).field)}};
  if (slip == Slip::perSizeAsTotal)
    arguments.push_back({"size", std::string(infoOf(unitOf(given.reference.high->perSize)).one)});
  if (slip == Slip::scheduleNotOfReference)
    arguments.push_back({"reference", given.reference.schedule->text});
  reckoning.tell(FindingCode::possibleSlip, infoOf(slip).field, std::move(arguments), check);
}

std::optional<CheckId> outsideCheck(const Worksheet& sheet) {
  for (const Check& check : sheet.checks)
    if (isAboutAmount(check.id) && check.status == CheckStatus::outside) return check.id;
  return std::nullopt;
}

/// Figures that do not go together explain nothing.
bool figuresFit(const Worksheet& sheet) {
  return !sheet.finding(FindingCode::unitsDoNotMeet) && !sheet.finding(FindingCode::basisDoesNotFit);
}

}  // namespace

void findSlips(Reckoning& reckoning) {
  const std::optional<CheckId> check = outsideCheck(reckoning.sheet);
  if (!check || !figuresFit(reckoning.sheet) || isAskedWithSize(reckoning)) return;
  std::vector<Slip> slips = explanations(reckoning);
  keepMost(slips);
  for (const Slip slip : slips) tellSlip(reckoning, slip, *check);
}

}  // namespace wardchalk::detail
