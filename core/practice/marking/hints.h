#pragma once

#include <string>

#include "core/practice/marking/line_mark.h"
#include "core/practice/marking/marking.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

/// The rungs of a hint: where to look, a question, the rule in words, the worked line. None before the last
/// names a number of the problem.
inline constexpr int lastRung = 4;
inline constexpr int usualRung = 2;

/// A hint for a line that is not right; empty for one that is. `carried` are the student's own earlier
/// answers, which the worked line goes on with. `rung` is 1 to 4, others are taken as the nearest.
[[nodiscard]] std::string hint(const Problem& problem, std::size_t ask, const LineMark& mark,
                               std::span<const CarriedAnswer> carried, int rung);

/// What is right on a line that is not: "The set-up is right." Empty if nothing is known to be.
[[nodiscard]] std::string praise(const LineMark& mark);

/// What is said beside the mark: notes, and why the line could not be read or should be written otherwise. A
/// line each.
[[nodiscard]] std::vector<std::string> remarks(const LineMark& mark);

/// What a mistake is called: "weight left in pounds".
[[nodiscard]] std::string mistakeName(MistakeId mistake);

/// "right", "not yet", "one of these".
[[nodiscard]] std::string markWord(Mark mark);

/// The word for a verdict: "safe", "does not fit".
[[nodiscard]] std::string verdictWord(VerdictWord word);

}  // namespace wardchalk
