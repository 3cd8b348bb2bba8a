#include "core/words/amount_words.h"

#include <gtest/gtest.h>

#include <string>

#include "core/check/work_out.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// What the line of the amount says of the device that it is measured with.

namespace wardchalk::test::amount_words_test {
namespace {

struct Row {
  const char* name;
  const char* dose;
  const char* route;
  const char* rules;
  const char* device;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.dose; }

class DeviceWords : public testing::TestWithParam<Row> {};

TEST_P(DeviceWords, SayWhereThePlungerStands) {
  const Row& row = GetParam();
  const Worksheet sheet = workOut(
      caseOf("order.schedule=every 8 h; reference.high=100 mg/dose; reference.limit_only=true; "
             "reference.schedule=every 8 h; stock.kind=liquid; stock.strength=1 mg/1 mL; order.dose=" +
             std::string(row.dose) + "; order.route=" + row.route),
      rulesOf(row.rules));
  EXPECT_EQ(amountWords(sheet).device, row.device);
}

INSTANTIATE_TEST_SUITE_P(
    Plunger, DeviceWords,
    testing::Values(
        Row{"on a mark", "3.2 mg", "oral", "round_to=decimals", "5 mL oral syringe, marks every 0.2 mL"},
        Row{"between two marks", "3.14 mg", "oral", "round_to=decimals",
            "5 mL oral syringe, marks every 0.2 mL; 3.1 mL lies between two of them"},
        Row{"of several of the largest", "70.5 mg", "intramuscular", "round_to=decimals",
            "2 syringes of 60 mL (injection), marks every 1 mL; 70.5 mL lies between two of them"},
        Row{"to the marks", "3.14 mg", "oral", "round_to=marks", "5 mL oral syringe, marks every 0.2 mL"},
        Row{"no device", "3.14 mg", "rectal", "round_to=decimals", ""}),
    NameOfRow());

}  // namespace
}  // namespace wardchalk::test::amount_words_test
