#include "core/words/step_words.h"

#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/words/given_words.h"
#include "core/words/sentences.h"
#include "core/words/spoken.h"
#include "core/words/stated_words.h"
#include "core/words/unit_words.h"
#include "tests/support/case_text.h"

// What stands beside the numbers of a step: where each is from, its units, and whether it is exact.

namespace wardchalk::test::step_words_test {
namespace {

const std::string often = "order.schedule=every 12 h; reference.schedule=every 12 h; ";
const std::string perM2 =
    often + "child.height=103 cm; child.weight=17.2 kg; order.dose=80 mg; reference.high=120 mg/m2/dose";

TEST(Tag, SaysWhereANumberIsFrom) {
  const Worksheet sheet = workOut(caseOf(perM2), exactRules());
  ASSERT_EQ(sheet.steps.front().id, StepId::bsa);
  EXPECT_EQ(tag(Origin{}, sheet), "");
  EXPECT_EQ(tag(Origin::field(path::weight), sheet), "weight");
  EXPECT_EQ(tag(Origin::field(path::schedule), sheet), "order: how often");
  EXPECT_EQ(tag(Origin::field(path::maxConcentration), sheet),
            "reference");  // as all that has no tag of its own
  EXPECT_EQ(tag(Origin::step(StepId::bsa), sheet), "step 1");
  EXPECT_EQ(tag(Origin::step(StepId::give), sheet), "");  // there is none here
  EXPECT_EQ(tag(Origin::constant("mosteller-metric"), sheet), "formula");
  EXPECT_EQ(tag(Origin::constant("mcg-per-mg"), sheet), "conversion");
  EXPECT_EQ(tag(Origin::rule("bsa_formula"), sheet), "house rule");
}

TEST(Sign, IsEqualOnlyOfWhatIs) {
  const Worksheet root = workOut(caseOf(perM2), exactRules());
  EXPECT_EQ(equalsSign(*root.step(StepId::bsa)), "≈");
  EXPECT_TRUE(concludesExactly(*root.step(StepId::bsa)));  // 0.70 as it is used
  EXPECT_TRUE(unroundedText(*root.step(StepId::bsa)).starts_with("≈ 0.70") ||
              unroundedText(*root.step(StepId::bsa)).starts_with("0.70"))
      << unroundedText(*root.step(StepId::bsa));
  EXPECT_EQ(equalsSign(*root.step(StepId::limitDose)), "=");
  EXPECT_EQ(unroundedText(*root.step(StepId::limitDose)), "");
  EXPECT_EQ(unroundedText(*root.step(StepId::compareSingle)), "");
  EXPECT_TRUE(concludesExactly(*root.step(StepId::compareSingle)));
  const Worksheet powers = workOut(caseOf(perM2), rulesOf("bsa_formula=haycock; bsa_decimals=none"));
  EXPECT_EQ(equalsSign(*powers.step(StepId::bsa)), "≈");
  EXPECT_FALSE(concludesExactly(*powers.step(StepId::bsa)));
  EXPECT_TRUE(unroundedText(*powers.step(StepId::bsa)).starts_with("0.7"))
      << unroundedText(*powers.step(StepId::bsa));
  const Worksheet square = workOut(
      caseOf(often +
             "child.height=100 cm; child.weight=9 kg; order.dose=80 mg; reference.high=200 mg/m2/dose"),
      exactRules());
  EXPECT_EQ(equalsSign(*square.step(StepId::bsa)), "=");  // the root of 1/4
}

TEST(Units, StandTogetherAsPowers) {
  using U = UnitProduct;
  EXPECT_EQ(unitsText(U{Unit::kg, Unit::kg}, Spelling::printed), "kg²");
  EXPECT_EQ(unitsText(U{Unit::kg, Unit::kg, Unit::kg}, Spelling::printed), "kg³");
  EXPECT_EQ(unitsText(U{Unit::kg, Unit::kg, Unit::kg, Unit::kg}, Spelling::printed), "kg^4");
  EXPECT_EQ(unitsText(U{Unit::kg, Unit::kg}, Spelling::filed), "kg2");
  EXPECT_EQ(unitsText(U{Unit::m2}, Spelling::printed), "m²");
  EXPECT_EQ(unitsText(U{Unit::m2, Unit::m2}, Spelling::printed), "m⁴");
  EXPECT_EQ(unitsText(U{Unit::m2, Unit::m2, Unit::m2}, Spelling::printed), "m^6");
  EXPECT_EQ(unitsText(U{Unit::m2}, Spelling::filed), "m2");
  EXPECT_EQ(unitsText(U{Unit::m2, Unit::m2}, Spelling::filed), "m4");
  EXPECT_EQ(unitsText(U{Unit::m, Unit::m}, Spelling::printed), "m·m");  // strikes out no m²
  EXPECT_EQ(unitsText(U{Unit::mg, Unit::kg}, Spelling::printed), "mg·kg");
  EXPECT_EQ(unitsText(U{Unit::units}, Spelling::printed), "units");
}

TEST(UnitOfARate, IsWrittenAndSpoken) {
  const QuantityPer rate{{Number(5), Unit::mcg}, {Unit::kg, Unit::min}};
  EXPECT_EQ(unitText(rate), "mcg/kg/min");
  EXPECT_EQ(unitText({{Number(1), Unit::units}, {Unit::h}}), "unit/h");
  EXPECT_EQ(unitText({{Number(2), Unit::units}, {Unit::h}}), "units/h");
  EXPECT_EQ(spokenUnits({{Unit::mcg}, {Unit::kg, Unit::min}}), "micrograms per kilogram per minute");
  EXPECT_EQ(spokenUnits({{Unit::mL}, {}}), "millilitres");
}

TEST(OrderInWords, SaysHowItIsGiven) {
  const auto said = [](const std::string& inputs) { return orderWords(caseOf(inputs).order); };
  EXPECT_EQ(said(""), "");
  EXPECT_EQ(said("order.dose=80 mg"), "80 mg");
  EXPECT_EQ(said("order.dose=80 mg; order.route=oral"), "80 mg by mouth");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=every 8 h"), "80 mg every 8 hours");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=every 1 h"), "80 mg every hour");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=every 4 to 6 h"), "80 mg every 4 to 6 hours");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=every 0.5 to 1 h"), "80 mg every 0.5 to 1 hours");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=every 2 day"), "80 mg every 2 days");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=every 1 day"), "80 mg every day");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=every 2 to 3 day"), "80 mg every 2 to 3 days");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=every 1 week"), "80 mg every week");
  EXPECT_EQ(said("order.dose=80 mg; order.schedule=3 times a day"), "80 mg 3 times a day");
  EXPECT_EQ(said("order.dose=750 mg/day; order.route=oral; order.schedule=every 8 h"),
            "750 mg per day, by mouth every 8 hours");
  EXPECT_EQ(said("order.dose=2 mg/kg/h; order.route=intravenous; order.schedule=continuous"),
            "2 mg/kg/h by continuous infusion");
  EXPECT_EQ(said("order.dose=2 mg/kg/h; order.schedule=continuous"), "2 mg/kg/h continuously");
  EXPECT_EQ(said("order.route=oral; order.schedule=once"), "by mouth once");
}

