#pragma once

#include <span>
#include <vector>

#include "core/check/worksheet.h"
#include "core/working/chain.h"

namespace wardchalk {

/// A fact that a chain can be built of: a number over a number, with where it comes from.
struct ChainFact {
  Factor factor;
  bool needed;  ///< it stands in the key's working of the step; the others are there to be left out
  friend bool operator==(const ChainFact&, const ChainFact&) = default;
};

/// What a student found in an earlier line, in the unit of its step.
struct OwnResult {
  StepId step;
  Number value;
};

/// What lies on the table for one step: each factor of the key's chain once, and beside them what the papers
/// say besides, the conversions that touch the same units, and the constants of the other formula. The order
/// (papers, earlier steps, constants) tells nothing of what is needed. A number that does not end stands as
/// it is shown, rounded to four significant digits, because nobody could write it otherwise. An amount
/// line that the key does not work out, because nothing may be measured, has the others alone. Empty for a
/// step that has no chain. Of earlier steps there is what the student found, as it was found, and nothing of
/// the key's: a fact would tell its answer.
[[nodiscard]] std::vector<ChainFact> chainFacts(const Worksheet& key, StepId step,
                                                std::span<const OwnResult> own);

}  // namespace wardchalk
