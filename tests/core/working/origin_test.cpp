#include "core/working/origin.h"

#include <gtest/gtest.h>

namespace wardchalk::origin_test {
namespace {

TEST(Origin, isWrittenAsWorksheetFilesDo) {
  EXPECT_EQ(Origin::field("reference.high").text(), "reference.high");
  EXPECT_EQ(Origin::step(StepId::limitDose).text(), "step:limit-dose");
  EXPECT_EQ(Origin::constant("mg-per-g").text(), "constant:mg-per-g");
  EXPECT_EQ(Origin::rule("pounds").text(), "rule:pounds");
  EXPECT_EQ(Origin{}.text(), "");
}

TEST(Origin, ofDifferentKindsIsDifferent) {
  EXPECT_NE(Origin::constant("pounds"), Origin::rule("pounds"));
  EXPECT_EQ(Origin::rule("pounds"), Origin::rule("pounds"));
}

}  // namespace
}  // namespace wardchalk::origin_test
