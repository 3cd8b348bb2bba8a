#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/practice/problem.h"
#include "core/practice/topic.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// Whose conventions a set is worked by: one of the two shipped sets of house rules.
enum class SchoolRules : std::uint8_t { exact, classroom };

[[nodiscard]] const HouseRules& rulesOf(SchoolRules school);

/// Fewest and most problems of one set.
inline constexpr int fewestProblems = 1;
inline constexpr int mostProblems = 50;

/// What a set of problems is drawn from. The same plan gives the same problems on every machine, so that a
/// class can work one set, and a student the same one again.
struct PracticePlan {
  std::string title;          ///< what a preceptor calls the set; may be empty
  std::vector<Topic> topics;  ///< at least one; they take turns
  int level = lowestLevel;
  int count = 10;          ///< fewestProblems to mostProblems
  std::uint64_t seed = 1;  ///< at most greatestSeed; the first problem's, each further one has the next
  SchoolRules school = SchoolRules::exact;
  friend bool operator==(const PracticePlan&, const PracticePlan&) = default;
};

/// The topic and the seed of the problem at this place, from 0; places beyond the set go on in the same way.
[[nodiscard]] Topic topicAt(const PracticePlan& plan, int place);
[[nodiscard]] std::uint64_t seedAt(const PracticePlan& plan, int place);

/// The problem of this topic and seed as a student practises it. Where it asks whether the order may be given
/// and there is something to measure, it asks for the amount as well whatever the verdict, so that being
/// asked for it tells nothing.
[[nodiscard]] Problem practiceProblem(const PracticePlan& plan, Topic topic, std::uint64_t seed);

}  // namespace wardchalk
