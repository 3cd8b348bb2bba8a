#include <gtest/gtest.h>

#include <string>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// What is less than the reference says, and not asked about: a little below its low end, and the most that a
// solid allows.

namespace wardchalk::test::a_little_less_test {
namespace {

struct Row {
  const char* name;
  std::string inputs;
  const char* rules;
  const char* judged;  ///< the verdict, what decides it, and how the dose below is told
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs << " | " << row.rules; }

class Below : public testing::TestWithParam<Row> {};

std::string toldOf(const Worksheet& sheet) {
  for (const FindingCode code : {FindingCode::belowLow, FindingCode::belowUsual})
    if (const Finding* finding = sheet.finding(code))
      return std::string(idOf(code)) + (finding->severity == Severity::note ? " noted" : " asked");
  return "nothing";
}

TEST_P(Below, IsToldByTheRule) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf(GetParam().rules));
  EXPECT_EQ(std::string(idOf(sheet.verdict)) + " " + std::string(sheet.because()) + ", " + toldOf(sheet),
            GetParam().judged);
}

const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
const std::string range = often + "reference.low=100 mg/dose; reference.high=200 mg/dose; ";
constexpr const char* three = "ask_low_percent=97";

INSTANTIATE_TEST_SUITE_P(
    TheLowEnd, Below,
    testing::Values(
        Row{"at it", range + "order.dose=100 mg", three, "safe , nothing"},
        Row{"a hair below", range + "order.dose=99.999 mg", three, "safe , below-low noted"},
        Row{"as far as the house lets", range + "order.dose=97 mg", three, "safe , below-low noted"},
        Row{"just further", range + "order.dose=96.999 mg", three, "ask below-low, below-low asked"},
        Row{"a house that asks at once", range + "order.dose=99.999 mg", "ask_low_percent=100",
            "ask below-low, below-low asked"},
        Row{"a house that lets ten", range + "order.dose=90 mg", "ask_low_percent=90",
            "safe , below-low noted"},
        Row{"beside another question", range + "order.dose=98 mg; order.schedule=every 8 h", three,
            "ask schedule-differs, below-low noted"},
        Row{"capped by what is the most in a day", range + "order.dose=98 mg; reference.max_per_day=195 mg",
            three, "unsafe over-max-daily, nothing"},
        // the doubt leads, and says that it is too little by the size entered (R18)
        Row{"by a size in doubt",
            often + "child.age=4 year; child.sex=male; child.weight=40 kg; reference.low=5 mg/kg/dose; "
                    "reference.high=8 mg/kg/dose; order.dose=198 mg",
            three, "ask weight-unlikely, below-low asked"},
        Row{"by a size in doubt that nothing uses",
            range + "child.age=4 year; child.sex=male; child.weight=40 kg; order.dose=98 mg", three,
            "safe , below-low noted"},
        Row{"of a day",
            "order.schedule=every 12 h; reference.schedule=every 12 h; reference.low=200 mg/day; "
            "reference.high=400 mg/day; order.dose=98 mg",
            three, "safe , below-low noted"},
        Row{"of a rate",
            "child.weight=20 kg; order.schedule=continuous; reference.schedule=continuous; "
            "reference.low=5 mcg/kg/min; reference.high=10 mcg/kg/min; order.dose=4.9 mcg/kg/min",
            three, "safe , below-low noted"},
        Row{"of a rate, further",
            "child.weight=20 kg; order.schedule=continuous; reference.schedule=continuous; "
            "reference.low=5 mcg/kg/min; reference.high=10 mcg/kg/min; order.dose=4.8 mcg/kg/min",
            three, "ask below-low, below-low asked"}),
    NameOfRow());

// A figure alone is the usual dose. 128 mg to 160 mg by tablets of 62.5 mg.
const std::string tablets = often +
                            "order.dose=125 mg; reference.high=160 mg/dose; stock.kind=solid; "
                            "stock.strength=62.5 mg/tablet; ";

