#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/check/judgement.h"
#include "core/check/work_out.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"
#include "tests/support/figures.h"

// Where one sign in a rule would make another order of it: counts that end in no whole dose, surfaces that
// come out even, a charted surface beside a flat limit. Each figure is worked by hand in its row.

namespace wardchalk::test::edges_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  std::vector<const char*> expected;  ///< as `unmet` reads them
  const char* said = "";              ///< a part of a finding's sentence
  const char* rules = "";
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs; }

class Edges : public testing::TestWithParam<Row> {};

TEST_P(Edges, AreWorkedByTheRule) {
  const Row& row = GetParam();
  const Worksheet sheet = workOut(caseOf(row.inputs), rulesOf(row.rules));
  for (const char* expected : row.expected) EXPECT_EQ(unmet(sheet, expected), "");
  EXPECT_TRUE(std::ranges::any_of(sheet.findings, [&](const Finding& finding) {
    return sentence(finding).find(row.said) != std::string::npos;
  })) << row.said;
}

const std::string surface =
    "child.height=90 cm; child.weight=10 kg; ";  // 90 × 10 ÷ 3600 = 0.25, the root 0.5
const std::string liquid = "order.route=oral; stock.kind=liquid; stock.strength=10 mg/mL; ";
const std::string charted =
    "child.age=4 year; child.bsa=0.4 m2; order.schedule=every 8 h; reference.schedule=every 8 h; " + surface;

