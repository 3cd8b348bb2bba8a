#include "tests/core/record/refused_entry.h"

// Units and compounds that are refused: by their spelling, or because they do not fit the field.

namespace wardchalk::test::refused_quantities_test {
namespace {

using enum RefusalCode;
using Row = RefusedEntry;

class RefusesQuantity : public RefusesEntry {};

TEST_P(RefusesQuantity, andSaysWhy) { expectRefused(GetParam()); }

constexpr const char* age = "child.age";
constexpr const char* weight = "child.weight";
constexpr const char* height = "child.height";
constexpr const char* surface = "child.bsa";
constexpr const char* dose = "order.dose";
constexpr const char* high = "reference.high";
constexpr const char* strength = "stock.strength";
constexpr const char* content = "stock.content";
constexpr const char* diluent = "stock.diluent";
constexpr const char* over = "infusion.over";

constexpr const char* drugUnits = "mcg, mg, g, units, mmol, mEq";
constexpr const char* orderUnits = "mcg, mg, g, units, mmol, mEq, mL";
constexpr const char* weightUnits = "kg, g, lb, oz";
constexpr const char* heightUnits = "cm, m, ft, in";
constexpr const char* ageUnits = "year, month, week, day";

INSTANTIATE_TEST_SUITE_P(
    Units, RefusesQuantity,
    ::testing::Values(
        Row{"number alone", dose, "80", unitMissing}, Row{"number and space", dose, "80 ", unitMissing},
        Row{"unit alone", dose, "mg", numberMissing},
        Row{"the wrong way round", dose, "mg 80", numberMissing},
        Row{"U", dose, "10 U", unitUnsafe, "10 units"}, Row{"small u", dose, "10 u", unitUnsafe, "10 units"},
        Row{"IU", dose, "10 IU", unitUnsafe, "10 units"}, Row{"iu", dose, "10 iu", unitUnsafe, "10 units"},
        Row{"micro sign", dose, "50 \u00B5g", unitUnsafe, "50 mcg"},
        Row{"greek mu", dose, "50 \u03BCg", unitUnsafe, "50 mcg"},
        Row{"micro sign joined", dose, "50\u00B5g", unitUnsafe, "50 mcg"},
        Row{"ug", dose, "50 ug", unitUnsafe, "50 mcg"},
        Row{"ug per kg", high, "5 ug/kg/min", unitUnsafe, "5 mcg/kg/min"},
        Row{"cc", dose, "5 cc", unitUnsafe, "5 mL"},
        Row{"cc in a strength", strength, "120 mg/5 cc", unitUnsafe, "120 mg/5 mL"},
        Row{"CC", dose, "5 CC", unitUnsafe, "5 mL"},
        Row{"gtt", "infusion.drop_factor", "20 gtt/mL", unitUnsafe, "20 drop/mL"},
        Row{"teaspoon keeps its number", dose, "1 tsp", unitAmbiguous},
        Row{"tablespoon", dose, "1 tablespoon", unitAmbiguous},
        Row{"grain keeps its number", dose, "5 gr", unitAmbiguous},
        Row{"nanograms with their mcg", dose, "100 ng", unitAmbiguous},
        Row{"megaunits with their units", dose, "1.2 MU", unitAmbiguous},
        Row{"milliunits with their units", high, "500 mU/kg/dose", unitAmbiguous},
        Row{"full stop", dose, "80 mg.", unitUnknown, "80 mg"}, Row{"gm", dose, "1 gm", unitAmbiguous},
        Row{"decilitre with its mL", diluent, "1 dL", unitUnknown, "100 mL"},
        Row{"per decilitre", strength, "5 mg/dL", unitUnknown, "5 mg/100 mL"},
        Row{"per two decilitres", strength, "5 mg/2 dL", unitUnknown, "5 mg/200 mL"},
        Row{"stone with its lb", weight, "3 stone", unitUnknown, "42 lb"},
        Row{"millimetre with its cm", height, "1030 mm", unitUnknown, "103 cm"},
        Row{"inch sign", height, "41\"", unitUnknown, "41 in"},
        Row{"foot sign", height, "3' 5\"", unitUnknown, "3 ft 5 in"},
        Row{"square metre in words", surface, "0.71 sq m", unitUnknown, "0.71 m2"},
        Row{"square metre joined", surface, "0.71 sqm", unitUnknown, "0.71 m2"},
        Row{"caret", surface, "0.71 m^2", unitUnknown, "0.71 m2"}, Row{"d", age, "3 d", unitUnknown, "3 day"},
        Row{"tabs", strength, "2 mg/tab", unitUnknown, "2 mg/tablet"},
        Row{"moles with their mmol", dose, "1 mol", unitUnknown, "1000 mmol"},
        Row{"nonsense", dose, "80 xyz", unitUnknown},
        Row{"percent of a weight", weight, "10 %", unitUnknown}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    RatioAndPercent, RefusesQuantity,
    ::testing::Values(
        Row{"1 to 1000", strength, "1:1000", ratioStrength, "", "1 mg/mL"},
        Row{"1 to 200", strength, "1:200", ratioStrength, "", "5 mg/mL"},
        Row{"1 to 10000", strength, "1:10000", ratioStrength, "", "0.1 mg/mL"},
        Row{"1 to 10000 as labels print it", strength, "1:10,000", ratioStrength},
        Row{"1 to 100000", strength, "1:100,000", ratioStrength},
        Row{"with spaces", strength, "1 : 1000", ratioStrength, "", "1 mg/mL"},
        Row{"1 in 200", strength, "1 in 200", ratioStrength, "", "5 mg/mL"},
        Row{"1 in 1,000", strength, "1 in 1,000", ratioStrength},
        Row{"a ratio that does not end", strength, "1:3000", ratioStrength, "", "1 mg/3 mL"},
        Row{"2 to 1000", strength, "2:1000", ratioStrength, "", "2 mg/mL"},
        Row{"to nothing", strength, "1:0", ratioStrength}, Row{"half a ratio", strength, "1:", ratioStrength},
        Row{"bad commas", strength, "1:10,00", ratioStrength},
        Row{"a late comma", strength, "1:10000,000", ratioStrength},
        Row{"a point among thousands", strength, "1:1,0.5", ratioStrength},
        Row{"two ratios", strength, "1:10:100", ratioStrength},
        // in lowest terms a number of 31 digits over one of 30, and 30 may be typed
        Row{"a ratio of numbers too long to write", strength, "66:6613.76866131666661156611566612",
            ratioStrength},
        Row{"ratio as a dose", dose, "1:1000", ratioStrength, "", "1 mg/mL"},
        Row{"such a ratio as a dose", dose, "66:6613.76866131666661156611566612", ratioStrength},
        Row{"a percentage of 30 digits", strength, "0.12345678901234567890123456789 %", percentStrength, "",
            "12345678901234567890123456789 mg/10000000000000000000000000000 mL"},
        Row{"ratio as a concentration", "reference.max_concentration", "1:1000", ratioStrength, "",
            "1 mg/mL"},
        Row{"1 percent", strength, "1 %", percentStrength, "", "10 mg/mL"},
        Row{"1 percent joined", strength, "1%", percentStrength, "", "10 mg/mL"},
        Row{"0.9 percent", strength, "0.9 %", percentStrength, "", "9 mg/mL"},
        Row{"50 percent", strength, "50 %", percentStrength, "", "500 mg/mL"},
        Row{"0.05 percent", strength, "0.05%", percentStrength, "", "0.5 mg/mL"},
        Row{"bare point percent", strength, ".9 %", percentStrength},
        Row{"0 percent", strength, "0 %", percentStrength},
        Row{"percent alone", strength, "%", percentStrength},
        Row{"percent of a dose", dose, "1 %", percentStrength, "", "10 mg/mL"},
        Row{"hours and minutes are no ratio", over, "1:30", notANumber}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Doses, RefusesQuantity,
    ::testing::Values(
        Row{"slash d", dose, "30 mg/kg/d", perUnclear},
        Row{"slash d in a reference", high, "30 mg/kg/d", perUnclear},
        Row{"slash capital d", high, "30 mg/kg/D", perUnclear},
        Row{"slash d first", high, "30 mg/d/kg", perUnclear},
        Row{"per m2 twice", high, "120 mg/m2/m2", perDoubled},
        Row{"per kg and per m2", high, "120 mg/kg/m2/day", perDoubled},
        Row{"per day and per dose", high, "120 mg/day/dose", perDoubled},
        Row{"per h and per min", high, "5 mcg/kg/h/min", perDoubled},
        Row{"no basis", high, "120 mg/m2", perMissing}, Row{"no basis, flat", high, "500 mg", perMissing},
        Row{"low without a basis", "reference.low", "5 mg/kg", perMissing},
        Row{"course", dose, "2 g/course", courseTotal},
        Row{"course in a reference", high, "4 g/m2/course", courseTotal},
        Row{"cycle", high, "4 g/m2/cycle", courseTotal}, Row{"total", dose, "2 g total", courseTotal},
        Row{"over some days", high, "4 g/m2 over 4 days", courseTotal},
        Row{"a week as an order", dose, "80 mg/week", unitUnfit, "", "each dose"},
        Row{"a month as an order", dose, "80 mg/month", unitUnfit, "", "per kg, m2, dose or day"},
        Row{"a flow as an order", dose, "5 mL/min", rateHere},
        Row{"a flow by weight", dose, "5 mL/kg/h", rateHere},
        Row{"per lb", high, "5 mg/lb/day", unitUnfit, "", "per kg, m2, dose or day"},
        Row{"per mL as a dose", dose, "25 mg/mL", strengthHere},
        Row{"per 2 day", high, "30 mg/kg/2 day", unitUnfit},
        Row{"per 5 mL as a dose", dose, "120 mg/5 mL", strengthHere},
        Row{"kg as a dose", dose, "5 kg", weightHere, "", orderUnits},
        Row{"tablets as a dose", dose, "2 tablet", unitUnfit, "", orderUnits},
        Row{"m2 as a dose", dose, "2 m2", surfaceHere, "", orderUnits},
        Row{"litres as a dose", dose, "1 L", unitUnfit, "", orderUnits},
        Row{"mL as a reference", high, "5 mL/kg/day", volumeHere, "", drugUnits},
        Row{"two doses", dose, "80 mg 40 mg", trailingText},
        Row{"words behind", dose, "80 mg orally", routeHere},
        Row{"words behind a reference", high, "120 mg/m2/dose max", trailingText},
        Row{"stroke last", dose, "4 mg/", unitMissing}, Row{"two strokes", dose, "4 mg//kg", unitMissing},
        Row{"stroke first", dose, "/kg", numberMissing},
        Row{"most in a dose per day", "reference.max_per_dose", "300 mg/day", unitUnfit, "", "per dose"},
        Row{"most in a day per dose", "reference.max_per_day", "300 mg/dose", unitUnfit, "", "per day"},
        Row{"most in a dose in mL", "reference.max_per_dose", "5 mL", volumeHere, "", drugUnits},
        Row{"fastest rate without a time", "reference.max_infusion_rate", "1 mg/kg", unitUnfit, "",
            "mg/min, mg/kg/min, mg/h or mg/kg/h"},
        Row{"fastest rate per m2", "reference.max_infusion_rate", "1 mg/m2/min", unitUnfit, "",
            "mg/min, mg/kg/min, mg/h or mg/kg/h"},
        Row{"fastest rate in mL", "reference.max_infusion_rate", "100 mL/h", volumeHere, "", drugUnits}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Strengths, RefusesQuantity,
    ::testing::Values(
        Row{"amount alone", strength, "120 mg", strengthShape},
        Row{"volume alone", strength, "5 mL", strengthShape},
        Row{"upside down", strength, "5 mL/120 mg", strengthShape},
        Row{"upside down in 1 mL", strength, "1 mL/25 mg", strengthShape},
        Row{"upside down with no number", strength, "5 mL/mg", strengthShape},
        Row{"mg per mg", strength, "120 mg/5 mg", strengthShape},
        Row{"per kg", strength, "120 mg/kg", strengthShape},
        Row{"three parts", strength, "120 mg/5 mL/dose", strengthShape},
        Row{"two amounts", strength, "120 mg 5 mL", strengthShape},
        Row{"kg in a volume", strength, "1 kg/5 mL", strengthShape},
        Row{"concentration per tablet", "reference.max_concentration", "5 mg/tablet", strengthShape},
        Row{"concentration alone", "reference.min_concentration", "5 mg", strengthShape},
        Row{"content in a volume", content, "200 mg/5 mL", unitUnfit, "", drugUnits},
        Row{"content in mL", content, "5 mL", volumeHere, "", drugUnits},
        Row{"content in two parts", content, "1 g 500 mg", twoUnits, "1500 mg"},
        Row{"diluent in mg", diluent, "5 mg", doseHere, "", "mL, L"},
        Row{"final volume in tablets", "stock.final_volume", "5 tablet", unitUnfit, "", "mL, L"},
        Row{"infusion over a day", over, "1 day", unitUnfit, "", "h, min"},
        Row{"infusion over metres", over, "30 m", unitUnknown, "30 min"},
        Row{"infusion over h and min", over, "1 h 30 min", twoUnits, "90 min"},
        Row{"infusion over seconds", over, "30 s", unitUnknown},
        Row{"drop factor turned", "infusion.drop_factor", "1 mL/20 drop", unitUnfit, "", "drop/mL"},
        Row{"drop factor alone", "infusion.drop_factor", "20 drop", unitUnfit, "", "drop/mL"},
        Row{"drop factor in two mL", "infusion.drop_factor", "40 drop/2 mL", unitUnfit, "", "drop/mL"},
        Row{"drop factor per min", "infusion.drop_factor", "20 drop/min", unitUnfit, "", "drop/mL"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    SizesAndAges, RefusesQuantity,
    ::testing::Values(Row{"16 oz are a lb", weight, "8 lb 16 oz", partTooLarge, "", "lb"},
                      Row{"1000 g are a kg", weight, "3 kg 1000 g", partTooLarge, "", "kg"},
                      Row{"lb with decimals and oz", weight, "8.5 lb 3 oz", partNotWhole},
                      Row{"oz before lb", weight, "3 oz 8 lb", partsOutOfOrder},
                      Row{"lb twice", weight, "8 lb 3 lb", partsOutOfOrder},
                      Row{"kg and oz", weight, "5 kg 3 oz", partsOutOfOrder},
                      Row{"lb and kg", weight, "8 lb 3 kg", partsOutOfOrder},
                      Row{"weight in mg", weight, "5 mg", doseHere, "", weightUnits},
                      Row{"weight in cm", weight, "103 cm", heightHere, "", weightUnits},
                      Row{"weight per something", weight, "17.2 kg/m2", unitUnfit, "", weightUnits},
                      Row{"12 in are a ft", height, "3 ft 12 in", partTooLarge, "", "ft"},
                      Row{"100 cm are a m", height, "1 m 100 cm", partTooLarge, "", "m"},
                      Row{"in before ft", height, "5 in 3 ft", partsOutOfOrder},
                      Row{"ft with decimals and in", height, "3.5 ft 5 in", partNotWhole},
                      Row{"m and in", height, "1 m 5 in", partsOutOfOrder},
                      Row{"height in kg", height, "17.2 kg", weightHere, "", heightUnits},
                      Row{"height in m2", height, "0.7 m2", surfaceHere, "", heightUnits},
                      Row{"surface in m", surface, "0.7 m", unitAmbiguous},
                      Row{"surface twice", surface, "0.7 m2 0.1 m2", partsOutOfOrder},
                      Row{"12 month are a year", age, "4 year 12 month", partTooLarge, "", "year"},
                      Row{"7 day are a week", age, "1 week 7 day", partTooLarge, "", "week"},
                      Row{"5 week are more than a month", age, "1 month 5 week", partTooLarge, "", "month"},
                      Row{"months before years", age, "2 month 4 year", partsOutOfOrder},
                      Row{"years with decimals and months", age, "4.5 year 2 month", partNotWhole},
                      Row{"age in hours", age, "12 h", unitUnfit, "", ageUnits},
                      Row{"age in kg", age, "4 kg", weightHere, "", ageUnits},
                      Row{"age without a unit", age, "4", unitMissing},
                      Row{"date of birth", age, "2020-05-01", notANumber},
                      Row{"age with and", age, "4 year and 2 month", trailingText},
                      Row{"age with a comma", age, "4 year, 2 month", trailingText},
                      Row{"age band in kg", "reference.age_from", "5 kg", weightHere, "", ageUnits},
                      Row{"weight band in years", "reference.weight_over", "5 year", timeHere, "",
                          weightUnits},
                      Row{"surface band in kg", "reference.bsa_up_to", "5 kg", weightHere, "", "m2"}),
    NameOfRow());

}  // namespace
}  // namespace wardchalk::test::refused_quantities_test
