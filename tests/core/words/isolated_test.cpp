#include "core/words/isolated.h"

#include <gtest/gtest.h>
#include <utf8proc.h>

#include "core/words/phrasebook.h"
#include "core/words/text_block.h"

namespace wardchalk::isolated_test {
namespace {

struct Row {
  const char* name;
  const char* text;
  const char* isolated;
};

TEST(Isolated, isWhatRunsFromTheRightAndNothingElse) {
  for (const Row& row : {
           Row{"nothing", "", ""},
           Row{"Latin", "Plover, naïve – 5 %", "Plover, naïve – 5 %"},
           Row{"figures and signs", "≈ 25 mg in 1 mL · ½ m² ≤ 84", "≈ 25 mg in 1 mL · ½ m² ≤ 84"},
           Row{"Greek", "Χαραδριός", "Χαραδριός"},
           Row{"Cyrillic", "зуёк", "зуёк"},
           Row{"Devanagari", "टिटहरी", "टिटहरी"},
           Row{"Thai", "นกหัวโต", "นกหัวโต"},
           Row{"Japanese", "千鳥", "千鳥"},
           Row{"Korean", "물떼새", "물떼새"},
           Row{"Hebrew", "חוחית", "\u2068חוחית\u2069"},
           Row{"Arabic", "زقزاق", "\u2068زقزاق\u2069"},
           Row{"Persian with a joiner", "می\u200Cخوش", "\u2068می\u200Cخوش\u2069"},
           Row{"Syriac", "ܨܦܪܐ", "\u2068ܨܦܪܐ\u2069"},
           Row{"Thaana", "ދޫނި", "\u2068ދޫނި\u2069"},
           Row{"N'Ko", "ߞߣߐ", "\u2068ߞߣߐ\u2069"},
           Row{"Adlam, beyond the first plane", "𞤌𞤮𞤤", "\u2068𞤌𞤮𞤤\u2069"},
           Row{"Arabic digits alone", "٢٥", "\u2068٢٥\u2069"},
           Row{"mixed, Latin first", "ABC אבג 5 mg", "ABC \u2068אבג\u2069 5 mg"},
           Row{"one letter at the end", "Plover א", "Plover \u2068א\u2069"},
           Row{"Latin first, a figure among the letters", "list אבג 5 דהו 6 mg",
               "list \u2068אבג 5 דהו\u2069 6 mg"},
           Row{"Latin between", "a אב b גד c", "a \u2068אב\u2069 b \u2068גד\u2069 c"},
           Row{"points on the last letter", "Plover בָּ 5", "Plover \u2068בָּ\u2069 5"},
           Row{"from the right first", "אבג 5 mg", "\u2068אבג 5 mg\u2069"},
           Row{"from the right first, and mostly Latin",
               "אבג, oral: Ward list, p. 4; checked by דהו, 2026-02-01",
               "\u2068אבג\u2069, oral: Ward list, p. 4; checked by \u2068דהו\u2069, 2026-02-01"},
           Row{"figure first", "5 אבג", "\u20685 אבג\u2069"},
           Row{"isolated already", "for \u2068חוחית\u2069 now", "for \u2068חוחית\u2069 now"},
           Row{"isolated in part", "\u2068חוחית\u2069 שלום", "\u2068\u2068חוחית\u2069 שלום\u2069"},
       })
    EXPECT_EQ(isolated(row.text), row.isolated) << row.name;
}

TEST(Isolated, isSafeFromWhatIsNoUtf8) { EXPECT_EQ(isolated("\xD7\xFF\xE2 25 mg"), "\xD7\xFF\xE2 25 mg"); }

std::string utf8Of(char32_t code) {
  std::string bytes(4, '\0');
  const auto size = utf8proc_encode_char(static_cast<utf8proc_int32_t>(code),
                                         reinterpret_cast<utf8proc_uint8_t*>(bytes.data()));
  bytes.resize(static_cast<std::size_t>(size));
  return bytes;
}

/// Nearly every text is let through by a look at its bytes; a sign that has no direction and is not let
/// through (U+FFFC) has the whole text looked at.
TEST(Isolated, isFoundInEveryCharacterByALookAtItsBytes) {
  for (char32_t code = 0x20; code < 0x110000; ++code) {
    if (code >= 0xD800 && code < 0xE000) continue;
    const std::string character = utf8Of(code);
    const bool marked = isolated(character) != character;
    const std::string lookedAt = character + "\uFFFC";
    ASSERT_EQ(marked, isolated(lookedAt) != lookedAt) << std::hex << static_cast<unsigned>(code);
  }
}

TEST(Isolated, canBeTakenOffAgain) {
  EXPECT_EQ(withoutIsolates(isolated("חוחית") + " 25 mg"), "חוחית 25 mg");
  EXPECT_EQ(withoutIsolates("Plover – 25 mg"), "Plover – 25 mg");
}

TEST(Isolated, eachLineOfABrokenTextIsWhole) {
  IsolatesOfLines lines;
  EXPECT_EQ(lines.next("Label must read: \u2068אבג"), "Label must read: \u2068אבג\u2069");
  EXPECT_EQ(lines.next("דהו זחט"), "\u2068דהו זחט\u2069");
  EXPECT_EQ(lines.next("יכל\u2069 25 mg"), "\u2068יכל\u2069 25 mg");
  EXPECT_EQ(lines.next("in 1 mL"), "in 1 mL");
  IsolatesOfLines stray;
  EXPECT_EQ(stray.next("a\u2069 b"), "a\u2069 b");
}

TEST(Isolated, isEveryFillingOfASentence) {
  const Filling fillings[] = {{"medicine", "חוחית"}, {"strength", "25 mg in 1 mL"}};
  EXPECT_EQ(fill("Label must read: {medicine} {strength}", fillings),
            "Label must read: \u2068חוחית\u2069 25 mg in 1 mL");
  const Filling nested[] = {{"run", fill("{medicine}, {strength}", fillings)}};
  EXPECT_EQ(fill("Run: {run}.", nested), "Run: \u2068חוחית\u2069, 25 mg in 1 mL.");
}

TEST(Isolated, takesNoRoomInALineOfATerminal) {
  EXPECT_EQ(columns("\u2068אבג\u2069 5"), 5U);
  EXPECT_EQ(wrapped("\u2068אבג דהו\u2069 25 mg", 8, "- ", "  "), "- \u2068אבג דהו\u2069\n  25 mg");
  EXPECT_EQ(wrapped("\u2068אבג דהו\u2069 25 mg", 3, ""), "\u2068אבג\u2069\n\u2068דהו\u2069\n25\nmg");
}

}  // namespace
}  // namespace wardchalk::isolated_test