/// The reason names the limit that is fullest.
TEST(SafeReason, NamesTheFullestLimit) {
  const auto reason = [](const std::string& inputs) {
    const Worksheet sheet = workOut(caseOf(inputs), exactRules());
    return std::string(idOf(sheet.verdict)) + ": " + verdictReason(sheet);
  };
  EXPECT_EQ(reason(often + "order.dose=80 mg; reference.high=84 mg/dose; reference.max_per_dose=81 mg"),
            "safe: 80 mg ordered; maximum 81 mg per dose.");
  EXPECT_EQ(reason("order.dose=9 mg; order.schedule=2 times a week; reference.high=20 mg/week; "
                   "reference.schedule=1 to 2 times a week"),
            "safe: 18 mg per week ordered; safe up to 20 mg per week.");
}

TEST(Need, OfAFinerAgeSaysSo) {
  const Worksheet sheet = workOut(
      caseOf(often +
             "order.dose=80 mg; reference.high=84 mg/dose; child.age=2 years; reference.age_over=2 years"),
      exactRules());
  ASSERT_EQ(sheet.needs.size(), 2U);
  EXPECT_EQ(sentence(sheet.needs.front()),
            "give the months too: the reference changes within this year of age");
}

std::string rootOf(const Number& square) {
  Solved solved;
  solved.chain.rooted = true;
  solved.product.exact = square;
  return unroundedText(Step{StepId::bsa, {{Unit::m2}, {}}, std::move(solved), {}, {}});
}

/// Nine decimals are quickly found; what is shown is what twenty would show, also where the root lies on a
/// half of the last digit, or a hair beside one.
TEST(UnroundedRoot, IsShownAsByTwentyDecimals) {
  const auto expectAlike = [](const Number& square) {
    EXPECT_EQ(rootOf(square), show(square.rootRounded(20)).text) << square.rationalText();
  };
  for (int cm = 30; cm <= 200; cm += 7)
    for (int tenths = 10; tenths <= 1200; tenths += 23)
      expectAlike(Number(cm) * Number::ratio(tenths, 10) / Number(3600));
  const Number hair = Number::powerOfTen(-14);
  for (const int millionths : {500, 9995, 10000, 12345, 99995, 100005, 500000, 701505, 701550, 999950,
                               1000000, 1234500, 1999500, 2345678})
    for (const Number& beside : {Number(0), hair, Number(0) - hair}) {
      const Number root = Number(millionths) * Number::powerOfTen(-6);
      expectAlike(root * root + beside);
    }
}

}  // namespace
}  // namespace wardchalk::test::step_words_test
