#pragma once

#include <string>

#include "core/practice/problem/problem.h"

namespace wardchalk {

/// The papers of a case in plain words, a paragraph each: child, order, reference, what is in hand, infusion.
/// `wording` (0 or more) chooses among ways to say it. Nothing is worked out or hinted at.
[[nodiscard]] std::string storyOf(const Case& given, const HouseRules& rules, std::uint64_t wording);

/// What is asked in a line of this step, without its unit: "What is the child's body surface area?". The same
/// words whatever the answer, and also where the key works out no such line, because nothing may be measured.
[[nodiscard]] std::string askQuestion(StepId step, const Problem& problem);

/// How many decimals a line asks for: "2 decimals", "whole number"; empty where it does not say.
[[nodiscard]] std::string askedPrecision(const Ask& ask);

/// What is asked in a line: "How many mL do you give? (1 decimal)". The same words whatever
/// the answer.
[[nodiscard]] std::string askText(const Ask& ask, const Problem& problem);

}  // namespace wardchalk
