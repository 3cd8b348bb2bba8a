#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/check/check.h"
#include "core/check/finding.h"
#include "core/medicine/case.h"
#include "core/rules/house_rules.h"
#include "core/unit/unit_product.h"
#include "core/working/step.h"

namespace wardchalk {

enum class VerdictKind : std::uint8_t { safe, ask, unsafe, notCovered, undecided };

[[nodiscard]] constexpr std::string_view idOf(VerdictKind verdict) {
  constexpr std::array<std::string_view, 5> ids = {"safe", "ask", "unsafe", "not-covered", "undecided"};
  return ids[static_cast<std::size_t>(verdict)];
}

/// An input that is still wanting, and for what.
struct Need {
  enum class For : std::uint8_t { verdict, amount };
  StaticText path;
  For forWhat;
  bool finer = false;  ///< it is there, but not fine enough: an age in whole years at the edge of a band
};

/// The child's weight in kg, by house rule.
struct WeightFound {
  Number kg;
};

/// The child's body surface area as it is used.
struct SurfaceFound {
  Number m2;
  bool charted = false;
  std::optional<Number> unroundedCut;  ///< computed: the first six decimals
  int fixedDecimals = -1;              ///< computed and rounded: decimals it is shown with
};

/// Which of the limits is the lowest.
enum class SetBy : std::uint8_t { reference, maxPerDose, maxPerDay };

[[nodiscard]] constexpr std::string_view idOf(SetBy by) {
  constexpr std::array<std::string_view, 3> ids = {"reference", "max_per_dose", "max_per_day"};
  return ids[static_cast<std::size_t>(by)];
}

struct Limit {
  Quantity amount;
  SetBy setBy;
};

/// Where the strength used for the amount comes from.
enum class StrengthFrom : std::uint8_t { labelled, finalVolume, diluentAndDisplacement };

[[nodiscard]] constexpr std::string_view idOf(StrengthFrom from) {
  constexpr std::array<std::string_view, 3> ids = {"labelled", "final-volume", "diluent-and-displacement"};
  return ids[static_cast<std::size_t>(from)];
}

/// Amount of medicine in one mL, tablet or capsule.
struct StrengthFound {
  Number perOne;
  Unit drugUnit;
  Unit in;
  StrengthFrom from;
};

/// How a powder is made ready, each vial of it (R22).
struct Prepare {
  std::optional<Quantity> add;    ///< of the diluent; none: it is made up to what it makes
  std::optional<Quantity> makes;  ///< none where nobody says what the powder adds to the diluent
  StrengthFound strength;         ///< that it then has
};

/// Two syringes in place of one: a full one, and the rest in another (R20).
struct SyringePair {
  Syringe full;
  Syringe of;   ///< that the rest is drawn in
  Number rest;  ///< as measured, in mL
};

/// The amount to give.
struct Give {
  Quantity exact;
  std::optional<Number> measured;
  std::optional<Quantity> doseGiven;
  std::optional<Number> percentChange;  ///< by how much it differs from the ordered dose
  std::optional<Syringe> syringe;
  int syringes = 0;
  std::optional<SyringePair> pair;   ///< it is measured with these two, and `syringe` is none
  std::optional<int> containers;     ///< vials needed
  std::optional<Number> passedOver;  ///< the nearer neighbour, when it would not keep every check
  std::vector<Number> neighbours;    ///< measurable amounts around the exact one, when none can be used
  std::optional<Prepare> prepare;    ///< of a powder, where the papers say how
  bool afterAsking = false;
};

/// A flow that can be set: what it comes to, and the nearest that the pump or the drip can show.
struct Flow {
  Quantity exact;                  ///< mL (in an hour) or drops (in a minute)
  std::optional<Number> measured;  ///< none: no setting keeps every check
  Number percentChange;
  std::optional<Number> passedOver;  ///< the nearer setting, when it would not keep every check
};

/// What a rounded rate gives: a dose in a time ("80 mg in 30 min"), or an amount per something ("4.978
/// mcg/kg/min").
struct Delivered {
  Quantity amount;
  std::optional<Quantity> over;  ///< of a single dose
  UnitProduct per;               ///< of a rate order: kg, min; empty for a single dose
};

/// How an infusion runs.
struct RunRate {
  std::optional<Flow> mlPerHour;
  std::optional<Flow> dropsPerMinute;
  std::optional<Delivered> delivered;
  std::optional<Quantity> toAdd;  ///< to the measured volume of a dose, to make up the infusion
  bool afterAsking = false;
};

/// What would make an order safe that is unsafe by how it is prepared alone: how far to dilute it and how
/// long to run it, rounded so that it is never less than the reference asks for.
struct Remedy {
  std::optional<Quantity> leastVolume;
  std::optional<Quantity> volumePerKg;     ///< the least volume for each kg of the child
  std::optional<Quantity> greatestVolume;  ///< that the least concentration allows
  std::optional<Quantity> leastTime;

  /// Whether no volume keeps both the greatest and the least concentration.
  [[nodiscard]] bool cannotBeMadeUp() const {
    return leastVolume && greatestVolume && leastVolume->value > greatestVolume->value;
  }
};

/// What a check of a rate compared, in the terms that the order, or the limit on how fast a dose runs in, is
/// written in: "5 mcg/kg/min" beside 71.5 mcg/min.
struct AsWritten {
  CheckId check;
  QuantityPer value;
  QuantityPer limit;
};

/// Everything worked out from a case. A view draws from it and calculates nothing.
struct Worksheet {
  Case given;
  HouseRules rules;
  VerdictKind verdict = VerdictKind::undecided;
  std::optional<std::size_t> deciding;  ///< index of the deciding finding
  std::optional<CheckId> worst;         ///< the check that is fullest: named by the reason
  std::optional<WeightFound> weight;
  std::optional<SurfaceFound> bsa;
  std::optional<Quantity> orderedDose;
  std::optional<Quantity> orderedDay;
  std::optional<Limit> limitDose;
  std::optional<Limit> limitDay;
  std::optional<Quantity> lowDose;
  std::optional<Quantity> lowDay;
  std::array<Check, checkCount> checks;
  std::vector<AsWritten> asWritten;  ///< of those that are compared in other terms
  std::vector<Finding> findings;     ///< the deciding one first, then by weight
  std::vector<Need> needs;
  std::optional<StrengthFound> strength;
  std::optional<Give> give;
  std::optional<RunRate> rate;
  std::optional<Quantity> minimumVolume;  ///< that the greatest concentration allows
  std::optional<Remedy> remedy;           ///< only where it is unsafe as prepared
  std::vector<Step> steps;

  [[nodiscard]] const Check& check(CheckId id) const { return checks[static_cast<std::size_t>(id)]; }
  [[nodiscard]] const Step* step(StepId id) const;
  [[nodiscard]] const Finding* finding(FindingCode code) const;
  /// The deciding finding's code, or the path of the first need; empty when safe.
  [[nodiscard]] std::string_view because() const;
};

}  // namespace wardchalk
