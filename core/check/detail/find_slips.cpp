#include <algorithm>

#include "core/check/detail/telling.h"
#include "core/check/slips/slip.h"
#include "core/child/size_slip.h"

namespace wardchalk::detail {

namespace {

constexpr std::size_t mostSlips = 2;

/// Without a low end, a dose that a slip explains is at least this share of the limit (R12).
const Number& leastShare() {
  static const Number share = Number::ratio(9, 10);
  return share;
}

bool isAboutAmount(const Case& given, CheckId id) {
  return isUpperLimit(id, given.order.dose && given.order.dose->isRate()) || id == CheckId::low;
}

/// Whether the reference's own limit is what the check compares with, and not a maximum beside it.
bool isByReference(CheckId id) {
  return isUpperLimit(id) && id != CheckId::maxSingle && id != CheckId::maxDaily;
}

/// How far a dose of so many times the ordered one fills the checks that were made.
struct Filled {
  bool outside = false;      ///< one of them would be outside: no more was asked
  bool byReference = false;  ///< one of them is a limit of the reference itself
  bool lowMade = false;
  Number fullest;
};

Filled filledBy(const Case& given, const Checks& checks, const Number& times) {
  Filled filled;
  for (const Check& check : checks.all) {
    if (!isAboutAmount(given, check.id) || !check.isMade()) continue;
    const Number share = *check.ratio * times;
    const bool upper = check.id != CheckId::low;
    filled.outside = upper ? share > Number(1) : share < Number(1);
    if (filled.outside) break;
    if (upper) filled.fullest = larger(filled.fullest, share);
    filled.lowMade = filled.lowMade || !upper;
    filled.byReference = filled.byReference || isByReference(check.id);
  }
  return filled;
}

/// Between low and high, or without a low at 90 to 100 % of the limit (R12).
bool fits(const Case& given, const Checks& checks, const Number& times) {
  const Filled filled = filledBy(given, checks, times);
  if (filled.outside || !filled.byReference) return false;
  if (filled.lowMade && given.reference.low) return true;
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
bool childStillFits(const Checks& entered, const Checks& meant) {
  return std::all_of(meant.all.begin(), meant.all.end(), [&](const Check& check) {
    const Check& before = entered.check(check.id);
    const bool unchanged = before.status == check.status && before.value == check.value;
    return !isAboutChild(check.id) || check.status != CheckStatus::outside || unchanged;
  });
}

/// What a slip is sought in: the order as it was entered, and what was made of it.
struct Entered {
  Notebook& notes;
  const Facts& facts;
  const Checks& checks;
};

/// The case as it was meant, reckoned and judged like any other.
bool fitsAsMeant(const Entered& entered, const Case& meant) {
  Notebook again(meant, entered.notes.rules, Steps::unwritten);
  const bool sameChild = meant.child == entered.notes.given.child;
  const Facts facts = sameChild ? findFacts(again, entered.facts.size) : findFacts(again);
  Checks checks = checkAmountUntilOutside(again, facts);
  bool explained = fits(meant, checks, Number(1));
  if (explained) {
    checkChild(again, facts, checks);
    explained = childStillFits(entered.checks, checks);
  }
  if (again.failed) entered.notes.failed = true;
  return explained;
}

/// The child with the size that was meant.
std::optional<Case> withSizeMeant(const Case& given, SizeSlip slip) {
  const auto size = undone(slip, given.child);
  if (!size) return std::nullopt;
  Case meant = given;
  if (size->kg) meant.child.weight = MixedQuantity{{{*size->kg, Unit::kg}}};
  if (size->cm) meant.child.height = MixedQuantity{{{*size->cm, Unit::cm}}};
  return meant;
}

/// The check of size has already asked about a slip that explains the dose as well: one cause, one question.
bool isAskedWithSize(const Entered& entered) {
  for (const Finding& finding : entered.notes.findings) {
    if (finding.check != CheckId::size) continue;
    for (const std::string_view name : {"slip", "other_slip"}) {
      const auto* slip = finding.argument<SizeSlip>(name);
      const std::optional<Case> meant = slip ? withSizeMeant(entered.notes.given, *slip) : std::nullopt;
      if (meant && fitsAsMeant(entered, *meant)) return true;
    }
  }
  return false;
}

/// Whether an amount was worked out with the size that the slip is one of; with another nothing would change.
bool countsForAmount(const Notebook& notes, Slip slip) {
  const StaticText field = infoOf(slip).field;
  const bool charted = notes.given.child.bsa.has_value();
  if (field == path::weight) return notes.weightUsed || (notes.surfaceUsed && !charted);
  if (field == path::bsa) return notes.surfaceUsed && charted;
  return true;
}

/// A whole dose fits a smaller child no better where it is too much, nor a larger one where it is too little:
/// no such undoing is worth working. Of a dose for each kg or m² nothing of the kind is sure.
bool canExplain(const Notebook& notes, Slip slip, bool tooMuch) {
  if (!countsForAmount(notes, slip)) return false;
  if (notes.given.order.dose->perSize != PerSize::none) return true;
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

/// So many times the ordered dose. Where the order leaves open how many doses are given in 24 h, another dose
/// leaves room for another number of them (R14): then the case is worked again.
bool fitsTimes(const Entered& entered, const Number& factor) {
  if (!entered.facts.doses.fitting) return fits(entered.notes.given, entered.checks, factor);
  Case meant = entered.notes.given;
  meant.order.dose->amount.value = meant.order.dose->amount.value * factor;
  return fitsAsMeant(entered, meant);
}

bool explains(const Entered& entered, const Undoing& undoing) {
  if (const auto* factor = std::get_if<Number>(&undoing)) return fitsTimes(entered, *factor);
  const auto* meant = std::get_if<Case>(&undoing);
  return meant && fitsAsMeant(entered, *meant);
}

SlipGround groundOf(const Notebook& notes, const Facts& facts) {
  SlipGround ground{notes.given, notes.rules.pounds, {}, {}, facts.doses.n};
  if (facts.size.kg) ground.kg = facts.size.kg->value();
  if (facts.size.m2) ground.m2 = facts.size.m2->value();
  return ground;
}

/// Whether no later slip would be asked about (see keepMost): those of the order come first.
bool areEnough(const std::vector<Slip>& found) {
  return found.size() >= mostSlips && !isOfOrder(found.back());
}

std::vector<Slip> explanations(const Entered& entered) {
  const SlipGround ground = groundOf(entered.notes, entered.facts);
  const bool tooMuch = entered.checks.check(CheckId::low).status != CheckStatus::outside;
  std::vector<Slip> found;
  for (std::size_t i = 0; i < slipTable.size() && !areEnough(found); ++i) {
    const auto slip = static_cast<Slip>(i);
    if (canExplain(entered.notes, slip, tooMuch) && explains(entered, undone(slip, ground)))
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
ArgumentValue entered(const Case& given, StaticText field) {
  if (field == path::schedule) return *given.order.schedule;
  if (field == path::weight) return *given.child.weight;
  if (field == path::bsa) return MixedQuantity{{*given.child.bsa}};  // as every size of the child is written
  if (field == path::strength) return *given.stock.strength;
  return *given.order.dose;
}

void tellSlip(Notebook& notes, Slip slip, CheckId check) {
  const Case& given = notes.given;
  std::vector<Argument> arguments = {{"slip", slip}, {"entered", entered(given, infoOf(slip).field)}};
  if (slip == Slip::perSizeAsTotal) arguments.push_back({"size", unitOf(given.reference.high->perSize)});
  if (slip == Slip::scheduleNotOfReference) arguments.push_back({"reference", *given.reference.schedule});
  notes.tell(FindingCode::possibleSlip, infoOf(slip).field, std::move(arguments), check);
}

/// What is below the low end by so little that it is a note alone is explained by no slip.
bool isNoted(const Notebook& notes, CheckId id) {
  return std::ranges::any_of(notes.findings, [&](const Finding& finding) {
    return id == CheckId::low && finding.code == FindingCode::belowLow && finding.severity == Severity::note;
  });
}

std::optional<CheckId> outsideCheck(const Notebook& notes, const Checks& checks) {
  for (const Check& check : checks.all)
    if (isAboutAmount(notes.given, check.id) && check.status == CheckStatus::outside &&
        !isNoted(notes, check.id))
      return check.id;
  return std::nullopt;
}

/// Figures that do not go together explain nothing.
bool figuresFit(const Notebook& notes) {
  return !notes.hasTold(FindingCode::unitsDoNotMeet) && !notes.hasTold(FindingCode::basisDoesNotFit);
}

}  // namespace

void findSlips(Notebook& notes, const Facts& facts, const Checks& checks) {
  const Entered entered{notes, facts, checks};
  const std::optional<CheckId> check = outsideCheck(notes, checks);
  if (!check || !figuresFit(notes) || isAskedWithSize(entered)) return;
  std::vector<Slip> slips = explanations(entered);
  keepMost(slips);
  for (const Slip slip : slips) tellSlip(notes, slip, *check);
}

}  // namespace wardchalk::detail
