#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/check/shown.h"
#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "core/words/amount_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// How a powder is made ready (R22), with the amount and never without it.

namespace wardchalk::test::prepare_test {
namespace {

struct Row {
  const char* name;
  const char* stock;
  const char* file;  ///< of the worksheet's file; empty where it says nothing
  const char* said;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.stock; }

Worksheet mixed(const std::string& stock, const std::string& more = "") {
  return workOut(
      caseOf(
          "order.dose=250 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=260 mg/dose; "
          "reference.schedule=every 8 h; stock.kind=powder; " +
          stock + more),
      exactRules());
}

std::string inFile(const Worksheet& sheet) {
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::brief);
  const std::size_t at = json.find("\"prepare\":");
  return at == std::string::npos ? std::string() : json.substr(at + 10, json.find('}', at) - at - 9);
}

class HowToPrepare : public testing::TestWithParam<Row> {};

TEST_P(HowToPrepare, IsSaidWithTheAmount) {
  const Worksheet sheet = mixed(GetParam().stock);
  EXPECT_EQ(inFile(sheet), GetParam().file);
  EXPECT_EQ(amountWords(sheet).prepare, GetParam().said);
}

INSTANTIATE_TEST_SUITE_P(
    Powders, HowToPrepare,
    testing::Values(
        Row{"diluent and displacement",
            "stock.content=500 mg; stock.diluent=4.6 mL; stock.displacement=0.4 mL",
            R"({"add":"4.6 mL","makes":"5 mL","strength":"100 mg/mL"})",
            "Add 4.6 mL of the diluent named on its label to each vial; each then holds 5 mL of 100 mg/mL."},
        Row{"final volume and displacement",
            "stock.content=500 mg; stock.final_volume=5 mL; stock.displacement=0.4 mL",
            R"({"add":"4.6 mL","makes":"5 mL","strength":"100 mg/mL"})",
            "Add 4.6 mL of the diluent named on its label to each vial; each then holds 5 mL of 100 mg/mL."},
        Row{"diluent and final volume", "stock.content=500 mg; stock.final_volume=5 mL; stock.diluent=4.7 mL",
            R"({"add":"4.7 mL","makes":"5 mL","strength":"100 mg/mL"})",
            "Add 4.7 mL of the diluent named on its label to each vial; each then holds 5 mL of 100 mg/mL."},
        Row{"final volume alone", "stock.content=500 mg; stock.final_volume=5 mL",
            R"({"makes":"5 mL","strength":"100 mg/mL"})",
            "Make each vial up to 5 mL with the diluent named on its label; it is then 100 mg/mL."},
        Row{"the powder's volume not counted",
            "stock.content=500 mg; stock.final_volume=5 mL; stock.diluent=5 mL",
            R"({"add":"5 mL","strength":"100 mg/mL"})",
            "Add 5 mL of the diluent named on its label to each vial; it is then 100 mg/mL."},
        Row{"diluent and a label", "stock.content=500 mg; stock.diluent=4.6 mL; stock.strength=100 mg/mL",
            R"({"add":"4.6 mL","strength":"100 mg/mL"})",
            "Add 4.6 mL of the diluent named on its label to each vial; it is then 100 mg/mL."},
        Row{"other units", "stock.content=0.5 g; stock.final_volume=0.005 L; stock.displacement=0.4 mL",
            R"({"add":"4.6 mL","makes":"0.005 L","strength":"0.1 g/mL"})",
            "Add 4.6 mL of the diluent named on its label to each vial; each then holds 0.005 L of 0.1 "
            "g/mL."},
        Row{"more powder than volume",
            "stock.content=500 mg; stock.final_volume=5 mL; stock.displacement=5 mL",
            R"({"makes":"5 mL","strength":"100 mg/mL"})",
            "Make each vial up to 5 mL with the diluent named on its label; it is then 100 mg/mL."},
        Row{"a label alone", "stock.strength=100 mg/mL", "", ""},
        Row{"a label and the content", "stock.content=500 mg; stock.strength=100 mg/mL", "", ""},
        Row{"no content", "stock.diluent=4.6 mL; stock.displacement=0.4 mL; stock.strength=100 mg/mL", "",
            ""},
        Row{"diluent alone", "stock.content=500 mg; stock.diluent=4.6 mL", "", ""},
        Row{"strengths that differ",
            "stock.content=500 mg; stock.final_volume=5 mL; stock.strength=150 mg/mL", "", ""},
        Row{"less than the diluent", "stock.content=500 mg; stock.final_volume=4 mL; stock.diluent=5 mL", "",
            ""}),
    NameOfRow());

/// It is a part of the amount, and waits with it.
// 250 mL from 25 vials: one question, of what is counted first.
TEST(ManyUnits, OfTwoKindsAreAskedAboutOnce) {
  const Worksheet sheet = workOut(
      caseOf("order.dose=2500 mg; order.schedule=every 8 h; order.route=intravenous; reference.high=2600 "
             "mg/dose; reference.schedule=every 8 h; stock.kind=powder; stock.content=100 mg; "
             "stock.final_volume=10 mL"),
      exactRules());
  EXPECT_EQ(sheet.give->syringes, 5);
  EXPECT_EQ(sheet.give->containers, 25);
  EXPECT_EQ(std::ranges::count(sheet.findings, FindingCode::manyUnits, &Finding::code), 1);
  EXPECT_EQ(*sheet.finding(FindingCode::manyUnits)->argument<ArgumentWord>("what"), ArgumentWord::syringes);
}

TEST(Preparing, WaitsForTheQuestions) {
  const Worksheet sheet =
      mixed("stock.content=500 mg; stock.final_volume=5 mL", "; reference.low=260 mg/dose");
  ASSERT_TRUE(sheet.give && sheet.give->prepare);
  EXPECT_EQ(amountWords(sheet).prepare, "");
  const Shown settled(sheet, answersBy(sheet, {Answer::prescriber}));
  EXPECT_EQ(amountWords(settled).prepare.substr(0, 24), "Make each vial up to 5 m");
}

TEST(Preparing, IsNotSaidOfWhatIsNoPowderOrCannotBeMeasured) {
  EXPECT_EQ(inFile(mixed("stock.content=500 mg; stock.final_volume=5 mL", "; order.dose=1 mg")), "");
  EXPECT_EQ(
      inFile(workOut(caseOf("order.dose=250 mg; order.schedule=every 8 h; reference.high=260 mg/dose; "
                            "reference.schedule=every 8 h; stock.kind=liquid; stock.strength=100 mg/mL; "
                            "stock.content=500 mg; stock.final_volume=5 mL"),
                     exactRules())),
      "");
}

}  // namespace
}  // namespace wardchalk::test::prepare_test
