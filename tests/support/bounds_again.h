#pragma once

#include <optional>
#include <vector>

#include "core/check/check.h"
#include "core/medicine/case.h"
#include "core/rules/house_rules.h"

namespace wardchalk::test {

/// One bound on a dose: dose × perDose at most, or at least, this; in the order's drug unit.
struct BoundAgain {
  CheckId check;
  Number perDose;
  bool atMost;
  Number bound;
  std::optional<Number> total = {};  ///< what is held against it where the dose itself is not known

  [[nodiscard]] Number valueFor(const std::optional<Number>& dose) const {
    return total ? *total : *dose * perDose;
  }
  [[nodiscard]] bool holdsFor(const std::optional<Number>& dose) const {
    return atMost ? valueFor(dose) <= bound : valueFor(dose) >= bound;
  }
};

/// How many doses in 24 h are counted of an order, and the most that there may be.
struct CountAgain {
  Number ordered;
  Number most;
};

/// The ordered dose and all its bounds, worked from the rules of arithmetic (R2 to R7, R13, R14) by code that
/// shares nothing with the working of the core but its numbers. `dose` is absent where the rules leave it
/// unknown.
struct WorkedAgain {
  std::optional<Number> kg;
  std::optional<Number> m2;
  std::optional<Unit> unit;
  std::optional<Number> dose;
  std::optional<Number> perMl;  ///< strength of a liquid, tablet or capsule, in `unit`
  std::vector<BoundAgain> bounds;
  std::optional<CountAgain> count;  ///< absent where the rules compare no number of doses
  bool otherMedicine = false;       ///< then there are no bounds
};

[[nodiscard]] WorkedAgain workAgain(const Case& inputs, const HouseRules& rules);

}  // namespace wardchalk::test
