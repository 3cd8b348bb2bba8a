#include "tests/core/practice/marking/marking_cases.h"

#include <algorithm>
#include <stdexcept>

#include "core/check/work_out.h"
#include "tests/support/case_text.h"

namespace wardchalk::test {

namespace {

Problem problemOf(std::string_view papers) {
  Problem problem;
  problem.rules = exactRules();
  problem.entries = entriesOf(papers);
  problem.given = caseOf(papers);
  problem.key = workOut(problem.given, problem.rules);
  return problem;
}

}  // namespace

void ask(Problem& problem, std::initializer_list<std::string_view> ids) {
  problem.asks.clear();
  for (const std::string_view id : ids) {
    Ask asked;
    const auto found = std::ranges::find(stepIds, id);
    if (found != stepIds.end()) asked.step = static_cast<StepId>(found - stepIds.begin());
    if (asked.step && problem.key.step(*asked.step)) asked.wanted = problem.key.step(*asked.step)->lookingFor;
    problem.asks.push_back(asked);
  }
}

std::size_t askNamed(const Problem& problem, std::string_view id) {
  for (std::size_t i = 0; i < problem.asks.size(); ++i)
    if (idOf(problem.asks[i]) == id) return i;
  throw std::runtime_error("nothing asks for " + std::string(id));
}

Problem casePerDay() {
  Problem problem = problemOf(
      "child.age=4 year; child.sex=female; child.height=38 in; child.weight=33 lb; order.medicine=Plover; "
      "order.dose=150 mg; order.route=oral; order.schedule=every 8 h; reference.low=25 mg/kg/day; "
      "reference.high=50 mg/kg/day; reference.schedule=every 8 h; stock.kind=liquid; stock.strength=250 mg/5 "
      "mL");
  ask(problem,
      {"weight", "low-day", "low-dose", "limit-day", "limit-dose", "ordered-day", "verdict", "give"});
  return problem;
}

Problem caseTimesADay() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Plover; order.dose=150 mg; order.route=oral; order.schedule=3 "
      "times a day; "
      "reference.low=25 mg/kg/day; reference.high=50 mg/kg/day; reference.schedule=3 times a day; "
      "stock.kind=liquid; "
      "stock.strength=250 mg/5 mL");
  ask(problem, {"low-day", "low-dose", "limit-day", "limit-dose", "verdict", "give"});
  return problem;
}

Problem casePowder() {
  Problem problem = problemOf(
      "child.height=44 in; child.weight=42 lb; order.medicine=Dunlin; order.dose=90 mg; "
      "order.route=intravenous; "
      "order.schedule=daily; reference.low=100 mg/m2/dose; reference.high=150 mg/m2/dose; "
      "reference.schedule=daily; "
      "reference.max_concentration=5 mg/mL; stock.kind=powder; stock.content=100 mg; stock.diluent=4.8 mL; "
      "stock.displacement=0.2 mL; infusion.volume=18 mL; infusion.over=30 min; infusion.drop_factor=20 "
      "drop/mL");
  ask(problem, {"bsa", "low-dose", "limit-dose", "verdict", "volume", "strength", "give", "rate", "drops"});
  return problem;
}

Problem caseRate() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Wren; order.dose=5 mcg/kg/min; order.route=intravenous; "
      "order.schedule=continuous; reference.high=10 mcg/kg/min; stock.kind=liquid; stock.strength=40 mg/50 "
      "mL");
  ask(problem, {"verdict", "rate"});
  return problem;
}

Problem caseRateInLitres() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Wren; order.dose=5 mcg/kg/min; order.route=intravenous; "
      "order.schedule=continuous; reference.high=10 mcg/kg/min; stock.kind=liquid; stock.strength=800 mg/L");
  ask(problem, {"rate"});
  return problem;
}

Problem caseRateByTheHour() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Wren; order.dose=0.3 mg/kg/h; order.route=intravenous; "
      "order.schedule=continuous; reference.high=0.6 mg/kg/h; stock.kind=liquid; stock.strength=40 mg/50 mL");
  ask(problem, {"rate"});
  return problem;
}

Problem caseOunces() {
  Problem problem = problemOf(
      "child.age=4 year; child.weight=33 lb 8 oz; order.medicine=Plover; order.dose=180 mg; "
      "order.route=oral; "
      "order.schedule=every 6 h; reference.low=8 mg/kg/dose; reference.high=10 mg/kg/dose; "
      "reference.schedule=every 6 h; stock.kind=liquid; stock.strength=50 mg/4 mL");
  ask(problem, {"weight", "low-dose", "limit-dose", "verdict", "give"});
  return problem;
}

Problem caseLabelNear() {
  Problem problem = problemOf(
      "child.age=4 year; child.weight=15.2 kg; order.medicine=Plover; order.dose=110 mg; order.route=oral; "
      "order.schedule=every 6 h; reference.high=10 mg/kg/dose; reference.schedule=every 6 h; "
      "stock.kind=liquid; stock.strength=150 mg/4 mL");
  ask(problem, {"limit-dose", "verdict", "give"});
  return problem;
}

