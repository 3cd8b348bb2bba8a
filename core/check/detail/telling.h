#pragma once

#include "core/check/detail/checks.h"

namespace wardchalk::detail {

// What is told of checks that are made.

/// Asks about a weight that is older than the house wants one to be, or of which nobody says how old it is.
void askForOldWeight(Notebook& notes);
/// Makes a note of a doubt about a size that nothing is worked out by, and says of a dose that is too little
/// that it is so by the size entered while that is in doubt.
void judgeSizeDoubts(Notebook& notes);
/// Makes a note of a dose that is below a stated low end by so little that the house does not ask about it. A
/// measured dose stays as near.
void noteALittleLess(Notebook& notes, Checks& checks);
/// Asks about slips that would explain an amount out of range.
void findSlips(Notebook& notes, const Facts& facts, const Checks& checks);
/// Asks, in place of forbidding, about an order that is over the reference alone and within the house's grace
/// (R16).
void allowGrace(Notebook& notes, Checks& checks);
/// What to change of how it is prepared, where nothing else is unsafe or keeps it from being judged.
[[nodiscard]] std::optional<Remedy> findRemedy(Notebook& notes, const Facts& facts, const Checks& checks);
/// Tells where rounding or conversion decides.
void noteRounding(Notebook& notes, const Facts& facts, const Checks& checks);
/// Tells where an order in excess by exact pounds is within by 2.2 lb in 1 kg, as it is often taught (R17).
void notePounds(Notebook& notes, const Facts& facts, const Checks& checks);
void noteTheRest(Notebook& notes, const Facts& facts);

}  // namespace wardchalk::detail
