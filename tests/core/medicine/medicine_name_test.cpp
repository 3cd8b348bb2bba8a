#include "core/medicine/medicine_name.h"

#include <gtest/gtest.h>
#include <malloc.h>

#include <string>

#include "tests/core/test_names.h"

// Which names are one medicine (R13): what does not count in a name, and what does.

namespace wardchalk::medicine_name_test {
namespace {

struct Row {
  const char* name;
  std::string one;
  std::string other;
  bool same;
};

class MedicineNames : public testing::TestWithParam<Row> {};

TEST_P(MedicineNames, areOneWhereOnlyTheWritingDiffers) {
  const Row& row = GetParam();
  EXPECT_EQ(isSameMedicine(row.one, row.other), row.same);
  EXPECT_EQ(isSameMedicine(row.other, row.one), row.same);
}

INSTANTIATE_TEST_SUITE_P(
    DoNotCount, MedicineNames,
    testing::Values(Row{"nothing", "Plover", "Plover", true}, Row{"capitals", "Plover", "PLOVER", true},
                    Row{"blanks around", "  Plover ", "Plover", true},
                    Row{"runs of blanks", "Grey   Plover", "Grey Plover", true},
                    Row{"a tab", "Grey\tPlover", "Grey Plover", true},
                    Row{"the end of a line", "Grey\rPlover\r", "Grey Plover", true},
                    Row{"no-break and thin blanks", "Grey\u00A0\u2009Plover", "Grey Plover", true},
                    Row{"ideographic blank", "Grey\u3000Plover", "Grey Plover", true},
                    Row{"an accent, composed", "Gr\u00E8be", "Grebe", true},
                    Row{"an accent, apart", "Gre\u0300be", "Gr\u00E8be", true},
                    Row{"an accent on the last letter", "Bu\u017Ezard", "Buzzard", true},
                    Row{"several accents", "E\u0323\u0301rn", "ern", true},
                    Row{"an enclosing mark", "A\u20DDuk", "auk", true},
                    Row{"a Greek accent", "\u03AC\u03BB\u03C6\u03B1", "\u0391\u039B\u03A6\u0391", true},
                    Row{"a final sigma", "\u03BA\u03CD\u03BA\u03BD\u03BF\u03C2",
                        "\u039A\u03A5\u039A\u039D\u039F\u03A3", true},
                    Row{"an iota below", "\u1FB3\u03BC\u03B1", "\u03B1\u03BC\u03B1", true},
                    Row{"a Cyrillic accent", "\u0447\u0438\u0431\u0438\u0441\u0439",
                        "\u0427\u0418\u0411\u0418\u0421\u0418", true},
                    Row{"a sharp s in capitals", "Strau\u00DF", "STRAUSS", true},
                    Row{"a capital i with a point", "\u0130bis", "ibis", true},
                    Row{"the sign of kelvin", "\u212Aiwi", "kiwi", true},
                    Row{"a soft hyphen", "Plo\u00ADver", "Plover", true},
                    Row{"a joiner", "Plo\u200Dver", "Plover", true},
                    Row{"a joiner within blanks", "Grey \u2060 Plover", "Grey Plover", true},
                    Row{"a choice of form", "Plover\uFE0F", "Plover", true},
                    Row{"an ignored filler", "Plover\u3164", "Plover", true},
                    Row{"the order of marks", "\u05E9\u05C1\u05BC", "\u05E9\u05BC\u05C1", true},
                    Row{"Hangul apart", "\uD55C", "\u1112\u1161\u11AB", true}),
    test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(DoCount, MedicineNames,
                         testing::Values(Row{"another name", "Plover", "Heron", false},
                                         Row{"a beginning", "Plover", "Plove", false},
                                         Row{"a word more", "Plover", "Plover XR", false},
                                         Row{"one blank", "Greyplover", "Grey plover", false},
                                         Row{"a hyphen", "Grey-Plover", "Grey Plover", false},
                                         Row{"a figure", "Plover 10", "Plover 100", false},
                                         Row{"a raised figure", "Plover\u00B2", "Plover2", false},
                                         Row{"a figure in a ring", "Plover \u2461", "Plover 2", false},
                                         Row{"full width", "\uFF37\uFF32\uFF25\uFF2E", "Wren", false},
                                         Row{"a letter in bold", "\U0001D400uk", "Auk", false},
                                         Row{"a ligature", "Goldfinch", "Gold\uFB01nch", false},
                                         Row{"a long s", "\u017Fwan", "swan", false},
                                         Row{"the sign of micro", "\u00B5", "\u03BC", false},
                                         Row{"a dotless i", "\u0131bis", "ibis", false},
                                         Row{"an i without its point", "IBIS", "\u0131bis", false},
                                         Row{"a letter of its own", "\u00D8rn", "Orn", false},
                                         Row{"a barred l", "\u0142abed", "labed", false},
                                         Row{"Greek for Latin", "\u0391uk", "Auk", false},
                                         Row{"Cyrillic for Latin", "\u0410uk", "Auk", false},
                                         Row{"an Indic vowel", "\u0915\u093E", "\u0915", false},
                                         Row{"an Indic nasal", "\u0915\u0902", "\u0915", false},
                                         Row{"a Hebrew point", "\u05E9\u05C1", "\u05E9", false},
                                         Row{"an Arabic mark", "\u0628\u064E", "\u0628", false},
                                         Row{"a Japanese voicing", "\u304C", "\u304B", false},
                                         Row{"a Coptic mark", "\u03E3\u0304", "\u03E3", false}),
                         test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(StateNothing, MedicineNames,
                         testing::Values(Row{"nothing and nothing", "", "", false},
                                         Row{"blanks", " ", " ", false},
                                         Row{"nothing and a name", "", "Plover", false},
                                         Row{"ignored characters alone", "\u200D", "\u200D", false},
                                         Row{"no-break blanks", "\u00A0", "", false},
                                         Row{"no UTF-8", "a\xFF", "a\xFF", false},
                                         Row{"a mark on nothing", "\u0301", "\u0301", true}),
                         test::NameOfRow());

TEST(MedicineNames, arePartedBySemicolons) {
  using Names = std::vector<std::string>;
  EXPECT_EQ(medicineNames("Plover"), Names{"Plover"});
  EXPECT_EQ(medicineNames(" Grey Plover ;Dotterel"), (Names{"Grey Plover", "Dotterel"}));
  EXPECT_EQ(medicineNames("Plover;; ;\u00A0;Dotterel;"), (Names{"Plover", "Dotterel"}));
  EXPECT_EQ(medicineNames(";"), Names{});
  EXPECT_EQ(medicineNames(""), Names{});
  EXPECT_EQ(medicineNames("Plover, grey"), Names{"Plover, grey"});
}

Reference referenceFor(const std::string& medicine, std::vector<std::string> alsoCalled) {
  Reference reference;
  reference.medicine = medicine;
  reference.alsoCalled = std::move(alsoCalled);
  return reference;
}

TEST(MedicineNames, ofAReferenceAreItsOwnAndTheOthers) {
  const Reference reference = referenceFor("Plover", {"Dotterel", "Grey Plover"});
  for (const char* name : {"plover", "DOTTEREL", "grey plover"}) EXPECT_TRUE(isFor(reference, name)) << name;
  for (const char* name : {"Heron", "Grey", "", " "}) EXPECT_FALSE(isFor(reference, name)) << name;
}

TEST(MedicineNames, ofAReferenceAreToldByTheFirst) {
  EXPECT_EQ(medicineOf(referenceFor("Plover", {"Dotterel"})), "Plover");
  EXPECT_EQ(medicineOf(referenceFor("Plover", {})), "Plover");
  EXPECT_EQ(medicineOf(referenceFor("", {"Dotterel", "Heron"})), "Dotterel");
  EXPECT_EQ(medicineOf(referenceFor(" ", {"Dotterel"})), "Dotterel");
  EXPECT_EQ(medicineOf(referenceFor("", {})), "");
}

/// A list of some thousand references is gone through with each name that is typed.
TEST(MedicineNames, keepNoMemory) {
  const auto keysMade = [](int times) {
    std::size_t letters = 0;
    for (int i = 0; i < times; ++i) letters += medicineKey("Gr\u00E8be").size();
    return letters;
  };
  ASSERT_EQ(keysMade(1), 5U);
  const std::size_t before = mallinfo2().uordblks;
  ASSERT_EQ(keysMade(1000), 5000U);
  EXPECT_LT(mallinfo2().uordblks, before + 1000);
}

}  // namespace
}  // namespace wardchalk::medicine_name_test
