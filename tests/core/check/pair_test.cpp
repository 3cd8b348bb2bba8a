#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>
#include <string>

#include "core/check/shown.h"
#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/record/case_summary.h"
#include "core/record/worksheet_file.h"
#include "core/words/amount_words.h"
#include "core/words/step_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// One or two syringes (R20): a full one and the rest in another, where one alone would be asked about.

namespace wardchalk::test::pair_test {
namespace {

/// Syringes as "3/0.1 10/2": what each holds and how far apart its marks stand, of both kinds.
std::vector<Syringe> syringesOf(const std::string& text) {
  std::vector<Syringe> syringes;
  for (const SyringeKind kind : {SyringeKind::injection, SyringeKind::oral}) {
    std::istringstream words(text);
    for (std::string word; words >> word;) {
      const std::size_t slash = word.find('/');
      syringes.push_back({*readDecimal(word.substr(0, slash)), *readDecimal(word.substr(slash + 1)), kind});
    }
  }
  return syringes;
}

struct Order {
  const char* mL;              ///< in one dose
  const char* most = "1000";   ///< that the reference allows, in mL
  const char* syringes = "";   ///< empty: the usual ones
  const char* route = "oral";  ///< empty: not stated
  const char* rules = "many_units=3";
};

Worksheet dosed(const Order& order) {
  const std::string route = order.route;
  HouseRules rules = rulesOf(order.rules);
  if (*order.syringes) rules.syringes = syringesOf(order.syringes);
  return workOut(
      caseOf("order.dose=" + std::string(order.mL) + " mg; order.schedule=every 8 h; " +
             (route.empty() ? "" : "order.route=" + route + "; ") + "reference.high=" + order.most +
             " mg/dose; reference.limit_only=true; reference.schedule=every 8 h; "
             "stock.kind=liquid; stock.strength=1 mg/1 mL"),
      rules);
}

std::string in(const std::string& json, const std::string& key, const std::string& end) {
  const std::size_t at = json.find("\"" + key + "\":");
  return at == std::string::npos ? std::string()
                                 : json.substr(at + key.size() + 3, json.find(end, at + key.size() + 3) +
                                                                        end.size() - at - key.size() - 3);
}

std::string filed(const Worksheet& sheet) {
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::brief);
  return json;
}

/// "10 + 0.75 in 1", or what a single device gives: "11", "61 in 2", "none"; then what is asked.
std::string drawn(const Worksheet& sheet) {
  std::string text;
  const Give& give = *sheet.give;
  if (give.pair) {
    EXPECT_FALSE(give.syringe);
    EXPECT_EQ(*give.measured, give.pair->full.holdsMl + give.pair->rest);
    text = exactText(give.pair->full.holdsMl) + " + " + exactText(give.pair->rest) + " in " +
           exactText(give.pair->of.holdsMl);
  } else {
    text = give.measured ? exactText(*give.measured) : "none";
    if (give.syringes > 1) text += " in " + std::to_string(give.syringes);
  }
  for (const Finding& finding : sheet.findings)
    if (finding.severity == Severity::ask) text.append("; ").append(idOf(finding.code));
  return text;
}

struct Row {
  const char* name;
  Order order;
  const char* drawn;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.order.mL << " mL, " << row.order.syringes; }

class TwoSyringes : public testing::TestWithParam<Row> {};

TEST_P(TwoSyringes, AreTakenWhereOneWouldBeAskedAbout) {
  EXPECT_EQ(drawn(dosed(GetParam().order)), GetParam().drawn);
}

const char* const four = "1/0.01 3/0.1 5/0.2 10/2";

INSTANTIATE_TEST_SUITE_P(
    Alone, TwoSyringes,
    testing::Values(
        Row{"close enough in one", {"10.75"}, "11"},
        Row{"at the limit and close enough", {"3.15", "3.15"}, "3"}, Row{"on a mark of one", {"12"}, "12"},
        Row{"five percent is not over five percent", {"10", "1000", "8/1 20/10.5"}, "10.5"},
        Row{"into the muscle", {"10.75", "10.75", "", "intramuscular"}, "10; rounding-changes-dose"},
        Row{"under the skin", {"10.75", "10.75", "", "subcutaneous"}, "10; rounding-changes-dose"},
        Row{"two of the largest into the muscle", {"61.25", "1000", "", "intramuscular"}, "61 in 2"},
        Row{"no device by the rectal route", {"10.75", "10.75", "", "rectal"}, "10.7"},
        Row{"no device by any route", {"0.105", "0.105", "", ""}, "0.1"},
        Row{"by decimals",
            {"0.155", "0.155", "5/0.2", "oral", "volume_decimals_below_1_mL=1; round_to=decimals"},
            "0.1; rounding-changes-dose"},
        Row{"the rest too small", {"1.09", "1.09"}, "1; rounding-changes-dose"},
        Row{"too small altogether", {"0.09"}, "none; too-small-to-measure"},
        Row{"the largest rounded down to one", {"60.05"}, "60"},
        Row{"above twice the largest", {"121"}, "121 in 3"},
        Row{"a rest that only two more would hold", {"120.4"}, "120 in 2"},
        Row{"less than half as far off", {"10", "1000", "8/2.5 20/10.8"}, "10.8; rounding-changes-dose"},
        Row{"within half and yet too far", {"10", "1000", "8/2.6 20/11.3"}, "11.3; rounding-changes-dose"},
        Row{"no rest may be nothing", {"10.4", "10.4", "10/1 60/7"}, "7; rounding-changes-dose"},
        Row{"no rest above what its syringe holds",
            {"4.95", "1000", "2.5/1.3 60/6"},
            "6; rounding-changes-dose"},
        Row{"neither measurable", {"10", "10", "8/2.6 20/11"}, "none; not-measurable"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Pairs, TwoSyringes,
    testing::Values(
        Row{"only one below keeps the limit", {"10.75", "10.75"}, "10 + 0.75 in 1"},
        Row{"into a vein", {"10.75", "10.75", "", "intravenous"}, "10 + 0.75 in 1"},
        Row{"by a tube", {"10.75", "10.75", "", "enteral"}, "10 + 0.75 in 1"},
        Row{"a tenth more than one", {"1.19", "1.19"}, "1 + 0.19 in 1"},
        Row{"the rest at the smallest", {"1.1", "1.1", "1/0.01 3/0.5"}, "1 + 0.1 in 1"},
        Row{"the example of the format", {"7.5", "1000", four}, "5 + 2.5 in 3"},
        Row{"the larger full one of equals", {"9", "1000", four}, "5 + 4 in 5"},
        Row{"the exact rest picks its syringe", {"8.03", "1000", "1/0.01 3/0.1 5/0.2 10/5"}, "5 + 3 in 5"},
        Row{"rounded within the limit", {"7.57", "7.57", four}, "5 + 2.5 in 3"},
        Row{"half as far off", {"10", "1000", "8/2.4 20/10.8"}, "8 + 2.4 in 8"},
        Row{"half of ten percent", {"10", "1000", "8/2.5 20/11"}, "8 + 2.5 in 8"},
        Row{"not measurable in one", {"10", "10", "8/1 20/11"}, "8 + 2 in 8"},
        Row{"two of the same", {"10", "10", "5/1 20/11"}, "5 + 5 in 5"},
        Row{"two of the largest", {"120"}, "60 + 60 in 60"},
        Row{"several and as far off", {"75.5"}, "60 + 16 in 20"},
        Row{"several and closer", {"61.25"}, "60 + 1.3 in 3"},
        Row{"several and closer at the limit", {"61.25", "61.25"}, "60 + 1.2 in 3"},
        Row{"the exact rest against the smallest",
            {"60.6", "1000", "", "oral", "smallest_volume=0.6 mL"},
            "60 + 0.6 in 1"},
        Row{"the rest too small of one and not of another",
            {"60.6", "1000", "", "oral", "smallest_volume=0.61 mL"},
            "20 + 41 in 60"},
        Row{"two are many", {"61.25", "1000", "", "oral", "many_units=1"}, "60 + 1.3 in 3; many-units"},
        Row{"by the house decimals where they are coarser",
            {"10.75", "10.75", "", "oral", "volume_decimals_below_1_mL=1"},
            "10 + 0.7 in 1"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    LargestNamedFirst, TwoSyringes,
    testing::Values(
        Row{"the larger full one of equals", {"9", "1000", "10/2 5/0.2 3/0.1 1/0.01"}, "5 + 4 in 5"},
        Row{"the closest pair", {"7.5", "1000", "10/2 5/0.2 3/0.1 1/0.01"}, "5 + 2.5 in 3"},
        Row{"the smallest that holds it", {"4", "1000", "10/2 3/0.1"}, "4"},
        Row{"one too small to hold it", {"5", "1000", "10/2 3/0.1"}, "3 + 2 in 3"},
        Row{"none holds it", {"61.25", "1000", "60/1 3/0.1", "intramuscular"}, "61 in 2"}),
    NameOfRow());

TEST(TwoSyringesInAFile, haveNoDeviceBesideThem) {
  const std::string json = filed(dosed({"7.5", "1000", four}));
  EXPECT_EQ(in(json, "pair", "}") + in(json, "measured\":\"7.5\",\"percent_change", "}"),
            R"({"full":"5 mL","rest":{"measured":"2.5","holds":"3 mL","marks":"0.1 mL"})"
            R"("0"})");
  EXPECT_EQ(in(json, "measured", ","), R"("7.5",)");
  EXPECT_EQ(json.find("\"device\":"), std::string::npos);
  EXPECT_EQ(filed(dosed({"12"})).find("\"pair\":"), std::string::npos);
}

TEST(TwoSyringesInWords, areOneAmountOnTheLine) {
  const Worksheet sheet = dosed({"10.75", "10.75"});
  const AmountWords words = amountWords(sheet);
  EXPECT_EQ(words.measure, "Measure 10.75 mL");
  EXPECT_EQ(words.dose, "(10.75 mg) for one dose = 10 mL + 0.75 mL, in two syringes, both labelled");
  EXPECT_EQ(words.device, "10 mL oral syringe full, 1 mL one to 0.75 mL (marks every 0.01 mL)");
  EXPECT_EQ(words.rounding, "no rounding needed");
  EXPECT_EQ(amountWords(dosed({"7.57", "7.57", four})).rounding,
            "7.57 mL rounded to 7.5 mL, since 7.6 mL would not pass every check; the dose changes by 0.9 %");
}

TEST(TwoSyringesInWords, areWorkedOutInTheStep) {
  const Worksheet sheet = dosed({"7.57", "7.57", four});
  const Step& step = *sheet.step(StepId::device);
  EXPECT_EQ(question(step, sheet), "Which two syringes?");
  EXPECT_EQ(
      measuringLine(std::get<Measuring>(step.body)),
      "One 5 mL syringe full, 2.57 mL left. 2.57 mL is between 2.5 mL and 2.6 mL on the 3 mL "
      "syringe (0.1 mL apart): 2.5 mL, since 2.6 mL would not pass every check. 5 mL + 2.5 mL = 7.5 mL.");
}

TEST(TwoSyringesInATable, standInTheColumnsOfAmountAndDevice) {
  const std::vector<std::string> cells = summaryOf(dosed({"10.75", "10.75"}));
  const auto cell = [&](std::string_view name) {
    return cells[static_cast<std::size_t>(std::ranges::find(summaryColumns, name) - summaryColumns.begin())];
  };
  EXPECT_EQ(cell("give"), "10.75 mL (10.75 mg)");
  EXPECT_EQ(cell("device"), "10 mL oral syringe full, 1 mL one to 0.75 mL (marks every 0.01 mL)");
}

// A pair is an amount: what waits for a question waits with it.
TEST(TwoSyringesThatAreAskedAbout, areNotSeenBeforeTheAnswer) {
  const Worksheet sheet = dosed({"61.25", "1000", "", "oral", "many_units=1"});
  ASSERT_TRUE(sheet.give->pair && sheet.give->afterAsking);
  const Shown open(sheet);
  EXPECT_FALSE(open->give);
  EXPECT_FALSE(open->step(StepId::device));
  EXPECT_EQ(amountWords(open).dose, "");
  EXPECT_EQ(amountWords(open).device, "");
}

TEST(TwoSyringesOfAPowder, takeTheVialsOfWhatIsMeasured) {
  const Worksheet sheet = workOut(
      caseOf("order.dose=107.5 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=107.5 "
             "mg/dose; reference.schedule=every 8 h; stock.kind=powder; stock.content=100 mg; "
             "stock.final_volume=10 mL; stock.displacement=0.4 mL"),
      exactRules());
  EXPECT_EQ(drawn(sheet), "10 + 0.75 in 1");
  EXPECT_EQ(sheet.give->containers, 2);
  EXPECT_TRUE(sheet.give->prepare);
}

}  // namespace
}  // namespace wardchalk::test::pair_test
