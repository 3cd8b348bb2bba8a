#include "core/entry/unit_spelling.h"

#include <gtest/gtest.h>

#include <string>

#include "tests/core/test_names.h"

namespace wardchalk::unit_spelling_test {
namespace {

struct Row {
  const char* name;
  const char* typed;
  SpelledIn where;
  SpellingUse how;
  Unit unit;
};

class SpellsUnit : public ::testing::TestWithParam<Row> {};

TEST_P(SpellsUnit, asItIsTakenThere) {
  const auto unit = spelledUnit(GetParam().typed, GetParam().where);
  ASSERT_TRUE(unit) << GetParam().typed;
  EXPECT_EQ(unit->how, GetParam().how);
  EXPECT_EQ(unit->unit, GetParam().unit);
}

constexpr auto elsewhere = SpelledIn::elsewhere;
using enum SpellingUse;

// Read: a unit that no other differs from by its capitals.
INSTANTIATE_TEST_SUITE_P(Read, SpellsUnit,
                         ::testing::Values(Row{"mg", "mg", elsewhere, read, Unit::mg},
                                           Row{"MG", "MG", elsewhere, read, Unit::mg},
                                           Row{"MCG", "MCG", elsewhere, read, Unit::mcg},
                                           Row{"Kg", "Kg", elsewhere, read, Unit::kg},
                                           Row{"ML", "ML", elsewhere, read, Unit::mL},
                                           Row{"meq", "meq", elsewhere, read, Unit::mEq},
                                           Row{"UNITS", "UNITS", elsewhere, read, Unit::units},
                                           Row{"Litres", "Litres", elsewhere, read, Unit::L},
                                           Row{"capital h", "H", elsewhere, read, Unit::h},
                                           Row{"square metres", "square metres", elsewhere, read, Unit::m2},
                                           Row{"sign of m2", "m²", elsewhere, read, Unit::m2},
                                           Row{"M2 after a stroke", "M2", SpelledIn::stroke, read, Unit::m2},
                                           Row{"m in a height", "m", SpelledIn::height, read, Unit::m},
                                           Row{"y in an age", "y", SpelledIn::age, read, Unit::year},
                                           Row{"wk in an age", "wk", SpelledIn::age, read, Unit::week}),
                         test::NameOfRow());

// Offered: of one meaning, and on a list of error-prone abbreviations or on none.
INSTANTIATE_TEST_SUITE_P(
    Offered, SpellsUnit,
    ::testing::Values(
        Row{"U", "U", elsewhere, unsafe, Unit::units}, Row{"iu", "iu", elsewhere, unsafe, Unit::units},
        Row{"dotted IU", "I.U.", elsewhere, unsafe, Unit::units},
        Row{"micro sign", "\u00B5g", elsewhere, unsafe, Unit::mcg},
        Row{"greek mu", "\u03BCg", elsewhere, unsafe, Unit::mcg},
        Row{"UG", "UG", elsewhere, unsafe, Unit::mcg}, Row{"CC", "CC", elsewhere, unsafe, Unit::mL},
        Row{"gtts", "gtts", elsewhere, unsafe, Unit::drop}, Row{"capital g", "G", elsewhere, other, Unit::g},
        Row{"kilos", "kilos", elsewhere, other, Unit::kg}, Row{"stone", "stone", elsewhere, other, Unit::lb},
        Row{"caret", "m^2", elsewhere, other, Unit::m2}, Row{"M2 alone", "M2", elsewhere, other, Unit::m2},
        Row{"wk elsewhere", "wk", elsewhere, other, Unit::week},
        Row{"m in an age", "m", SpelledIn::age, other, Unit::month},
        Row{"m in a time", "m", SpelledIn::time, other, Unit::min},
        Row{"foot sign in a height", "'", SpelledIn::height, other, Unit::ft},
        Row{"hash in a line", "#", SpelledIn::line, other, Unit::lb}),
    test::NameOfRow());

class NeverSpellsUnit : public ::testing::TestWithParam<const char*> {};

// Two meanings a thousand times and more apart, or one stroke of the pen away: nobody may put them right but
// who wrote them.
TEST_P(NeverSpellsUnit, thatIsOffered) {
  for (const SpelledIn where : {SpelledIn::stroke, SpelledIn::line, SpelledIn::elsewhere}) {
    const auto unit = spelledUnit(GetParam(), where);
    EXPECT_TRUE(!unit || unit->how == never) << GetParam();
  }
}

INSTANTIATE_TEST_SUITE_P(All, NeverSpellsUnit,
                         ::testing::Values("Mg", "mG", "M", "MU", "mU", "K", "k", "mM", "gm", "GM", "gms",
                                           "gr", "grain", "mgm", "l", "ng", "kG", "tsp", "teaspoons", "tbsp",
                                           "mm2", "", "%", ".", "xyz"));

TEST(SpelledUnit, knowsHowManyOfOursAnotherIs) {
  EXPECT_EQ(spelledUnit("st", elsewhere)->times, Number(14));
  EXPECT_EQ(spelledUnit("mm", SpelledIn::height)->times, Number::ratio(1, 10));
  EXPECT_EQ(spelledUnit("dL", elsewhere)->times, Number(100));
  EXPECT_EQ(spelledUnit("mol", elsewhere)->times, Number(1000));
}

TEST(SpelledUnit, readsEveryUnitOfFiles) {
  for (const UnitInfo& info : unitTable) {
    const bool metre = info.id == "m";
    const auto unit = spelledUnit(info.id, metre ? SpelledIn::height : elsewhere);
    ASSERT_TRUE(unit) << info.id;
    EXPECT_EQ(unit->how, read) << info.id;
    EXPECT_EQ(idOf(unit->unit), info.id);
  }
}

TEST(CourseWord, isATotal) {
  for (const char* word : {"course", "total", "cycle", "treatment"}) EXPECT_TRUE(isCourseWord(word)) << word;
  EXPECT_FALSE(isCourseWord("day"));
}

}  // namespace
}  // namespace wardchalk::unit_spelling_test
