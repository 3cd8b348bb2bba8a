#include "tests/ui/working/sample_cases.h"

#include <cstdlib>
#include <initializer_list>
#include <iostream>
#include <utility>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"
#include "tests/support/golden_cases.h"

namespace wardchalk::ui::test {

namespace {

using Entry = std::pair<const char*, const char*>;

Case made(std::initializer_list<Entry> entries) {
  Case given;
  for (const auto& [path, text] : entries) {
    if (setEntry(given, path, text)) continue;
    std::cerr << "unreadable sample entry " << path << ": " << text << '\n';
    std::abort();
  }
  return given;
}

Case with(Case given, std::initializer_list<Entry> entries) {
  for (const auto& [path, text] : entries)
    if (!setEntry(given, path, text)) std::abort();
  return given;
}

Case usual() {
  return made({{"child.age", "4 year 2 month"},
               {"child.height", "103 cm"},
               {"child.weight", "17.2 kg"},
               {"order.medicine", "Plover"},
               {"order.dose", "80 mg"},
               {"order.route", "oral"},
               {"order.schedule", "every 12 h"},
               {"reference.high", "120 mg/m2/dose"},
               {"reference.schedule", "every 12 h"},
               {"reference.source", "Bench list, p. 4"},
               {"stock.kind", "liquid"},
               {"stock.strength", "25 mg/1 mL"}});
}

Case household() {
  return made({{"child.height", "3 ft 5 in"},
               {"child.weight", "37 lb 4 oz"},
               {"order.medicine", "Wren"},
               {"order.dose", "95 mg"},
               {"order.route", "intravenous"},
               {"order.schedule", "every 12 h"},
               {"reference.high", "150 mg/m2/dose"},
               {"reference.schedule", "every 12 h"},
               {"reference.source", "Ward list"},
               {"stock.kind", "powder"},
               {"stock.content", "200 mg"},
               {"stock.diluent", "4.8 mL"},
               {"stock.displacement", "0.2 mL"}});
}

Case tablet() {
  return made({{"child.weight", "21 kg"},
               {"order.medicine", "Dunlin"},
               {"order.dose", "150 mg"},
               {"order.route", "oral"},
               {"order.schedule", "3 times a day"},
               {"reference.low", "18 mg/kg/day"},
               {"reference.high", "24 mg/kg/day"},
               {"reference.schedule", "3 times a day"},
               {"reference.max_per_day", "1.5 g"},
               {"reference.source", "Bench list, p. 9"},
               {"stock.kind", "solid"},
               {"stock.strength", "100 mg/tablet"},
               {"stock.divides_into", "2"}});
}

Case banded() {
  return with(usual(), {{"reference.age_from", "12 year"}, {"reference.max_per_dose", "300 mg"}});
}

Case rate() {
  return made({{"child.weight", "12.5 kg"},
               {"order.medicine", "Knot"},
               {"order.dose", "0.1 mcg/kg/min"},
               {"order.route", "intravenous"},
               {"order.schedule", "continuous"},
               {"reference.high", "10 mcg/kg/h"},
               {"reference.low", "2 mcg/kg/h"},
               {"reference.source", "Bench list, p. 12"}});
}

Case manyTablets() {
  return made({{"child.weight", "40 kg"},
               {"order.medicine", "Curlew"},
               {"order.dose", "3500 mg"},
               {"order.route", "oral"},
               {"order.schedule", "2 times a week"},
               {"reference.high", "200 mg/kg/week"},
               {"reference.source", "Bench list, p. 2"},
               {"stock.kind", "solid"},
               {"stock.strength", "500 mg/capsule"}});
}

HouseRules withFormula() {
  HouseRules rules = exactRules();
  rules.bsaFormula = BsaFormula::haycock;
  rules.bsaDecimals = 3;
  return rules;
}

std::vector<SampleCase> all() {
  const HouseRules exact = exactRules();
  return {
      {"usual", usual(), exact},
      {"ask", with(usual(), {{"order.dose", "55 mg"}, {"order.schedule", "every 8 h"}}), exact},
      {"unsafe", with(usual(), {{"order.dose", "90 mg"}}), exact},
      {"not covered", banded(), exact},
      {"undecided",
       made({{"child.weight", "17.2 kg"},
             {"order.dose", "80 mg"},
             {"order.schedule", "every 12 h"},
             {"reference.high", "120 mg/m2/dose"}}),
       exact},
      {"household", household(), exact},
      {"household classroom", household(), classroomRules()},
      {"tablet", tablet(), exact},
      {"maxima",
       with(usual(), {{"reference.max_per_dose", "82 mg"},
                      {"reference.max_per_day", "164 mg"},
                      {"reference.low", "100 mg/m2/dose"},
                      {"order.dose", "81 mg"}}),
       exact},
      {"charted",
       with(usual(), {{"child.bsa", "0.76 m2"}, {"stock.strength", "0.1 g/4 mL"}, {"order.dose", "0.085 g"}}),
       exact},
      {"formula", usual(), withFormula()},
      {"rate", rate(), exact},
      {"long figures close together",
       made({{"child.weight", "48 kg"},
             {"order.medicine", "Snipe"},
             {"order.dose", "1200000 units"},
             {"order.route", "intramuscular"},
             {"order.schedule", "once"},
             {"reference.high", "25000 units/kg/dose"},
             {"reference.schedule", "once"},
             {"stock.kind", "liquid"},
             {"stock.strength", "600000 units/1 mL"}}),
       exact},
      {"per week", manyTablets(), exact},
      {"large", with(usual(), {{"order.dose", "1200 mg"}, {"reference.high", "2400 mg/m2/dose"}}), exact},
      {"small", with(usual(), {{"order.dose", "8.3 mg"}, {"reference.high", "12 mg/m2/dose"}}), exact},
      {"two syringes", with(usual(), {{"order.dose", "84 mg"}, {"stock.strength", "72 mg/1 mL"}}), exact},
      {"too small", with(usual(), {{"order.dose", "1 mg"}, {"reference.high", "1.5 mg/m2/dose"}}), exact},
      {"no route",
       made({{"child.height", "103 cm"},
             {"child.weight", "17.2 kg"},
             {"order.dose", "80 mg"},
             {"order.schedule", "every 12 h"},
             {"reference.high", "120 mg/m2/dose"},
             {"stock.kind", "liquid"},
             {"stock.strength", "30 mg/1 mL"}}),
       exact},
      {"infusion",
       with(household(), {{"order.route", "intravenous"},
                          {"infusion.volume", "50 mL"},
                          {"infusion.over", "45 min"},
                          {"infusion.drop_factor", "20 drop/mL"},
                          {"reference.max_concentration", "5 mg/mL"},
                          {"reference.min_infusion_time", "30 min"}}),
       exact},
      {"bag", with(rate(), {{"stock.kind", "liquid"}, {"stock.strength", "4 mg/250 mL"}}), exact},
      {"empty", Case{}, exact},
  };
}

}  // namespace

const std::vector<SampleCase>& sampleCases() {
  static const std::vector<SampleCase> cases = all();
  return cases;
}

const std::vector<SampleCase>& samplesAndGoldens() {
  static const std::vector<SampleCase> cases = [] {
    std::vector<SampleCase> both = sampleCases();
    for (const auto& golden : wardchalk::test::goldenCases())
      both.push_back({"golden " + golden.name, golden.given, golden.rules});
    return both;
  }();
  return cases;
}

Worksheet sample(const std::string& name) {
  for (const SampleCase& each : samplesAndGoldens())
    if (each.name == name) return workOut(each.given, each.rules);
  std::cerr << "no sample " << name << '\n';
  std::abort();
}

}  // namespace wardchalk::ui::test
