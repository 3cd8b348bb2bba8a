#include "core/practice/making/problem_traps.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "core/check/work_out.h"
#include "tests/support/case_text.h"

namespace wardchalk::problem_traps_test {
namespace {

struct TrapRow {
  std::string_view name;
  std::string_view given;  ///< beside what every row has
  std::string_view ask;
  bool apart;
  std::string_view also = {};  ///< asked beside it
};

Problem problemOf(const TrapRow& row) {
  Problem problem;
  problem.given = test::caseOf(row.given);
  problem.rules = exactRules();
  problem.key = workOut(problem.given, problem.rules);
  const auto ask = askFor(row.ask, problem.key);
  if (!ask)
    throw std::runtime_error("the key has no line " + std::string(row.ask) + ": " + std::string(row.name));
  problem.asks = {*ask};
  if (const auto also = askFor(row.also, problem.key)) problem.asks.insert(problem.asks.begin(), *also);
  return problem;
}

/// A dose from a bottle with nothing that hides: 150 mg from 250 mg in 5 mL, three times a day.
constexpr std::string_view bottle =
    "order.dose=150 mg; order.route=oral; order.schedule=every 8 h; reference.high=200 mg/dose; "
    "reference.low=100 mg/dose; reference.schedule=every 8 h; stock.kind=liquid; stock.strength=";

std::string with(std::string_view strength) { return std::string(bottle) + std::string(strength); }

TEST(SlipsAreApart, whereNoTwoCanBeTakenForOneAnother) {
  const std::string apart = with("250 mg/5 mL");
  const std::string sameAmount = with("150 mg/5 mL");  // E31: the label upside down is the same
  const std::string oneMl = with("80 mg/1 mL");        // nothing to leave out: the number is right
  const std::string tenMl = with("250 mg/10 mL");      // E32 and E40: a tenth
  const std::string oneInOne = with("5 mg/5 mL");      // E33: 1 mg in 1 mL
  const std::string infusion =
      "order.dose=90 mg; order.route=intravenous; order.schedule=every 8 h; "
      "reference.low=80 mg/dose; reference.high=120 mg/dose; reference.schedule=every 8 h; "
      "stock.kind=liquid; stock.strength=60 mg/2 mL; infusion.volume=50 mL; ";
  const std::string byDrops = infusion + "infusion.over=30 min; infusion.drop_factor=20 drop/mL";
  const std::string bySmallDrops =
      infusion + "infusion.over=30 min; infusion.drop_factor=60 drop/mL";  // as many as mL in an hour
  const std::string byTens =
      infusion + "infusion.over=30 min; infusion.drop_factor=10 drop/mL";  // E52 and E40: the marker asks
  const std::string oneHour = infusion + "infusion.over=1 h";              // E50: × 1
  const std::string halfHour = infusion + "infusion.over=30 min";
  const std::string day =
      "child.weight=20 kg; order.dose=150 mg; order.route=oral; reference.high=24 mg/kg/day; ";
  const std::string thrice = day + "order.schedule=every 8 h; reference.schedule=every 8 h";
  const std::string twice =
      day + "order.schedule=every 12 h; reference.schedule=every 12 h";  // E21 and E23: half
  const std::string fourByHours =
      day + "order.schedule=every 6 h; reference.schedule=every 6 h";  // E22 and E23
  const std::string fourADay = day + "order.schedule=4 times a day; reference.schedule=4 times a day";
  const std::string weighsTen =
      "child.weight=10 kg; order.dose=150 mg; order.route=oral; order.schedule=every 8 h; "
      "reference.low=10 mg/kg/dose; reference.high=20 mg/kg/dose; reference.schedule=every 8 h; "
      "stock.kind=liquid; stock.strength=250 mg/5 mL";  // E36 and E40: tenfold
  for (const TrapRow& row : {
           TrapRow{"bottle", apart, "give", true},
           TrapRow{"S = D", sameAmount, "give", false},
           TrapRow{"v = 1", oneMl, "give", true},
           TrapRow{"v = 10", tenMl, "give", false},
           TrapRow{"1 mg in 1 mL", oneInOne, "give", false},
           TrapRow{"20 drops", byDrops, "drops", true},
           TrapRow{"60 drops", bySmallDrops, "drops", true},
           TrapRow{"60 drops and the rate", bySmallDrops, "drops", false, "rate"},
           TrapRow{"20 drops and the rate", byDrops, "drops", true, "rate"},
           TrapRow{"10 drops", byTens, "drops", true},
           TrapRow{"an hour", oneHour, "rate", false},
           TrapRow{"half an hour", halfHour, "rate", true},
           TrapRow{"three doses", thrice, "limit-dose", true},
           TrapRow{"two doses", twice, "limit-dose", false},
           TrapRow{"every 6 h", fourByHours, "limit-dose", false},
           TrapRow{"4 times a day", fourADay, "limit-dose", true},
           TrapRow{"10 kg", weighsTen, "give", false},
           TrapRow{"0.77 m2", "child.height=111 cm; child.weight=19.1 kg", "bsa", true},
           TrapRow{"0.63 m2", "child.height=97 cm; child.weight=14.8 kg", "bsa", false},
           TrapRow{"0.93 m2", "child.height=128 cm; child.weight=24.4 kg", "bsa", false},
           TrapRow{"1.00 m2", "child.height=132 cm; child.weight=27.2 kg", "bsa", false},
       })
    EXPECT_EQ(slipsAreApart(problemOf(row)), row.apart) << row.name;
}

}  // namespace
}  // namespace wardchalk::problem_traps_test
