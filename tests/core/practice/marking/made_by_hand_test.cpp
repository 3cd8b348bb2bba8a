#include <gtest/gtest.h>

#include "tests/core/practice/marking/marking_cases.h"
#include "tests/core/practice/marking/told.h"

// What a mistake makes of the papers, each figure worked by hand from the mistake's rule; and what comes near
// one and is none.

namespace wardchalk::made_by_hand_test {
namespace {

using namespace test;

struct Row {
  const char* name;
  Problem (*problem)();
  const char* ask;
  const char* text;
  const char* worked;
  const char* expected;
};
void PrintTo(const Row& row, std::ostream* out) {
  *out << row.ask << " '" << row.text << "': " << row.worked;
}
std::string nameOf(const testing::TestParamInfo<Row>& info) { return info.param.name; }

class MadeByHand : public testing::TestWithParam<Row> {};

TEST_P(MadeByHand, isKnownForWhatItIs) {
  const Row& row = GetParam();
  const Problem problem = row.problem();
  EXPECT_EQ(told(Marking(problem).mark(askNamed(problem, row.ask), row.text)), row.expected);
}

// 33 lb, 14.97 kg; 25 to 50 mg/kg/day in 3 doses; 150 mg of 250 mg in 5 mL.
INSTANTIATE_TEST_SUITE_P(
    PerDay, MadeByHand,
    testing::Values(
        Row{"dayTimesDoses", casePerDay, "limit-day", "2245 mg", "748.43 mg × 3 doses", "wrong E66"},
        Row{"dayByInterval", casePerDay, "limit-day", "93.55 mg", "748.43 mg ÷ 8 h", "wrong E22"},
        Row{"dayByHours", casePerDay, "limit-day", "31.18 mg", "748.43 mg ÷ 24 h", "wrong E68"},
        Row{"dayShared", casePerDay, "limit-day", "249.5 mg", "748.43 mg ÷ 3 doses", "wrong E21"},
        Row{"timesForDivide", casePerDay, "limit-dose", "2245 mg", "748.43 mg × 3 in place of ÷ 3",
            "wrong E67"},
        Row{"doseByHours", casePerDay, "limit-dose", "31.18 mg", "748.43 mg ÷ 24 h", "wrong E68"},
        Row{"doseBySix", casePerDay, "low-dose", "62.37 mg", "374.21 mg ÷ 6", "wrong E23"},
        Row{"doseByTwo", casePerDay, "low-dose", "187.1 mg", "374.21 mg ÷ 2", "wrong E23"},
        Row{"doseBySeven", casePerDay, "low-dose", "53.46 mg", "374.21 mg ÷ 7: nobody counts so", "wrong"},
        Row{"orderForLimit", casePerDay, "limit-dose", "150 mg", "150 mg stands in the order", "wrong E63"},
        Row{"orderDayForLimit", casePerDay, "limit-day", "450 mg", "the order of a day, 450 mg", "wrong E63"},
        Row{"orderByKg", casePerDay, "limit-dose", "10.02 mg", "150 mg ÷ 14.97 kg", "wrong E64"},
        Row{"orderDayByKg", casePerDay, "limit-dose", "30.06 mg", "450 mg ÷ 14.97 kg", "wrong E64"},
        Row{"dividedBySize", casePerDay, "limit-dose", "1.113 mg", "50 mg/kg ÷ 14.97 kg ÷ 3", "wrong E61"},
        Row{"sizeTwice", casePerDay, "limit-dose", "3734 mg", "249.48 mg × 14.97 kg", "wrong E36"},
        Row{"sizeAdded", casePerDay, "low-dose", "39.97 mg", "25 mg/kg + 14.97 kg", "wrong E62"},
        Row{"sizeAddedShared", casePerDay, "low-dose", "13.32 mg", "(25 mg/kg + 14.97 kg) ÷ 3", "wrong E62"},
        Row{"sharedAdded", casePerDay, "low-dose", "23.3 mg", "25 mg/kg ÷ 3 + 14.97 kg", "wrong E62"},
        Row{"cmForKg", casePerDay, "low-dose", "804.3 mg", "25 mg/kg × 96.52 cm ÷ 3", "wrong E58"},
        Row{"inForKg", casePerDay, "low-dose", "316.7 mg", "25 mg/kg × 38 in ÷ 3", "wrong E58"},
        Row{"kgOverRef", casePerDay, "low-dose", "0.5987 mg", "14.97 kg ÷ 25 mg/kg", "wrong E105"},
        Row{"kgOverRefShared", casePerDay, "low-dose", "0.1996 mg", "14.97 kg ÷ 25 mg/kg ÷ 3", "wrong E105"},
        Row{"refAlone", casePerDay, "low-dose", "25 mg", "25 mg/kg, and no weight", "wrong E55"},
        Row{"refShared", casePerDay, "low-dose", "8.333 mg", "25 mg/kg ÷ 3, and no weight", "wrong E55"},
        Row{"ageForKg", casePerDay, "low-dose", "33.33 mg", "25 mg/kg × 4 years ÷ 3", "wrong E102"},
        Row{"tens", casePerDay, "low-dose", "83.33 mg", "25 mg/kg × 10 kg ÷ 3", "wrong E17"},
        Row{"oneMore", casePerDay, "give", "3.6 mL", "150 mg × 6 mL ÷ 250 mg", "wrong E89"},
        Row{"kg254", casePerDay, "weight", "12.99 kg", "33 lb ÷ 2.54", "wrong E75"},
        Row{"kg24", casePerDay, "weight", "13.75 kg", "33 lb ÷ 2.4", "wrong E75"},
        Row{"kg2", casePerDay, "weight", "16.5 kg", "33 lb ÷ 2", "wrong E75"},
        Row{"cmForWeight", casePerDay, "weight", "96.52 kg", "the height in cm", "wrong E58"},
        Row{"cmByPounds", casePerDay, "weight", "43.87 kg", "96.52 cm ÷ 2.2", "wrong E58"},
        Row{"inForWeight", casePerDay, "weight", "38 kg", "the height in inches", "wrong E58"},
        Row{"inByPounds", casePerDay, "weight", "17.27 kg", "38 in ÷ 2.2", "wrong E58"},
        Row{"kgTwiceDivided", casePerDay, "limit-day", "340.2 mg", "748.43 mg ÷ 2.2", "wrong E03"},
        Row{"volumeCopied", casePerDay, "give", "5 mL", "the label's volume, or the limit of 249.5 mg",
            "unsure E30 E111"},
        Row{"thousandOnPounds", casePerDay, "weight", "14970 kg", "no metric step lies between lb and kg",
            "wrong"},
        Row{"unlikeOnTheAmount", casePerDay, "give", "150 mg + 5 mL = 155 mL",
            "a sum of unlike units, of no child's size", "unread unlike-units"},
        Row{"unlikeOnTheLimit", casePerDay, "low-day", "25 mg/kg/day + 14.97 kg = 39.97", "the size added",
            "wrong E62 unlike-units"},
        Row{"surfaceByItsUnit", casePerDay, "low-dose", "25 mg/kg/day × 0.7 m² ÷ 3 = 5.83 mg",
            "whatever the surface", "wrong E19"},
        Row{"sizeOfTwoDecimals", casePerDay, "limit-day", "748.5 mg", "50 mg/kg × 14.97 kg", "right"},
        Row{"sizeOfTwoDecimalsInFull", casePerDay, "low-dose", "124.75 mg", "25 mg/kg × 14.97 kg ÷ 3",
            "right"},
        Row{"cutAtTheDigitsWritten", casePerDay, "low-dose", "62.3 mg", "374.21 mg ÷ 6 = 62.369 mg",
            "wrong E23"},
        Row{"bareZeroOfADose", casePerDay, "give", "3.0", "a zero behind the point of a dose",
            "right E46 E44"},
        Row{"fitDoubted", casePerDay, "verdict", "the reference does not fit", "it covers the child",
            "wrong E97"}),
    nameOf);

// 44 in, 42 lb, 0.77 m²; 100 to 150 mg/m²; 90 mg of 100 mg in 4.8 mL and 0.2 mL of powder; 18 mL in 30 min.
INSTANTIATE_TEST_SUITE_P(
    Powder, MadeByHand,
    testing::Values(
        Row{"metricTen", casePowder, "bsa", "2.266 m²", "√(44 in × 42 lb ÷ 360)", "wrong E76"},
        Row{"houseTen", casePowder, "bsa", "2.429 m²", "√(44 in × 42 lb ÷ 313.1)", "wrong E76"},
        Row{"poundsMultiplied", casePowder, "bsa", "1.694 m²", "√(111.76 cm × 92.4 kg ÷ 3600)", "wrong E02"},
        Row{"notDivided", casePowder, "bsa", "46.14 m²", "√(111.76 cm × 19.05 kg)", "wrong E107"},
        Row{"bottomOnly", casePowder, "bsa", "35.49 m²", "111.76 cm × 19.05 kg ÷ √3600", "wrong E109"},
        Row{"topOnlyHouse", casePowder, "bsa", "0.01373 m²", "√(44 in × 42 lb) ÷ 3131", "wrong E16"},
        Row{"sumHouse", casePowder, "bsa", "0.1657 m²", "√((44 + 42) ÷ 3131)", "wrong E15"},
        Row{"byHours", casePowder, "limit-dose", "4.812 mg", "115.5 mg ÷ 24 h", "wrong E22"},
        Row{"byM2", casePowder, "low-dose", "129.9 mg", "100 mg/m² ÷ 0.77 m²", "wrong E61"},
        Row{"m2Twice", casePowder, "low-dose", "59.29 mg", "100 mg/m² × 0.77 × 0.77", "wrong E36"},
        Row{"m2Added", casePowder, "low-dose", "100.8 mg", "100 mg/m² + 0.77 m²", "wrong E62"},
        Row{"lbForM2", casePowder, "low-dose", "4200 mg", "100 mg/m² × 42 lb", "wrong E18"},
        Row{"cmForM2", casePowder, "low-dose", "11176 mg", "100 mg/m² × 111.76 cm", "wrong E58"},
        Row{"inForM2", casePowder, "low-dose", "4400 mg", "100 mg/m² × 44 in", "wrong E58"},
        Row{"m2OverRef", casePowder, "low-dose", "0.0077 mg", "0.77 m² ÷ 100 mg/m²", "wrong E105"},
        Row{"kgTwice", casePowder, "volume", "342.9 mL", "18 mL × 19.05 kg", "wrong E36"},
        Row{"limitMeasured", casePowder, "volume", "23.1 mL", "115.5 mg ÷ 5 mg/mL", "wrong E30"},
        Row{"lowMeasured", casePowder, "volume", "15.4 mL", "77 mg ÷ 5 mg/mL", "wrong E30"},
        Row{"labelForMax", casePowder, "volume", "4.5 mL", "90 mg ÷ 20 mg/mL of the vial", "wrong E94"},
        Row{"contentAlone", casePowder, "strength", "100 mg/mL", "100 mg, and no volume", "wrong E32"},
        Row{"orderOver", casePowder, "strength", "18 mg/mL", "90 mg ÷ 5 mL", "wrong E91"},
        Row{"powderTwice", casePowder, "strength", "19.23 mg/mL", "100 mg ÷ (5 mL + 0.2 mL)", "wrong E39"},
        Row{"powderOff", casePowder, "strength", "21.74 mg/mL", "100 mg ÷ (4.8 mL - 0.2 mL)", "wrong E93"},
        Row{"diluentOnly", casePowder, "strength", "20.83 mg/mL", "100 mg ÷ 4.8 mL", "wrong E38"},
        Row{"upsideDown", casePowder, "strength", "0.05 mg/mL", "5 mL ÷ 100 mg", "wrong E31"},
        Row{"byVolTwice", casePowder, "give", "18 mL", "100 mg ÷ 5 mL is 20, × 4.5 mL ÷ 5 mL", "wrong E90"},
        Row{"kgAgain", casePowder, "give", "85.73 mL", "the amount × the weight", "wrong E36"},
        Row{"m2Again", casePowder, "give", "3.465 mL", "4.5 mL × 0.77 m²", "wrong E36"},
        Row{"volumeAsRate", casePowder, "rate", "18 mL/h", "18 mL, and no time", "wrong E81"},
        Row{"hundredths", casePowder, "rate", "60 mL/h", "18 mL ÷ 0.30 h", "wrong E80"},
        Row{"medAsVol", casePowder, "rate", "180 mL/h", "90 mg ÷ 0.5 h", "wrong E78"},
        Row{"dropsAsRate", casePowder, "rate", "12 mL/h", "18 mL × 20 drops/mL ÷ 30 min", "wrong E82"},
        Row{"dropsIn", casePowder, "rate", "720 mL/h", "36 mL/h × 20 drops/mL", "wrong E83"},
        Row{"sixty", casePowder, "rate", "2160 mL/h", "the rate × 60", "wrong E79"},
        Row{"set10", casePowder, "drops", "6 drops/min", "by a set of 10 drops/mL", "wrong E86"},
        Row{"set60", casePowder, "drops", "36 drops/min", "36 mL/h, or a set of 60 drops/mL",
            "unsure E85 E86"},
        Row{"timeLeft", casePowder, "drops", "360 drops/min", "18 mL × 20 drops/mL", "wrong E87"},
        Row{"sixtyAgain", casePowder, "drops", "0.2 drops/min", "12 drops/min ÷ 60", "wrong E79"},
        Row{"setDivided", casePowder, "drops", "0.03 drops/min", "18 mL ÷ 30 min ÷ 20 drops/mL", "wrong E88"},
        Row{"timesMin", casePowder, "drops", "10800 drops/min", "360 drops × 30 min", "wrong E50"},
        Row{"timesHour", casePowder, "drops", "180 drops/min", "360 drops × 0.5 h", "wrong E50"},
        Row{"timesSec", casePowder, "drops", "648000 drops/min", "360 drops × 1800 s", "wrong E50"},
        Row{"volumeIsNoDropRate", casePowder, "drops", "18 drops/min", "18 mL: a mistake of mL/h alone",
            "wrong"},
        Row{"kilogramsByTheirUnit", casePowder, "limit-dose", "150 mg/m² × 19 kg = 2800 mg",
            "whatever the weight", "wrong E18"},
        Row{"otherMark", casePowder, "give", "4.6 mL", "4.5 mL lies between two marks of 0.2 mL", "right"},
        Row{"markBeyond", casePowder, "give", "4.8 mL", "not one of the two marks", "wrong"},
        Row{"bareZeroOfASurface", casePowder, "bsa", "0.770", "no dose: only the unit is missing",
            "right E46"},
        Row{"surfaceWithoutItsZero", casePowder, "bsa", ".77 m²",
            "a surface may end in a zero, and begins with one", "right E45"},
        Row{"heightForBoth", casePowder, "bsa", "1.253 m²", "√(44 in × 111.76 cm ÷ 3131), which nobody does",
            "wrong"},
        Row{"concentrationForVolume", casePowder, "volume", "5 mL",
            "90 mg ÷ 18 mL, or 90 mg ÷ 20 mg/mL rounded", "unsure E94 E114"},
        Row{"timesThePowder", casePowder, "give", "117 mL", "4.5 × 5.2 × 5, which nobody does", "wrong"}),
    nameOf);

// 5 mcg/kg/min for 15 kg of 40 mg in 50 mL: 5.625 mL/h.
INSTANTIATE_TEST_SUITE_P(
    Rate, MadeByHand,
    testing::Values(
        Row{"inLitres", caseRateInLitres, "rate", "5.625 mL/h", "4.5 mg/h × 1 L/800 mg × 1,000 mL/L",
            "right"},
        Row{"litresLeft", caseRateInLitres, "rate", "0.005625 mL/h", "4.5 mg/h ÷ 800 mg/L, in litres",
            "wrong E55"},
        Row{"bag", caseRate, "rate", "3.6 mL/h", "× 40/50 in place of × 50/40", "wrong E77"},
        Row{"volLeft", caseRate, "rate", "0.1125 mL/h", "4.5 mg/h ÷ 40 mg", "wrong E32"},
        Row{"byVol", caseRate, "rate", "0.00225 mL/h", "4.5 mg/h ÷ 40 mg ÷ 50", "wrong E34"},
        Row{"med", caseRate, "rate", "75 mL/h", "75 mcg/min", "wrong E78"},
        Row{"medHour", caseRate, "rate", "4500 mL/h", "4500 mcg/h", "wrong E78"},
        Row{"medHourMg", caseRate, "rate", "4.5 mL/h", "4.5 mg/h", "wrong E78"},
        Row{"medMg", caseRate, "rate", "0.075 mL/h", "0.075 mg/min", "wrong E78"},
        Row{"sixty", caseRate, "rate", "337.5 mL/h", "5.625 mL/h × 60", "wrong E79"},
        Row{"reference", caseRate, "rate", "11.25 mL/h", "10 mcg/kg/min in place of 5", "wrong E30"},
        Row{"backwards", caseRate, "rate", "5625000 mL/h", "× 1,000 in place of ÷ 1,000", "wrong E07"},
        Row{"backwardsTheOtherWay", caseRate, "rate", "0.000005625 mL/h", "5.625 mL/h ÷ 1,000,000",
            "wrong E07"},
        Row{"kgTwice", caseRate, "rate", "84.38 mL/h", "5.625 mL/h × 15 kg", "wrong E36"},
        Row{"kgDivided", caseRate, "rate", "2.557 mL/h", "5.625 mL/h ÷ 2.2", "wrong E03"},
        Row{"kgToLb", caseRate, "rate", "12.38 mL/h", "5.625 mL/h × 2.2", "wrong E60"}),
    nameOf);

// 15.195 kg; 8 mg/kg each 6 h.
INSTANTIATE_TEST_SUITE_P(
    PerDose, MadeByHand,
    testing::Values(
        Row{"doseTimesDoses", caseOunces, "low-dose", "486.3 mg", "121.6 mg × 4 doses", "wrong E65"},
        Row{"byInterval", caseOunces, "low-dose", "20.26 mg", "121.6 mg ÷ 6 h", "wrong E22"},
        Row{"cutBesideANearOne", caseOunces, "limit-dose", "25.32 mg",
            "151.95 mg ÷ 6 h = 25.326 mg, not 10 mg/kg + 15.195 kg", "wrong E22"},
        Row{"needless", caseOunces, "low-dose", "30.39 mg", "121.6 mg ÷ 4 doses", "wrong E21"},
        Row{"byTheTaughtConstant", caseOunces, "weight", "15.1956 kg", "33.5 lb × 0.4536", "right"},
        Row{"byNoConstant", caseOunces, "weight", "15.1952 kg", "33.5 lb × 0.45359", "wrong"}),
    nameOf);

// 15.2 kg; 10 mg/kg; 110 mg of 150 mg in 4 mL.
INSTANTIATE_TEST_SUITE_P(
    Label, MadeByHand,
    testing::Values(Row{"kgToLb", caseLabelNear, "limit-dose", "334.4 mg", "152 mg × 2.2", "wrong E60"},
                    Row{"kgDivided", caseLabelNear, "limit-dose", "69.09 mg", "152 mg ÷ 2.2", "wrong E03"},
                    Row{"wholeKilograms", caseLabelNear, "limit-dose", "150 mg", "10 mg/kg × 15 kg",
                        "wrong E17"},
                    Row{"three", caseLabelNear, "give", "2.2 mL", "110 mg × 3 mL ÷ 150 mg", "wrong E89"},
                    Row{"five", caseLabelNear, "give", "3.667 mL", "110 mg × 5 mL ÷ 150 mg", "wrong E89"},
                    Row{"byVolAlone", caseLabelNear, "give", "27.5 mL", "110 mg ÷ 4 mL", "wrong E90"},
                    Row{"kgAgain", caseLabelNear, "give", "44.59 mL", "2.933 mL × 15.2 kg", "wrong E36"}),
    nameOf);

// 36 lb, 16.33 kg; the order in g, the label in mg.
INSTANTIATE_TEST_SUITE_P(
    Grams, MadeByHand,
    testing::Values(Row{"wholeKg", caseGrams, "limit-dose", "267 mg", "50 mg/kg × 16 kg ÷ 3 = 266.67 mg",
                        "wrong E17"},
                    Row{"wholeKgInFull", caseGrams, "limit-dose", "266.7 mg",
                        "50 mg/kg × 16 kg ÷ 3 = 266.67 mg", "wrong E17"},
                    Row{"byTheHousesKilograms", caseWholeKilograms, "limit-dose", "266.67 mg",
                        "50 mg/kg × 16 kg ÷ 3, where the house rounds a weight so", "right"},
                    Row{"lowEndOfAWholeDay", caseGrams, "give", "8.165 mL",
                        "136.08 mg in place of 200 mg, × 5 mL ÷ 250 mg, × 3 doses", "wrong E30 E35"},
                    Row{"inTheLabelsUnit", caseGrams, "give", "50 mL", "250 - 200", "wrong E112"},
                    Row{"inTheOrdersUnit", caseGrams, "give", "249.8 mL", "250 - 0.2", "wrong E112"},
                    Row{"timesInTheLabelsUnit", caseGrams, "give", "1000 mL", "200 × 5", "wrong E110"}),
    nameOf);

// 15 kg; 25 to 50 mg/kg/day, 3 times a day, which are 8 h apart.
INSTANTIATE_TEST_SUITE_P(TimesADay, MadeByHand,
                         testing::Values(Row{"byTheHoursBetween", caseTimesADay, "low-dose", "46.88 mg",
                                             "375 mg ÷ 8 h", "wrong E22"},
                                         Row{"dayByTheHoursBetween", caseTimesADay, "limit-day", "93.75 mg",
                                             "750 mg ÷ 8 h", "wrong E22"},
                                         Row{"byTheHoursOfTheDay", caseTimesADay, "limit-dose", "31.25 mg",
                                             "750 mg ÷ 24 h", "wrong E68"}),
                         nameOf);

// 75 mg each 6 h at most; 60 mg ordered each 8 h; 20 mg in a tablet.
INSTANTIATE_TEST_SUITE_P(
    Tablets, MadeByHand,
    testing::Values(Row{"sharedByItsOwnSchedule", caseTablets, "limit-dose", "18.75 mg",
                        "75 mg ÷ 4, as the reference is given", "wrong E21"},
                    Row{"notByTheOrders", caseTablets, "limit-dose", "25 mg",
                        "75 mg ÷ 3, as the order is given", "wrong"},
                    Row{"timesItsOwnSchedule", caseTablets, "limit-dose", "300 mg", "75 mg × 4", "wrong E65"},
                    Row{"asPieces", caseTablets, "give", "60 tablets", "the 60 mg of the order",
                        "wrong E113 E46"},
                    Row{"subtracted", caseTablets, "give", "40 tablets", "60 - 20", "wrong E112"},
                    Row{"timesStrength", caseTablets, "give", "1200 tablets", "60 × 20", "wrong E33"},
                    Row{"upsideDown", caseTablets, "give", "0.33 tablets", "20 ÷ 60", "wrong E31"},
                    Row{"doseAgainstTheDay", caseTablets, "verdict", "60 mg < 300 mg, too low",
                        "300 mg is the limit of a day", "wrong E24"},
                    Row{"doseAgainstNoDay", caseTablets, "verdict", "60 mg < 225 mg, too low",
                        "75 mg × 3 is no limit", "wrong E26"}),
    nameOf);

// 6500 g and 0.62 m.
INSTANTIATE_TEST_SUITE_P(
    Metric, MadeByHand,
    testing::Values(Row{"gramsAsTheyStand", caseMetric, "weight", "6500 kg", "6500 g", "wrong E06"},
                    Row{"ouncesOfNoPound", caseMetric, "weight", "2.955 kg", "6.5 kg ÷ 2.2", "wrong E03"},
                    Row{"metresTheWrongWay", caseMetric, "height", "0.0062 cm", "0.62 ÷ 100", "wrong E07"},
                    Row{"weightForHeight", caseMetric, "height", "6.5 cm", "the weight", "wrong E58"},
                    Row{"weightAsInches", caseMetric, "height", "16.51 cm", "6.5 × 2.54", "wrong E58"},
                    Row{"metricTen", caseMetric, "bsa", "1.058 m²", "√(62 cm × 6.5 kg ÷ 360)", "wrong E76"},
                    Row{"kilogramsDivided", caseMetric, "bsa", "0.2256 m²", "√(62 cm × 2.955 kg ÷ 3600)",
                        "wrong E03"},
                    Row{"surfaceOfThreeDecimals", caseMetric, "limit-dose", "40.20 mg",
                        "120 mg/m² × 0.335 m²", "right E44"}),
    nameOf);

// 3 ft 8 in, 111.76 cm; 19 kg.
INSTANTIATE_TEST_SUITE_P(
    Inches, MadeByHand,
    testing::Values(Row{"asCentimetres", caseInches, "height", "44 cm", "44 in", "wrong E05"},
                    Row{"convertedBackwards", caseInches, "height", "17.32 cm", "44 ÷ 2.54", "wrong E05"},
                    Row{"inchesLeftOut", caseInches, "height", "91.44 cm", "36 in × 2.54", "wrong E73"},
                    Row{"tenInches", caseInches, "height", "96.52 cm", "38 in × 2.54", "wrong E74"},
                    Row{"asTenths", caseInches, "height", "115.8 cm", "3.8 ft × 12 × 2.54", "wrong E72"},
                    Row{"otherConstant", caseInches, "height", "107.8 cm", "44 in × 2.45", "wrong E75"},
                    Row{"weightForHeight", caseInches, "height", "19 cm", "19 kg", "wrong E58"},
                    Row{"weightAsInches", caseInches, "height", "48.26 cm", "19 × 2.54", "wrong E58"},
                    Row{"subtracted", caseInches, "height", "41.46 cm", "44 - 2.54", "wrong E106"}),
    nameOf);

// 90 mg of 100 mg, with 4.8 mL to 5 mL: 4.5 mL.
INSTANTIATE_TEST_SUITE_P(
    FinalVolume, MadeByHand,
    testing::Values(Row{"powderTwice", caseFinalVolume, "give", "4.68 mL",
                        "90 mg × 5.2 mL ÷ 100 mg, of 0.2 mL that mixing adds", "wrong E39"},
                    Row{"diluentOnly", caseFinalVolume, "give", "4.32 mL", "90 mg × 4.8 mL ÷ 100 mg",
                        "wrong E38"},
                    Row{"byVolumeTwice", caseFinalVolume, "give", "18 mL", "90 mg ÷ 5 mL", "wrong E90"},
                    Row{"powderTwiceInStrength", caseFinalVolume, "strength", "19.23 mg/mL",
                        "100 mg ÷ 5.2 mL", "wrong E39"},
                    Row{"powderOffInStrength", caseFinalVolume, "strength", "21.74 mg/mL", "100 mg ÷ 4.6 mL",
                        "wrong E93"}),
    nameOf);

// 0.3 mg/kg/h for 15 kg of 40 mg in 50 mL: 5.625 mL/h.
INSTANTIATE_TEST_SUITE_P(RateByTheHour, MadeByHand,
                         testing::Values(Row{"sixty", caseRateByTheHour, "rate", "337.5 mL/h",
                                             "5.625 mL/h × 60", "wrong E79"},
                                         Row{"sixtyDivided", caseRateByTheHour, "rate", "0.09375 mL/h",
                                             "5.625 mL/h ÷ 60", "wrong E79"}),
                         nameOf);

// 33 lb 0 oz.
INSTANTIATE_TEST_SUITE_P(NoOunces, MadeByHand,
                         testing::Values(Row{"noneToLeaveOut", caseNoOunces, "weight", "15.03 kg",
                                             "near 33 lb ÷ 2.2, and no ounces that could be mistaken",
                                             "wrong"}),
                         nameOf);

// 90 mg of 250 mg, with 2.5 mL to 5 mL: the powder takes up as much. 1.8 mL.
INSTANTIATE_TEST_SUITE_P(
    HalfAPowder, MadeByHand,
    testing::Values(
        Row{"right", caseHalfAPowder, "strength", "50 mg/mL", "250 mg ÷ 5 mL", "right"},
        Row{"diluentOnly", caseHalfAPowder, "strength", "100 mg/mL", "250 mg ÷ 2.5 mL", "wrong E38"},
        Row{"powderTwice", caseHalfAPowder, "strength", "33.33 mg/mL", "250 mg ÷ 7.5 mL", "wrong E39"},
        Row{"volumeCopied", caseHalfAPowder, "give", "5 mL", "the volume after mixing", "wrong E111"},
        Row{"timesItsVolume", caseHalfAPowder, "give", "450 mL", "90 × 5", "wrong E110"}),
    nameOf);

// At most 720 mg in a day, and no low end; 240 mg each 8 h.
INSTANTIATE_TEST_SUITE_P(
    HighOfDay, MadeByHand,
    testing::Values(Row{"ofADayByItsHighEndAlone", caseHighOfDay, "verdict", "too low",
                        "240 mg of a dose beside 720 mg of a day, or backwards", "unsure E24 E26"},
                    Row{"ofADoseAtItsLimit", caseHighOfDay, "verdict", "too high",
                        "720 mg of a day beside 240 mg of a dose, or backwards", "unsure E24 E26"}),
    nameOf);

// 60 mg each 5 h, 3 mL; at most 75 mg.
INSTANTIATE_TEST_SUITE_P(
    FiveHours, MadeByHand,
    testing::Values(
        Row{"dayAtOnce", caseFiveHours, "give", "15 mL", "3 mL × 5 doses, of 24 h ÷ 5 h", "wrong E35"},
        Row{"sharedAmongFive", caseFiveHours, "give", "0.6 mL", "3 mL ÷ 5 doses", "wrong E21"},
        Row{"timesFive", caseFiveHours, "limit-dose", "375 mg", "75 mg × 5 doses", "wrong E65"},
        Row{"dividedByFive", caseFiveHours, "limit-dose", "15 mg", "75 mg ÷ 5 doses", "wrong E21"}),
    nameOf);

// 200 mg in a day at most, 50 mg in one dose, beside an order for each m²; 0.63 m².
INSTANTIATE_TEST_SUITE_P(Flat, MadeByHand,
                         testing::Values(Row{"knowsNoSurface", caseFlat, "limit-dose", "50.63 mg",
                                             "200 mg ÷ 4 + 0.63 m²: the reference is for no size", "wrong"}),
                         nameOf);

/// So much is ordered, of tablets of 30 mg. Nothing says how many decimals their number is to have, and
/// that no tablet can be cut so is asked about.
struct Tablets {
  const char* name;
  const char* dose;
  const char* text;
  const char* worked;
  const char* expected;
};
void PrintTo(const Tablets& row, std::ostream* out) { *out << "'" << row.text << "': " << row.worked; }

class InTablets : public testing::TestWithParam<Tablets> {};

TEST_P(InTablets, asksForThreeFiguresWhereThereIsNoEnd) {
  const Problem problem = caseOfTablets(GetParam().dose);
  EXPECT_EQ(told(Marking(problem).mark(askNamed(problem, "give"), GetParam().text)), GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Figures, InTablets,
    testing::Values(Tablets{"two", "55 mg", "1.8 tablets", "55 ÷ 30 = 1.8333…, and two figures", "wrong E42"},
                    Tablets{"three", "55 mg", "1.83 tablets", "three figures", "right ask-first"},
                    Tablets{"more", "55 mg", "1.833 tablets", "four figures", "right ask-first"},
                    Tablets{"belowOne", "20 mg", "0.667 tablets", "20 ÷ 30 = 0.6666…", "right ask-first"},
                    Tablets{"belowOneTwo", "20 mg", "0.67 tablets", "two figures", "wrong E42"},
                    Tablets{"belowATenth", "2 mg", "0.0667 tablets", "2 ÷ 30 = 0.06666…", "right ask-first"},
                    Tablets{"belowATenthTwo", "2 mg", "0.067 tablets", "two figures", "wrong E42"},
                    Tablets{"ends", "37.5 mg", "1.25 tablets", "37.5 ÷ 30 = 1.25", "right ask-first"},
                    Tablets{"endsAndIsRounded", "37.5 mg", "1.3 tablets", "1.25 has an end", "wrong E42"},
                    Tablets{"endsAfterFour", "37.02 mg", "1.23 tablets", "37.02 ÷ 30 = 1.234", "wrong E42"},
                    Tablets{"endsAfterFive", "37.035 mg", "1.23 tablets", "37.035 ÷ 30 = 1.2345",
                            "right ask-first"}),
    [](const testing::TestParamInfo<Tablets>& row) { return std::string(row.param.name); });

}  // namespace
}  // namespace wardchalk::made_by_hand_test
