#include <gtest/gtest.h>

#include <sstream>

#include "core/check/work_out.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"
#include "tests/support/figures.h"

// Papers that state one case in units other than each other's: every conversion of every chain is worked, so
// that one left out, or turned upside down, is noticed (tests/mutation).

namespace wardchalk::test::other_units_test {
namespace {

struct UnitsRow {
  const char* name;
  const char* entries;
  const char* expected;
};
void PrintTo(const UnitsRow& row, std::ostream* out) { *out << row.name; }

constexpr std::string_view infusion =
    "child.weight=20 kg; order.dose=300 mg; order.route=intravenous; order.schedule=every 6 h; "
    "reference.high=15 mg/kg/dose; reference.schedule=every 6 h; reference.limit_only=true; "
    "stock.kind=liquid; "
    "stock.strength=50 mg/mL; infusion.over=30 min; ";

constexpr std::string_view running =
    "child.weight=10 kg; order.route=intravenous; order.schedule=continuous; "
    "stock.kind=liquid; stock.strength=100 mg/100 mL; ";

constexpr UnitsRow ofInfusions[] = {
    {"a volume in litres", "infusion.volume=0.06 L", "flow=120 mL; give=6 mL"},
    {"a volume in litres with drops", "infusion.volume=0.06 L; infusion.drop_factor=20 drop/mL",
     "flow=120 mL; drops=40 drop"},
    {"a volume in litres against a concentration",
     "infusion.volume=0.06 L; reference.max_concentration=5 mg/mL",
     "check.concentration=within; verdict=safe; flow=120 mL"},
    {"a volume in litres that is too small", "infusion.volume=0.05 L; reference.max_concentration=5 mg/mL",
     "check.concentration=outside; because=too-concentrated"},
    {"a concentration in grams", "infusion.volume=60 mL; reference.max_concentration=0.005 g/mL",
     "check.concentration=within; verdict=safe"},
    {"a concentration in grams that is too low",
     "infusion.volume=60 mL; reference.max_concentration=0.0049 g/mL",
     "check.concentration=outside; because=too-concentrated"},
    {"a concentration in micrograms in a litre",
     "infusion.volume=60 mL; reference.max_concentration=5000000 mcg/L",
     "check.concentration=within; verdict=safe"},
    {"a least concentration in grams in a litre", "infusion.volume=60 mL; reference.min_concentration=5 g/L",
     "check.concentration-low=within; verdict=safe"},
    {"a running time in hours", "infusion.volume=60 mL; infusion.over=0.5 h; infusion.drop_factor=20 drop/mL",
     "flow=120 mL; drops=40 drop"},
    {"a least time in hours", "infusion.volume=60 mL; reference.min_infusion_time=0.5 h",
     "check.infusion-time=within; verdict=safe"},
    {"a least time in hours that is too long", "infusion.volume=60 mL; reference.min_infusion_time=0.6 h",
     "check.infusion-time=outside; because=too-fast"},
    {"a greatest rate in grams an hour", "infusion.volume=60 mL; reference.max_infusion_rate=0.6 g/h",
     "check.infusion-rate=within; verdict=safe"},
    {"a greatest rate in micrograms for each kg and minute",
     "infusion.volume=60 mL; reference.max_infusion_rate=499 mcg/kg/min",
     "check.infusion-rate=outside; because=too-fast"},
};

constexpr UnitsRow ofRates[] = {
    {"an hourly rate with drops",
     "order.dose=2 mg/kg/h; reference.high=2 mg/kg/h; infusion.drop_factor=60 drop/mL",
     "verdict=safe; flow=20 mL; drops=20 drop"},
    {"a rate a minute with drops",
     "order.dose=30 mcg/kg/min; reference.high=30 mcg/kg/min; infusion.drop_factor=60 drop/mL",
     "verdict=safe; flow=18 mL; drops=18 drop"},
    {"an hourly rate against one a minute", "order.dose=1.8 mg/kg/h; reference.high=30 mcg/kg/min",
     "check.rate=within; verdict=safe; flow=18 mL"},
    {"an hourly rate just above one a minute", "order.dose=1.81 mg/kg/h; reference.high=30 mcg/kg/min",
     "check.rate=outside; because=over-rate"},
    {"a rate of a bag in grams in a litre",
     "order.dose=30 mcg/kg/min; reference.high=30 mcg/kg/min; stock.strength=1 g/1 L",
     "verdict=safe; flow=18 mL"},
    {"a whole rate in milligrams", "order.dose=18 mg/h; reference.high=30 mcg/kg/min",
     "verdict=safe; flow=18 mL"},
};

constexpr UnitsRow ofDoses[] = {
    {"an order in grams", "order.dose=0.3 g; stock.strength=50 mg/mL", "ordered.dose=0.3 g; give=6 mL"},
    {"an order in micrograms of a label in grams", "order.dose=300000 mcg; stock.strength=5 g/100 mL",
     "verdict=safe; give=6 mL"},
    {"a label in a litre", "order.dose=300 mg; stock.strength=50 g/L",
     "verdict=safe; give=6 mL; strength=0.05 g"},
    {"an order in mL of a label in grams in a litre", "order.dose=6 mL; stock.strength=50 g/L",
     "ordered.dose=0.3 g; verdict=safe; give=6 mL"},
    {"a powder in grams made up to a litre",
     "order.dose=300 mg; stock.kind=powder; stock.content=50 g; stock.final_volume=1 L",
     "verdict=safe; give=6 mL"},
    {"an order in mL of a powder",
     "order.dose=6 mL; stock.kind=powder; stock.content=0.5 g; stock.diluent=9.5 mL; stock.displacement=0.5 "
     "mL",
     "ordered.dose=0.3 g; verdict=safe; give=6 mL"},
    {"a weight in grams", "child.weight=20000 g; order.dose=300 mg; stock.strength=50 mg/mL",
     "weight=20 kg; limit.dose=300 mg; verdict=safe"},
    {"maxima in other units",
     "order.dose=300 mg; reference.max_per_dose=0.29 g; reference.max_per_day=1200000 mcg; "
     "stock.strength=50 mg/mL",
     "limit.dose=290 mg; because=over-max-single; check.max-daily=within"},
};

constexpr std::string_view dose =
    "child.weight=20 kg; order.route=oral; order.schedule=every 6 h; reference.high=15 mg/kg/dose; "
    "reference.schedule=every 6 h; reference.limit_only=true; stock.kind=liquid; ";

void expectAll(std::string_view common, const UnitsRow& row) {
  std::vector<WrittenEntry> entries = entriesOf(std::string(common));
  for (const WrittenEntry& entry : entriesOf(row.entries)) entries = with(entries, entry.path, entry.text);
  const Worksheet sheet = workOut(caseOf(entries), exactRules());
  EXPECT_FALSE(sheet.finding(FindingCode::notWorkedOut));
  std::istringstream parts(row.expected);
  for (std::string part; std::getline(parts >> std::ws, part, ';');) EXPECT_EQ(unmet(sheet, part), "");
}

class OtherUnitsOfInfusions : public testing::TestWithParam<UnitsRow> {};
TEST_P(OtherUnitsOfInfusions, areConverted) { expectAll(infusion, GetParam()); }
INSTANTIATE_TEST_SUITE_P(R24, OtherUnitsOfInfusions, testing::ValuesIn(ofInfusions), NameOfRow());

class OtherUnitsOfRates : public testing::TestWithParam<UnitsRow> {};
TEST_P(OtherUnitsOfRates, areConverted) { expectAll(running, GetParam()); }
INSTANTIATE_TEST_SUITE_P(R24, OtherUnitsOfRates, testing::ValuesIn(ofRates), NameOfRow());

class OtherUnitsOfDoses : public testing::TestWithParam<UnitsRow> {};
TEST_P(OtherUnitsOfDoses, areConverted) { expectAll(dose, GetParam()); }
INSTANTIATE_TEST_SUITE_P(R24, OtherUnitsOfDoses, testing::ValuesIn(ofDoses), NameOfRow());

}  // namespace
}  // namespace wardchalk::test::other_units_test
