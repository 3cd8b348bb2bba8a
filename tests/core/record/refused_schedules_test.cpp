#include "tests/core/record/refused_entry.h"

// Schedules, words, counts and yes-or-no entries that are refused.

namespace wardchalk::test::refused_schedules_test {
namespace {

using enum RefusalCode;
using Row = RefusedEntry;

class RefusesWords : public RefusesEntry {};

TEST_P(RefusesWords, andSaysWhy) { expectRefused(GetParam()); }

constexpr const char* schedule = "order.schedule";
constexpr const char* referenceSchedule = "reference.schedule";

// A name or a source that is wholly something else was typed a field too early or too late.
INSTANTIATE_TEST_SUITE_P(
    Names, RefusesWords,
    ::testing::Values(Row{"dose as source", "reference.source", "1.5 g/day", doseHere},
                      Row{"dose as medicine", "order.medicine", "240 mg", doseHere},
                      Row{"range as source", "reference.source", "5 - 10 mg/kg/dose", doseHere},
                      Row{"schedule as medicine", "reference.medicine", "q 6 hrs", scheduleHere},
                      Row{"times a day as source", "reference.source", "3 times a day", scheduleHere},
                      Row{"label as medicine", "order.medicine", "25 mg/mL", strengthHere}),
    test::NameOfRow());

TEST(Names, holdFiguresAmongOtherWords) {
  for (const char* text : {"p. 4", "Plover 5 mg tablets", "5 mg/mL Plover", "Ward list, 2026-01-15, p. 4",
                           "4", "Plover every night", "IV list", "m", "Bench list 120 mg/m2/dose, p. 4"}) {
    Case inputs;
    EXPECT_FALSE(setEntry(inputs, "reference.source", text).refusalIfAny()) << text;
    EXPECT_EQ(inputs.reference.source, text);
    EXPECT_FALSE(setEntry(inputs, "order.medicine", text).refusalIfAny()) << text;
  }
}

INSTANTIATE_TEST_SUITE_P(
    Schedules, RefusesWords,
    ::testing::Values(
        Row{"nothing", schedule, "", empty}, Row{"space", schedule, " ", empty},
        Row{"QD", schedule, "QD", scheduleLookAlike}, Row{"dotted qd", schedule, "q.d.", scheduleLookAlike},
        Row{"QOD", schedule, "QOD", scheduleLookAlike}, Row{"od", schedule, "od", scheduleLookAlike},
        Row{"dotted od", schedule, "o.d.", scheduleLookAlike}, Row{"q1d", schedule, "q1d", scheduleLookAlike},
        Row{"TIW", schedule, "TIW", scheduleUnsafe}, Row{"HS", schedule, "HS", scheduleUnsafe},
        Row{"qhs", referenceSchedule, "qhs", scheduleUnsafe}, Row{"slash d", schedule, "/d", scheduleUnsafe},
        Row{"every 0 h", schedule, "every 0 h", zero}, Row{"0 times a day", schedule, "0 times a day", zero},
        Row{"q0h", schedule, "q0h", zero}, Row{"backwards", schedule, "every 6 to 4 h", scheduleBackwards},
        Row{"a dose", schedule, "5 mg/kg", doseHere},
        Row{"a range of doses", schedule, "5-10 mg/kg/dose", doseHere},
        Row{"a day's range of doses", referenceSchedule, "20 to 40 mg/kg/day", doseHere},
        Row{"a range without per", schedule, "10-15 mg", doseHere},
        Row{"no doses", schedule, "5-10 mm", scheduleUnknown},
        Row{"hours backwards", schedule, "6 to 4 h", scheduleBackwards},
        Row{"numbers backwards", schedule, "6 to 4", scheduleBackwards},
        Row{"hourly backwards", schedule, "6-4 hourly", scheduleBackwards},
        Row{"same twice", schedule, "every 4 to 4 h", scheduleBackwards},
        Row{"q backwards", schedule, "q6-4h", scheduleBackwards},
        Row{"times backwards", schedule, "3 to 2 times a day", scheduleBackwards},
        Row{"100 times a day", schedule, "100 times a day", scheduleTooOften},
        Row{"97 times a day", schedule, "97 times a day", scheduleTooOften},
        Row{"every 5 min", schedule, "every 5 min", scheduleTooOften},
        Row{"every 0 2 h", schedule, "every 0.2 h", scheduleTooOften},
        Row{"half times", schedule, "1.5 times a day", countNotWhole},
        Row{"half times a week", schedule, "0.5 times a week", countNotWhole},
        Row{"zero first", schedule, "every 06 h", leadingZero},
        Row{"bare point", schedule, "every .5 h", barePoint, "every 0.5 h"},
        Row{"comma", schedule, "every 1,5 h", comma}, Row{"minus", schedule, "every -6 h", sign},
        Row{"two spaces in nonsense", schedule, "now  and then", scheduleUnknown},
        Row{"a ratio of numbers too long to write", schedule, "66:6613.76866131666661156611566612",
            scheduleUnknown},
        Row{"q6", schedule, "q6", scheduleUnknown}, Row{"q", schedule, "q", scheduleUnsafe},
        Row{"qh", schedule, "qh", scheduleUnsafe}, Row{"every", schedule, "every", scheduleUnknown},
        Row{"every 12", schedule, "every 12", scheduleUnknown},
        Row{"range cut short", schedule, "every 4 to", scheduleUnknown},
        Row{"times range cut short", schedule, "3 to", scheduleUnknown},
        Row{"every month", schedule, "every 1 month", scheduleUnknown},
        Row{"every 12 mg", schedule, "every 12 mg", scheduleUnknown},
        Row{"3 times", schedule, "3 times", scheduleUnknown},
        Row{"3 times a month", schedule, "3 times a month", scheduleUnknown},
        Row{"3 times a day more", schedule, "3 times a day with food", scheduleUnknown},
        Row{"prn", schedule, "prn", asNeededAlone}, Row{"a number", schedule, "12", scheduleUnknown},
        Row{"12 h", schedule, "12 h", scheduleUnknown},
        Row{"nonsense", schedule, "sometimes", scheduleUnknown}, Row{"emoji", schedule, "💊", scheduleUnknown},
        Row{"nul byte", schedule, std::string("daily\0", 6), unseenCharacter},
        Row{"arabic digits", schedule, "every ٦ h", otherDigits},
        Row{"long", schedule, std::string(201, 'q'), tooLong},
        Row{"long and cut at a whole character", schedule,
            std::string(59, 'q') + std::string(50, ' ') + std::string(100, 'q') + "💊", tooLong}),
    NameOfRow());

constexpr const char* routes =
    "oral, enteral, intravenous, intramuscular, subcutaneous, rectal, inhaled, topical";

INSTANTIATE_TEST_SUITE_P(
    Words, RefusesWords,
    ::testing::Values(Row{"no route", "order.route", "", empty},
                      Row{"unknown route", "order.route", "nasal", wordUnknown, "", routes},
                      Row{"SC", "order.route", "SC", wordUnknown, "subcutaneous"},
                      Row{"M", "child.sex", "M", wordUnknown, "male"},
                      Row{"girl", "child.sex", "girl", wordUnknown, "female"},
                      Row{"unknown sex", "child.sex", "x", wordUnknown, "", "female, male"},
                      Row{"a route's letter is no sex", "child.sex", "po", wordUnknown, "", "female, male"},
                      Row{"weighed", "child.weight_method", "weighed", wordUnknown, "",
                          "measured, estimated, charted"},
                      Row{"no method", "child.weight_method", "", empty},
                      Row{"weighed no time", "child.weighed", "", empty},
                      Row{"suspension", "stock.kind", "suspension", wordUnknown, "liquid", ""},
                      Row{"suspension, short", "stock.kind", "susp", wordUnknown, "liquid", ""},
                      Row{"tablets, short", "stock.kind", "Tabs", wordUnknown, "tablet", ""},
                      Row{"vial", "stock.kind", "vial", wordUnknown, "", "liquid, powder, tablet"},
                      Row{"pill", "stock.kind", "pill", wordUnknown, "", "liquid, powder, tablet"},
                      Row{"yes", "order.as_needed", "yes", wordUnknown, "", "true or false"},
                      Row{"one", "child.born_early", "1", wordUnknown, "", "true or false"},
                      Row{"capital true", "child.size_confirmed", "True", wordUnknown, "", "true or false"},
                      Row{"nothing", "reference.limit_only", "", empty}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Counts, RefusesWords,
    ::testing::Values(
        Row{"nothing", "order.max_doses_per_day", "", empty},
        Row{"zero", "order.max_doses_per_day", "0", countNotWhole, "", "1 to 96"},
        Row{"97", "order.max_doses_per_day", "97", countNotWhole, "", "1 to 96"},
        Row{"half", "order.max_doses_per_day", "4.5", countNotWhole, "", "1 to 96"},
        Row{"whole with decimals", "order.max_doses_per_day", "4.0", countNotWhole, "", "1 to 96"},
        Row{"minus", "order.max_doses_per_day", "-4", countNotWhole, "", "1 to 96"},
        Row{"plus", "order.max_doses_per_day", "+4", countNotWhole, "", "1 to 96"},
        Row{"zero first", "order.max_doses_per_day", "04", countNotWhole, "", "1 to 96"},
        Row{"space", "order.max_doses_per_day", "4 ", countNotWhole, "", "1 to 96"},
        Row{"space first", "order.max_doses_per_day", " 4", countNotWhole, "", "1 to 96"},
        Row{"words", "order.max_doses_per_day", "four", countNotWhole, "", "1 to 96"},
        Row{"unit", "order.max_doses_per_day", "4 dose", countNotWhole, "", "1 to 96"},
        Row{"exponent", "order.max_doses_per_day", "1e1", countNotWhole, "", "1 to 96"},
        Row{"huge", "order.max_doses_per_day", std::string(10000, '4'), countNotWhole, "", "1 to 96"},
        Row{"arabic digit", "order.max_doses_per_day", "٤", countNotWhole, "", "1 to 96"},
        Row{"none by the reference", "reference.max_doses_per_day", "0", countNotWhole, "", "1 to 24"},
        Row{"25 by the reference", "reference.max_doses_per_day", "25", countNotWhole, "", "1 to 24"},
        Row{"half by the reference", "reference.max_doses_per_day", "1.5", countNotWhole, "", "1 to 24"},
        Row{"a range by the reference", "reference.max_doses_per_day", "3-4", countNotWhole, "", "1 to 24"},
        Row{"nothing by the reference", "reference.max_doses_per_day", "", empty},
        Row{"yes", "stock.divides_into", "yes", countNotWhole, "",
            "1, 2 or 4 (whole only, halves, quarters)"},
        Row{"in thirds", "stock.divides_into", "3", countNotWhole, "",
            "1, 2 or 4 (whole only, halves, quarters)"},
        Row{"in eighths", "stock.divides_into", "8", countNotWhole, "",
            "1, 2 or 4 (whole only, halves, quarters)"},
        Row{"in none", "stock.divides_into", "0", countNotWhole, "",
            "1, 2 or 4 (whole only, halves, quarters)"},
        Row{"in half", "stock.divides_into", "½", countNotWhole, "",
            "1, 2 or 4 (whole only, halves, quarters)"},
        Row{"no parts", "stock.divides_into", "", empty}),
    NameOfRow());

}  // namespace
}  // namespace wardchalk::test::refused_schedules_test
