#pragma once

#include "core/check/detail/checks.h"

namespace wardchalk::detail {

/// Whether what is given goes with how it is given, as far as both are known; what does not is asked about
/// (R9).
[[nodiscard]] bool formFits(Notebook& notes);

/// The amount of one dose, and what can be measured of it. None while the stock does not say.
[[nodiscard]] std::optional<Give> measure(Notebook& notes, const Facts& facts, const Checks& checks);

/// Makes a note of a dose below the usual one where the next amount of a solid that can be given would be
/// over a limit: nobody could order more of it.
void noteTheMostThatFits(Notebook& notes, const Checks& checks, const std::optional<Give>& give);

/// How an infusion of the measured dose runs, or an order that is a rate.
[[nodiscard]] std::optional<RunRate> findRunRate(Notebook& notes, const Facts& facts, const Checks& checks,
                                                 const std::optional<Give>& give);

}  // namespace wardchalk::detail
