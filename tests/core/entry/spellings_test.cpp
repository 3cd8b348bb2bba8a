#include <gtest/gtest.h>

#include "core/entry/read_entry.h"
#include "tests/core/test_names.h"

// Spellings and spacings that people use, read in the safe form. The frozen tables of tests/entries hold many
// more, by field; these were refused once.

namespace wardchalk::spellings_test {
namespace {

struct Row {
  const char* name;
  const char* path;
  const char* typed;
  const char* safe;
};

class ReadsSpelling : public ::testing::TestWithParam<Row> {};

TEST_P(ReadsSpelling, inTheSafeForm) {
  const Row& row = GetParam();
  for (const EntryFrom from : {EntryFrom::person, EntryFrom::file}) {
    EntrySetting setting;
    setting.from = from;
    const auto answer = readEntry(row.path, row.typed, setting);
    ASSERT_TRUE(answer);
    ASSERT_TRUE(answer->isRead) << row.typed << ": " << idOf(answer->refusal->code);
    EXPECT_EQ(answer->safe, row.safe);
  }
}

INSTANTIATE_TEST_SUITE_P(
    Entries, ReadsSpelling,
    ::testing::Values(
        Row{"no space", "order.dose", "80mg", "80 mg"},
        Row{"no space, other spelling", "order.dose", "80mgs", "80 mg"},
        Row{"no space in a compound", "reference.high", "120mg/m2/dose", "120 mg/m2/dose"},
        Row{"no space in the volume", "stock.strength", "120 mg/5mL", "120 mg/5 mL"},
        Row{"no space in a part", "child.weight", "8 lb 3oz", "8 lb 3 oz"},
        Row{"two spaces", "order.dose", "80  mg", "80 mg"},
        Row{"three spaces", "order.dose", "80   mg", "80 mg"},
        Row{"space last", "order.dose", "80 mg ", "80 mg"},
        Row{"space first", "order.dose", " 80 mg", "80 mg"},
        Row{"spaces all round", "order.dose", "  80  mg  ", "80 mg"},
        Row{"tab", "order.dose", "80\tmg", "80 mg"}, Row{"tab last", "order.dose", "80 mg\t", "80 mg"},
        Row{"line end last", "order.dose", "80 mg\n", "80 mg"},
        Row{"carriage return", "order.dose", "80 mg\r\n", "80 mg"},
        Row{"no-break space", "order.dose", "80\u00A0mg", "80 mg"},
        Row{"narrow no-break space", "order.dose", "80\u202Fmg", "80 mg"},
        Row{"wide space", "order.dose", "80\u3000mg", "80 mg"},
        Row{"two spaces between parts", "child.weight", "8 lb  3 oz", "8 lb 3 oz"},
        Row{"space before the stroke", "stock.strength", "120 mg /5 mL", "120 mg/5 mL"},
        Row{"space after the stroke", "stock.strength", "120 mg/ 5 mL", "120 mg/5 mL"},
        Row{"spaces round the stroke", "stock.strength", "120 mg / 5 mL", "120 mg/5 mL"},
        Row{"spaces round strokes", "reference.high", "120 mg / m2 / dose", "120 mg/m2/dose"},
        Row{"space and no space", "order.dose", " 80mg", "80 mg"}, Row{"MG", "order.dose", "80 MG", "80 mg"},
        Row{"grams in full", "order.dose", "1 gram", "1 g"},
        Row{"one unit", "order.dose", "1 unit", "1 units"}, Row{"ml", "stock.diluent", "5 ml", "5 mL"},
        Row{"litre", "stock.diluent", "1 litre", "1 L"}, Row{"Kg", "child.weight", "17.2 Kg", "17.2 kg"},
        Row{"kgs", "child.weight", "17.2 kgs", "17.2 kg"}, Row{"lbs", "child.weight", "37 lbs", "37 lb"},
        Row{"pounds", "child.weight", "37 pounds", "37 lb"}, Row{"cms", "child.height", "103 cms", "103 cm"},
        Row{"inches", "child.height", "41 inches", "41 in"}, Row{"years", "child.age", "4 years", "4 year"},
        Row{"yr", "child.age", "4 yr", "4 year"}, Row{"yo", "child.age", "4 yo", "4 year"},
        Row{"mo", "child.age", "5 mo", "5 month"}, Row{"months", "child.age", "5 months", "5 month"},
        Row{"Weeks", "child.age", "6 Weeks", "6 week"}, Row{"days", "child.age", "3 days", "3 day"},
        Row{"hours", "infusion.over", "1 hour", "1 h"}, Row{"mins", "infusion.over", "30 mins", "30 min"},
        Row{"drops", "infusion.drop_factor", "20 drops/mL", "20 drop/mL"},
        Row{"meq", "order.dose", "20 meq", "20 mEq"},
        Row{"per 24 h", "reference.high", "30 mg/kg/24 h", "30 mg/kg/day"},
        Row{"per in words", "reference.high", "120 mg per m2 per dose", "120 mg/m2/dose"},
        Row{"per in words once", "order.dose", "4 mg per kg", "4 mg/kg"},
        Row{"in for the stroke", "stock.strength", "120 mg in 5 mL", "120 mg/5 mL"},
        Row{"per for the stroke", "stock.strength", "120 mg per 5 mL", "120 mg/5 mL"},
        Row{"two spaces 2", "order.schedule", "every  12 h", "every 12 h"},
        Row{"space last 2", "order.schedule", "every 12 h ", "every 12 h"},
        Row{"space first 2", "order.schedule", " daily", "daily"},
        Row{"tab 2", "order.schedule", "every\t12 h", "every 12 h"},
        Row{"no-break space 2", "order.schedule", "every 12\u00A0h", "every 12 h"},
        Row{"no space 2", "order.schedule", "every 12h", "every 12 h"},
        Row{"hours 2", "order.schedule", "every 12 hours", "every 12 h"},
        Row{"8 hourly", "order.schedule", "8 hourly", "every 8 h"},
        Row{"three times daily", "order.schedule", "three times daily", "3 times a day"},
        Row{"every 6 h more", "order.schedule", "every 6 h as needed", "every 6 h"},
        Row{"q6h prn", "order.schedule", "q6h prn", "every 6 h"},
        Row{"capital route", "order.route", "Oral", "oral"}, Row{"PO", "order.route", "PO", "oral"},
        Row{"IV", "order.route", "IV", "intravenous"}, Row{"IM", "reference.route", "IM", "intramuscular"},
        Row{"subcut", "order.route", "subcut", "subcutaneous"}, Row{"NG", "order.route", "NG", "enteral"},
        Row{"PR", "order.route", "PR", "rectal"}, Row{"by mouth", "order.route", "by mouth", "oral"},
        Row{"route and space", "order.route", "oral ", "oral"}, Row{"PO 2", "order.route", "PO", "oral"},
        Row{"IV 2", "order.route", "IV", "intravenous"}, Row{"IM 2", "order.route", "IM", "intramuscular"}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Schedules, ReadsSpelling,
    ::testing::Values(Row{"12 hours", "order.schedule", "every 12 hours", "every 12 h"},
                      Row{"12 hrs", "order.schedule", "every 12 hrs", "every 12 h"},
                      Row{"no space", "order.schedule", "every 12h", "every 12 h"},
                      Row{"q with spaces", "order.schedule", "q 6 h", "every 6 h"},
                      Row{"q6hr", "order.schedule", "q6hr", "every 6 h"},
                      Row{"6 hourly", "order.schedule", "6 hourly", "every 6 h"},
                      Row{"6 hourly with a hyphen", "order.schedule", "6-hourly", "every 6 h"},
                      Row{"4-6 hourly", "order.schedule", "4-6 hourly", "every 4 to 6 h"},
                      Row{"every 4-6 h", "order.schedule", "every 4-6 h", "every 4 to 6 h"},
                      Row{"every 4–6 h with a dash", "order.schedule", "every 4–6 h", "every 4 to 6 h"},
                      Row{"3 times daily", "order.schedule", "3 times daily", "3 times a day"},
                      Row{"three times a day", "order.schedule", "three times a day", "3 times a day"},
                      Row{"three times daily", "order.schedule", "Three times daily", "3 times a day"},
                      Row{"3x a day", "order.schedule", "3x a day", "3 times a day"},
                      Row{"3x/day", "order.schedule", "3x/day", "3 times a day"},
                      Row{"3 times per day", "order.schedule", "3 times per day", "3 times a day"},
                      Row{"2-3 times a day", "order.schedule", "2-3 times a day", "2 to 3 times a day"},
                      Row{"2 times weekly", "order.schedule", "2 times weekly", "2 times a week"},
                      Row{"two spaces", "order.schedule", "every  12 h", "every 12 h"},
                      Row{"space last", "order.schedule", "daily ", "daily"}),
    test::NameOfRow());

// "A day" and "each dose" are of one meaning and not on our list: refused, and the stroke is offered.
TEST(WordedStroke, isRefusedAndTheStrokeIsOffered) {
  for (const auto& [typed, offered] :
       {std::pair{"240 mg a day", "240 mg/day"}, std::pair{"240 mg each dose", "240 mg/dose"},
        std::pair{"15 mg/kg a day", "15 mg/kg/day"}}) {
    const auto answer = readEntry("order.dose", typed);
    ASSERT_TRUE(answer && answer->refusal) << typed;
    EXPECT_EQ(answer->refusal->code, RefusalCode::wordTooMany) << typed;
    EXPECT_EQ(answer->refusal->suggestion, offered) << typed;
  }
}

}  // namespace
/// Nobody weighs 3,180 kg, and a baby is often charted in grams.
TEST(BareWeight, isAskedAboutInUnitsThatCanBe) {
  struct Row {
    const char* typed;
    std::vector<std::string> answers;
    const char* suggestion;
  };
  const std::vector<Row> rows = {{"17.2", {"17.2 kg", "17.2 lb"}, ""},
                                 {"250", {"250 kg", "250 lb"}, ""},
                                 {"251", {"251 g", "251 lb"}, ""},
                                 {"550", {"550 g", "550 lb"}, ""},
                                 {"551", {}, "551 g"},
                                 {"3180", {}, "3180 g"},
                                 {"3180.5", {}, "3180.5 g"}};
  for (const Row& row : rows) {
    const auto answer = readEntry("child.weight", row.typed);
    ASSERT_TRUE(answer && !answer->isRead && answer->refusal) << row.typed;
    EXPECT_EQ(idOf(answer->refusal->code), "unit-missing") << row.typed;
    EXPECT_EQ(answer->answers, row.answers) << row.typed;
    EXPECT_EQ(answer->refusal->suggestion, row.suggestion) << row.typed;
  }
}

/// The field is called "Up to", and so may be what is typed: it is named, and nothing else before the number
/// is.
TEST(UpTo, isAWordTooManyWithoutAButton) {
  struct Row {
    const char* path;
    const char* typed;
    const char* code;
    const char* suggestion;
  };
  const std::vector<Row> rows = {{"reference.high", "up to 6.4 mcg/kg/dose", "word-too-many", ""},
                                 {"reference.high", "Up to 40 mg/kg/day", "word-too-many", ""},
                                 {"reference.high", "up 40 mg/kg/day", "number-missing", ""},
                                 {"reference.high", "to 40 mg/kg/day", "number-missing", ""},
                                 {"reference.high", "over 40 mg/kg/day", "number-missing", ""},
                                 {"reference.low", "up to 40 mg/kg/day", "number-missing", ""}};
  for (const Row& row : rows) {
    const auto answer = readEntry(row.path, row.typed);
    ASSERT_TRUE(answer && !answer->isRead && answer->refusal) << row.typed;
    EXPECT_EQ(idOf(answer->refusal->code), row.code) << row.typed;
    EXPECT_EQ(answer->refusal->suggestion, row.suggestion) << row.typed;
  }
}

/// An age in parts of a year is no half to be written with a point.
TEST(AgeInParts, isNamedAsThat) {
  for (const char* typed : {"18/12", "9/12", "6/52", "3/7", "4 6/12", "2 1/2 years"}) {
    const auto answer = readEntry("child.age", typed);
    ASSERT_TRUE(answer && answer->refusal) << typed;
    EXPECT_EQ(idOf(answer->refusal->code), "age-fraction") << typed;
    EXPECT_EQ(answer->refusal->suggestion, "") << typed;
  }
}

}  // namespace wardchalk::spellings_test
