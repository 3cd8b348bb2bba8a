#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <ostream>
#include <set>
#include <string>
#include <vector>

#include "core/check/shown.h"
#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "core/words/working_text.h"
#include "tests/golden/golden_file.h"
#include "tests/golden/moments.h"
#include "tests/support/golden_cases.h"

// Each case in tests/golden/cases has its expected working as text and its expected worksheet as JSON beside
// it. They are reviewed like code. To write them anew on purpose: WARDCHALK_UPDATE_GOLDEN=1 core_golden_test;
// the run then fails, so that no build passes by rewriting what it was to be held against.

namespace wardchalk::golden_test {
namespace {

using test::compareWithFile;
using test::GoldenCase;
using test::goldenCases;
using test::goldenFolder;
using test::oneMemberALine;

Worksheet worksheetOf(const GoldenCase& golden) { return workOut(golden.given, golden.rules); }

class GoldenTest : public ::testing::TestWithParam<GoldenCase> {};

TEST_P(GoldenTest, WritesTheExpectedWorking) {
  const GoldenCase& golden = GetParam();
  compareWithFile(goldenFolder() / (golden.name + ".txt"), workingText(worksheetOf(golden)));
}

/// What is told on ask once every question is settled, beside what is told before.
TEST_P(GoldenTest, WritesTheExpectedWorkingAfterAsking) {
  const GoldenCase& golden = GetParam();
  const Worksheet sheet = worksheetOf(golden);
  const Answers settled = answersBy(
      sheet, {Answer::prescriber, Answer::weighedAgain, Answer::measuredAgain, Answer::labelReadAgain});
  const std::filesystem::path file = goldenFolder() / (golden.name + ".asked.txt");
  if (settled.given.empty()) {
    EXPECT_FALSE(std::filesystem::exists(file));
    return;
  }
  compareWithFile(file, workingText(Shown(sheet, settled)));
}

TEST_P(GoldenTest, WritesTheExpectedWorksheet) {
  const GoldenCase& golden = GetParam();
  std::string json;
  writeWorksheet(json, worksheetOf(golden), WorksheetExtent::whole);
  compareWithFile(goldenFolder() / (golden.name + ".json"), oneMemberALine(json));
}

INSTANTIATE_TEST_SUITE_P(All, GoldenTest, ::testing::ValuesIn(goldenCases()), [](const auto& instance) {
  std::string name = instance.param.name;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

TEST(GoldenCases, ReachEveryVerdictBasisAndStock) {
  std::set<VerdictKind> verdicts;
  std::set<std::pair<PerSize, PerTime>> bases;
  std::set<StockKind> stocks;
  for (const GoldenCase& golden : goldenCases()) {
    const Worksheet sheet = worksheetOf(golden);
    verdicts.insert(sheet.verdict);
    if (sheet.given.reference.high)
      bases.insert({sheet.given.reference.high->perSize, sheet.given.reference.high->perTime});
    if (sheet.given.stock.kind) stocks.insert(*sheet.given.stock.kind);
  }
  EXPECT_EQ(verdicts.size(), 5U);
  EXPECT_EQ(stocks.size(), 3U);
  for (const PerSize size : {PerSize::kg, PerSize::m2})
    for (const PerTime time : {PerTime::dose, PerTime::day}) EXPECT_TRUE(bases.count({size, time}));
  EXPECT_TRUE(bases.count({PerSize::none, PerTime::dose}));
  EXPECT_TRUE(bases.count({PerSize::m2, PerTime::week}));
}

/// Whoever adds a finding shows it at work: in a case, or, where no case leads to it, among the moments.
TEST(GoldenCases, ReachEveryFindingCode) {
  std::set<FindingCode> reached;
  const auto look = [&reached](const Worksheet& sheet) {
    for (const Finding& finding : sheet.findings) reached.insert(finding.code);
  };
  for (const GoldenCase& golden : goldenCases()) look(worksheetOf(golden));
  for (const Moment& moment : moments()) look(moment.sheet);
  for (std::size_t i = 0; i < findingIds.size(); ++i)
    EXPECT_TRUE(reached.count(static_cast<FindingCode>(i))) << "no golden case shows " << findingIds[i];
}

TEST(GoldenCases, AreAtLeastTwenty) { EXPECT_GE(goldenCases().size(), 20U); }

}  // namespace
}  // namespace wardchalk::golden_test
