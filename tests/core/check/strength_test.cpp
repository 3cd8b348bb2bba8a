#include <gtest/gtest.h>

#include "core/check/answers.h"
#include "core/check/work_out.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"
#include "tests/support/figures.h"

// Two strengths of one powder (R9): the first stated is used, a further one asked about, noted, or the same.

namespace wardchalk::test::strength_test {
namespace {

enum class Told { nothing, note, ask, undecided };

struct StrengthRow {
  const char* name;
  const char* dose;
  const char* label;
  const char* content;
  const char* finalVolume;
  Told told;
};
void PrintTo(const StrengthRow& row, std::ostream* out) { *out << row.name; }

constexpr StrengthRow rows[] = {
    {"equal", "50 mg", "40 mg/mL", "200 mg", "5 mL", Told::nothing},
    {"rounds to the label", "50 mg", "125 mg/5 mL", "2.5 g", "100.3 mL", Told::nothing},
    {"rounds to the label of an odd volume", "50 mg", "100 mg/3 mL", "1 g", "30.1 mL", Told::nothing},
    {"half a milligram off rounds up to the label", "50 mg", "125 mg/5 mL", "124.5 mg", "5 mL",
     Told::nothing},
    {"just over half a milligram off", "50 mg", "125 mg/5 mL", "124.49 mg", "5 mL", Told::note},
    {"off by the label's own decimal", "50 mg", "62.5 mg/5 mL", "62.3 mg", "5 mL", Told::note},
    {"five percent exactly is a note", "50 mg", "100 mg/mL", "105 mg", "1 mL", Told::note},
    {"over five percent", "50 mg", "100 mg/mL", "105.01 mg", "1 mL", Told::ask},
    {"over five percent and rounds to the label", "0.5 mg", "1 mg/mL", "1.2 mg", "1 mL", Told::ask},
    {"over five percent and the order in mL", "1 mL", "100 mg/mL", "105.01 mg", "1 mL", Told::undecided},
};

class TwoStrengths : public testing::TestWithParam<StrengthRow> {};

TEST_P(TwoStrengths, areToldAsFarApartAsTheyAre) {
  const StrengthRow& row = GetParam();
  const Worksheet sheet =
      workOut(caseOf(std::string("order.schedule=once; reference.high=500 mg/dose; "
                                 "reference.limit_only=true; stock.kind=powder") +
                     "; order.dose=" + row.dose + "; stock.strength=" + row.label +
                     "; stock.content=" + row.content + "; stock.final_volume=" + row.finalVolume),
              exactRules());
  const Finding* finding = sheet.finding(FindingCode::strengthDiffers);
  ASSERT_EQ(finding != nullptr, row.told != Told::nothing);
  const bool withheld = row.told == Told::ask || row.told == Told::undecided;
  EXPECT_EQ(sheet.give.has_value(), !withheld);
  if (!finding) return;
  const Severity wanted = row.told == Told::note  ? Severity::note
                          : row.told == Told::ask ? Severity::ask
                                                  : Severity::undecided;
  EXPECT_EQ(finding->severity, wanted);
}

constexpr const char* powder =
    "order.schedule=once; reference.high=500 mg/dose; reference.limit_only=true; stock.kind=powder; ";

/// The severity of what is told of two strengths: "ask note" of three; empty: nothing.
std::string toldOf(const Worksheet& sheet) {
  std::string told;
  for (const Finding& finding : sheet.findings)
    if (finding.code == FindingCode::strengthDiffers)
      told.append(told.empty() ? "" : " ").append(idOf(finding.severity));
  return told;
}

std::string told(const std::string& stock) { return toldOf(workOut(caseOf(powder + stock), exactRules())); }

TEST(TwoStrengthsOfAPowder, areComparedWithoutALabel) {
  const std::string mixed = "order.dose=50 mg; stock.content=500 mg; stock.final_volume=5 mL; ";
  EXPECT_EQ(told(mixed + "stock.diluent=4 mL; stock.displacement=1 mL"), "");
  EXPECT_EQ(told(mixed + "stock.diluent=4 mL; stock.displacement=0.9 mL"), "note");  // 102 mg/mL
  EXPECT_EQ(told(mixed + "stock.diluent=4 mL; stock.displacement=0.5 mL"), "ask");   // 111 mg/mL
}

TEST(TwoStrengthsOfAPowder, areAskedAboutBeforeThereIsAnOrder) {
  EXPECT_EQ(told("stock.strength=100 mg/mL; stock.content=500 mg; stock.final_volume=4 mL"), "ask");
}

TEST(TwoStrengthsOfAPowder, thatDoNotMeetAreToldOnce) {
  const Worksheet sheet =
      workOut(caseOf(powder + std::string("order.dose=50 mg; stock.strength=100 mg/mL; "
                                          "stock.content=500 units; stock.final_volume=5 mL")),
              exactRules());
  EXPECT_EQ(sheet.because(), "units-do-not-meet");
  EXPECT_EQ(toldOf(sheet), "");
}

TEST(TwoStrengthsOfAPowder, areNotTheSameByALabelOfManyDecimals) {
  EXPECT_EQ(told("order.dose=50 mg; stock.strength=0.1000000000000000000001 mg/mL; stock.content=1 mg; "
                 "stock.final_volume=10 mL"),
            "note");
}

TEST(ThreeStrengths, areOneQuestion) {
  const Worksheet sheet =
      workOut(caseOf(powder + std::string("order.dose=50 mg; stock.strength=100 mg/mL; stock.content=500 mg; "
                                          "stock.final_volume=4 mL; stock.diluent=3 mL; "
                                          "stock.displacement=0.5 mL")),
              exactRules());
  EXPECT_EQ(toldOf(sheet), "ask ask");
  EXPECT_EQ(questionsOf(sheet), std::vector{FindingCode::strengthDiffers});
}

INSTANTIATE_TEST_SUITE_P(R9, TwoStrengths, testing::ValuesIn(rows), NameOfRow());

}  // namespace
}  // namespace wardchalk::test::strength_test
