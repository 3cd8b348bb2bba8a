#include "core/unit/written.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>

#include "core/number/decimal_text.h"
#include "core/unit/read_quantity.h"
#include "tests/core/test_names.h"

namespace wardchalk::written_test {
namespace {

using enum RefusalCode;

struct Name {
  const char* name;
  const char* typed;
  RefusalCode code;
  const char* write;
};

class RefusesUnit : public ::testing::TestWithParam<Name> {};

TEST_P(RefusesUnit, withOurs) {
  const Result<Unit> unit = readUnit(GetParam().typed);
  ASSERT_FALSE(unit);
  EXPECT_EQ(idOf(unit.refusal().code), idOf(GetParam().code));
  EXPECT_EQ(unit.refusal().suggestion, GetParam().write);
  EXPECT_EQ(unit.refusal().typed, GetParam().typed);
}

// Error-prone forms: ISMP list and Joint Commission "Do Not Use" list, as reprinted in nursing journals.
INSTANTIATE_TEST_SUITE_P(
    Unsafe, RefusesUnit,
    ::testing::Values(
        Name{"capital u", "U", unitUnsafe, "units"}, Name{"small u", "u", unitUnsafe, "units"},
        Name{"iu", "IU", unitUnsafe, "units"}, Name{"small iu", "iu", unitUnsafe, "units"},
        Name{"mixed iu", "Iu", unitUnsafe, "units"}, Name{"dotted iu", "I.U.", unitUnsafe, "units"},
        Name{"micro sign g", "\u00B5g", unitUnsafe, "mcg"}, Name{"greek mu g", "\u03BCg", unitUnsafe, "mcg"},
        Name{"ug", "ug", unitUnsafe, "mcg"}, Name{"capital ug", "UG", unitUnsafe, "mcg"},
        Name{"mcgm", "mcgm", unitUnsafe, "mcg"}, Name{"cc", "cc", unitUnsafe, "mL"},
        Name{"capital cc", "CC", unitUnsafe, "mL"}, Name{"gtt", "gtt", unitUnsafe, "drop"},
        Name{"gtts", "gtts", unitUnsafe, "drop"}, Name{"teaspoon is no mL", "tsp", unitUnsafe, ""},
        Name{"teaspoons", "teaspoons", unitUnsafe, ""}, Name{"tablespoon is no mL", "Tbsp", unitUnsafe, ""},
        Name{"grain is no mg", "gr", unitUnsafe, ""}, Name{"megaunits are no units", "MU", unitUnsafe, ""},
        Name{"milliunits are no units", "mU", unitUnsafe, ""},
        Name{"nanogram is no mcg", "ng", unitUnsafe, ""}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    OtherSpelling, RefusesUnit,
    ::testing::Values(
        Name{"capital mg", "MG", unitUnknown, "mg"}, Name{"mixed mg", "Mg", unitUnknown, "mg"},
        Name{"mgs", "mgs", unitUnknown, "mg"}, Name{"full stop", "mg.", unitUnknown, "mg"},
        Name{"milligrams", "milligrams", unitUnknown, "mg"},
        Name{"Micrograms", "Micrograms", unitUnknown, "mcg"}, Name{"gm", "gm", unitUnknown, "g"},
        Name{"capital g", "G", unitUnknown, "g"}, Name{"one unit", "unit", unitUnknown, "units"},
        Name{"capital units", "UNITS", unitUnknown, "units"}, Name{"meq", "meq", unitUnknown, "mEq"},
        Name{"mMol", "mMol", unitUnknown, "mmol"}, Name{"Kg", "Kg", unitUnknown, "kg"},
        Name{"kilos", "kilos", unitUnknown, "kg"}, Name{"lbs", "lbs", unitUnknown, "lb"},
        Name{"hash", "#", unitUnknown, "lb"}, Name{"ounces", "ounces", unitUnknown, "oz"},
        Name{"CM", "CM", unitUnknown, "cm"}, Name{"inches", "inches", unitUnknown, "in"},
        Name{"double quote", "\"", unitUnknown, "in"}, Name{"quote", "'", unitUnknown, "ft"},
        Name{"feet", "feet", unitUnknown, "ft"}, Name{"FT", "FT", unitUnknown, "ft"},
        Name{"sq m", "sq m", unitUnknown, "m2"}, Name{"caret", "m^2", unitUnknown, "m2"},
        Name{"capital m2", "M2", unitUnknown, "m2"}, Name{"ml", "ml", unitUnknown, "mL"},
        Name{"mls", "mls", unitUnknown, "mL"}, Name{"ML", "ML", unitUnknown, "mL"},
        Name{"small litre", "l", unitUnknown, "L"}, Name{"litres", "litres", unitUnknown, "L"},
        Name{"hr", "hr", unitUnknown, "h"}, Name{"hours", "hours", unitUnknown, "h"},
        Name{"mins", "mins", unitUnknown, "min"}, Name{"days", "days", unitUnknown, "day"},
        Name{"wk", "wk", unitUnknown, "week"}, Name{"months", "months", unitUnknown, "month"},
        Name{"yrs", "yrs", unitUnknown, "year"}, Name{"YEARS", "YEARS", unitUnknown, "year"},
        Name{"doses", "doses", unitUnknown, "dose"}, Name{"tabs", "tabs", unitUnknown, "tablet"},
        Name{"caps", "caps", unitUnknown, "capsule"}, Name{"drops", "drops", unitUnknown, "drop"},
        Name{"millimetre is no cm", "mm", unitUnknown, ""}, Name{"decilitre is no mL", "dL", unitUnknown, ""},
        Name{"mol is no mmol", "mol", unitUnknown, ""}, Name{"stone is no lb", "stone", unitUnknown, ""},
        Name{"capital m could be anything", "M", unitUnknown, ""}, Name{"nonsense", "xyz", unitUnknown, ""},
        Name{"full stop alone", ".", unitUnknown, ""}, Name{"percent", "%", unitUnknown, ""},
        Name{"nothing", "", unitMissing, ""}, Name{"d", "d", perUnclear, ""},
        Name{"capital d", "D", perUnclear, ""}, Name{"course", "course", courseTotal, ""},
        Name{"cycle", "cycle", courseTotal, ""}, Name{"total", "total", courseTotal, ""}),
    test::NameOfRow());

TEST(ReadUnit, offersOnlyUnitsThatItReads) {
  for (const char* typed :
       {"U", "IU", "ug", "cc", "gtt", "MG", "gm", "lbs", "ml", "hr", "yrs", "tabs", "drops", "\"", "sq m"}) {
    const Result<Unit> unit = readUnit(typed);
    ASSERT_FALSE(unit) << typed;
    EXPECT_TRUE(readUnit(unit.refusal().suggestion)) << typed;
  }
}

TEST(ReadWritten, takesTheQuantityApart) {
  const Result<Written> written = readWritten("120 mg/5 mL");
  ASSERT_TRUE(written);
  EXPECT_EQ(written->first, (Quantity{Number(120), Unit::mg}));
  ASSERT_EQ(written->per.size(), 1U);
  EXPECT_EQ(written->per[0].value, Number(5));
  EXPECT_EQ(written->per[0].unit, Unit::mL);
  EXPECT_TRUE(written->more.empty());
}

TEST(ReadWritten, keepsPartsApart) {
  const Result<Written> written = readWritten("8 lb 3 oz");
  ASSERT_TRUE(written);
  ASSERT_EQ(written->more.size(), 1U);
  EXPECT_EQ(written->more[0], (Quantity{Number(3), Unit::oz}));
  EXPECT_TRUE(written->per.empty());
}

TEST(ReadWritten, quotesThePieceThatIsWrong) {
  EXPECT_EQ(readWritten("120 mg/0 mL").refusal().typed, "0 mL");
  EXPECT_EQ(readWritten("120 mg/0 mL/dose").refusal().typed, "0 mL");
  EXPECT_EQ(readWritten("120 mg/5 cc").refusal().typed, "cc");
  EXPECT_EQ(readWritten("8 lb 3oz").refusal().typed, "3oz");
  EXPECT_EQ(readWritten("1,5 mg").refusal().typed, "1,5");
  EXPECT_EQ(readWritten("2 dL").refusal().typed, "2 dL");
  EXPECT_EQ(readWritten("2 g total").refusal().typed, "total");
}

TEST(ReadWritten, readsARatioOnlyForMedicine) {
  EXPECT_EQ(idOf(readWritten("1:1000").refusal().code), "not-a-number");
  EXPECT_EQ(idOf(readWrittenDrug("1:1000").refusal().code), "ratio-strength");
}

RC_GTEST_PROP(ReadWrittenProperty, neverAltersWhatWasTyped, (const std::string& text)) {
  const Result<Written> written = readWrittenDrug(text);
  if (!written) RC_ASSERT(text.find(written.refusal().typed) != std::string::npos);
}

/// Text made of the pieces that entries are made of, so that more than the first character is reached.
std::string entryLike() {
  const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
      "80", "0", "0.5", "5.", ",", " ", " ", " ", "/", "mg", "mcg", "kg", "m2", "mL", "lb", "oz", "day",
      "dose", "d", "U", "µg", "cc", ":", "%", "in", "1", "1000", "\u00A0", "½", "٨", "-", "mm", "stone",
      "over", "course", "\t", "💊"));
  std::string text;
  for (const std::string& piece : pieces) text.append(piece);
  return text;
}

RC_GTEST_PROP(ReadWrittenProperty, neverAltersWhatLooksLikeAnEntry, ()) {
  const std::string text = entryLike();
  const Result<Written> written = readWrittenDrug(text);
  if (!written) RC_ASSERT(text.find(written.refusal().typed) != std::string::npos);
}

RC_GTEST_PROP(ReadWrittenProperty, whatIsOfferedForBadSpacingIsRead, ()) {
  const std::string text = entryLike();
  const Result<Written> written = readWritten(text);
  if (!written && written.refusal().code == spaceWrong)
    RC_ASSERT(static_cast<bool>(readWritten(written.refusal().suggestion)));
}

RC_GTEST_PROP(ReadWrittenProperty, aWrittenQuantityIsReadExactly, ()) {
  const auto whole = *rc::gen::inRange<std::int64_t>(1, 1000000);
  const auto decimals = *rc::gen::inRange(0, 5);
  const auto unit = static_cast<Unit>(*rc::gen::inRange<int>(0, static_cast<int>(unitTable.size())));
  const Number value = Number(whole) / Number::powerOfTen(decimals);
  const Result<Written> written = readWritten(exactText(value) + " " + std::string(idOf(unit)));
  RC_ASSERT(static_cast<bool>(written));
  RC_ASSERT(written->first.value == value);
  RC_ASSERT(idOf(written->first.unit) == idOf(unit));
}

}  // namespace
}  // namespace wardchalk::written_test
