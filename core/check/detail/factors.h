#pragma once

#include <vector>

#include "core/check/worksheet.h"
#include "core/working/found.h"

namespace wardchalk::detail {

// What chains are built of. Each takes its units from the entry or the value that it is made of.

/// A dose as a factor: "120 mg over 1 m²·dose".
[[nodiscard]] Factor doseFactor(const DoseAmount& dose, StaticText path);
/// `count` of one unit over 1 of another: "2 dose over 1 day".
[[nodiscard]] Factor rateFactor(const Number& count, Unit over, Unit under, Origin origin);
/// So many doses in a day: "2 dose over 1 day".
[[nodiscard]] Factor dosesADay(const Number& count, StaticText path);
/// What a label or a stated concentration says: "120 mg over 5 mL".
[[nodiscard]] Factor labelFactor(const Strength& label, StaticText path);
/// A strength that was worked out: "26 mg over 1 mL".
[[nodiscard]] Factor strengthFactor(const StrengthFound& strength, Origin origin);
/// One entry over another: "100 mL over 30 min".
[[nodiscard]] Factor entriesFactor(const Quantity& over, StaticText overPath, const Quantity& under,
                                   StaticText underPath);
/// So many hundredths, by a house rule: "90 over 100".
[[nodiscard]] Factor percentFactor(const Number& percent, Origin rule);
/// An entry over 1.
[[nodiscard]] Factor entryFactor(const Quantity& entry, StaticText path);
/// A term over 1.
[[nodiscard]] Factor over1(Term term);

/// A volume in mL.
[[nodiscard]] Number inMl(const Quantity& volume);

/// Puts factors at the end of a chain.
void append(Chain& chain, std::vector<Factor> factors);
/// Turns what stands above a chain's bars from one unit into another.
void convertAbove(Chain& chain, Unit from, Unit to);
/// Turns what stands below a chain's bars from one unit into another.
void convertBelow(Chain& chain, Unit from, Unit to);

}  // namespace wardchalk::detail
