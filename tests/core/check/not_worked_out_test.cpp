#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "core/words/sentences.h"
#include "core/words/working_text.h"
#include "tests/support/failed_sheet.h"
#include "tests/support/golden_cases.h"

// That a chain which does not come out in the units wanted ends in such a worksheet is shown by changing the
// program itself: tests/mutation. Here is what is said then, wherever it is said.

namespace wardchalk::not_worked_out_test {
namespace {

constexpr std::string_view told = "This program could not work it out; do not use it for this order.";

Worksheet failedSheet() { return test::failedSheet(test::goldenCases().front().given); }

TEST(NotWorkedOut, isUndecidedAndSaysWhy) {
  const Worksheet sheet = failedSheet();
  EXPECT_EQ(sheet.because(), "not-worked-out");
  EXPECT_EQ(usualSeverity(FindingCode::notWorkedOut), Severity::undecided);
  EXPECT_EQ(verdictTitle(sheet), "NO VERDICT");
  EXPECT_EQ(verdictReason(sheet), told);
}

TEST(NotWorkedOut, listsNoChecksNotMade) { EXPECT_EQ(checksNotMade(failedSheet()), ""); }

TEST(NotWorkedOut, standsInTheTextWithNoStepAndNoAmount) {
  const std::string text = workingText(failedSheet());
  EXPECT_NE(text.find(told), std::string::npos) << text;
  EXPECT_EQ(text.find("Give"), std::string::npos) << text;
  EXPECT_NE(text.find("No amount: this program could not work it out."), std::string::npos) << text;
}

TEST(NotWorkedOut, standsInTheFileWithNoNumber) {
  std::string json;
  writeWorksheet(json, failedSheet(), WorksheetExtent::whole);
  EXPECT_NE(json.find(R"("verdict":"undecided")"), std::string::npos) << json;
  EXPECT_NE(json.find(R"("not-worked-out")"), std::string::npos) << json;
  for (const std::string_view key : {"\"give\"", "\"limit_dose\"", "\"ordered\"", "\"strength\"", "\"rate\""})
    EXPECT_EQ(json.find(std::string(key) + ":{"), std::string::npos) << key << json;
}

TEST(NotWorkedOut, outweighsEveryOtherFinding) {
  for (std::size_t i = 0; i < findingIds.size(); ++i)
    EXPECT_LE(FindingCode::notWorkedOut, static_cast<FindingCode>(i));
}

}  // namespace
}  // namespace wardchalk::not_worked_out_test
