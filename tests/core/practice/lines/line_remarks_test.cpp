#include <gtest/gtest.h>

#include <string>

#include "core/practice/lines/practice_words.h"
#include "tests/core/practice/lines/described_line.h"

// What is understood and should be written otherwise, with its place and the safe form.
// Sources of what is unsafe: ISMP List of Error-Prone Abbreviations; Joint Commission "Do Not Use" list.

namespace wardchalk::test::line_remarks_test {
namespace {

struct Row {
  const char* line;
  const char* read;
};

std::string remarksOf(const std::string& line) {
  const ReadLine read = readStudentLine(line);
  const auto* found = std::get_if<StudentLine>(&read);
  if (!found) return describe(read, line);
  std::string all;
  for (const LineRemark& remark : found->remarks)
    all.append(all.empty() ? "" : "; ").append(describe(remark, line));
  return all;
}

TEST(LineRemarks, nameTheSafeForm) {
  for (const Row& row : {
           Row{"5 mg", ""},
           Row{"0.70 m²", ""},
           Row{"0.70", "trailing-zero [0.70] 0.7 bare"},
           Row{"0.70 × 120", "trailing-zero [0.70] 0.7 bare"},
           Row{"3.0 mL", "trailing-zero [3.0] 3"},
           Row{"3.0", "trailing-zero [3.0] 3 bare"},
           Row{"10 mg", ""},
           Row{"100 mg", ""},
           Row{"1,000 mg", "other-spelling [1,000] 1000"},
           Row{"1,000.0 mg", "other-spelling [1,000.0] 1000; trailing-zero [1,000.0] 1000"},
           Row{"0.0 mL", "trailing-zero [0.0] 0"},
           Row{"2.50 mL", "trailing-zero [2.50] 2.5"},
           Row{"2.50 mL/h", "trailing-zero [2.50] 2.5"},
           Row{"0.70 m² × 120.0 mg/m²", "trailing-zero [120.0] 120"},
           Row{"1.0 m⁴/(3,600 cm·kg)", "other-spelling [3,600] 3600"},
           Row{".6 mL", "no-leading-zero [.6] 0.6"},
           Row{".60 mL", "no-leading-zero [.60] 0.6; trailing-zero [.60] 0.6"},
           Row{".0 mL", "no-leading-zero [.0] 0; trailing-zero [.0] 0"},
           Row{"5 mL.", ""},
           Row{"5 U", "unsafe-spelling [U] units"},
           Row{"5 u", "unsafe-spelling [u] units"},
           Row{"5 IU", "unsafe-spelling [IU] units"},
           Row{"5 iu", "unsafe-spelling [iu] units"},
           Row{"5 I.U.", "unsafe-spelling [I.U.] units"},
           Row{"5 µg", "unsafe-spelling [µg] mcg"},
           Row{"5 μg", "unsafe-spelling [μg] mcg"},
           Row{"5 ug", "unsafe-spelling [ug] mcg"},
           Row{"5 mcgm", "unsafe-spelling [mcgm] mcg"},
           Row{"5 cc", "unsafe-spelling [cc] mL"},
           Row{"5 CC", "unsafe-spelling [CC] mL"},
           Row{"5 ccm", "unsafe-spelling [ccm] mL"},
           Row{"12 gtt/min", "other-spelling [gtt] drops"},
           Row{"12 gtts/min", "other-spelling [gtts] drops"},
           Row{"12 Gtt/min", "other-spelling [Gtt] drops"},
           Row{"20 drops/mL", ""},
           Row{"36 mL/hr", "other-spelling [hr] h"},
           Row{"36 mL/h", ""},
           Row{"36 mL/hour", ""},
           Row{"30 mins", ""},
           Row{"30 minutes", ""},
           Row{"5 ml", ""},
           Row{"5 ML", ""},
           Row{"5 mls", ""},
           Row{"5 Mg", "unit-unsafe [Mg]"},
           Row{"5 milligrams", ""},
           Row{"5 millilitres", ""},
           Row{"5 milliliters", ""},
           Row{"5 microgram", ""},
           Row{"1 gm", "unit-unsafe [gm]"},
           Row{"1 gram", ""},
           Row{"17 kgs", ""},
           Row{"17 Kg", ""},
           Row{"37 lbs", ""},
           Row{"37 #", "other-spelling [#] lb"},
           Row{"37 pounds", ""},
           Row{"38\"", "other-spelling [\"] in"},
           Row{"38 inches", ""},
           Row{"0.7 sq m", "other-spelling [sq m] m²"},
           Row{"0.7 sq. m", "other-spelling [sq. m] m²"},
           Row{"0.7 m^2", "other-spelling [m^2] m²"},
           Row{"0.7 m2", ""},
           Row{"0.7 square metres", ""},
           Row{"2 tabs", "other-spelling [tabs] tablet"},
           Row{"2 tablets", ""},
           Row{"2 caps", "other-spelling [caps] capsule"},
           Row{"5 mg/kg/wk", "other-spelling [wk] week"},
           Row{"4 yrs 2 mos", "other-spelling [yrs] year; other-spelling [mos] month"},
           Row{"5 hr.", "other-spelling [hr] h"},
           Row{"5 mL/hr.", "other-spelling [hr] h"},
           Row{".6 mL = 3.0 cc", "no-leading-zero [.6] 0.6; trailing-zero [3.0] 3; unsafe-spelling [cc] mL"},
           Row{"√(103 × 17.20 / 3600) = .70 m2",
               "trailing-zero [17.20] 17.2 bare; no-leading-zero [.70] 0.70"},
       })
    EXPECT_EQ(remarksOf(row.line), row.read) << row.line;
}

TEST(LineRemarks, belongToTheMistakesOfTheList) {
  EXPECT_EQ(infoOf(LineRemarkCode::trailingZero).error, "E44");
  EXPECT_EQ(infoOf(LineRemarkCode::noLeadingZero).error, "E45");
  EXPECT_EQ(infoOf(LineRemarkCode::unsafeSpelling).error, "E47");
  EXPECT_EQ(infoOf(LineRemarkCode::otherSpelling).error, "");
}

TEST(LineRemarks, haveSentences) {
  for (std::size_t i = 0; i < lineRemarkTable.size(); ++i) {
    const LineRemark remark{static_cast<LineRemarkCode>(i), {}, "hr", "h"};
    const std::string text = sentence(remark);
    EXPECT_EQ(text.rfind("hr ", 0), 0U) << text;
    EXPECT_TRUE(text.ends_with(" h.")) << text;
  }
}

}  // namespace
}  // namespace wardchalk::test::line_remarks_test
