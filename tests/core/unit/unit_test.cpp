#include "core/unit/unit.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

#include "core/unit/quantity.h"

namespace wardchalk::unit_test {
namespace {

TEST(UnitTable, everyIdReadsBackToItsUnit) {
  for (std::size_t i = 0; i < unitTable.size(); ++i) {
    const Unit unit = static_cast<Unit>(i);
    if (unit == Unit::bodyG) continue;  // written "g", which alone is a gram of medicine
    EXPECT_EQ(unitWithId(idOf(unit)), unit) << idOf(unit);
  }
  EXPECT_EQ(unitWithId("g"), Unit::g);
}

TEST(UnitTable, idsAreTheSpellingsOfFiles) {
  const std::set<std::string_view> expected = {
      "mcg", "mg", "g", "units", "mmol", "mEq", "kg",   "lb",    "oz",   "cm",   "m",      "in",      "ft",
      "m2",  "mL", "L", "h",     "min",  "day", "week", "month", "year", "dose", "tablet", "capsule", "drop"};
  std::set<std::string_view> ids;
  for (const UnitInfo& info : unitTable) ids.insert(info.id);
  EXPECT_EQ(ids, expected);
}

TEST(UnitTable, squareMetreIsKnownByItsSign) { EXPECT_EQ(unitWithId("m²"), Unit::m2); }

TEST(UnitTable, looksUpExactlyAndNothingElse) {
  for (const char* id :
       {"", " ", "MG", "Mg", "mg ", " mg", "ml", "l", "µg", "IU", "U", "cc", "drops", "days", "m3", "kgs"})
    EXPECT_FALSE(unitWithId(id)) << id;
}

TEST(UnitTable, nothingPrintedIsOnTheListsOfErrorProneForms) {
  // Joint Commission "Do Not Use" list; ISMP list of error-prone abbreviations.
  const std::set<std::string_view> forbidden = {"U", "u", "IU", "µg", "μg", "ug", "cc", "gtt", "d", "D"};
  for (const UnitInfo& info : unitTable)
    for (const std::string_view text : {info.id, info.one, info.many, info.word, info.words})
      EXPECT_FALSE(forbidden.contains(text)) << text;
}

TEST(UnitTable, onlyDrugDimensionsMeasureDrug) {
  std::set<std::string_view> drug;
  for (std::size_t i = 0; i < unitTable.size(); ++i)
    if (measuresDrug(static_cast<Unit>(i))) drug.insert(unitTable[i].id);
  EXPECT_EQ(drug, (std::set<std::string_view>{"mcg", "mg", "g", "units", "mmol", "mEq"}));
  EXPECT_FALSE(measuresDrug(Unit::bodyG));
}

TEST(UnitOf, perSizeAndPerTime) {
  EXPECT_EQ(unitOf(PerSize::kg), Unit::kg);
  EXPECT_EQ(unitOf(PerSize::m2), Unit::m2);
  EXPECT_EQ(unitOf(PerTime::none), Unit::dose);
  EXPECT_EQ(unitOf(PerTime::dose), Unit::dose);
  EXPECT_EQ(unitOf(PerTime::day), Unit::day);
  EXPECT_EQ(unitOf(PerTime::week), Unit::week);
  EXPECT_EQ(unitOf(PerTime::h), Unit::h);
  EXPECT_EQ(unitOf(PerTime::min), Unit::min);
}

}  // namespace
}  // namespace wardchalk::unit_test
