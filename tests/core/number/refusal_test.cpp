#include "core/number/refusal.h"

#include <gtest/gtest.h>

#include <sstream>
#include <string>

#include "core/number/static_text.h"
#include "tests/core/test_names.h"

namespace wardchalk::refusal_test {
namespace {

TEST(Refusal, keepsShortTextAsItStood) {
  const Refusal refusal = refusalOf(RefusalCode::comma, "1,5", "");
  EXPECT_EQ(refusal.typed, "1,5");
  EXPECT_EQ(refusal.suggestion, "");
  EXPECT_EQ(refusal.path, "");
}

TEST(Refusal, keepsTheBeginningOfLongText) {
  const std::string sixty(60, 'x');
  EXPECT_EQ(refusalOf(RefusalCode::tooLong, sixty).typed, sixty);
  EXPECT_EQ(refusalOf(RefusalCode::tooLong, sixty + "y").typed, sixty);
}

TEST(Refusal, neverCutsACharacterInTwo) {
  for (std::size_t before = 55; before <= 60; ++before) {
    const std::string start(before, 'x');
    const std::string typed = refusalOf(RefusalCode::tooLong, start + "💊 and more").typed;
    EXPECT_EQ(typed, before + 4 <= 60 ? (start + "💊 and more").substr(0, 60) : start) << before;
  }
}

/// A letter in a long text, at its sixtieth byte or over it. One that is kept fills the sixty bytes.
struct Cut {
  const char* name;
  std::size_t before;  ///< plain letters in front of it
  std::string letter;
  bool isKept;
};

class Shortened : public testing::TestWithParam<Cut> {};

TEST_P(Shortened, cutsBetweenTwoLetters) {
  const Cut& cut = GetParam();
  const std::string start(cut.before, 'x');
  const std::string longText = start + cut.letter + " and more than there is room for";
  EXPECT_EQ(shortened(longText), start + (cut.isKept ? cut.letter : ""));
}

INSTANTIATE_TEST_SUITE_P(
    Texts, Shortened,
    testing::Values(Cut{"a plain letter at the limit", 59, "a", true},
                    Cut{"a plain letter past the limit", 60, "a", false},
                    Cut{"two bytes at the limit", 58, "é", true},
                    Cut{"two bytes over the limit", 59, "é", false},
                    Cut{"an accent of its own, at the limit", 57, "e\u0301", true},
                    Cut{"an accent that would be cut off", 58, "e\u0301", false},
                    Cut{"an accent that would be cut in two", 58, "e\u0301\u0323", false},
                    Cut{"Hebrew at the limit", 58, "ש", true}, Cut{"Hebrew over the limit", 59, "ש", false},
                    Cut{"Hebrew with its vowel at the limit", 56, "שָ", true},
                    Cut{"Hebrew that would lose its vowel", 57, "שָ", false},
                    Cut{"an emoji at the limit", 56, "💊", true},
                    Cut{"an emoji over the limit", 57, "💊", false},
                    Cut{"a skin tone that would be cut off", 55, "👍🏽", false},
                    Cut{"a family at the limit", 42, "👨\u200D👩\u200D👧", true},
                    Cut{"a family that would lose a child", 46, "👨\u200D👩\u200D👧", false},
                    Cut{"a flag that would be cut in two", 55, "🇳🇴", false},
                    Cut{"Indic letters joined at the limit", 48, "क्\u200Dष", true},
                    Cut{"a letter behind a broken byte", 55, "\x80", false}),
    test::NameOfRow());

TEST(Shortened, cutsALetterOfMoreThanSixtyBytesBetweenItsCharacters) {
  std::string letter = "e";
  for (int i = 0; i < 40; ++i) letter += "\u0301";
  EXPECT_EQ(shortened(letter), letter.substr(0, 59));
}

// A sign of Arabic that goes before its number is a letter with what follows; a broken byte follows as
// nothing.
TEST(Shortened, cutsBeforeABrokenByteWhateverStandsBeforeIt) {
  const std::string text = std::string(58, 'x') + "\u0600";
  EXPECT_EQ(shortened(text + "\xFF and more"), text);
  EXPECT_EQ(shortened(text + "5 and more"), text.substr(0, 58));
}

TEST(Shortened, leavesAShortTextAloneEvenABrokenOne) {
  for (const std::string text : {"", "x", "e\u0301", "\x80", "a\xF0\x9F"}) EXPECT_EQ(shortened(text), text);
}

TEST(Refusal, takesBrokenTextToo) {
  EXPECT_EQ(refusalOf(RefusalCode::tooLong, std::string(100, '\x80')).typed, "");
}

TEST(StaticText, isWrittenAsItStands) {
  std::ostringstream out;
  out << StaticText("order.dose") << StaticText();
  EXPECT_EQ(out.str(), "order.dose");
}

TEST(Result, holdsAValueOrItsRefusal) {
  const Result<int> value = 5;
  ASSERT_TRUE(value);
  EXPECT_EQ(*value, 5);
  const Result<int> refused = refusalOf(RefusalCode::zero, "0");
  ASSERT_FALSE(refused);
  EXPECT_EQ(idOf(refused.refusal().code), "zero");
}

}  // namespace
}  // namespace wardchalk::refusal_test
