#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/practice/lines/understood.h"
#include "core/practice/marking/marking.h"
#include "core/practice/problem/problem_story.h"
#include "tests/core/practice/marking/marking_cases.h"

// What a class may ask for besides, what a question asks for, and how a line was understood.

namespace wardchalk::test::marking_terms_test {
namespace {

Mark markOf(const Problem& problem, std::string_view line, std::string_view text, MarkingTerms terms) {
  Marking marking(problem, terms);
  return marking.mark(askNamed(problem, line), text).mark;
}

TEST(MarkingTerms, unitsMayBeWanted) {
  const Problem problem = casePerDay();
  const MarkingTerms strict{true, false};
  for (const char* text : {"33 lb ÷ 2.2 = 15 kg", "33 lb × 0.4536 = 14.97 kg", "33/2.2 = 15 kg"}) {
    EXPECT_EQ(markOf(problem, "weight", text, {}), Mark::right) << text;
    EXPECT_EQ(markOf(problem, "weight", text, strict), Mark::wrong) << text;
  }
  EXPECT_EQ(markOf(problem, "weight", "33 lb ÷ 2.2 lb/kg = 15 kg", strict), Mark::right);
  EXPECT_EQ(markOf(problem, "give", "3", {}), Mark::right);
  EXPECT_EQ(markOf(problem, "give", "3", strict), Mark::wrong);
}

TEST(MarkingTerms, aBareConstantIsToldWhichUnitItNeeds) {
  const Problem problem = casePerDay();
  Marking marking(problem);
  const std::size_t weight = askNamed(problem, "weight");
  EXPECT_TRUE(marking.mark(weight, "33 lb ÷ 2.2 = 15 kg").has(LineNote::lbPerKgMissing));
  EXPECT_TRUE(marking.mark(weight, "33 lb × 0.4536 = 14.97 kg").has(LineNote::kgPerLbMissing));
  for (const char* constant : {"2.205", "2.2046", "2.20462"})
    EXPECT_TRUE(marking.mark(weight, std::string("33 lb ÷ ") + constant + " = 14.97 kg")
                    .has(LineNote::lbPerKgMissing))
        << constant;
  for (const char* constant : {"0.454", "0.453592", "0.45359237"})
    EXPECT_TRUE(marking.mark(weight, std::string("33 lb × ") + constant + " = 14.97 kg")
                    .has(LineNote::kgPerLbMissing))
        << constant;
  EXPECT_FALSE(marking.mark(weight, "33 lb ÷ 2.2 lb/kg = 15 kg").has(LineNote::lbPerKgMissing));
  EXPECT_FALSE(marking.mark(weight, "33 lb × 1 kg/2.2 lb = 15 kg").has(LineNote::lbPerKgMissing));
}

TEST(MarkingTerms, aReasonMayBeWanted) {
  Problem problem = casePerDay();
  problem.given.order.dose->amount.value = Number(100);
  problem.key = workOut(problem.given, problem.rules);
  ask(problem, {"verdict"});
  const MarkingTerms strict{false, true};
  EXPECT_EQ(markOf(problem, "verdict", "unsafe", {}), Mark::right);
  EXPECT_EQ(markOf(problem, "verdict", "unsafe", strict), Mark::wrong);
  EXPECT_EQ(markOf(problem, "verdict", "unsafe, too low", strict), Mark::right);
  EXPECT_EQ(markOf(problem, "verdict", "ask", strict), Mark::right);
}

TEST(Asked, eachNumberIsAskedForWithItsDecimals) {
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (const HouseRules& rules : {exactRules(), classroomRules()}) {
      const Problem problem = makeProblem(static_cast<Topic>(topic), 2, 4, rules);
      for (const Ask& asked : problem.asks) {
        const bool number =
            asked.step && asked.step != StepId::device && problem.given.stock.kind != StockKind::solid;
        EXPECT_EQ(asked.decimals.has_value(), number) << topicIds[topic] << " " << idOf(asked);
      }
    }
  HouseRules rules = classroomRules();
  rules.kilogramDecimals = 1;
  rules.rateDecimals = 0;
  const Problem pounds = makeProblem(Topic::doseByWeight, 3, 5, rules);
  ASSERT_EQ(pounds.asks.front().step, StepId::weight);
  EXPECT_EQ(askText(pounds.asks.front(), pounds), "What is the weight in kg? (1 decimal)");
  const Problem running = makeProblem(Topic::infusion, 1, 5, rules);
  EXPECT_EQ(askText(running.asks.back(), running), "How many mL per hour? (whole number)");
}

TEST(Asked, finerIsRightAndCoarserIsARoundingMistake) {
  Problem problem = casePerDay();
  const std::size_t weight = askNamed(problem, "weight");  // 14.968… kg
  Marking two(problem);
  for (const char* text : {"14.97 kg", "14.969 kg", "14.9685 kg"})
    EXPECT_EQ(two.mark(weight, text).mark, Mark::right) << text;
  EXPECT_TRUE(two.mark(weight, "33 lb × 0.45359237 kg/lb = 14.9 kg").has(MistakeId::sizeRoundedEarly));
  problem.asks[weight].decimals = 1;
  Marking one(problem);
  for (const char* text : {"15.0 kg", "14.97 kg"})
    EXPECT_EQ(one.mark(weight, text).mark, Mark::right) << text;
}

TEST(Understood, isToldBeforeAnythingIsMarked) {
  struct Row {
    const char* text;
    const char* understood;
  };
  for (const Row& row : {
           Row{"400 mg ÷ 5 mL = 80 mg/mL", "400 mg/5 mL = 80 mg/mL"},
           Row{"Give 9.2 mL IV", "9.2 mL"},
           Row{"two and a half tablets", "2.5 tablets"},
           Row{"7 lb 8 oz", "7.5 lb"},
           Row{"0.2 g = 200 mg; 200 mg × 3 mL / 150 mg = 4 mL",
               "0.2 g = 200 mg\n200 mg × 3 mL/150 mg = 4 mL"},
           Row{"80 mg : x mL = 25 mg : 1 mL; x = 3.2 mL", "80 mg × 1 mL/25 mg\n3.2 mL"},
       }) {
    const ReadWorking read = readStudentWorking(row.text);
    ASSERT_TRUE(std::holds_alternative<StudentWorking>(read)) << row.text;
    EXPECT_EQ(understoodText(std::get<StudentWorking>(read)), row.understood) << row.text;
  }
}

}  // namespace
}  // namespace wardchalk::test::marking_terms_test
