#pragma once

#include <functional>

#include "core/check/detail/checks.h"
#include "core/check/detail/giving.h"

namespace wardchalk::detail {

/// Whether a flow of so many times the exact one keeps what that one kept.
using Keeps = std::function<bool(const Number& times)>;

/// A flow, and as it is set, ready for the way back.
struct Running {
  Flow flow;
  std::optional<Found> set;
};

/// Writes the step for a flow, rounds it, and asks when rounding moves it too far. `wanted` has one unit
/// above and one below.
[[nodiscard]] std::optional<Running> flowOf(Notebook& notes, StepId id, Chain chain, const Units& wanted,
                                            int decimals, const Keeps& keeps);

/// How an infusion of the measured dose runs; none while its volume or time is not known, or too small.
[[nodiscard]] std::optional<RunRate> infusionFlow(Notebook& notes, const Found& ordered, const Checks& checks,
                                                  const Give& give);

/// How an order that is a rate runs out of a bag whose strength is known.
[[nodiscard]] std::optional<RunRate> rateFlow(Notebook& notes, const Facts& facts, const Checks& checks);

}  // namespace wardchalk::detail
