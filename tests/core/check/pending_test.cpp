#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "core/words/field_names.h"
#include "core/words/sentences.h"

namespace wardchalk::pending_test {
namespace {

// A worksheet is handed on and kept; what it was made from need not be.
TEST(FinishTyping, pointsAtItsFieldWhenTheNameThatWasHandedInIsGone) {
  std::string path = "order.dose";
  const Worksheet sheet = workOut(Case{}, exactRules(), Withheld(path));
  path = "gone.since";
  ASSERT_EQ(sheet.findings.size(), 1U);
  EXPECT_EQ(sheet.findings.front().code, FindingCode::finishTyping);
  EXPECT_EQ(sheet.findings.front().field, "order.dose");
}

TEST(FinishTyping, namesTheFieldThatCannotBeRead) {
  EXPECT_EQ(verdictTitle(workOut(Case{}, exactRules(), Withheld(path::dose))),
            "NO VERDICT: finish typing “dose ordered”");
  EXPECT_EQ(verdictTitle(workOut(Case{}, exactRules(), Withheld(path::dose, true))),
            "NO VERDICT: “dose ordered” cannot be read yet");
  for (const CaseEntry& entry : caseEntries()) EXPECT_NE(fieldName(entry.path), "") << entry.path;
  EXPECT_EQ(fieldName("order.colour"), "");
}

TEST(FinishTyping, pointsNowhereWhereThereIsNoSuchField) {
  const Worksheet sheet = workOut(Case{}, exactRules(), Withheld("order.colour"));
  ASSERT_EQ(sheet.findings.size(), 1U);
  EXPECT_EQ(sheet.findings.front().code, FindingCode::finishTyping);
  EXPECT_EQ(sheet.findings.front().field, "");
}

TEST(Paths, areThoseOfTheEntries) {
  ASSERT_EQ(path::all.size(), caseEntries().size());
  for (const CaseEntry& entry : caseEntries()) EXPECT_EQ(path::known(std::string(entry.path)), entry.path);
}

}  // namespace
}  // namespace wardchalk::pending_test