Problem caseGrams() {
  Problem problem = problemOf(
      "child.age=4 year; child.weight=36 lb; order.medicine=Plover; order.dose=0.2 g; order.route=oral; "
      "order.schedule=every 8 h; reference.low=25 mg/kg/day; reference.high=50 mg/kg/day; "
      "reference.schedule=every 8 h; stock.kind=liquid; stock.strength=250 mg/5 mL");
  ask(problem, {"weight", "low-dose", "limit-dose", "verdict", "give"});
  return problem;
}

Problem caseWholeKilograms() {
  Problem problem = caseGrams();
  problem.rules.kilogramDecimals = 0;
  problem.key = workOut(problem.given, problem.rules);
  return problem;
}

Problem caseTablets() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Wren; order.dose=60 mg; order.route=oral; order.schedule=every 8 "
      "h; "
      "reference.low=3 mg/kg/dose; reference.high=5 mg/kg/dose; reference.schedule=every 6 h; "
      "stock.kind=solid; stock.strength=20 mg/tablet");
  ask(problem, {"limit-dose", "verdict", "give"});
  return problem;
}

Problem caseOfTablets(std::string_view dose) {
  Problem problem = problemOf(std::string("child.weight=15 kg; order.medicine=Wren; order.route=oral; "
                                          "order.schedule=every 6 h; reference.high=5 mg/kg/dose; "
                                          "reference.schedule=every 6 h; stock.kind=solid; "
                                          "stock.strength=30 mg/tablet; order.dose=")
                                  .append(dose));
  ask(problem, {"give"});
  return problem;
}

Problem caseMetric() {
  Problem problem = problemOf(
      "child.weight=6500 g; child.height=0.62 m; order.medicine=Wren; order.dose=25 mg; order.route=oral; "
      "order.schedule=daily; reference.high=120 mg/m2/dose; reference.schedule=daily; stock.kind=liquid; "
      "stock.strength=10 mg/mL");
  ask(problem, {"weight", "height", "bsa", "limit-dose", "verdict", "give"});
  return problem;
}

Problem caseInches() {
  Problem problem = problemOf(
      "child.age=6 year; child.weight=19 kg; child.height=3 ft 8 in; order.medicine=Wren; order.dose=25 mg; "
      "order.route=oral; "
      "order.schedule=every 8 h; reference.high=120 mg/m2/day; reference.schedule=every 8 h; "
      "stock.kind=liquid; "
      "stock.strength=10 mg/mL");
  ask(problem, {"height", "bsa", "limit-day", "limit-dose", "verdict", "give"});
  return problem;
}

Problem caseFiveHours() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Wren; order.dose=60 mg; order.route=oral; order.schedule=every 5 "
      "h; "
      "reference.high=5 mg/kg/dose; reference.schedule=every 5 h; stock.kind=liquid; stock.strength=20 "
      "mg/mL");
  ask(problem, {"limit-dose", "verdict", "give"});
  return problem;
}

Problem caseFlat() {
  Problem problem = problemOf(
      "child.weight=15 kg; child.height=96 cm; order.medicine=Wren; order.dose=50 mg/m2/dose; "
      "order.route=oral; "
      "order.schedule=every 6 h; reference.high=200 mg/day; reference.schedule=every 6 h; stock.kind=liquid; "
      "stock.strength=20 mg/mL");
  ask(problem, {"limit-dose", "verdict", "give"});
  return problem;
}

Problem caseHighOfDay() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Plover; order.dose=240 mg; order.route=oral; order.schedule=every "
      "8 h; "
      "reference.high=48 mg/kg/day; reference.schedule=every 8 h; stock.kind=liquid; stock.strength=250 mg/5 "
      "mL");
  ask(problem, {"limit-day", "limit-dose", "verdict", "give"});
  return problem;
}

Problem caseFinalVolume() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Dunlin; order.dose=90 mg; order.route=intravenous; "
      "order.schedule=daily; "
      "reference.high=7 mg/kg/dose; reference.schedule=daily; stock.kind=powder; stock.content=100 mg; "
      "stock.diluent=4.8 mL; stock.final_volume=5 mL");
  ask(problem, {"limit-dose", "verdict", "strength", "give"});
  return problem;
}

Problem caseNoOunces() {
  Problem problem = problemOf(
      "child.weight=33 lb 0 oz; order.medicine=Plover; order.dose=110 mg; order.route=oral; "
      "order.schedule=every 6 h; "
      "reference.high=10 mg/kg/dose; reference.schedule=every 6 h; stock.kind=liquid; stock.strength=50 mg/4 "
      "mL");
  ask(problem, {"weight", "limit-dose"});
  return problem;
}

Problem caseHalfAPowder() {
  Problem problem = problemOf(
      "child.weight=15 kg; order.medicine=Dunlin; order.dose=90 mg; order.route=intravenous; "
      "order.schedule=daily; reference.high=7 mg/kg/dose; reference.schedule=daily; stock.kind=powder; "
      "stock.content=250 mg; stock.diluent=2.5 mL; stock.displacement=2.5 mL");
  ask(problem, {"strength", "give"});
  return problem;
}

}  // namespace wardchalk::test
