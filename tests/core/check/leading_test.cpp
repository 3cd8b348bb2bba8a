#include <gtest/gtest.h>

#include <string>

#include "core/check/judgement.h"
#include "core/check/work_out.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// What leads (R18): doubts about the facts before what follows from them, and of what is unsafe the greatest
// harm.

namespace wardchalk::test::leading_test {
namespace {

struct Row {
  const char* name;
  const char* inputs;
  const char* asked;   ///< in the order in which it is told
  const char* reason;  ///< how the line beside the verdict ends
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.inputs; }

std::string asked(const Worksheet& sheet) {
  std::string codes(idOf(sheet.verdict));
  for (const Finding& finding : sheet.findings)
    if (finding.severity < Severity::note) codes.append(" ").append(idOf(finding.code));
  return codes;
}

Worksheet led(const std::string& text) { return workOut(caseOf(text), exactRules()); }

class WhatLeads : public testing::TestWithParam<Row> {};

TEST_P(WhatLeads, IsToldFirst) {
  const Worksheet sheet = led(GetParam().inputs);
  EXPECT_EQ(asked(sheet), GetParam().asked);
  const std::string reason = verdictReason(sheet);
  EXPECT_TRUE(reason.ends_with(GetParam().reason)) << reason;
}

// A child of 4 years: 17.2 kg and 103 cm are 0.70 m2, of which 120 mg/m2 are 84 mg; 37.9 kg are 17.2 kg in
// pounds.
#define CHILD "child.age=4 year 2 month; child.height=103 cm; "
#define HEAVY CHILD "child.weight=37.9 kg; "
#define PLAIN "order.schedule=every 12 h; reference.schedule=every 12 h; reference.source=Bench list; "
#define PER_KG PLAIN "reference.high=5 mg/kg/dose; "
constexpr const char* again = "Weigh again, or check the unit. Was it pounds, taken for kilograms?";

INSTANTIATE_TEST_SUITE_P(
    Doubts, WhatLeads,
    testing::Values(
        Row{"a weight before a dose too little for it", HEAVY PER_KG "order.dose=80 mg",
            "ask weight-unlikely below-usual", again},
        Row{"a weight before a stated low end", HEAVY PER_KG "order.dose=80 mg; reference.low=4.5 mg/kg/dose",
            "ask weight-unlikely below-low", again},
        Row{"a weight before a schedule",
            HEAVY "order.schedule=every 6 h; order.dose=180 mg; reference.schedule=every 12 h; "
                  "reference.high=5 mg/kg/dose; reference.max_per_day=800 mg",
            "unsafe over-daily weight-unlikely schedule-differs",
            "The size is in doubt too: check the weight of 37.9 kg first."},
        Row{"a confirmed size before all",
            "child.age=4 year 2 month; child.height=103 cm; child.weight=60 kg; "
            "child.size_confirmed=true; " PER_KG "order.dose=80 mg",
            "ask size-implausible below-usual", "ask whether the order is for a child of this size."},
        Row{"surfaces before a dose too little",
            CHILD "child.weight=17.2 kg; child.bsa=1.2 m2; " PLAIN
                  "reference.high=120 mg/m2/dose; order.dose=80 mg",
            "ask bsa-differs below-usual", "Ask which is right."},
        Row{"weight and height before surfaces",
            "child.age=6 year; child.sex=female; child.height=93 cm; child.weight=12 kg; child.bsa=0.7 "
            "m2; " PLAIN "reference.high=120 mg/m2/dose; reference.max_per_day=40 mg/kg; order.dose=80 mg",
            "ask weight-unlikely bsa-differs", "Weigh again, or check the unit."},
        Row{"strengths before a schedule",
            CHILD
            "child.weight=17.2 kg; reference.high=5 mg/kg/dose; order.dose=80 mg; order.schedule=every 24 h; "
            "reference.schedule=every 12 h; reference.source=Bench list; stock.kind=powder; "
            "stock.strength=100 mg/mL; stock.content=500 mg; stock.final_volume=4 mL",
            "ask strength-differs schedule-differs", "ask the pharmacist which is right."},
        Row{"a final volume that cannot be before a dose too little",
            CHILD "child.weight=17.2 kg; " PER_KG
                  "order.dose=40 mg; stock.kind=powder; stock.content=500 mg; stock.final_volume=4 mL; "
                  "stock.diluent=5 mL",
            "ask final-smaller-than-diluent below-usual", "Check the label."},
        Row{"a doubt that nothing uses leads nothing",
            HEAVY PLAIN "reference.high=100 mg/dose; order.dose=80 mg", "ask below-usual",
            "80 mg per dose ordered; 100 mg per dose is recommended (this is 80 % of it)."}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    BesideAVerdict, WhatLeads,
    testing::Values(
        Row{"over by a weight in doubt", HEAVY PER_KG "order.dose=200 mg",
            "unsafe over-single over-daily weight-unlikely",
            "The size is in doubt too: check the weight of 37.9 kg first."},
        Row{"outside a band by a weight in doubt",
            HEAVY PER_KG "order.dose=180 mg; reference.weight_up_to=20 kg",
            "not-covered not-covered-weight weight-unlikely",
            "The size is in doubt too: check the weight of 37.9 kg first."},
        Row{"over by a height in doubt",
            "child.weight=17.2 kg; child.height=130 cm; " PLAIN
            "reference.high=120 mg/m2/dose; order.dose=200 mg",
            "unsafe over-single over-daily weight-unlikely-for-height",
            "check the weight of 17.2 kg and the height of 130 cm first."},
        Row{"over by a height alone in doubt",
            "child.age=3 year; child.sex=female; child.height=75 cm; child.weight=14 kg; " PLAIN
            "reference.high=120 mg/m2/dose; order.dose=200 mg",
            "unsafe over-single over-daily height-unlikely", "check the height of 75 cm first."},
        Row{"over by a weight that cannot be and was confirmed",
            "child.age=4 year 2 month; child.height=103 cm; child.weight=60 kg; "
            "child.size_confirmed=true; " PER_KG "order.dose=400 mg",
            "unsafe over-single over-daily size-implausible", "check the weight of 60 kg first."},
        Row{"over by a height that cannot be and was confirmed",
            "child.age=4 year 2 month; child.height=40 cm; child.weight=17.2 kg; "
            "child.size_confirmed=true; " PLAIN "reference.high=120 mg/m2/dose; order.dose=200 mg",
            "unsafe over-single over-daily size-implausible", "check the height of 40 cm first."},
        Row{"over by a weight and a height that cannot be",
            "child.age=4 year 2 month; child.height=40 cm; child.weight=60 kg; "
            "child.size_confirmed=true; " PLAIN "reference.high=120 mg/m2/dose; order.dose=200 mg",
            "unsafe over-single over-daily size-implausible",
            "check the weight of 60 kg and the height of 40 cm first."},
        Row{"over by a charted surface in doubt",
            CHILD "child.weight=17.2 kg; child.bsa=0.6 m2; " PLAIN
                  "reference.high=120 mg/m2/dose; order.dose=80 mg",
            "unsafe over-single over-daily bsa-differs",
            "check the charted BSA of 0.6 m², the weight and the height first."},
        Row{"over by a charted surface that belongs to no child",
            "child.bsa=0.04 m2; child.size_confirmed=true; " PLAIN
            "reference.high=120 mg/m2/dose; order.dose=80 mg",
            "unsafe over-single over-daily size-implausible", "check the charted BSA of 0.04 m² first."},
        Row{"over whatever the size", HEAVY PLAIN "reference.high=70 mg/dose; order.dose=80 mg",
            "unsafe over-single over-daily", "80 mg ordered; safe up to 70 mg per dose."}),
    NameOfRow());

#define RUN PLAIN "reference.high=100 mg/dose; infusion.volume=50 mL; reference.min_infusion_time=60 min; "

// 25 % over beside a time that is a sixth of the least: six times too fast.
INSTANTIATE_TEST_SUITE_P(
    GreatestHarm, WhatLeads,
    testing::Values(Row{"a time far too short", RUN "order.dose=125 mg; infusion.over=10 min",
                        "unsafe too-fast over-single over-daily", "shortest time 60 min."},
                    Row{"a time a little too short", RUN "order.dose=125 mg; infusion.over=50 min",
                        "unsafe over-single over-daily too-fast", "safe up to 100 mg per dose."},
                    Row{"as far over as too short: the dose", RUN "order.dose=120 mg; infusion.over=50 min",
                        "unsafe over-single over-daily too-fast", "safe up to 100 mg per dose."}),
    NameOfRow());

/// "By the size entered" stands only while that size is in doubt and counts.
TEST(TooLittle, SaysByWhatWhileTheSizeIsInDoubt) {
  const auto told = [](const std::string& text, FindingCode code) {
    const Worksheet sheet = led(text);
    const Finding* finding = sheet.finding(code);
    return finding ? sentence(*finding) : std::string();
  };
  EXPECT_EQ(told(HEAVY PER_KG "order.dose=80 mg", FindingCode::belowUsual),
            "Too little by the size entered: 80 mg per dose ordered; 189.5 mg per dose is recommended (this "
            "is 42.2 % of it).");
  EXPECT_EQ(told(HEAVY PER_KG "order.dose=80 mg; reference.low=4 mg/kg/dose", FindingCode::belowLow),
            "Too little by the size entered: 80 mg per dose ordered; the reference says at least 151.6 mg "
            "per dose (this is 52.8 % of it).");
  EXPECT_EQ(told(CHILD "child.weight=17.2 kg; " PER_KG "order.dose=40 mg", FindingCode::belowUsual),
            "Too little by this reference: 40 mg per dose ordered; 86 mg per dose is recommended (this is "
            "46.5 % of it).");
  EXPECT_EQ(told(HEAVY PLAIN "reference.high=100 mg/dose; order.dose=80 mg", FindingCode::belowUsual),
            "Too little by this reference: 80 mg per dose ordered; 100 mg per dose is recommended (this is "
            "80 % of it).");
  EXPECT_EQ(told(HEAVY "order.dose=1 mg/kg/h; order.schedule=continuous; reference.low=2 mg/kg/h; "
                       "reference.high=4 mg/kg/h",
                 FindingCode::belowLow)
                .substr(0, 32),
            "Too little by the size entered: ");
}

}  // namespace
}  // namespace wardchalk::test::leading_test
