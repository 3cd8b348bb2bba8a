#pragma once

#include "core/check/detail/doses.h"

namespace wardchalk::detail {

/// What the reference and its maxima allow this child, in the order's drug unit, as far as each is known.
struct Limits {
  std::optional<Found> dose;  ///< by the reference, before maxima
  std::optional<Found> day;
  std::optional<Found> week;
  std::optional<Chain> weekChain;
  std::optional<Found> maxDose;
  std::optional<Found> maxDay;
  std::optional<MostDoses> mostDoses;  ///< in 24 h
  std::optional<Found> low;            ///< in the reference's own basis: a dose, a day or a week
  std::optional<Chain> lowWeekChain;
  std::optional<Found> lowDose;  ///< the low end as the worksheet states it
  std::optional<Found> lowDay;
  std::optional<Limit> lowestDose;  ///< those that count, lowered by the maxima (R6)
  std::optional<Limit> lowestDay;
};

[[nodiscard]] Limits findLimits(Notebook& notes, const Size& size, const Doses& doses);

}  // namespace wardchalk::detail
