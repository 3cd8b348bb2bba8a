#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/check/worksheet.h"
#include "core/number/refusal.h"

namespace wardchalk {

/// What is wrong with an entry and what to write.
[[nodiscard]] std::string sentence(const Refusal& refusal);

/// Where a refusal belongs, fit to be shown; empty where it has no place.
[[nodiscard]] std::string placeText(const Refusal& refusal);

/// Why, with the path of what it is about: "order.dose: Nothing is written here."
[[nodiscard]] std::string placedSentence(const Refusal& refusal);

/// A finding in a sentence that a nurse could say aloud.
[[nodiscard]] std::string sentence(const Finding& finding);

/// What is wanting: "enter the height".
[[nodiscard]] std::string sentence(const Need& need);

/// The words on the flag: "SAFE by this reference", "NO VERDICT: enter the height".
[[nodiscard]] std::string verdictTitle(const Worksheet& sheet);

/// The one sentence beside them, naming the worst check. Empty where the title says all.
[[nodiscard]] std::string verdictReason(const Worksheet& sheet);

/// What weight is worked with, where it is estimated or was not taken today: "By a weight
/// estimated 3 months ago." It stands with every verdict; empty where no weight is used or nothing is odd.
[[nodiscard]] std::string weightUsed(const Worksheet& sheet);

/// What stands below the title: the reason, and by what weight.
[[nodiscard]] std::string belowTitle(const Worksheet& sheet);

/// What to change of an order that is unsafe as prepared: "Make it up to at least 60 mL and run it over at
/// least 20 min, then check again."
[[nodiscard]] std::string remedyText(const Remedy& remedy);

/// Whether the check is the one of the low end, and the dose is ordered once or as needed, so that it is not
/// held against the low end of a day or a week (R8). A tenth of the dose would pass: no range is called safe
/// then, and whoever reads "safe" is told what was not checked.
[[nodiscard]] bool isLowLeftOut(const Check& check);

/// The checks that were not made, most important first: "NOT checked: daily total, schedule". Empty if there
/// are none.
[[nodiscard]] std::string checksNotMade(const Worksheet& sheet);

/// The name of a check: "daily total".
[[nodiscard]] std::string checkName(CheckId id);

/// Why a check was not made.
[[nodiscard]] std::string whyNotText(WhyNot why);

/// A route in words.
[[nodiscard]] std::string routeText(Route route);

/// The most doses in words: "no more than 4 doses in 24 h".
[[nodiscard]] std::string mostDosesText(int most);

}  // namespace wardchalk
