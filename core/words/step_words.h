#pragma once

#include <string>

#include "core/check/worksheet.h"
#include "core/number/decimal_text.h"

namespace wardchalk {

/// The question a step answers: "How many mL do you give?"
[[nodiscard]] std::string question(const Step& step, const Worksheet& sheet);

/// "looking for mg/dose"; empty for a comparison or a measurement.
[[nodiscard]] std::string lookingFor(const Step& step);

/// One line that says why the step is done so, or by which rule it was rounded. May be empty.
[[nodiscard]] std::string reason(const Step& step, const Worksheet& sheet);

/// What came out: "84 mg in one dose", "0.70 m²", "true".
[[nodiscard]] std::string conclusion(const Step& step);

/// The root before it is rounded, cut: "0.7015"; empty unless the step takes a root or a power.
[[nodiscard]] std::string unroundedText(const Step& step);

/// "=" where the conclusion is exact, "≈" where it is rounded.
[[nodiscard]] std::string equalsSign(const Step& step);
/// Whether the conclusion shows its number as it is; if not, "≈" stands before it.
[[nodiscard]] bool concludesExactly(const Step& step);

/// An amount with what it is per: "84 mg in one dose", "160 mg in 24 h", "40 mg/mL".
[[nodiscard]] std::string amountText(const Number& value, int fixedDecimals, const Units& units);

/// A factor in one line: "120 mg/(m²·dose)", "5 mL/120 mg".
[[nodiscard]] std::string factorLine(const Factor& factor);
/// A chain in one line: "120 mg/(m²·dose) × 0.70 m²".
[[nodiscard]] std::string chainLine(const Chain& chain);
/// Parts put together: "3 ft × 12 in/ft + 5 in = 41 in", "4.8 mL + 0.2 mL = 5 mL".
[[nodiscard]] std::string sumLine(const Sum& sum, Grouping grouping = Grouping::commas);
/// One side of a comparison in one line, without its chain: "80 mg", "87.5 mg/week", "every 12 h".
[[nodiscard]] std::string sideText(const Side& side, int significant = 4);
/// Whether a side is shown as it is; if not, "≈" stands before it.
[[nodiscard]] bool isShownExactly(const Side& side);
/// "≤", "≥", "agrees with", "is the same as" for the eye; empty before a band, which brings its own signs.
[[nodiscard]] std::string relationSign(const Comparison& comparison);
/// An amount as it is given: "3.2 mL", "2½ tablets" (a fraction of a tablet as a fraction, so that no point
/// is lost).
[[nodiscard]] std::string givenText(const Quantity& amount, int significant = 4);
/// What can be measured, in a sentence.
[[nodiscard]] std::string measuringLine(const Measuring& measuring);

/// Where a number comes from, in a word or two: "reference", "step 2".
[[nodiscard]] std::string tag(const Origin& origin, const Worksheet& sheet);

/// The whole step read aloud: "What is the safe dose? 120 milligrams per square metre …".
[[nodiscard]] std::string sentence(const Step& step, const Worksheet& sheet);

}  // namespace wardchalk
