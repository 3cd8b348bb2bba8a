#pragma once

#include <span>
#include <string>

#include "core/practice/lines/chain_facts.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

/// What a topic is called: "doses by body surface".
[[nodiscard]] std::string topicWord(Topic topic);

/// What a level is called: "the usual case".
[[nodiscard]] std::string levelWord(int level);

/// What is asked in a line, without its unit: "What is the child's body surface area?". The same words
/// whatever the answer, and also where the key works out no such line, because nothing may be measured.
[[nodiscard]] std::string lineQuestion(const Ask& ask, const Problem& problem);

/// "in m², 2 decimals", or empty where no unit is asked for.
[[nodiscard]] std::string lineUnit(const Ask& ask);

/// The right answer to a line as it stands in a key: "0.70 m²", "safe".
[[nodiscard]] std::string lineAnswer(const Ask& ask, const Problem& problem);

/// The facts that lie on the table for a line; where the key has no chain for it, those of the problem's
/// papers, so that their being there tells nothing. Of earlier lines there are the student's own answers
/// alone. Empty for a line that is no chain: a verdict, a comparison, a device.
[[nodiscard]] std::vector<ChainFact> lineFacts(const Ask& ask, const Problem& problem,
                                               std::span<const CarriedAnswer> earlier = {});

/// The units that a chain for this line is to come to.
[[nodiscard]] Units lineWanted(const Ask& ask, const Problem& problem);

}  // namespace wardchalk
