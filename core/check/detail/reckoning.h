#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/check/detail/factors.h"
#include "core/check/worksheet.h"
#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"

namespace wardchalk::detail {

/// The parts of a working, in the order a nurse writes them.
enum class Section : std::uint8_t { size, limits, ordered, comparisons, amount };

/// A check that depends on the dose, with how far the ordered dose fills it: value ÷ bound. Each such value
/// is in proportion to the dose, so that the check can be judged again for each dose that could be measured.
struct DoseBound {
  CheckId check;
  Relation relation;
  Number filled;

  /// Whether the check is met by a dose of so many times the ordered one.
  [[nodiscard]] bool holdsFor(const Number& times) const {
    const Number value = filled * times;
    return relation == Relation::atMost ? value <= Number(1) : value >= Number(1);
  }
};

/// What is found on the way from a case to its worksheet; handed from stage to stage by workOut and gone
/// after it. Absent values could not be worked out; what is wanting is in `sheet.needs`.
struct Reckoning {
  explicit Reckoning(Worksheet& into) : given(into.given), rules(into.rules), sheet(into) {}

  const Case& given;
  const HouseRules& rules;
  Worksheet& sheet;

  // size
  std::optional<Found> kg;        // by house rule
  std::optional<Number> kgExact;  // lb converted exactly, never rounded
  std::optional<Number> cmExact;
  std::optional<Found> m2;                // charted, or computed and rounded by house rule
  std::optional<Number> computedSquared;  // square of the computed surface, before rounding
  std::optional<Number> computedM2;       // the same, rounded as it would be used
  bool household = false;                 // the surface was worked in inches and pounds
  std::vector<Step> weightSteps;          // shown only when the weight in kg is used
  std::vector<Step> surfaceSteps;         // shown only when the surface is used
  bool kgUsed = false;
  bool m2Used = false;

  // schedule and order
  bool once = false;
  bool isRate = false;
  std::optional<Number> n;          // most doses a day, capped
  std::optional<Unit> unit;         // the order's drug unit
  std::optional<Found> ordered;     // one dose
  std::optional<Found> orderedDay;  // the most given in 24 h

  // limits, in `unit`
  std::optional<Found> limitDose;  // by the reference, before maxima
  std::optional<Found> limitDay;
  std::optional<Found> limitWeek;
  std::optional<Chain> weekChain;
  std::optional<Found> maxDose;
  std::optional<Found> maxDay;
  std::optional<Found> low;  // in the reference's own basis: a dose, a day or a week
  std::optional<Chain> lowWeekChain;

  bool failed = false;  // a chain did not come out in the units wanted: nothing of this may be shown
  std::vector<DoseBound> bounds;
  bool amountWithheld = false;  // a question about the stock leaves no amount
  bool strengthUsed = false;
  std::optional<Step> strengthStep;
  std::array<std::vector<Step>, 5> sections;

  [[nodiscard]] std::vector<Step>& in(Section section) { return sections[static_cast<std::size_t>(section)]; }
  [[nodiscard]] Check& check(CheckId id) { return sheet.checks[static_cast<std::size_t>(id)]; }

  void need(StaticText path, Need::For forWhat, bool finer = false);
  Finding& tell(FindingCode code, StaticText field, std::vector<Argument> arguments = {},
                std::optional<CheckId> check = std::nullopt);
  void notChecked(CheckId id, WhyNot why);
  void doesNotApply(CheckId id, std::optional<WhyNot> why = std::nullopt);

