#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/check/shown.h"
#include "core/check/work_out.h"
#include "core/record/case_summary.h"
#include "core/record/worksheet_file.h"
#include "core/words/amount_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// A reference whose list requires a second check (R27): the amount waits for one that agrees.

namespace wardchalk::test::second_check_required_test {
namespace {

const std::string required = "; reference.second_check_required=true";
const std::string safe =
    "order.dose=80 mg; order.schedule=every 8 h; order.route=oral; reference.high=84 mg/dose; "
    "reference.schedule=every 8 h; stock.kind=liquid; stock.strength=25 mg/1 mL";
const std::string rate =
    "child.weight=15 kg; order.dose=5 mcg/kg/min; order.schedule=continuous; order.route=intravenous; "
    "reference.high=10 mcg/kg/min; stock.kind=liquid; stock.strength=40 mg/50 mL";
const std::string asked =
    "order.dose=60 mg; order.schedule=every 8 h; order.route=oral; reference.high=84 mg/dose; "
    "reference.schedule=every 8 h; stock.kind=liquid; stock.strength=25 mg/1 mL";
const std::string over =
    "order.dose=90 mg; order.schedule=every 8 h; order.route=oral; reference.high=84 mg/dose; "
    "reference.schedule=every 8 h; stock.kind=liquid; stock.strength=25 mg/1 mL";

Worksheet worked(const std::string& inputs) { return workOut(caseOf(inputs), exactRules()); }

Answers answered(const Worksheet& sheet, bool prescriber, bool second) {
  Answers answers = prescriber ? answersBy(sheet, {Answer::prescriber}) : Answers();
  answers.secondAgrees = second;
  return answers;
}

struct Row {
  const char* name;
  std::string inputs;
  bool prescriber;
  bool second;
  const char* measure;
  const char* none;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs; }

class AmountThatWaits : public testing::TestWithParam<Row> {};

TEST_P(AmountThatWaits, IsToldOnceASecondCheckAgrees) {
  const Row& row = GetParam();
  const Worksheet sheet = worked(row.inputs);
  const Shown shown(sheet, answered(sheet, row.prescriber, row.second));
  const AmountWords words = amountWords(shown);
  EXPECT_EQ(words.measure, row.measure);
  EXPECT_EQ(words.none, row.none);
  const bool told = !words.measure.empty();
  EXPECT_EQ(shown->give || shown->rate, told);
  EXPECT_EQ(shown->step(StepId::device) || shown->step(StepId::rate), told);
  EXPECT_EQ(shown->verdict, sheet.verdict);
}

const char* const waits =
    "No amount yet: the reference requires a second check for this medicine. The amount appears once a "
    "second person's check agrees.";
const char* const asks = "Ask first. The amount appears once you enter how the question was settled.";

INSTANTIATE_TEST_SUITE_P(
    Amounts, AmountThatWaits,
    testing::Values(Row{"not required", safe, false, false, "Measure 3.2 mL", ""},
                    Row{"required", safe + required, false, false, "", waits},
                    Row{"required and agreed", safe + required, false, true, "Measure 3.2 mL", ""},
                    Row{"rate", rate + required, false, false, "", waits},
                    Row{"rate and agreed", rate + required, false, true, "Run at 5.6 mL/h", ""},
                    Row{"a question first", asked + required, false, false, "", asks},
                    Row{"agreed and a question", asked + required, false, true, "", asks},
                    Row{"settled and not agreed", asked + required, true, false, "", waits},
                    Row{"settled and agreed", asked + required, true, true, "Measure 2.4 mL", ""},
                    Row{"unsafe", over + required, false, true, "",
                        "No amount: the order is not safe by this reference. Ask the prescriber or the "
                        "pharmacist before preparing anything."}),
    NameOfRow());

TEST(AmountThatWaitsInFiles, isMarkedAndInATableIsNotTold) {
  const Worksheet sheet = worked(safe + required);
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::brief);
  EXPECT_NE(json.find(R"("after_second_check":true)"), std::string::npos);
  const std::vector<std::string> cells = summaryOf(sheet);
  const auto place = std::ranges::find(summaryColumns, "give") - summaryColumns.begin();
  EXPECT_EQ(cells[static_cast<std::size_t>(place)], "second check first");
}

}  // namespace
}  // namespace wardchalk::test::second_check_required_test
