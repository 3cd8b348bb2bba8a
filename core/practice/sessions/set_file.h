#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/number/refusal.h"
#include "core/practice/problem/problem.h"

namespace wardchalk {

/// Learning: each line may be checked by itself and hinted at. Test: nothing is marked before all is handed
/// in.
enum class PracticeMode : std::uint8_t { learning, test };

/// The stable id that stands in files: "learn", "test".
[[nodiscard]] constexpr std::string_view idOf(PracticeMode mode) {
  return mode == PracticeMode::learning ? "learn" : "test";
}

/// A set of problems by the little it is made from, so that every seat in a class makes the same.
struct PracticeSet {
  std::string title;
  std::uint64_t seed = 1;
  std::vector<Topic> topics;  ///< at least one; they take turns
  int level = lowestLevel;
  int count = 10;  ///< 1 to 1000
  HouseRules rules = exactRules();
  std::optional<PracticeMode> mode{};  ///< none: who practises chooses
  bool builder = true;                 ///< lines may be put together out of facts
  bool hints = true;
  std::optional<int> minutes{};  ///< none: as long as it takes
  bool wantsUnits = false;       ///< a number that needs a unit and has none is not right
  bool wantsReason = false;      ///< a verdict that is near enough needs its reason

  friend bool operator==(const PracticeSet&, const PracticeSet&) = default;
};

inline constexpr int mostProblems = 1000;
inline constexpr int mostMinutes = 600;
/// Longest title, in bytes.
inline constexpr std::size_t longestSetTitle = 500;

/// The same problems for somebody who practises alone: without a title, and with nothing fixed by a teacher.
[[nodiscard]] PracticeSet withoutTerms(const PracticeSet& set);

/// The seed of a set's problem, counted from 0: that of the set for the first, so that one problem alone can
/// be made again; the others are far from it, so that sets with neighbouring seeds share none.
[[nodiscard]] std::uint64_t seedInSet(std::uint64_t seed, int index);

/// The topic at `index`, counted from 0: topics take turns, also beyond the set.
[[nodiscard]] Topic topicInSet(const PracticeSet& set, int index);

/// The set's problem at `index`, counted from 0.
[[nodiscard]] Problem problemInSet(const PracticeSet& set, int index);

/// A mark of 16 hexadecimal digits that two sets share only if they are the same: by it the tables of a class
/// are known to belong to one sheet. It is no seal: who wants to can make a set for a mark.
[[nodiscard]] std::string setMark(const PracticeSet& set);

/// Appends the set as one JSON object on one line, without a line break.
void writeSet(std::string& out, const PracticeSet& set);

/// Reads a set file whole or refuses it whole, with the path of what is wrong.
[[nodiscard]] Result<PracticeSet> readSet(std::string_view json);

}  // namespace wardchalk
