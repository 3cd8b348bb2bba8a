#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "core/words/amount_words.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// Orders that are a rate, and what is set on a pump or a drip.

namespace wardchalk::test::rate_test {
namespace {

Worksheet worked(const std::string& inputs, const char* rules = "many_units=3") {
  return workOut(caseOf(inputs), rulesOf(rules));
}

const std::string byWeight = "child.weight=14.3 kg; order.route=intravenous; order.dose=5 mcg/kg/min; ";

struct ScheduleRow {
  const char* name;
  const char* schedules;
  const char* asked;  ///< the sentence; empty: not asked
};
void PrintTo(const ScheduleRow& row, std::ostream* out) { *out << row.schedules; }

class ScheduleOfARate : public testing::TestWithParam<ScheduleRow> {};

TEST_P(ScheduleOfARate, IsAskedAboutWhereTheReferenceGivesDoses) {
  const Worksheet sheet = worked(byWeight + "reference.high=10 mcg/kg/min; " + GetParam().schedules);
  const Finding* finding = sheet.finding(FindingCode::scheduleDiffers);
  EXPECT_EQ(finding ? sentence(*finding) : "", GetParam().asked);
  if (!finding) return;
  EXPECT_EQ(sheet.verdict, VerdictKind::ask);
  EXPECT_EQ(sheet.check(CheckId::schedule).status, CheckStatus::outside);
}

INSTANTIATE_TEST_SUITE_P(
    Continuous, ScheduleOfARate,
    testing::Values(
        ScheduleRow{"both run on", "order.schedule=continuous; reference.schedule=continuous", ""},
        ScheduleRow{"the reference does not say", "order.schedule=continuous", ""},
        ScheduleRow{"the order does not say", "reference.schedule=every 8 h", ""},
        ScheduleRow{"the reference in doses", "order.schedule=continuous; reference.schedule=every 8 h",
                    "Ordered to run on, and the reference gives it in doses: continuous ordered; the "
                    "reference says every 8 h."},
        ScheduleRow{"the reference once", "order.schedule=continuous; reference.schedule=once",
                    "Ordered to run on, and the reference gives it in doses: continuous ordered; the "
                    "reference says once."},
        ScheduleRow{"the reference weekly", "order.schedule=continuous; reference.schedule=weekly",
                    "Ordered to run on, and the reference gives it in doses: continuous ordered; the "
                    "reference says weekly."}),
    NameOfRow());

const std::string inBag =
    "child.weight=1 kg; order.route=intravenous; order.schedule=continuous; "
    "stock.kind=liquid; stock.strength=1 mg/1 mL; ";

std::string askedOfRate(const Worksheet& sheet) {
  const Finding* finding = sheet.finding(FindingCode::roundingChangesRate);
  return finding ? sentence(*finding) : "";
}

// 0.03 mL/h: 0 is no rate, and 0.1 mL/h is over the limit.
TEST(RateThatCannotBeSet, saysSoAndTellsNoChange) {
  const Worksheet sheet = worked(inBag + "order.dose=0.03 mg/h; reference.high=0.05 mg/h");
  EXPECT_EQ(askedOfRate(sheet),
            "No rate that can be set keeps every check: 0.03 mL/h lies between 0 mL/h and 0.1 mL/h. Ask the "
            "pharmacist.");
  ASSERT_TRUE(sheet.rate && sheet.rate->mlPerHour && !sheet.rate->mlPerHour->measured);
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::brief);
  EXPECT_NE(json.find(R"("mL_per_h":{"exact":"3/100"})"), std::string::npos) << json;
}

TEST(RateThatCannotBeSet, ofAnInfusionSaysSo) {
  const Worksheet sheet = worked(
      "order.dose=5 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=5 mg/dose; "
      "reference.schedule=every 8 h; reference.min_infusion_time=60 h; stock.kind=liquid; stock.strength=5 "
      "mg/1 mL; infusion.volume=3 mL; infusion.over=60 h");
  EXPECT_EQ(askedOfRate(sheet),
            "No rate that can be set keeps every check: 0.05 mL/h lies between 0 mL/h and 0.1 mL/h. Ask the "
            "pharmacist.");
}

TEST(RateThatCanBeSet, andChangesTooMuchTellsHow) {
  const Worksheet sheet = worked(inBag + "order.dose=0.14 mg/h; reference.high=0.14 mg/h");
  EXPECT_EQ(askedOfRate(sheet),
            "No rate that can be set comes close enough: 0.14 mL/h to 0.1 mL/h changes it by 28.6 %. Ask "
            "whether that is acceptable.");
}

}  // namespace
}  // namespace wardchalk::test::rate_test
