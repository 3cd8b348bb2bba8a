#include "core/practice/lines/answer_value.h"

#include <gtest/gtest.h>

#include <string_view>

// What a line ends in, and what a marker reads of the sides before.

namespace wardchalk::answer_value_test {
namespace {

StudentLine lineOf(std::string_view text, Gram meant = Gram::medicine) {
  ReadLine read = readStudentLine(text, meant);
  EXPECT_TRUE(std::holds_alternative<StudentLine>(read)) << text;
  return std::get<StudentLine>(std::move(read));
}

TEST(AnswerValue, keepsTheNumberAsTyped) {
  const AnswerValue answer = answerOf(lineOf("√(103 × 17.2 / 3600) ≈ 0.70 m²"));
  EXPECT_EQ(answer.value, Number::ratio(7, 10));
  EXPECT_EQ(answer.typed, "0.70");
  EXPECT_EQ(answer.decimals, 2);
  EXPECT_TRUE(answer.isAmount);
  EXPECT_TRUE(answer.hasUnits);
  EXPECT_EQ(answer.units, (Units{{Unit::m2}, {}}));
  EXPECT_EQ(answer.at, (Span{28, 36}));
}

TEST(AnswerValue, ofALineThatIsNotWorkedOutIsWhatItComesTo) {
  const AnswerValue answer = answerOf(lineOf("80 mg × 5 mL / 120 mg"));
  EXPECT_EQ(answer.value, Number::ratio(10, 3));
  EXPECT_FALSE(answer.isAmount);
  EXPECT_EQ(answer.typed, "");
  EXPECT_EQ(answer.decimals, -1);
  EXPECT_EQ(answer.units, (Units{{Unit::mL}, {}}));
}

TEST(AnswerValue, withoutAUnitSaysSo) {
  EXPECT_FALSE(answerOf(lineOf("120 mg/m² × 0.70 m² = 84")).hasUnits);
  EXPECT_TRUE(answerOf(lineOf("120 mg/m² × 0.70 m² = 84")).isAmount);
}

TEST(AnswerValue, countsDecimalsAsTheyAreTyped) {
  EXPECT_EQ(answerOf(lineOf("84 mg")).decimals, 0);
  EXPECT_EQ(answerOf(lineOf("3.30 mL")).decimals, 2);
  EXPECT_EQ(answerOf(lineOf("1,000.5 mg")).decimals, 1);
  EXPECT_EQ(answerOf(lineOf("50 mg/mL")).decimals, 0);
  EXPECT_EQ(answerOf(lineOf("2½ tablets")).decimals, -1);
  EXPECT_EQ(answerOf(lineOf("7 lb 8 oz")).decimals, -1);
}

TEST(StudentLine, keepsTheChainWithWhatCancels) {
  const StudentLine line = lineOf("80 mg × 5 mL / 120 mg = 3.33 mL");
  const LineSide& side = line.sides.front();
  ASSERT_EQ(side.chain.factors.size(), 2U);
  EXPECT_EQ(side.chain.factors[1].under.value, Number(120));
  ASSERT_EQ(side.product.pairs.size(), 1U);
  EXPECT_EQ(side.product.pairs[0].unit, Unit::mg);
  EXPECT_EQ(side.product.pairs[0].above, (Place{0, true, 0}));
  EXPECT_EQ(side.product.pairs[0].below, (Place{1, false, 0}));
  EXPECT_EQ(side.places[1].over, (Span{9, 13}));
  EXPECT_EQ(side.places[1].under, (Span{16, 22}));
  EXPECT_TRUE(line.links.front().aboutIsDue());
}

TEST(StudentLine, showsWhatIsLeftOfAChainUpsideDown) {
  const LineSide side = lineOf("80 mg × 120 mg/5 mL = 1,920 mL").sides.front();
  EXPECT_TRUE(sameUnits(side.product.left, {{Unit::mg, Unit::mg}, {Unit::mL}}));
}

TEST(StudentLine, ofARootKeepsTheExactRadicand) {
  const LineSide side = lineOf("√(103 cm × 17.2 kg ÷ 3600 cm·kg/m⁴)").sides.front();
  EXPECT_TRUE(side.chain.rooted);
  EXPECT_FALSE(side.exact);
  EXPECT_EQ(side.product.exact, Number::ratio(4429, 9000));
  EXPECT_EQ(side.value, side.product.exact.rootCut(20));
}

TEST(StudentLine, tellsWhichGramIsMeant) {
  struct Row {
    const char* line;
    Gram asked;
    Gram gram;
    bool unsure;
  };
  for (const Row& row : {
           Row{"3400 g", Gram::medicine, Gram::medicine, true},
           Row{"3400 g", Gram::child, Gram::child, true},
           Row{"3400 g = 3.4 kg", Gram::medicine, Gram::child, false},
           Row{"7 lb 8 oz = 3402 g", Gram::medicine, Gram::child, false},
           Row{"3400 g ÷ 1000 = 3.4 kg", Gram::medicine, Gram::child, false},
           Row{"3 kg 400 g", Gram::medicine, Gram::child, false},
           Row{"0.08 g = 80 mg", Gram::child, Gram::medicine, false},
           Row{"0.5 g + 500 mg × 1 g/1000 mg = 1,000 mg", Gram::child, Gram::medicine, false},
           Row{"0.5 g/kg × 15 kg = 7.5 g", Gram::medicine, Gram::medicine, true},
           Row{"0.5 g/kg × 15 kg = 7500 mg", Gram::child, Gram::medicine, false},
       }) {
    const StudentLine line = lineOf(row.line, row.asked);
    EXPECT_EQ(line.gram, row.gram) << row.line;
    EXPECT_EQ(line.gramUnsure, row.unsure) << row.line;
  }
  EXPECT_FALSE(lineOf("84 mg").gram.has_value());
}

TEST(StudentLine, spaceNeverMatters) {
  for (const char* line : {"120mg/m²×0.70m²=84mg", " 120 mg / m² × 0.70 m² = 84 mg ",
                           "120\tmg/m²\u00A0×\u2009 0.70 m²  =84 mg\n"}) {
    const StudentLine read = lineOf(line);
    EXPECT_EQ(read.sides.front().value, Number(84)) << line;
    EXPECT_EQ(read.links.front().units, UnitsMeet::same) << line;
  }
}

}  // namespace
}  // namespace wardchalk::answer_value_test
