#include "core/words/visible_text.h"

#include <gtest/gtest.h>

#include "core/number/unseen_text.h"

#include "tests/core/test_names.h"

namespace wardchalk::visible_text_test {
namespace {

struct Shown {
  const char* name;
  std::string text;
  std::string expected;
};

class VisibleText : public testing::TestWithParam<Shown> {};
TEST_P(VisibleText, isWhatATerminalShows) { EXPECT_EQ(visibleText(GetParam().text), GetParam().expected); }

INSTANTIATE_TEST_SUITE_P(
    Texts, VisibleText,
    testing::Values(Shown{"nothing", "", ""}, Shown{"plain", "Plover 2 mg/mL", "Plover 2 mg/mL"},
                    Shown{"letters of all scripts", "Ärger, m², ½, أبجد, 鸟, 🐦", "Ärger, m², ½, أبجد, 鸟, 🐦"},
                    Shown{"what joins letters", "a\u200Cb\u200Dc", "a\u200Cb\u200Dc"},
                    Shown{"lines and tabs", "a\n\tb\r\nc\n", "a\n\tb\r\nc\n"},
                    Shown{"a lone return", "SAFE\rUNSAFE", "SAFE\\u{0D}UNSAFE"},
                    Shown{"an escape sequence", "\x1B[2J\x1B]0;x\x07", "\\u{1B}[2J\\u{1B}]0;x\\u{07}"},
                    Shown{"NUL", std::string("a\0b", 3), "a\\u{00}b"}, Shown{"delete", "a\x7F", "a\\u{7F}"},
                    Shown{"backspaces", "9\b1", "9\\u{08}1"},
                    Shown{"the C1 way to begin a command", "\u009B31m", "\\u{9B}31m"},
                    Shown{"a bare C1 byte",
                          "a\x9B"
                          "31m",
                          "a\\x{9B}31m"},
                    Shown{"half a character", "a\xE2\x80", "a\\x{E2}\\x{80}"},
                    Shown{"an overlong escape", "\xC0\x9B", "\\x{C0}\\x{9B}"},
                    Shown{"right to left from here", "a\u202Egm 5\u202C", "a\\u{202E}gm 5\\u{202C}"},
                    Shown{"isolates of one direction", "\u2067a\u2069", "\\u{2067}a\\u{2069}"},
                    Shown{"marks", "\u200Ea\u200F\u061C", "\\u{200E}a\\u{200F}\\u{61C}"},
                    Shown{"an isolate of ours", "for \u2068أبجد\u2069: 5 mg", "for \u2068أبجد\u2069: 5 mg"},
                    Shown{"isolates within one another", "\u2068a\u2068b\u2069\u2069",
                          "\u2068a\u2068b\u2069\u2069"},
                    Shown{"an isolate that is not closed", "\u2068a: 5 mg", "\\u{2068}a: 5 mg"},
                    Shown{"one closed in the next line", "\u2068a\nb\u2069", "\\u{2068}a\nb\\u{2069}"},
                    Shown{"an end without its beginning", "a\u2069b", "a\\u{2069}b"},
                    Shown{"two open and one closed", "\u2068a\u2068b\u2069", "\\u{2068}a\u2068b\u2069"},
                    Shown{"what is not seen", "a\u00AD\u200B\uFEFFb", "a\\u{AD}\\u{200B}\\u{FEFF}b"},
                    Shown{"separators", "a\u2028b\u2029", "a\\u{2028}b\\u{2029}"},
                    Shown{"what is no character", "\uFDD0\uFFFF\U0001FFFE", "\\u{FDD0}\\u{FFFF}\\u{1FFFE}"},
                    Shown{"tags", "\U000E0041", "\\u{E0041}"}),
    test::NameOfRow());

TEST(VisibleLine, staysOneLine) {
  EXPECT_EQ(visibleLine("a\nwardchalk: done\tb\r\n"), "a\\u{0A}wardchalk: done\\u{09}b\\u{0D}\\u{0A}");
}

TEST(VisibleLine, showsEveryCharacterThatATerminalObeys) {
  for (char32_t code = 0; code < 0xA0; ++code) {
    const bool obeyed = code < 0x20 || code > 0x7E;
    EXPECT_EQ(isUnseen(code, UnseenIn::shownText), obeyed) << static_cast<unsigned>(code);
  }
}

}  // namespace
}  // namespace wardchalk::visible_text_test
