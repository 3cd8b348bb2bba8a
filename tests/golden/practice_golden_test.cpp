#include <gtest/gtest.h>

#include <array>
#include <cstdint>
#include <string>

#include "core/practice/problem/problem_text.h"
#include "core/practice/sessions/set_file.h"
#include "tests/golden/golden_file.h"
#include "tests/support/golden_cases.h"

// The same seed gives the same problem on every machine and in every build of this version: one problem of
// each topic and level stands in full in tests/golden/practice, to be reviewed like code, and fifty of each
// by their hash.

namespace wardchalk::practice_golden_test {
namespace {

std::filesystem::path practiceFolder() { return test::goldenFolder().parent_path() / "practice"; }

/// FNV-1a of 64 bits. Source: Fowler, Noll, Vo; the figures are from memory.
class Hash {
 public:
  void add(std::string_view text) {
    for (const char c : text) value_ = (value_ ^ static_cast<unsigned char>(c)) * 1099511628211U;
    value_ = (value_ ^ 0x1FU) * 1099511628211U;
  }
  [[nodiscard]] std::string text() const { return std::to_string(value_); }

 private:
  std::uint64_t value_ = 14695981039346656037U;
};

/// Papers, lines and verdict; no words, which may change.
void addProblem(Hash& hash, const Problem& problem) {
  for (const WrittenEntry& entry : problem.entries) {
    if (entry.path == "reference.source") continue;
    hash.add(entry.path);
    hash.add(entry.text);
  }
  for (const Ask& ask : problem.asks) hash.add(idOf(ask));
  hash.add(idOf(problem.key.verdict));
}

TEST(PracticeGolden, oneOfEachTopicAndLevelIsAsItWasReviewed) {
  for (int level = lowestLevel; level <= highestLevel; ++level) {
    std::vector<Problem> problems;
    for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
      problems.push_back(makeProblem(static_cast<Topic>(topic), level, 2026, exactRules()));
    test::compareWithFile(practiceFolder() / ("level_" + std::to_string(level) + ".txt"),
                          problemsText(problems));
  }
}

TEST(PracticeGolden, fiftyOfEachTopicAndLevelHaveTheirHash) {
  std::string hashes;
  for (const HouseRules* rules : {&exactRules(), &classroomRules()})
    for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
      for (int level = lowestLevel; level <= highestLevel; ++level) {
        Hash hash;
        for (int i = 0; i < 50; ++i)
          addProblem(hash, makeProblem(static_cast<Topic>(topic), level, seedInSet(1, i), *rules));
        hashes.append(rules->name).append(" ").append(topicIds[topic]).append(" ");
        hashes.append(std::to_string(level)).append(" ").append(hash.text()).append("\n");
      }
  test::compareWithFile(practiceFolder() / "hashes.txt", hashes);
}

}  // namespace
}  // namespace wardchalk::practice_golden_test
