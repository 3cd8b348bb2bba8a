#include "tests/core/record/refused_entry.h"

// Numbers that are refused wherever a quantity is written, each in the field where it is most likely typed.

namespace wardchalk::test::refused_numbers_test {
namespace {

using enum RefusalCode;
using Row = RefusedEntry;

class RefusesNumberText : public RefusesEntry {};

TEST_P(RefusesNumberText, andSaysWhy) { expectRefused(GetParam()); }

constexpr const char* weight = "child.weight";
constexpr const char* height = "child.height";
constexpr const char* dose = "order.dose";
constexpr const char* high = "reference.high";
constexpr const char* strength = "stock.strength";

INSTANTIATE_TEST_SUITE_P(
    Shape, RefusesNumberText,
    ::testing::Values(
        Row{"nothing", weight, "", empty}, Row{"comma for point", weight, "17,2 kg", comma},
        Row{"thousands", dose, "1,000 mg", comma}, Row{"german thousands", dose, "1.000,5 mg", comma},
        Row{"comma without a digit", dose, ",5 mg", comma},
        Row{"comma in a label", strength, "1,000 mg/5 mL", comma},
        Row{"comma in the volume", strength, "120 mg/2,5 mL", comma},
        Row{"bare point", dose, ".5 mg", barePoint, "0.5 mg"},
        Row{"bare point with two digits", dose, ".05 mg", barePoint, "0.05 mg"},
        Row{"bare point in a reference", high, ".1 mcg/kg/min", barePoint, "0.1 mcg/kg/min"},
        Row{"bare point in the volume", strength, "5 mg/.5 mL", barePoint, "5 mg/0.5 mL"},
        Row{"bare point without a space", dose, ".5mg", barePoint, "0.5 mg"},
        Row{"point last", dose, "5. mg", trailingPoint},
        Row{"point last without a space", dose, "5.mg", trailingPoint},
        Row{"point alone", dose, ". mg", notANumber}, Row{"two points", dose, "1.5.2 mg", secondPoint},
        Row{"two points together", weight, "17..2 kg", secondPoint},
        Row{"points on both sides", weight, ".5. kg", secondPoint},
        Row{"zero first", dose, "05 mg", leadingZero}, Row{"two zeros first", dose, "00.5 mg", leadingZero},
        Row{"zeros alone", dose, "00 mg", leadingZero},
        Row{"zero before decimals", weight, "017.2 kg", leadingZero},
        Row{"exponent", dose, "1e3 mg", exponent}, Row{"capital exponent", dose, "1E3 mg", exponent},
        Row{"exponent below zero", dose, "5e-2 mg", exponent},
        Row{"exponent with plus", dose, "5e+2 mg", exponent}, Row{"e alone", dose, "5e mg", unitUnknown},
        Row{"hexadecimal", dose, "0x10 mg", notANumber}, Row{"minus", dose, "-5 mg", sign},
        Row{"plus", dose, "+5 mg", sign}, Row{"true minus", dose, "−5 mg", sign},
        Row{"minus alone", dose, "- mg", sign}, Row{"minus apart", dose, "- 5 mg", sign},
        Row{"minus in the volume", strength, "5 mg/-5 mL", sign},
        Row{"range with hyphen", dose, "5-10 mg", doseLeftOpen},
        Row{"range with dash", dose, "5–10 mg", doseLeftOpen},
        Row{"range in words", dose, "5 to 10 mg", doseLeftOpen},
        Row{"range backwards", dose, "15-10 mg", doseLeftOpen},  // no schedule, although one has such numbers
        Row{"label backwards", "stock.strength", "10-5 mg/mL", rangeHere},
        Row{"reference backwards", "reference.high", "15-10 mg/kg/day", lowAboveHigh},
        Row{"reference backwards in words", "reference.high", "15 to 10 mg/kg", lowAboveHigh},
        Row{"hours backwards in a dose", dose, "6 to 4 h", scheduleHere},
        Row{"hourly backwards in a dose", dose, "6-4 hourly", scheduleHere},
        Row{"multiplied", dose, "2x40 mg", notANumber}, Row{"times sign", dose, "2×40 mg", notANumber},
        Row{"sum", dose, "40+40 mg", notANumber}, Row{"approximately", dose, "~80 mg", numberMissing},
        Row{"equals", dose, "=80 mg", numberMissing}, Row{"below", dose, "<80 mg", numberMissing},
        Row{"parenthesis", dose, "(80 mg)", numberMissing}, Row{"dollar", dose, "$80 mg", numberMissing},
        Row{"underscore", dose, "1_000 mg", notANumber}, Row{"apostrophe", dose, "1'000 mg", notANumber},
        Row{"letter o for zero", dose, "8O mg", letterInNumber},
        Row{"letter l for one", dose, "l0 mg", letterInNumber},
        Row{"not a number", dose, "nan mg", numberMissing}, Row{"infinity", dose, "inf mg", numberMissing},
        Row{"number in words", dose, "eighty mg", numberInWords, "80 mg"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Spaces, RefusesNumberText,
    ::testing::Values(Row{"no space before an unsafe unit", dose, "10U", unitUnsafe, "10 units"},
                      Row{"no space before anything", dose, "80xyz", unitUnknown},
                      Row{"space alone", dose, " ", empty},
                      Row{"line end inside", dose, "80\nmg", unseenCharacter},
                      Row{"space in a number", dose, "1 000 mg", spaceInNumber},
                      Row{"space in decimals", dose, "0. 5 mg", spaceInNumber},
                      Row{"no-break space in a number", dose, "1\u00A0000 mg", spaceInNumber},
                      Row{"thin space in a number", dose, "1\u2009000 mg", spaceInNumber},
                      Row{"two numbers", dose, "80 80 mg", spaceInNumber}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    OtherCharacters, RefusesNumberText,
    ::testing::Values(Row{"arabic digits", weight, "١٧ kg", otherDigits},
                      Row{"persian digits", weight, "۱۷ kg", otherDigits},
                      Row{"devanagari digits", weight, "१७ kg", otherDigits},
                      Row{"full-width digits", weight, "１７ kg", otherDigits},
                      Row{"one digit full-width", weight, "1７ kg", otherDigits},
                      Row{"arabic decimal mark", weight, "١٧٫٢ kg", otherDigits},
                      Row{"full-width point", weight, "17．2 kg", notANumber},
                      Row{"half", "stock.content", "½ g", fraction},
                      Row{"one and a half", dose, "1½ mg", fraction}, Row{"third", dose, "⅓ mg", fraction},
                      Row{"stroke", dose, "1/2 mg", fraction}, Row{"superscript", dose, "5² mg", notANumber},
                      Row{"emoji", dose, "💊", numberMissing}, Row{"emoji behind", dose, "5 💊", unitUnknown},
                      Row{"emoji joined", dose, "5💊", notANumber},
                      Row{"control character", dose, "80 mg\x07", unseenCharacter},
                      Row{"control character first", dose, "\x1B[31m80 mg", unseenCharacter},
                      Row{"nul byte last", dose, std::string("80 mg\0", 6), unseenCharacter},
                      Row{"nul byte first", dose,
                          std::string("\0"
                                      "80 mg",
                                      6),
                          unseenCharacter},
                      Row{"nul byte alone", dose, std::string("\0", 1), unseenCharacter},
                      Row{"right-to-left mark", dose, "80 mg\u200F", unseenCharacter},
                      Row{"zero-width space", dose, "80\u200Bmg", unseenCharacter},
                      Row{"byte order mark", dose, "\uFEFF80 mg", unseenCharacter},
                      Row{"broken utf-8", dose, "80 mg\xFF", damagedCharacter},
                      Row{"cut utf-8", dose, "80 \xC2", damagedCharacter},
                      Row{"cyrillic letters", dose, "80 мг", unitUnknown},
                      Row{"look-alike letters", dose, "80 mɡ", unitAmbiguous},
                      Row{"markup", dose, "<b>80</b> mg", numberMissing}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Length, RefusesNumberText,
    ::testing::Values(Row{"thirty-one digits", dose, std::string(31, '9') + " mg", tooLong},
                      Row{"thirty-one decimals", dose, "0." + std::string(31, '1') + " mg", tooLong},
                      Row{"stuck key", dose, std::string(10000, '8'), tooLong},
                      Row{"stuck key on spaces", dose, std::string(10000, ' '), tooLong},
                      Row{"ten thousand letters", weight, "5 " + std::string(10000, 'k'), tooLong},
                      Row{"ten thousand strokes", dose, "5 mg" + std::string(10000, '/'), tooLong},
                      Row{"pasted page", "order.schedule", std::string(10000, 'e'), tooLong},
                      Row{"stuck key in a strength", strength, "1:" + std::string(10000, '0'), tooLong},
                      Row{"long free text", "title", std::string(501, 'x'), tooLong},
                      Row{"long source", "reference.source", std::string(10000, 'x'), tooLong}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Zero, RefusesNumberText,
    ::testing::Values(
        Row{"weight", weight, "0 kg", zero}, Row{"weight with decimals", weight, "0.00 kg", zero},
        Row{"weight in parts", weight, "0 lb 0 oz", zero}, Row{"height", height, "0 cm", zero},
        Row{"height in parts", height, "0 ft 0 in", zero}, Row{"surface", "child.bsa", "0 m2", zero},
        Row{"dose", dose, "0 mg", zero}, Row{"dose by weight", dose, "0 mg/kg", zero},
        Row{"dose in mL", dose, "0 mL", zero}, Row{"rate", dose, "0.0 mcg/kg/min", zero},
        Row{"low end", "reference.low", "0 mg/kg/day", zero}, Row{"high end", high, "0 mg/kg/day", zero},
        Row{"most in a dose", "reference.max_per_dose", "0 mg", zero},
        Row{"most in a day", "reference.max_per_day", "0 mg", zero},
        Row{"strength", strength, "0 mg/5 mL", zero},
        Row{"volume of the strength", strength, "120 mg/0 mL", zero},
        Row{"content", "stock.content", "0 mg", zero}, Row{"diluent", "stock.diluent", "0 mL", zero},
        Row{"displacement", "stock.displacement", "0 mL", zero},
        Row{"final volume", "stock.final_volume", "0 mL", zero},
        Row{"infusion volume", "infusion.volume", "0 mL", zero},
        Row{"infusion time", "infusion.over", "0 min", zero},
        Row{"drop factor", "infusion.drop_factor", "0 drop/mL", zero},
        Row{"largest concentration", "reference.max_concentration", "0 mg/mL", zero},
        Row{"shortest time", "reference.min_infusion_time", "0 min", zero},
        Row{"fastest rate", "reference.max_infusion_rate", "0 mg/kg/min", zero},
        Row{"weight band", "reference.weight_from", "0 kg", zero},
        Row{"surface band", "reference.bsa_below", "0 m2", zero}),
    NameOfRow());

}  // namespace
}  // namespace wardchalk::test::refused_numbers_test
