#include <gtest/gtest.h>

#include <set>
#include <stdexcept>

#include "core/practice/sessions/answers_file.h"
#include "core/practice/sessions/problem_file.h"
#include "core/practice/sessions/set_file.h"
#include "core/words/sentences.h"

namespace wardchalk::practice_files_test {
namespace {

std::string written(const Problem& problem) {
  std::string out;
  writeProblem(out, problem);
  return out;
}

/// The text with its first `from` replaced; the text must have it.
std::string changed(std::string text, std::string_view from, std::string_view to) {
  const std::size_t at = text.find(from);
  if (at == std::string::npos) throw std::runtime_error("no " + std::string(from) + " in " + text);
  return text.replace(at, from.size(), to);
}

/// "path code" of what is refused; "read" when it is not.
template <typename T>
std::string fate(const Result<T>& result) {
  if (result) return "read";
  EXPECT_FALSE(sentence(result.refusal()).empty());
  return result.refusal().path + " " + std::string(idOf(result.refusal().code));
}

TEST(ProblemFile, isReadAsItWasWritten) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (int level = lowestLevel; level <= highestLevel; ++level)
      for (const HouseRules* rules : {&exactRules(), &classroomRules()}) {
        const Problem problem = makeProblem(static_cast<Topic>(topic), level, 40 + topic, *rules);
        const std::string text = written(problem);
        const Result<Problem> read = readProblem(text);
        ASSERT_TRUE(read) << topicIds[topic] << ": " << fate(read) << "\n" << text;
        EXPECT_EQ(read->seed, problem.seed);
        EXPECT_EQ(read->topic, problem.topic);
        EXPECT_EQ(read->level, problem.level);
        EXPECT_EQ(read->story, problem.story);
        EXPECT_EQ(read->entries, problem.entries);
        EXPECT_EQ(read->given, problem.given);
        EXPECT_EQ(read->rules, problem.rules);
        EXPECT_EQ(read->asks, problem.asks);
        EXPECT_EQ(written(*read), text);
      }
}

/// A problem by weight with an amount, whose figures the rows below know.
std::string sample() {
  for (std::uint64_t seed = 1;; ++seed) {
    const Problem problem = makeProblem(Topic::doseByWeight, 1, seed, exactRules());
    if (problem.key.give && problem.asks.size() == 3 && problem.asks.back().step == StepId::give)
      return written(problem);
  }
}

struct RefusedFile {
  std::string_view from, to;
  std::string_view fate;
};

TEST(ProblemFile, isRefusedWithItsPathWhenAnythingIsWrong) {
  const std::string good = sample();
  ASSERT_EQ(fate(readProblem(good)), "read");
  for (const RefusedFile& row : {
           RefusedFile{"wardchalk.problem", "wardchalk.case", "format format-wrong"},
           RefusedFile{"\"version\":1", "\"version\":2", "version version-newer"},
           RefusedFile{"\"seed\":", "\"seed\":-", "seed value-out-of-range"},
           RefusedFile{"\"seed\":", "\"seed\":99999999999999999", "seed value-out-of-range"},
           RefusedFile{"\"topic\":\"dose-by-weight\"", "\"topic\":\"dose\"", "topic word-unknown"},
           RefusedFile{"\"level\":1", "\"level\":4", "level value-out-of-range"},
           RefusedFile{"\"level\":1", "\"level\":\"1\"", "level type-wrong"},
           RefusedFile{"\"story\":\"", "\"story\":\"\\u0007", "story unseen-character"},
           RefusedFile{"\"story\":", "\"tale\":", "story key-missing"},
           RefusedFile{"\"weight\":\"", "\"weight\":\"x", "case.child.weight number-missing"},
           RefusedFile{"\"case\":{", "\"case\":{\"colour\":\"red\",", "case.colour key-unknown"},
           RefusedFile{"\"pounds\":\"exact\"", "\"pounds\":\"metric\"", "rules.pounds word-unknown"},
           RefusedFile{"\"verdict\":\"safe\"", "\"verdict\":\"unsafe\"", "key problem-altered"},
           RefusedFile{"\"pounds\":\"exact\"", "\"pounds\":\"trade\"", "key problem-altered"},
           RefusedFile{"\"id\":\"give\",\"unit\":\"mL\"", "\"id\":\"give\",\"unit\":\"mg\"",
                       "asks[2].unit ask-not-in-key"},
           RefusedFile{"\"id\":\"give\",\"unit\":\"mL\"", "\"id\":\"give\"", "asks[2].unit key-missing"},
           RefusedFile{"\"id\":\"give\",\"unit\":\"mL\"", "\"id\":\"drops\",\"unit\":\"mL\"",
                       "asks[2].id ask-not-in-key"},
           RefusedFile{"\"id\":\"give\",\"unit\":\"mL\"", "\"id\":\"verdict\"", "asks[2] key-duplicate"},
           RefusedFile{"\"asks\":[", "\"asks\":[7,", "asks[0] type-wrong"},
           RefusedFile{"\"asks\":[", "\"answers\":1,\"asks\":[", "answers key-unknown"},
       })
    EXPECT_EQ(fate(readProblem(changed(good, row.from, row.to))), row.fate) << row.to;
  EXPECT_EQ(fate(readProblem(good.substr(0, good.size() / 2))), " not-json");
}

TEST(ProblemFile, isRefusedForAnyFigureOfTheCaseThatIsChanged) {
  const std::string good = sample();
  std::size_t tried = 0;
  const std::size_t end = good.find("\"rules\":");
  for (std::size_t at = good.find("\"case\":"); at < end; ++at) {
    const bool isFigure = good[at] >= '1' && good[at] <= '8' && good[at + 1] != '.' && good[at - 1] != 'm';
    if (!isFigure || good.compare(at - 2, 2, "\":") == 0) continue;  // not the version
    const auto source = good.find("\"source\"");
    if (at > source && at < good.find('}', source)) continue;  // not the page of the list
    std::string altered = good;
    ++altered[at];
    EXPECT_NE(fate(readProblem(altered)), "read") << altered.substr(at - 20, 40);
    ++tried;
  }
  EXPECT_GT(tried, 8U);
}

TEST(ProblemFile, keepsItsKeyWhenOnlyWordsHaveChanged) {
  const std::string good = sample();
  EXPECT_EQ(fate(readProblem(changed(good, "\"reason\":\"", "\"reason\":\"In other words: "))), "read");
}

TEST(ProblemFile, isReadThoughItIsOlderThanARule) {
  std::string older = sample();
  for (int i = 0; i < 2; ++i)
    older = changed(older, ",\"grace_percent\":0", "");  // the file's rules, and its key's
  EXPECT_EQ(fate(readProblem(older)), "read");
}

TEST(ProblemFile, isRefusedWhenItsKeyNamesOtherRules) {
  std::string good = sample();
  const std::size_t key = good.find("\"key\":");
  const std::string altered =
      good.substr(0, key) + changed(good.substr(key), "\"rate_decimals\":1", "\"rate_decimals\":2");
  EXPECT_EQ(fate(readProblem(altered)), "key problem-altered");
}

TEST(AnswersFile, isReadAsItWasWritten) {
  const std::vector<WrittenAnswer> lines = {
      {"bsa", "0.70 m2"}, {"limit-dose", "120 mg/m² × 0.70 m² = 84 mg"}, {"verdict", "safe"}, {"give", ""}};
  std::string text;
  writeAnswers(text, lines);
  const auto read = readAnswers(text);
  ASSERT_TRUE(read) << fate(read);
  EXPECT_EQ(*read, lines);
}

TEST(AnswersFile, isRefusedWithItsPathWhenAnythingIsWrong) {
  const std::string good =
      R"({"format":"wardchalk.answers","version":1,"lines":[{"id":"bsa","text":"0.70 m2"},{"id":"verdict","text":"safe"}]})";
  ASSERT_EQ(fate(readAnswers(good)), "read");
  for (const RefusedFile& row : {
           RefusedFile{"wardchalk.answers", "wardchalk.problem", "format format-wrong"},
           RefusedFile{"\"version\":1", "\"version\":3", "version version-newer"},
           RefusedFile{"\"lines\":[", "\"rows\":[", "lines key-missing"},
           RefusedFile{"\"id\":\"bsa\"", "\"id\":\"size\"", "lines[0].id ask-not-in-key"},
           RefusedFile{"\"id\":\"bsa\"", "\"id\":\"verdict\"", "lines[1] key-duplicate"},
           RefusedFile{"\"text\":\"safe\"", "\"text\":7", "lines[1].text type-wrong"},
           RefusedFile{"\"text\":\"safe\"", "\"text\":\"a\\tb\"", "lines[1].text unseen-character"},
           RefusedFile{"\"text\":\"safe\"", "\"text\":\"safe\",\"mark\":\"right\"",
                       "lines[1].mark key-unknown"},
           RefusedFile{"{\"id\":\"bsa\",\"text\":\"0.70 m2\"}", "\"bsa\"", "lines[0] type-wrong"},
       })
    EXPECT_EQ(fate(readAnswers(changed(good, row.from, row.to))), row.fate) << row.to;
  EXPECT_EQ(fate(readAnswers(changed(good, "safe", std::string(501, 'a')))), "lines[1].text too-long");
}

PracticeSet someSet() {
  PracticeSet set;
  set.title = "Week 3";
  set.seed = greatestSeed;
  set.topics = {Topic::bsa, Topic::doseByBsa, Topic::mixed};
  set.level = 2;
  set.count = 12;
  set.rules = classroomRules();
  return set;
}

TEST(SetFile, isReadAsItWasWritten) {
  std::string text;
  writeSet(text, someSet());
  const auto read = readSet(text);
  ASSERT_TRUE(read) << fate(read);
  EXPECT_EQ(*read, someSet());
}

TEST(SetFile, mayLeaveOutTitleAndRules) {
  const auto read =
      readSet(R"({"format":"wardchalk.set","version":1,"seed":5,"topics":["drops"],"level":1,"count":3})");
  ASSERT_TRUE(read) << fate(read);
  EXPECT_EQ(read->rules, exactRules());
}

TEST(SetFile, isRefusedWithItsPathWhenAnythingIsWrong) {
  std::string good;
  writeSet(good, someSet());
  for (const RefusedFile& row : {
           RefusedFile{"\"version\":1", "\"version\":2", "version version-newer"},
           RefusedFile{"\"count\":12", "\"count\":0", "count value-out-of-range"},
           RefusedFile{"\"count\":12", "\"count\":1001", "count value-out-of-range"},
           RefusedFile{"\"topics\":[\"bsa\"", "\"topics\":[\"surface\"", "topics[0] word-unknown"},
           RefusedFile{"[\"bsa\",\"dose-by-bsa\",\"mixed\"]", "[]", "topics type-wrong"},
           RefusedFile{"\"bsa_decimals\":2", "\"bsa_decimals\":1", "rules.bsa_decimals value-out-of-range"},
           RefusedFile{"\"level\":2", "\"stage\":2", "level key-missing"},
       })
    EXPECT_EQ(fate(readSet(changed(good, row.from, row.to))), row.fate) << row.to;
}

TEST(PracticeSet, beginsWithItsOwnSeedAndSharesNoneWithItsNeighbour) {
  EXPECT_EQ(seedInSet(7, 0), 7U);
  std::set<std::uint64_t> seeds;
  for (const std::uint64_t seed : {7U, 8U, 9U})
    for (int i = 0; i < mostProblems; ++i) {
      EXPECT_LE(seedInSet(seed, i), greatestSeed);
      seeds.insert(seedInSet(seed, i));
    }
  EXPECT_EQ(seeds.size(), 3U * mostProblems);
}

TEST(PracticeSet, takesItsTopicsInTurn) {
  const PracticeSet set = someSet();
  for (int i = 0; i < set.count; ++i)
    EXPECT_EQ(problemInSet(set, i).topic, set.topics[static_cast<std::size_t>(i) % set.topics.size()]);
}

TEST(SetWithoutTerms, keepsItsProblemsAlone) {
  PracticeSet set;
  set.title = "Week 3";
  set.seed = 77;
  set.topics = {Topic::drops, Topic::bsa};
  set.level = 2;
  set.count = 5;
  set.rules = classroomRules();
  const PracticeSet open = withoutTerms(set);
  EXPECT_EQ(open.title, "");
  for (int i = 0; i < set.count; ++i)
    EXPECT_EQ(written(problemInSet(open, i)), written(problemInSet(set, i))) << i;
  PracticeSet same = open;
  same.title = set.title;
  EXPECT_NE(setMark(open), setMark(set));
  EXPECT_EQ(setMark(same), setMark(set));
  EXPECT_EQ(setMark(set).size(), 16U);
}

}  // namespace
}  // namespace wardchalk::practice_files_test
