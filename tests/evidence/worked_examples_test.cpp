// Every example that nursing texts print, run as a case. worked_examples.csv holds what the source says;
// worked_example_cases.csv how each is entered here, under which house rules, and what must come out.
#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <regex>
#include <set>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"
#include "tests/support/case_text.h"
#include "tests/support/csv.h"
#include "tests/support/figures.h"

namespace wardchalk::test::worked_examples_test {

namespace {

const std::vector<Row>& examples() {
  static const std::vector<Row> rows = readCsv(sourceFile("tests/evidence/worked_examples.csv"));
  return rows;
}

const std::vector<Row>& cases() {
  static const std::vector<Row> rows = readCsv(sourceFile("tests/evidence/worked_example_cases.csv"));
  return rows;
}

const Row& exampleOf(const Row& run) { return rowOf(examples(), run.at("id")); }

std::vector<Row> casesIn(std::string_view list) { return rowsWith(cases(), "list", list); }

/// What a failure shows: the row, and the source that it is held against.
std::string sourceLines(const Row& run) {
  const Row& example = exampleOf(run);
  return run.at("id") + "  published: " + example.at("published_answer") +
         "\n  inputs: " + example.at("inputs") + "\n  source: " + example.at("source") + " [" +
         example.at("how_known") + "]\n  run as: " + run.at("case") + "\n  under: " + run.at("rules") +
         "\n  " + run.at("reason");
}

/// "OS_22_2": the id and, for an example that is run several ways, which.
std::string nameOf(const testing::TestParamInfo<Row>& info) {
  std::string name = info.param.at("id");
  std::replace(name.begin(), name.end(), '-', '_');
  return name + "_" + std::to_string(info.index);
}

std::set<std::string> numbersIn(const std::string& text) {
  static const std::regex number(R"(\d+(\.\d+)?)");
  std::set<std::string> found;
  for (std::sregex_iterator at(text.begin(), text.end(), number), end; at != end; ++at)
    found.insert(at->str());
  return found;
}

void expectRefused(const Row& run) {
  for (const WrittenEntry& entry : entriesOf(run.at("refused"))) {
    Case inputs;
    const auto refusal = setEntry(inputs, entry.path, entry.text).refusalIfAny();
    ASSERT_TRUE(refusal) << entry.path << " reads " << entry.text;
    EXPECT_TRUE(refusal->code == RefusalCode::unitUnknown || refusal->code == RefusalCode::unitUnsafe ||
                refusal->code == RefusalCode::unitAmbiguous)
        << idOf(refusal->code);
    EXPECT_EQ(inputs, Case{}) << "a refused entry leaves nothing behind";
  }
}

}  // namespace

class WorkedExample : public testing::TestWithParam<Row> {};

TEST_P(WorkedExample, comesOutAsPublished) {
  const Row& run = GetParam();
  SCOPED_TRACE(sourceLines(run));
  const std::vector<WrittenEntry> entries = entriesOf(run.at("case"));
  const Case inputs = caseOf(entries);
  const Result<Case> fromFile = readCase(writeCaseFile(entries));
  ASSERT_TRUE(fromFile);
  EXPECT_EQ(*fromFile, inputs);
  const Worksheet sheet = workOut(inputs, rulesOf(run.at("rules")));
  const std::vector<std::string> expected = partsOf(run.at("expect"));
  ASSERT_FALSE(expected.empty());
  for (const std::string& expectation : expected) EXPECT_EQ(unmet(sheet, expectation), "");
  expectRefused(run);
}

INSTANTIATE_TEST_SUITE_P(evidence, WorkedExample, testing::ValuesIn(casesIn("worksheet")), nameOf);

class RefusedExample : public testing::TestWithParam<Row> {};

TEST_P(RefusedExample, isRefusedByTheReader) {
  SCOPED_TRACE(sourceLines(GetParam()));
  ASSERT_FALSE(GetParam().at("refused").empty());
  expectRefused(GetParam());
}

INSTANTIATE_TEST_SUITE_P(evidence, RefusedExample, testing::ValuesIn(casesIn("refused")), nameOf);

TEST(WorkedExamples, standEachInExactlyOneList) {
  const std::set<std::string> lists = {"worksheet", "refused"};
  std::map<std::string, std::set<std::string>> listsOf;
  for (const Row& run : cases()) {
    EXPECT_TRUE(lists.contains(run.at("list"))) << run.at("id") << ": " << run.at("list");
    listsOf[run.at("id")].insert(run.at("list"));
  }
  for (const Row& example : examples())
    EXPECT_EQ(listsOf[example.at("id")].size(), 1U) << example.at("id") << " stands in no list or in several";
  EXPECT_EQ(listsOf.size(), examples().size()) << "a case without its example";
}

TEST(WorkedExamples, areThereAllWithTheirSource) {
  EXPECT_EQ(examples().size(), 83U);
  std::set<std::string> ids;
  for (const Row& example : examples()) {
    EXPECT_TRUE(ids.insert(example.at("id")).second) << example.at("id") << " twice";
    EXPECT_GE(example.at("source").size(), 20U) << example.at("id");
    EXPECT_FALSE(example.at("published_answer").empty()) << example.at("id");
  }
}

// A figure is held against print: it must stand in the published answer or, with the reason told, among the
// figures recomputed for the row. Only the exact value before a printed rounding may stand there besides.
TEST(WorkedExamples, expectOnlyPublishedOrRecomputedFigures) {
  const std::set<std::string> words = {"verdict", "because", "finding"};
  for (const Row& run : casesIn("worksheet")) {
    const Row& example = exampleOf(run);
    std::set<std::string> known = numbersIn(example.at("published_answer"));
    for (const std::string_view column : {"recomputed", "rounding", "notes", "inputs"})
      known.merge(numbersIn(example.find(column)->second));
    for (const std::string& expectation : partsOf(run.at("expect"))) {
      const std::string name = expectation.substr(0, expectation.find_first_of("=~!"));
      if (words.contains(name) || name.starts_with("check.") || expectation.ends_with("absent")) continue;
      const std::string value = expectation.substr(name.size());
      const std::set<std::string> numbers = numbersIn(value.substr(0, value.find(' ')));
      ASSERT_EQ(numbers.size(), 1U) << expectation;
      EXPECT_TRUE(known.contains(*numbers.begin()))
          << run.at("id") << ": " << expectation << " stands nowhere in print";
    }
  }
}

TEST(WorkedExamples, thatDifferOrAreNotRunSayWhy) {
  for (const Row& run : cases()) {
    const bool differs = run.at("expect").find("!=") != std::string::npos &&
                         run.at("expect").find("finding!=") == std::string::npos;
    const bool wanted = differs || run.at("list") != "worksheet";
    EXPECT_TRUE(!wanted || !run.at("reason").empty()) << run.at("id");
  }
  for (const Row& example : examples()) {
    if (!example.at("agrees").starts_with("no")) continue;
    const bool told = std::any_of(cases().begin(), cases().end(), [&](const Row& run) {
      return run.at("id") == example.at("id") && !run.at("reason").empty();
    });
    EXPECT_TRUE(told) << example.at("id") << ": " << example.at("agrees");
  }
}

// Where an example asks for an input of ours, the published answer is entered and must lead back to its
// figures.
TEST(WorkedExamples, areAllRunOrRefused) {
  EXPECT_EQ(casesIn("worksheet").size() + casesIn("refused").size(), cases().size());
  std::cout << examples().size() << " published examples: " << casesIn("worksheet").size() << " cases run, "
            << casesIn("refused").size() << " examples refused\n";
}

TEST(WorkedExamples, coverEveryTopicByARun) {
  std::set<std::string> topics;
  std::set<std::string> run;
  for (const Row& example : examples()) topics.insert(example.at("topic"));
  for (const Row& each : casesIn("worksheet")) run.insert(exampleOf(each).at("topic"));
  EXPECT_EQ(run, topics);
}

}  // namespace wardchalk::test::worked_examples_test
