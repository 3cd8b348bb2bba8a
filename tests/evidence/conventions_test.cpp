// The conventions of the trade that the program follows: rounding, frequencies, conversion constants, marks
// of syringes.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/entry/read_schedule.h"
#include "core/entry/read_strength.h"
#include "core/medicine/schedule.h"
#include "core/number/decimal_text.h"
#include "core/rules/house_rules.h"
#include "core/unit/conversion.h"

namespace wardchalk::test::conventions_test {

struct RoundingRow {
  const char* exact;
  int decimals;
  const char* rounded;
  const char* source;
};

TEST(Conventions, halfRoundsUp) {
  constexpr RoundingRow rows[] = {
      {"3.25", 1, "3.3", "NUR 1140C rounding rules (read)"},
      {"1.243", 1, "1.2", "Pharmacology for Nurses, OpenStax 2024, section 2.4 (read)"},
      {"1.251", 1, "1.3", "Pharmacology for Nurses, OpenStax 2024, section 2.4 (read)"},
  };
  for (const RoundingRow& row : rows)
    EXPECT_EQ(readDecimal(row.exact)->rounded(row.decimals), *readDecimal(row.rounded)) << row.source;
}

struct FrequencyRow {
  const char* typed;
  Number fewest;
  Number most;
  const char* source;
};

TEST(Conventions, frequenciesAreDosesInADay) {
  const FrequencyRow rows[] = {
      {"daily", Number(1), Number(1), "common practice, no source"},
      {"once daily", Number(1), Number(1), "common practice, no source"},
      {"q24h", Number(1), Number(1), "common practice, no source"},
      {"every other day", Number::ratio(1, 2), Number::ratio(1, 2),
       "ISMP list of error-prone abbreviations (read)"},
      {"BID", Number(2), Number(2), "common practice, no source"},
      {"bd", Number(2), Number(2), "common practice, no source"},
      {"q12h", Number(2), Number(2), "common practice, no source"},
      {"TID", Number(3), Number(3), "a school's times table (read)"},
      {"tds", Number(3), Number(3), "common practice, no source"},
      {"q8h", Number(3), Number(3), "a school's times table (read)"},
      {"QID", Number(4), Number(4), "Hospital for Sick Children, nursing orientation (read)"},
      {"qds", Number(4), Number(4), "common practice, no source"},
      {"q6h", Number(4), Number(4), "Hospital for Sick Children, nursing orientation (read)"},
      {"q4h", Number(6), Number(6), "Rx Tech Notes, body weight calculations (read)"},
      {"q3h", Number(8), Number(8), "common practice, no source"},
      {"q2h", Number(12), Number(12), "common practice, no source"},
      {"q4-6h", Number(4), Number(6), "common practice, no source"},
      {"weekly", Number::ratio(1, 7), Number::ratio(1, 7), "a medicine label (read)"},
  };
  for (const FrequencyRow& row : rows) {
    const Result<Schedule> schedule = valueOf(readOrderSchedule(row.typed));
    ASSERT_TRUE(schedule) << row.typed;
    EXPECT_EQ(schedule->fewest, row.fewest) << row.typed << ": " << row.source;
    EXPECT_EQ(schedule->most, row.most) << row.typed << ": " << row.source;
  }
}

TEST(Conventions, misreadFrequenciesAreRefusedAndNoneIsOffered) {
  // Joint Commission "Do Not Use" list and ISMP list of error-prone abbreviations (read). They look like each
  // other and like QID: the order is to be read again.
  for (const char* typed : {"QD", "qd", "QOD", "qod", "o.d.", "q1d"}) {
    const Result<Schedule> schedule = valueOf(readOrderSchedule(typed));
    ASSERT_FALSE(schedule) << typed;
    EXPECT_EQ(schedule.refusal().code, RefusalCode::scheduleLookAlike) << typed;
    EXPECT_EQ(schedule.refusal().suggestion, "") << typed;
  }
  // The same lists; they have been read as half strength, every hour or so many a day, so that none is
  // offered (H50).
  for (const char* typed : {"hs", "qhs", "qn", "TIW"}) {
    const Result<Schedule> schedule = valueOf(readOrderSchedule(typed));
    ASSERT_FALSE(schedule) << typed;
    EXPECT_EQ(schedule.refusal().code, RefusalCode::scheduleUnsafe) << typed;
    EXPECT_EQ(schedule.refusal().suggestion, "") << typed;
  }
}

struct ConstantRow {
  Unit from;
  Unit to;
  Pounds pounds;
  const char* value;
  int decimals;
  const char* source;
};

TEST(Conventions, conversionConstantsAreTheExactOnes) {
  const ConstantRow rows[] = {
      {Unit::lb, Unit::kg, Pounds::exact, "0.45359237", 8, "NIST SP 811 appendix B (from memory)"},
      {Unit::lb, Unit::bodyG, Pounds::exact, "453.592", 3, "16 CFR 500.19, rounded there (read)"},
      {Unit::kg, Unit::lb, Pounds::exact, "2.20462262", 8, "the reciprocal"},
      {Unit::kg, Unit::lb, Pounds::trade, "2.2", 1,
       "Pharmacology for Nurses, OpenStax 2024, section 2.4 (read)"},
      {Unit::lb, Unit::oz, Pounds::exact, "16", 0, "common practice, no source"},
      {Unit::oz, Unit::bodyG, Pounds::exact, "28.349523125", 9,
       "units file of a general-purpose library (read)"},
      {Unit::in, Unit::cm, Pounds::exact, "2.54", 2, "16 CFR 500.19 (read)"},
      {Unit::ft, Unit::in, Pounds::exact, "12", 0, "common practice, no source"},
      {Unit::g, Unit::mg, Pounds::exact, "1000", 0, "SI"},
      {Unit::mg, Unit::mcg, Pounds::exact, "1000", 0, "SI"},
      {Unit::L, Unit::mL, Pounds::exact, "1000", 0, "SI"},
  };
  for (const ConstantRow& row : rows)
    EXPECT_EQ(converted(Number(1), row.from, row.to, row.pounds)->rounded(row.decimals),
              *readDecimal(row.value))
        << idOf(row.from) << " to " << idOf(row.to) << ": " << row.source;
}

TEST(Conventions, unitsAndEquivalentsNeverBecomeMilligrams) {
  for (const Unit unit : {Unit::units, Unit::mmol, Unit::mEq})
    EXPECT_FALSE(converted(Number(1), unit, Unit::mg));
  EXPECT_FALSE(converted(Number(1), Unit::kg, Unit::mg)) << "a child's kilogram is no medicine";
}

struct StrengthRow {
  const char* typed;
  RefusalCode code;
  const char* write;
  const char* source;
};

TEST(Conventions, ratioAndPercentStrengthsAreAnsweredInMilligrams) {
  constexpr StrengthRow rows[] = {
      {"1 in 200", RefusalCode::ratioStrength, "5 mg/mL", "a pharmacy teaching set (read)"},
      {"1:1000", RefusalCode::ratioStrength, "1 mg/mL", "1 g in N mL: common practice"},
      {"2 %", RefusalCode::percentStrength, "20 mg/mL",
       "x % is x g in 100 mL: PHA-4010Y practice sets, 2025 (read)"},
  };
  for (const StrengthRow& row : rows) {
    const Result<Strength> strength = valueOf(readStrength(row.typed));
    ASSERT_FALSE(strength) << row.typed;
    EXPECT_EQ(strength.refusal().code, row.code) << row.typed;
    EXPECT_EQ(strength.refusal().hint, row.write) << row.typed << ": " << row.source;
  }
}

struct SyringeRow {
  int holdsMl;
  const char* marksMl;
  const char* source;
};

TEST(Conventions, syringesHaveTheUsualMarks) {
  constexpr SyringeRow rows[] = {
      {1, "0.01", "a university nursing page as quoted in a syringe reference (read)"},
      {3, "0.1", "the same"},
      {5, "0.2", "the same"},
      {10, "0.2", "the same"},
      {20, "1", "common practice, no source"},
      {60, "1", "from memory"},
  };
  for (const SyringeKind kind : {SyringeKind::oral, SyringeKind::injection})
    for (const SyringeRow& row : rows) {
      const auto& all = exactRules().syringes;
      const Syringe wanted{Number(row.holdsMl), *readDecimal(row.marksMl), kind};
      EXPECT_NE(std::find(all.begin(), all.end(), wanted), all.end()) << row.holdsMl << " mL: " << row.source;
    }
}

}  // namespace wardchalk::test::conventions_test
