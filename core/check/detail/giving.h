#pragma once

#include "core/check/detail/checks.h"

namespace wardchalk::detail {

/// The amount of one dose, and what can be measured of it. None while the order is not safe to give by what
/// is known, or the stock does not say.
[[nodiscard]] std::optional<Give> measure(Notebook& notes, const Facts& facts, const Checks& checks);

/// How an infusion of the measured dose runs, or an order that is a rate.
[[nodiscard]] std::optional<RunRate> findRunRate(Notebook& notes, const Facts& facts, const Checks& checks,
                                                 const std::optional<Give>& give);

}  // namespace wardchalk::detail