INSTANTIATE_TEST_SUITE_P(
    Counts, Edges,
    testing::Values(Row{"480 mg a day every 5 h are shared among 5 doses and not 4.8",
                        "child.weight=10 kg; order.dose=480 mg/day; order.schedule=every 5 h; "
                        "reference.high=9.6 mg/kg/dose; "
                        "reference.schedule=every 5 h",
                        {"ordered.dose=96 mg", "limit.dose=96 mg", "limit.day=480 mg",
                         "check.single=within"}},
                    Row{"30 mg per m2 a week, twice a week, are 7.5 mg for 0.5 m2",
                        surface + liquid +
                            "order.dose=7.5 mg; order.schedule=2 times a week; reference.high=30 mg/m2/week; "
                            "reference.schedule=2 times a week",
                        {"limit.dose=7.5 mg", "check.single=within", "check.period=within", "verdict=safe"}},
                    Row{"a week's amount in its one dose is not shared",
                        surface + liquid +
                            "order.dose=15 mg; order.schedule=weekly; reference.high=30 mg/m2/week; "
                            "reference.schedule=weekly",
                        {"limit.dose=15 mg", "verdict=safe"}}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Surfaces, Edges,
    testing::Values(
        Row{"a surface of exactly 0.5 m2 was not rounded",
            surface + liquid +
                "order.dose=50 mg; order.schedule=every 8 h; reference.high=100 mg/m2/dose; "
                "reference.schedule=every "
                "8 h",
            {"bsa=0.5 m2", "limit.dose=50 mg", "verdict=safe", "finding!=rounding-decides"}},
        Row{"a surface of exactly 1 m2 was not rounded",
            "child.height=120 cm; child.weight=30 kg; order.dose=100 mg; order.schedule=every 8 h; "
            "reference.high=100 mg/m2/dose; reference.schedule=every 8 h",
            {"bsa=1 m2", "limit.dose=100 mg", "check.single=within", "finding!=rounding-decides"}},
        Row{"40 mg by the charted 0.4 m2 are within 45 mg, 50 mg by 0.5 m2 are not",
            charted + "order.dose=100 mg/m2/dose; reference.high=45 mg/dose",
            {"ordered.dose=40 mg", "check.single=within", "finding=bsa-differs"},
            "within the limit by the charted BSA and over it by the other"},
        Row{"42 mg are over the 40 mg of the charted 0.4 m2 and within the 50 mg of 0.5 m2",
            charted + "order.dose=42 mg; reference.high=100 mg/m2/dose",
            {"limit.dose=40 mg", "check.single=outside", "finding=bsa-differs"},
            "over the limit by the charted BSA and within it by the other"}),
    NameOfRow());

const std::string tenth =
    "order.dose=7.5 mg; order.schedule=every 8 h; reference.low=75 mg/dose; reference.high=84 mg/dose; "
    "reference.schedule=every 8 h; ";

INSTANTIATE_TEST_SUITE_P(
    Slips, Edges,
    testing::Values(Row{"a tenth of the low end is asked about, and explained by a point",
                        tenth,
                        {"check.low=outside", "finding=below-low", "finding=possible-slip"}},
                    Row{"a tenth that the house only notes is explained by nothing",
                        tenth,
                        {"check.low=outside", "finding=below-low", "finding!=possible-slip"},
                        "",
                        "ask_low_percent=9"}),
    NameOfRow());

TEST(Edges, ALiquidIsNoVialWhateverItsContent) {
  const std::string order =
      "order.dose=50 mg; order.schedule=every 8 h; reference.high=60 mg/dose; reference.schedule=every 8 h; ";
  const Worksheet sheet = workOut(caseOf(order + liquid + "stock.content=20 mg"), exactRules());
  ASSERT_TRUE(sheet.give);
  EXPECT_FALSE(sheet.give->containers);
}

TEST(Edges, TwelveVialsAreTwelve) {
  const Worksheet sheet = workOut(
      caseOf(
          "order.dose=1150 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=1200 "
          "mg/dose; "
          "reference.schedule=every 8 h; stock.kind=powder; stock.content=100 mg; stock.final_volume=5 mL"),
      exactRules());
  ASSERT_TRUE(sheet.give);
  EXPECT_EQ(sheet.give->containers, 12);
}

TEST(Edges, ATimeAloneNeedsTheVolumeThatRunsInIt) {
  const Worksheet sheet = workOut(
      caseOf(
          "order.dose=50 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=60 mg/dose; "
          "reference.schedule=every 8 h; stock.kind=liquid; stock.strength=10 mg/mL; infusion.over=30 min"),
      exactRules());
  EXPECT_TRUE(std::ranges::any_of(sheet.needs, [](const Need& need) {
    return need.path == path::infusionVolume && need.forWhat == Need::For::amount;
  }));
}

TEST(Edges, OfTwoSyringesOfOneSizeTheFirstIsTaken) {
  HouseRules rules = exactRules();
  const Syringe fine{Number(10), Number::ratio(2, 10), SyringeKind::oral};
  const Syringe coarse{Number(10), Number(1), SyringeKind::oral};
  const Case given = caseOf(
      "order.dose=76 mg; order.schedule=every 8 h; reference.high=80 mg/dose; reference.schedule=every 8 "
      "h; " +
      liquid);
  rules.syringes = {fine, coarse};
  EXPECT_EQ(unmet(workOut(given, rules), "measured=7.6 mL"), "");
  rules.syringes = {coarse, fine};
  EXPECT_EQ(unmet(workOut(given, rules), "measured=8 mL"), "");
}

/// What a student's own numbers come to, where the house lets a dose be a little over the reference (R16).
TEST(Edges, AGraceIsForTheReferenceAlone) {
  const Worksheet sheet =
      workOut(caseOf("order.dose=105 mg; reference.high=100 mg/dose; order.schedule=every 12 h; "
                     "reference.schedule=every 12 h"),
              rulesOf("grace_percent=5"));
  const auto verdictBut = [&](CheckId one) {
    return verdictWhere(sheet, [one](CheckId id) { return std::optional(id != one); });
  };
  for (const CheckId id : {CheckId::single, CheckId::daily, CheckId::period})
    EXPECT_EQ(verdictBut(id), VerdictKind::ask) << idOf(id);
  for (const CheckId id :
       {CheckId::maxSingle, CheckId::maxDaily, CheckId::concentration, CheckId::infusionTime})
    EXPECT_EQ(verdictBut(id), VerdictKind::unsafe) << idOf(id);
}

}  // namespace
}  // namespace wardchalk::test::edges_test
