#include <gtest/gtest.h>

#include <string>

#include "core/check/work_out.h"
#include "core/words/amount_words.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// What is on hand against how it is to be given (R9): what does not go together is asked about, and nothing
// is measured or run.

namespace wardchalk::test::form_test {
namespace {

const std::string dosed =
    "child.weight=20 kg; order.dose=100 mg; order.schedule=every 6 h; reference.high=5.2 mg/kg/dose; "
    "reference.schedule=every 6 h; ";
const std::string running =
    "child.weight=15 kg; order.dose=8 mcg/kg/min; order.schedule=continuous; reference.high=10 mcg/kg/min; ";
const std::string liquid = "stock.kind=liquid; stock.strength=40 mg/50 mL; ";
const std::string tablet = "stock.kind=solid; stock.strength=50 mg/tablet; stock.divides_into=1; ";
const std::string pumped = "infusion.volume=150 mL; infusion.over=30 min; ";

const char* const cannotRun =
    "A tablet or capsule cannot run in over a time. Check the order, the infusion and what is on hand.";

struct Row {
  const char* name;
  std::string inputs;
  std::string asked;  ///< empty: it goes together
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs; }

class Form : public testing::TestWithParam<Row> {};

TEST_P(Form, IsHeldAgainstHowItIsGiven) {
  const Worksheet sheet = workOut(caseOf(GetParam().inputs), rulesOf("many_units=9"));
  const Finding* finding = sheet.finding(FindingCode::formDiffersFromRoute);
  EXPECT_EQ(finding ? sentence(*finding) : "", GetParam().asked);
  if (!finding) return;
  EXPECT_EQ(idOf(sheet.verdict), "ask");
  EXPECT_FALSE(sheet.give || sheet.rate);
  EXPECT_FALSE(sheet.step(StepId::give) || sheet.step(StepId::rate) || sheet.step(StepId::drops));
}

std::string notBy(const char* what, const char* route) {
  return std::string(what) + " does not go with the " + route +
         " route. Check the order and what is on hand.";
}

INSTANTIATE_TEST_SUITE_P(
    Dose, Form,
    testing::Values(
        Row{"a tablet swallowed", dosed + tablet + "order.route=oral", ""},
        Row{"a tablet injected", dosed + tablet + "order.route=intramuscular",
            notBy("A tablet or capsule", "intramuscular")},
        Row{"a tablet infused", dosed + tablet + pumped + "order.route=intravenous",
            notBy("A tablet or capsule", "intravenous")},
        Row{"a tablet run through a tube", dosed + tablet + pumped + "order.route=enteral", cannotRun},
        Row{"a tablet run by no route", dosed + tablet + pumped, cannotRun},
        Row{"a tablet and a drop factor alone",
            dosed + tablet + "infusion.drop_factor=20 drop/mL; order.route=enteral", cannotRun},
        Row{"a capsule run through a tube",
            dosed + pumped + "stock.kind=solid; stock.strength=50 mg/capsule; order.route=enteral",
            cannotRun},
        Row{"a tablet swallowed over a time", dosed + tablet + pumped + "order.route=oral",
            notBy("An infusion", "oral")},
        Row{"a liquid infused", dosed + liquid + pumped + "order.route=intravenous", ""},
        Row{"a liquid run through a tube", dosed + liquid + pumped + "order.route=enteral", ""},
        Row{"a liquid swallowed over a time", dosed + liquid + pumped + "order.route=oral",
            notBy("An infusion", "oral")},
        Row{"a liquid inhaled over a time", dosed + liquid + pumped + "order.route=inhaled",
            notBy("An infusion", "inhaled")},
        Row{"nothing on hand and swallowed over a time", dosed + pumped + "order.route=oral",
            notBy("An infusion", "oral")},
        Row{"a kind without a strength and swallowed over a time",
            dosed + pumped + "stock.kind=liquid; order.route=oral", notBy("An infusion", "oral")}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Rate, Form,
    testing::Values(
        Row{"into a vein", running + liquid + "order.route=intravenous", ""},
        Row{"through a tube", running + liquid + "order.route=enteral", ""},
        Row{"by no route", running + liquid, ""},
        Row{"into a nebuliser", running + liquid + "order.route=inhaled", ""},
        Row{"into a nebuliser in drops",
            running + liquid + "order.route=inhaled; infusion.drop_factor=60 drop/mL",
            notBy("An infusion", "inhaled")},
        Row{"by mouth", running + liquid + "order.route=oral", notBy("An infusion", "oral")},
        Row{"by mouth in drops", running + liquid + "order.route=oral; infusion.drop_factor=60 drop/mL",
            notBy("An infusion", "oral")},
        Row{"by mouth and nothing on hand", running + "order.route=oral", notBy("An infusion", "oral")},
        Row{"rectal", running + liquid + "order.route=rectal", notBy("An infusion", "rectal")},
        Row{"on the skin", running + liquid + "order.route=topical", notBy("An infusion", "topical")},
        Row{"a tablet into a vein", running + tablet + "order.route=intravenous",
            notBy("A tablet or capsule", "intravenous")},
        Row{"a tablet through a tube", running + tablet + "order.route=enteral", cannotRun},
        Row{"a tablet by no route", running + tablet, cannotRun},
        Row{"a tablet without a strength", running + "stock.kind=solid", cannotRun}),
    NameOfRow());

// Nobody is asked about the form of what may not be given at all.
TEST(FormOfWhatIsForbidden, IsNotAskedAbout) {
  for (const std::string& inputs : {dosed + tablet + "order.route=intravenous; reference.max_per_dose=50 mg",
                                    running + tablet + "reference.max_infusion_rate=1 mcg/kg/min"}) {
    const Worksheet sheet = workOut(caseOf(inputs), rulesOf("many_units=3"));
    EXPECT_EQ(idOf(sheet.verdict), "unsafe") << inputs;
    EXPECT_FALSE(sheet.finding(FindingCode::formDiffersFromRoute)) << inputs;
  }
}

// A vial alone says nothing of what is in the bag, and no question: the strength is wanting.
TEST(RateFromAVial, WantsTheStrengthOfTheBag) {
  const Worksheet sheet =
      workOut(caseOf(running + "stock.kind=powder; stock.content=40 mg; stock.final_volume=50 mL"),
              rulesOf("many_units=3"));
  EXPECT_EQ(idOf(sheet.verdict), "safe");
  EXPECT_FALSE(sheet.rate);
  ASSERT_EQ(sheet.needs.size(), 1U);
  EXPECT_EQ(sheet.needs.front().path, path::strength);
}

}  // namespace
}  // namespace wardchalk::test::form_test
