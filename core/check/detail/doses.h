#pragma once

#include "core/check/detail/size.h"
#include "core/check/detail/strengths.h"

namespace wardchalk::detail {

/// What is ordered: how often, and how much of the medicine, as far as it is known.
struct Doses {
  bool once = false;
  bool isRate = false;
  std::optional<Number> n;          ///< most doses a day, capped
  std::optional<Unit> unit;         ///< the drug unit that everything is shown in
  std::optional<Found> ordered;     ///< one dose
  std::optional<Found> orderedDay;  ///< the most given in 24 h
  bool mixingShown = false;         ///< the order is in mL, so that the strength stands before it

  /// The quantity's value in the order's drug unit; none when their dimensions differ.
  [[nodiscard]] std::optional<Number> inOrderUnit(const Quantity& quantity) const;
};

[[nodiscard]] Doses findDoses(Notebook& notes, const Size& size, const Strengths& strengths);

/// A rate for this child, in the order's drug unit per `time`; none while a size it wants is not known.
[[nodiscard]] std::optional<Chain> rateChain(Notebook& notes, const Size& size, const Doses& doses,
                                             const DoseAmount& rate, StaticText path, Unit time);

/// ⌈x⌉, at least 1.
[[nodiscard]] Number ceilAtLeastOne(const Number& x);

}  // namespace wardchalk::detail
