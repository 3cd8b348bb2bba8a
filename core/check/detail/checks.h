#pragma once

#include "core/check/detail/facts.h"

namespace wardchalk::detail {

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

/// Every check, made or not.
struct Checks {
  std::array<Check, checkCount> all;
  std::vector<DoseBound> bounds;
  std::vector<AsWritten> asWritten;
  std::optional<Quantity> minimumVolume;  ///< that the greatest concentration allows

  /// Every check as not made, for this reason.
  explicit Checks(WhyNot why = WhyNot::missing);
  [[nodiscard]] const Check& check(CheckId id) const { return all[static_cast<std::size_t>(id)]; }
  /// Whether every check that the ordered dose or rate met is met by so many times it too (R9, R10).
  [[nodiscard]] bool areKeptBy(const Number& times) const;
};

/// Compares the order with everything that is known.
[[nodiscard]] Checks makeChecks(Notebook& notes, const Facts& facts);

/// The comparisons of the amount with its limits and its low end alone, and those of whom and what the
/// reference is for.
[[nodiscard]] Checks checkAmount(Notebook& notes, const Facts& facts);
/// The same, but made no further than one of the ordered dose that is outside: for whom nothing but that
/// matters.
[[nodiscard]] Checks checkAmountUntilOutside(Notebook& notes, const Facts& facts);
void checkChild(Notebook& notes, const Facts& facts, Checks& checks);

}  // namespace wardchalk::detail
