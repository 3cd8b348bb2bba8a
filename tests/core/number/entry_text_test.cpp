#include "core/number/entry_text.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>

#include "tests/core/test_names.h"

namespace wardchalk::entry_text_test {
namespace {

struct Piece {
  const char* name;
  std::string text;
  std::string number;  // the piece at the start that is taken for a number
};

class NumberLength : public ::testing::TestWithParam<Piece> {};

TEST_P(NumberLength, takesWhatPeopleMistakeForANumber) {
  const Piece& row = GetParam();
  EXPECT_EQ(row.text.substr(0, numberLength(row.text)), row.number);
}

INSTANTIATE_TEST_SUITE_P(
    Table, NumberLength,
    ::testing::Values(
        Piece{"nothing", "", ""}, Piece{"plain", "80 mg", "80"}, Piece{"no number", "mg 80", ""},
        Piece{"comma", "1,5 mg", "1,5"}, Piece{"points", "1.5.2 mg", "1.5.2"},
        Piece{"exponent", "1e3 mg", "1e3"}, Piece{"e of a unit", "1eq", "1"},
        Piece{"exponent below zero", "1E-3 mg", "1E-3"}, Piece{"exponent with a plus", "1e+3 mg", "1e+3"},
        Piece{"e first", "e3", ""}, Piece{"e last", "1e", "1"}, Piece{"exponent and a space", "1e 3", "1"},
        Piece{"plus", "+2 mg", "+2"}, Piece{"minus", "-2 mg", "-2"}, Piece{"true minus", "−2 mg", "−2"},
        Piece{"stroke between digits", "1/2 tablet", "1/2"}, Piece{"stroke before a unit", "5/kg", "5"},
        Piece{"stroke first", "/5", ""}, Piece{"narrow space first", "\u202F5", ""},
        Piece{"half sign", "1½ tablet", "1½"}, Piece{"every fraction", "¼¾⅓⅔ tablet", "¼¾⅓⅔"},
        Piece{"a fraction that is none", "⅛", ""},
        Piece{"every narrow space", "1\u2007000\u2009000\u202F000 mg", "1\u2007000\u2009000\u202F000"},
        Piece{"arabic", "٨٠ mg", "٨٠"}, Piece{"full-width", "８０ mg", "８０"},
        Piece{"no-break space between digits", "1\u00A0000 mg", "1\u00A0000"},
        Piece{"no-break space before the unit", "80\u00A0mg", "80"},
        Piece{"plain space ends it", "1 000 mg", "1"}, Piece{"emoji", "💊5", ""},
        Piece{"broken utf-8", "5\xFF", "5"}, Piece{"cut utf-8", "5\xE2\x88", "5"},
        Piece{"range", "4-6 h", "4-6"}),
    test::NameOfRow());

TEST(PlainSpaces, oneAndNoneAtTheEnds) {
  EXPECT_EQ(withPlainSpaces("  80 \t mg\r\n"), "80 mg");
  EXPECT_EQ(withPlainSpaces("80\u00A0mg"), "80 mg");
  EXPECT_EQ(withPlainSpaces("80\u2009\u202Fmg"), "80 mg");
  EXPECT_EQ(withPlainSpaces("80\u2000mg\u200Aeach\u3000\u200Bday"), "80 mg each day");
  EXPECT_EQ(withPlainSpaces("80\x7Fmg"), "80 mg");
  EXPECT_EQ(withPlainSpaces("80\u1FFFmg\u2010"), "80\u1FFFmg\u2010");
  EXPECT_EQ(withPlainSpaces("80 mg"), "80 mg");
  EXPECT_EQ(withPlainSpaces(" \t "), "");
  EXPECT_TRUE(hasAnySpace("a\u3000b"));
  EXPECT_FALSE(hasAnySpace("80mg"));
}

TEST(OtherDigits, areDigitsOnly) {
  for (const char* text : {"٨", "a۸", "८", "８", "৮"}) EXPECT_TRUE(hasOtherDigits(text)) << text;
  for (const char* text : {"8", "é", "–", "≈", "💊", "½", "五", "٪", "\u065F", "\u0970", "\xD9", "\xFF\xFE"})
    EXPECT_FALSE(hasOtherDigits(text)) << text;
}

TEST(Replaced, everywhereAndOnce) {
  EXPECT_EQ(withReplaced("1,000,000", ",", ""), "1000000");
  EXPECT_EQ(withReplaced("aa", "a", "aa"), "aaaa");
  EXPECT_EQ(withReplaced("", "a", "b"), "");
}

RC_GTEST_PROP(EntryTextProperty, anyBytesAreTaken, (const std::string& text)) {
  RC_ASSERT(numberLength(text) <= text.size());
  const std::string plain = withPlainSpaces(text);
  RC_ASSERT(withPlainSpaces(plain) == plain);
  RC_ASSERT(plain.size() <= text.size());
  (void)hasOtherDigits(text);
}

}  // namespace
}  // namespace wardchalk::entry_text_test
