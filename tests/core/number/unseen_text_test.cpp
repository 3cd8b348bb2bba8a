#include "core/number/unseen_text.h"

#include <gtest/gtest.h>

#include "core/number/characters.h"
#include "core/words/sentences.h"

namespace wardchalk::unseen_text_test {
namespace {

struct Row {
  const char* text;
  const char* number;
  const char* sentence;
};

TEST(UnseenText, isRefusedByKindAndNumber) {
  for (const Row& row : {
           Row{"Plo\x01ver", "U+0001",
               "The text holds a control character that cannot be seen (U+0001). Type it again."},
           Row{"Plo\x1B[2Jver", "U+001B",
               "The text holds a control character that cannot be seen (U+001B). Type it again."},
           Row{"Plo\x7Fver", "U+007F",
               "The text holds a control character that cannot be seen (U+007F). Type it again."},
           Row{"Plo\u009Bver", "U+009B",
               "The text holds a control character that cannot be seen (U+009B). Type it again."},
           Row{"Plo\tver", "U+0009", "The text holds a tab that cannot be seen (U+0009). Type it again."},
           Row{"Plover\n", "U+000A",
               "The text holds a line break that cannot be seen (U+000A). Type it again."},
           Row{"\rPlover", "U+000D",
               "The text holds a line break that cannot be seen (U+000D). Type it again."},
           Row{"Plo\u0085ver", "U+0085",
               "The text holds a line break that cannot be seen (U+0085). Type it again."},
           Row{"Plo\u2029ver", "U+2029",
               "The text holds a line break that cannot be seen (U+2029). Type it again."},
           Row{"Plo\u00ADver", "U+00AD",
               "The text holds a soft hyphen that cannot be seen (U+00AD). Type it again."},
           Row{"Plo\u200Bver", "U+200B",
               "The text holds a space without width that cannot be seen (U+200B). Type it again."},
           Row{"Plo\u202Ever", "U+202E",
               "The text holds a mark of the writing direction that cannot be seen (U+202E). Type it again."},
           Row{"\uFEFFPlover", "U+FEFF",
               "The text holds a byte order mark that cannot be seen (U+FEFF). Type it again."},
           Row{"Plo\U0010FFFFver", "U+10FFFF",
               "The text holds a code without a character that cannot be seen (U+10FFFF). Type it again."},
       }) {
    const auto refusal = refusedUnseen(row.text);
    ASSERT_TRUE(refusal) << row.number;
    EXPECT_EQ(idOf(refusal->code), "unseen-character");
    EXPECT_EQ(firstUnseen(row.text)->number, row.number);
    EXPECT_NE(std::string_view(row.text).find(refusal->typed), std::string_view::npos) << row.number;
    EXPECT_EQ(sentence(*refusal), row.sentence);
  }
}

TEST(UnseenText, isEveryCharacterOfTheListAndNoOther) {
  const auto between = [](char32_t c, char32_t first, char32_t last) { return c >= first && c <= last; };
  for (char32_t c = 0; c <= 0x10FFFF; ++c) {
    const bool listed = between(c, 0, 0x1F) || between(c, 0x7F, 0x9F) || c == 0xAD || c == 0x61C ||
                        c == 0x200B || c == 0x200E || c == 0x200F || between(c, 0x2028, 0x202E) ||
                        between(c, 0x2066, 0x2069) || c == 0xFEFF || between(c, 0xFDD0, 0xFDEF) ||
                        (c & 0xFFFFU) >= 0xFFFE;
    ASSERT_EQ(unseenKind(c).has_value(), listed) << std::hex << static_cast<unsigned>(c);
  }
}

// A flag and the hidden marks of formatting may stand in a text; where it is shown they are seen as nothing.
// An entry is words and figures: only what it would be read past counts there.
TEST(UnseenText, countsByWhereItStands) {
  struct Where {
    char32_t character;
    bool freeText, shown, entry;
  };
  for (const Where& row : {Where{U'a', false, false, false}, Where{0x09, true, true, false},
                           Where{0xAD, true, true, true}, Where{0x200C, false, false, true},
                           Where{0x206A, false, true, false}, Where{0xE007F, false, true, false},
                           Where{0xE0080, false, false, false}, Where{0x10FFFF, true, true, false}}) {
    EXPECT_EQ(isUnseen(row.character, UnseenIn::freeText), row.freeText) << unicodeNumber(row.character);
    EXPECT_EQ(isUnseen(row.character, UnseenIn::shownText), row.shown) << unicodeNumber(row.character);
    EXPECT_EQ(isUnseen(row.character, UnseenIn::entry), row.entry) << unicodeNumber(row.character);
  }
}

TEST(UnseenText, leavesEveryWritingAlone) {
  for (const char* text :
       {"", "Plover", "Ärger, naïve", "חוחית", "زقزاق", "می\u200Cخوش", "ਬਾਜ਼", "क्\u200Dष", "นกหัวโต",
        "Χαραδριός", "зуёк", "千鳥", "물떼새", "Plover – 5 % “new”", "🐦", "2\u00A0mg", "1\u2009000"})
    EXPECT_FALSE(refusedUnseen(text)) << text;
}

TEST(UnseenText, mayHaveLinesWhereSeveralAreWanted) {
  EXPECT_FALSE(refusedUnseen("one\ntwo\n", TextLines::several));
  for (const char* text : {"one\r\ntwo", "one\u2028two", "one\ttwo", "one\n\u202Etwo"})
    EXPECT_TRUE(refusedUnseen(text, TextLines::several)) << text;
}

TEST(UnseenText, isNamedWhereARefusedTextIsShown) {
  EXPECT_EQ(withUnseenNamed("mg\u202E52\x07"), "mg[U+202E]52[U+0007]");
  EXPECT_EQ(withUnseenNamed("חוחית 25 mg"), "חוחית 25 mg");
  const Refusal refusal{RefusalCode::unitUnknown, "gm\u202E\u2069", "\u2067mg", {}};
  EXPECT_EQ(sentence(refusal), "gm[U+202E][U+2069] is not a unit used here. Write [U+2067]mg.");
}

}  // namespace
}  // namespace wardchalk::unseen_text_test