  /// The quantity's value in the order's drug unit; none when their dimensions differ.
  [[nodiscard]] std::optional<Number> inOrderUnit(const Quantity& quantity) const;
  /// The child's size that a dose per kg or per m² is multiplied by, marked as used; no factor for a flat
  /// dose. False when it is wanted and not known; then it is noted as needed for the verdict.
  bool addSizeFactor(Chain& chain, PerSize size);
  /// Works the chain, writes the step, gives the value found. A chain of one factor needs no step of its own.
  /// A chain that does not come out in the units wanted fails the whole reckoning.
  std::optional<Found> solveStep(Section section, StepId id, Chain chain, const Units& wanted);
  /// The same without a step: what nobody would write as a line of its own.
  std::optional<Found> solveUnwritten(const Chain& chain, const Units& wanted, Origin origin);
  /// What is found, or a failure of the whole reckoning when it is not there.
  template <typename T>
  std::optional<T> found(std::optional<T> value) {
    if (!value) failed = true;
    return value;
  }
};

/// The child's size for `size`, if it is known: kg, m² or 1.
[[nodiscard]] std::optional<Number> sizeValue(const Reckoning& reckoning, PerSize size);

/// A volume in mL.
[[nodiscard]] Number inMl(const Quantity& volume);

/// ⌈x⌉, at least 1.
[[nodiscard]] Number ceilAtLeastOne(const Number& x);

/// Every check as not made yet.
void prepareChecks(Reckoning& reckoning);  // work_out.cpp
/// Sizes, the ordered dose and its limits: the stages up to the first comparison.
void findFacts(Reckoning& reckoning);  // work_out.cpp
/// The comparisons of the dose or rate with its limits and its low end.
void compareAmount(Reckoning& reckoning);  // work_out.cpp

// The stages, in their order. Each reads what the earlier ones found.
void findSize(Reckoning& reckoning);         // find_size.cpp
void findSchedule(Reckoning& reckoning);     // find_order.cpp
void findStrength(Reckoning& reckoning);     // find_strength.cpp
void findOrder(Reckoning& reckoning);        // find_order.cpp
void findLimits(Reckoning& reckoning);       // find_limits.cpp
void checkFit(Reckoning& reckoning);         // check_fit.cpp
void compareDose(Reckoning& reckoning);      // compare_dose.cpp
void compareLow(Reckoning& reckoning);       // compare_low.cpp
void compareRate(Reckoning& reckoning);      // compare_rate.cpp
void compareInfusion(Reckoning& reckoning);  // compare_infusion.cpp
void compareSchedule(Reckoning& reckoning);  // compare_schedule.cpp
void compareBands(Reckoning& reckoning);     // compare_bands.cpp
void compareSize(Reckoning& reckoning);      // compare_size.cpp
void findSlips(Reckoning& reckoning);        // find_slips.cpp
void noteRounding(Reckoning& reckoning);     // note_rounding.cpp
void noteTheRest(Reckoning& reckoning);      // notes.cpp
void decide(Reckoning& reckoning);           // decide.cpp
void measure(Reckoning& reckoning);          // measure.cpp
void findRunRate(Reckoning& reckoning);      // find_run_rate.cpp
void arrange(Reckoning& reckoning);          // decide.cpp

/// The worksheet of a case that could not be worked out: undecided, and no number on it.
[[nodiscard]] Worksheet notWorkedOut(const Case& given, const HouseRules& rules);  // work_out.cpp

/// What was found as a side of a comparison.
[[nodiscard]] Side sideOf(const Found& found);
/// How much stands on a side, without what it is per: for where the check itself says that.
[[nodiscard]] Quantity amountOf(const Side& side);
/// A side that is found by a chain of its own, which stands with it.
[[nodiscard]] std::optional<Side> sideBy(Reckoning& reckoning, Chain chain, const Units& wanted);
/// A side stated in one unit per another ("5 mg/mL"), found by the chain; the chain stands with it when it is
/// more than one factor.
[[nodiscard]] std::optional<Side> sidePer(Reckoning& reckoning, Chain chain, const Units& wanted);

/// Compares two sides stated per something, sets the check and tells `outside` of an outside one. A side that
/// could not be worked out is not compared.
void compareSides(Reckoning& reckoning, CheckId id, std::optional<Side> left, Relation relation,
                  std::optional<Side> right, FindingCode outside, StaticText field);

/// A rate for this child, in the order's drug unit per `time`; none while a size it wants is not known.
[[nodiscard]] std::optional<Chain> rateChain(Reckoning& reckoning, const DoseAmount& rate, StaticText path,
                                             Unit time);

/// Writes the comparison as a step and sets the check. Sides in different units fail the whole reckoning.
void compare(Reckoning& reckoning, CheckId id, Side left, Relation relation, Side right, bool holds);

}  // namespace wardchalk::detail
