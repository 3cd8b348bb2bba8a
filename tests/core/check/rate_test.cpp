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

}  // namespace
}  // namespace wardchalk::test::rate_test
