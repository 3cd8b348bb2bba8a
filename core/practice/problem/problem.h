#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/check/worksheet.h"
#include "core/medicine/case.h"
#include "core/practice/problem/topic.h"
#include "core/record/case_file.h"
#include "core/rules/house_rules.h"
#include "core/working/chain.h"
#include "core/working/step_id.h"

namespace wardchalk {

/// One line that a student is to answer: a step of the key, or whether the order may be given.
struct Ask {
  std::optional<StepId> step;  ///< none: the verdict
  Units wanted;                ///< of the answer; empty for the verdict and for a count without a unit
  std::optional<int>
      decimals{};  ///< that are asked for at least; none: the number whole, as it comes out, or no number
  std::optional<int> decimalsBelowOne{};  ///< the same of an amount below 1, where it is another number

  [[nodiscard]] bool isVerdict() const { return !step; }
  friend bool operator==(const Ask&, const Ask&) = default;
};

/// The stable id of a line: that of its step, or "verdict".
[[nodiscard]] std::string_view idOf(const Ask& ask);

/// The line with this id, in the unit that the key looks for; "in one dose" and "in 24 h" are no part of it.
/// An amount line (amount_line.h) is one although the key, being not safe, ends before it. None when there is
/// no such line, the key has no such step, or the step is a comparison.
[[nodiscard]] std::optional<Ask> askFor(std::string_view id, const Worksheet& key);

/// Levels of practice, from one chain in metric units to maxima, bands, powders and two ends.
inline constexpr int lowestLevel = 1;
inline constexpr int highestLevel = 3;

/// Greatest seed: it stands bare in files, where other programs read numbers up to here exactly.
inline constexpr std::uint64_t greatestSeed = (std::uint64_t{1} << 53U) - 1;

/// A problem to practise on, with an invented medicine. The key is the worksheet of the case by these rules;
/// it has every step that is asked for, except that
/// where the verdict is not safe it ends before the amount lines.
struct Problem {
  std::uint64_t seed = 0;
  Topic topic = Topic::mixed;  ///< as it was asked for: a mixed one stays mixed
  int level = lowestLevel;
  std::string story;                  ///< the papers, a paragraph each, parted by line breaks; English
  std::vector<WrittenEntry> entries;  ///< every entry of the case with its text as on the papers
  Case given;
  HouseRules rules;
  Worksheet key;
  std::vector<Ask> asks;  ///< in the order in which a nurse works; at least one
};

/// Makes the problem of this topic, level (1 to 3, others are taken as the nearest) and seed. The same four
/// give the same problem, to the letter, on every machine: whole numbers and exact arithmetic only.
[[nodiscard]] Problem makeProblem(Topic topic, int level, std::uint64_t seed, const HouseRules& rules);

}  // namespace wardchalk
