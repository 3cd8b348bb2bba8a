// Doses that published labels state for children, as references. label_doses.csv holds what each source says;
// label_dose_cases.csv how it is entered here and what must come out. Each limit there was reckoned apart
// from the program, in fractions, from the rate, the size and the number of doses, as its column "reckoning"
// says; the child is invented. These are check values of arithmetic and no guide to any medicine.
#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <set>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "tests/support/case_text.h"
#include "tests/support/csv.h"
#include "tests/support/figures.h"

namespace wardchalk::test::label_doses_test {

namespace {

const std::vector<Row>& labels() {
  static const std::vector<Row> rows = readCsv(sourceFile("tests/evidence/label_doses.csv"));
  return rows;
}

const std::vector<Row>& cases() {
  static const std::vector<Row> rows = readCsv(sourceFile("tests/evidence/label_dose_cases.csv"));
  return rows;
}

std::vector<Row> casesIn(std::string_view list) { return rowsWith(cases(), "list", list); }

/// What a failure shows: the row, what its source says and where that stands.
std::string sourceLines(const Row& run) {
  const Row& label = rowOf(labels(), run.at("id"));
  return run.at("id") + ": " + label.at("dose_low") + " to " + label.at("dose_high") + " " +
         label.at("dose_unit") + ", " + label.at("frequency") + ", " + label.at("age_weight_limits") +
         "\n  source: " + label.at("source") + ", " + label.at("section") + " [" + label.at("how_known") +
         "]\n  run as: " + run.at("case") + "\n  reckoned: " + run.at("reckoning") + "\n  " +
         run.at("reason");
}

std::string nameOf(const testing::TestParamInfo<Row>& info) {
  std::string name = info.param.at("id");
  std::replace(name.begin(), name.end(), '-', '_');
  return name + "_" + std::to_string(info.index);
}

Worksheet ordered(const Row& run, const std::string& dose) {
  return workOut(caseOf(with(entriesOf(run.at("case")), "order.dose", dose)), rulesOf(run.at("rules")));
}

void expectAll(const Worksheet& sheet, std::string_view expectations) {
  for (const std::string& expectation : partsOf(expectations)) EXPECT_EQ(unmet(sheet, expectation), "");
}

/// "27 mg" times a power of ten.
std::string shifted(const std::string& dose, int places) {
  const std::size_t space = dose.find(' ');
  return exactText(*readDecimal(dose.substr(0, space)) * Number::powerOfTen(places)) + dose.substr(space);
}

}  // namespace

class LabelDose : public testing::TestWithParam<Row> {};

TEST_P(LabelDose, isSafeAtItsLimit) {
  const Row& run = GetParam();
  SCOPED_TRACE(sourceLines(run));
  const Worksheet sheet = ordered(run, run.at("at"));
  expectAll(sheet, "verdict=safe; limit.dose=" + run.at("limit_dose") + "; limit.day=" + run.at("limit_day"));
}

TEST_P(LabelDose, isUnsafeJustOverIt) {
  const Row& run = GetParam();
  SCOPED_TRACE(sourceLines(run));
  const Worksheet sheet = ordered(run, run.at("over"));
  expectAll(sheet, "verdict=unsafe; give=absent");
  ASSERT_FALSE(partsOf(run.at("outside")).empty());
  for (const Check& check : sheet.checks) {
    const std::vector<std::string> outside = partsOf(run.at("outside"));
    const bool expected = std::find(outside.begin(), outside.end(), idOf(check.id)) != outside.end();
    if (check.id == CheckId::period) continue;
    EXPECT_EQ(check.status == CheckStatus::outside, expected) << idOf(check.id);
  }
}

TEST_P(LabelDose, isWithinJustUnderIt) {
  const Row& run = GetParam();
  SCOPED_TRACE(sourceLines(run));
  expectAll(ordered(run, run.at("under")), "verdict=" + run.at("under_verdict"));
}

// A point lost or misplaced (H01): ten and a hundred times too much is never safe, a tenth and a hundredth is
// asked about wherever the reference states a usual dose.
TEST_P(LabelDose, isNeverSafeTenTimesOrATenth) {
  const Row& run = GetParam();
  SCOPED_TRACE(sourceLines(run));
  const bool ceiling = run.at("case").find("limit_only=true") != std::string::npos;
  for (const int places : {1, 2})
    EXPECT_EQ(ordered(run, shifted(run.at("at"), places)).verdict, VerdictKind::unsafe);
  for (const int places : {-1, -2})
    EXPECT_EQ(ordered(run, shifted(run.at("at"), places)).verdict,
              ceiling ? VerdictKind::safe : VerdictKind::ask);
}

INSTANTIATE_TEST_SUITE_P(evidence, LabelDose, testing::ValuesIn(casesIn("limit")), nameOf);

class LabelCase : public testing::TestWithParam<Row> {};

TEST_P(LabelCase, comesOutAsReckoned) {
  const Row& run = GetParam();
  SCOPED_TRACE(sourceLines(run));
  ASSERT_FALSE(run.at("expect").empty());
  expectAll(workOut(caseOf(run.at("case")), rulesOf(run.at("rules"))), run.at("expect"));
}

INSTANTIATE_TEST_SUITE_P(evidence, LabelCase, testing::ValuesIn(casesIn("more")), nameOf);

TEST(LabelDoses, areThereAllWithTheirSource) {
  EXPECT_EQ(labels().size(), 45U);
  std::set<std::string> ids;
  for (const Row& label : labels()) {
    EXPECT_TRUE(ids.insert(label.at("id")).second) << label.at("id") << " twice";
    EXPECT_GE(label.at("source").size(), 20U) << label.at("id");
    EXPECT_FALSE(label.at("how_known").empty()) << label.at("id");
  }
}

TEST(LabelDoses, areEachHeldOrSayWhyNot) {
  std::set<std::string> held;
  std::set<std::string> notHeld;
  for (const Row& run : cases()) {
    const bool isNotHeld = run.at("list") == "not-held";
    (isNotHeld ? notHeld : held).insert(run.at("id"));
    EXPECT_TRUE(!isNotHeld || !run.at("reason").empty()) << run.at("id");
  }
  for (const Row& label : labels())
    EXPECT_NE(held.contains(label.at("id")), notHeld.contains(label.at("id"))) << label.at("id");
  EXPECT_EQ(notHeld, std::set<std::string>{"LD-18"});
  std::cout << labels().size() << " label doses: " << held.size() << " held, " << casesIn("limit").size()
            << " limits and " << casesIn("more").size() << " further cases run\n";
}

// The rate that is entered is the one the label states.
TEST(LabelDoses, areEnteredWithTheRateOfTheirRow) {
  for (const Row& run : casesIn("limit")) {
    for (const Row& label : labels()) {
      if (label.at("id") != run.at("id") || label.at("id") == "LD-08c") continue;
      const std::string entries = run.at("case");
      const bool alternative = run.at("reason").starts_with("The alternative");
      const std::string high = alternative ? "12.5" : label.at("dose_high");
      EXPECT_NE(entries.find("reference.high=" + high + " mg"), std::string::npos) << run.at("id");
      if (label.at("dose_low").empty() || label.at("dose_low") == label.at("dose_high")) continue;
      EXPECT_NE(entries.find("reference.low=" + label.at("dose_low") + " mg"), std::string::npos)
          << run.at("id");
    }
  }
}

}  // namespace wardchalk::test::label_doses_test