INSTANTIATE_TEST_SUITE_P(
    TheMostThatFits, Below,
    testing::Values(
        Row{"two whole tablets, where three are too much", tablets + "stock.divides_into=1", "",
            "safe , below-usual noted"},
        Row{"half a tablet more is within", tablets + "stock.divides_into=2", "",
            "ask below-usual, below-usual asked"},
        Row{"half a tablet more is just within",
            tablets + "stock.divides_into=2; order.dose=125 mg; "
                      "reference.high=156.25 mg/dose",
            "", "ask below-usual, below-usual asked"},
        Row{"half a tablet more is just over",
            tablets + "stock.divides_into=2; reference.high=156.24 mg/dose", "", "safe , below-usual noted"},
        Row{"nobody says whether it may be cut, and a quarter is within", tablets, "",
            "ask below-usual, below-usual asked"},
        Row{"nobody says whether it may be cut, and a quarter is over",
            tablets + "reference.high=140 mg/dose", "", "safe , below-usual noted"},
        Row{"by a size in doubt",
            often + "child.age=4 year; child.sex=male; child.weight=40 kg; order.dose=125 mg; "
                    "reference.high=4 mg/kg/dose; stock.kind=solid; stock.strength=62.5 mg/tablet; "
                    "stock.divides_into=1",
            "", "ask weight-unlikely, below-usual asked"},
        Row{"capsules are whole",
            often + "order.dose=100 mg; reference.high=180 mg/dose; stock.kind=solid; "
                    "stock.strength=100 mg/capsule",
            "", "safe , below-usual noted"},
        Row{"a ten-fold slip stays asked about",
            often + "order.dose=12.5 mg; reference.high=160 mg/dose; stock.kind=solid; "
                    "stock.strength=62.5 mg/tablet; stock.divides_into=4",
            "", "ask below-usual, below-usual asked"},
        Row{"a liquid can always be more",
            often + "order.dose=125 mg; reference.high=160 mg/dose; stock.kind=liquid; "
                    "stock.strength=125 mg/5 mL",
            "", "ask below-usual, below-usual asked"},
        Row{"the day's maximum is a limit as well",
            tablets + "stock.divides_into=2; reference.max_per_day=312 mg", "", "safe , below-usual noted"},
        Row{"a stated low end is another matter", tablets + "stock.divides_into=1; reference.low=130 mg/dose",
            "", "ask below-low, below-low asked"}),
    NameOfRow());

// What is told without asking says both figures, and why nobody asks.
TEST(ALittleLess, SaysWhyNobodyAsks) {
  const Worksheet low = workOut(caseOf(range + "order.dose=98 mg"), rulesOf(three));
  EXPECT_EQ(
      sentence(*low.finding(FindingCode::belowLow)),
      "A little below the reference: 98 mg per dose ordered; it begins at 100 mg per dose (this is 98 % "
      "of it). By the house rules this is not asked about.");
  const Worksheet most = workOut(caseOf(tablets + "stock.divides_into=1"), exactRules());
  EXPECT_EQ(
      sentence(*most.finding(FindingCode::belowUsual)),
      "Less than is recommended: 125 mg per dose ordered; 160 mg per dose is recommended (this is 78.1 % "
      "of it). The next amount that can be given, 3 tablets, would be over the limit.");
}

// What is measured stays as near to the low end as the house lets: 97 mg are 4.85 mL, 4.8 mL would be 96 mg.
TEST(ALittleLess, IsKeptByWhatIsMeasured) {
  const Worksheet sheet = workOut(caseOf(range + "order.dose=97 mg; order.route=oral; stock.kind=liquid; "
                                                 "stock.strength=20 mg/mL"),
                                  rulesOf(three));
  ASSERT_TRUE(sheet.give && sheet.give->measured);
  EXPECT_EQ(exactText(*sheet.give->measured), "5");
}

// A class may note an unlikely weight for a height where no age is stated; with the age it asks as well.
struct SizeRow {
  const char* name;
  const char* age;
  const char* rules;
  const char* judged;
};
void PrintTo(const SizeRow& row, std::ostream* out) { *out << row.age << " | " << row.rules; }
class UnlikelySize : public testing::TestWithParam<SizeRow> {};

TEST_P(UnlikelySize, IsNotedWithoutAnAge) {
  const Worksheet sheet =
      workOut(caseOf(std::string("child.height=42 in; child.weight=70 lb; order.dose=95 mg; "
                                 "order.schedule=once; reference.high=100 mg/m2/dose; "
                                 "reference.schedule=once; ") +
                     GetParam().age),
              rulesOf(GetParam().rules));
  EXPECT_EQ(std::string(idOf(sheet.verdict)) + " " + std::string(sheet.because()), GetParam().judged);
}

INSTANTIATE_TEST_SUITE_P(House, UnlikelySize,
                         testing::Values(SizeRow{"a bedside", "", "", "ask weight-unlikely-for-height"},
                                         SizeRow{"a class", "", "size_without_age=note", "safe "},
                                         SizeRow{"a class with the age", "child.age=6 year; child.sex=female",
                                                 "size_without_age=note", "ask weight-unlikely-for-height"}),
                         NameOfRow());

}  // namespace
}  // namespace wardchalk::test::a_little_less_test
