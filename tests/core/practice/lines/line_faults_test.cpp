#include <gtest/gtest.h>

#include <string>

#include "core/practice/lines/practice_words.h"
#include "tests/core/practice/lines/described_line.h"

// Lines that cannot be read: the code, the place in brackets, and what to write instead where that is known.

namespace wardchalk::test::line_faults_test {
namespace {

struct Row {
  const char* line;
  const char* read;
};

TEST(LineFaults, areToldWithTheirPlace) {
  for (const Row& row : {
           Row{"", "empty []"},
           Row{" ", "empty []"},
           Row{"=", "side-missing [=]"},
           Row{"mg", "number-missing [mg]"},
           Row{"mg/m²", "number-missing [mg]"},
           Row{"mg/m²/dose", "number-missing [mg]"},
           Row{"/", "operand-missing [/]"},
           Row{"×", "operand-missing [×]"},
           Row{"+", "sign-here [+]"},
           Row{"-", "sign-here [-]"},
           Row{"√", "operand-missing [√]"},
           Row{"()", "operand-missing [(]"},
           Row{"(", "parenthesis-open [(]"},
           Row{")", "parenthesis-close [)]"},
           Row{"((", "parenthesis-open [(]"},
           Row{"((((5", "parenthesis-open [(]"},
           Row{"(5", "parenthesis-open [(]"},
           Row{"5)", "parenthesis-close [)]"},
           Row{"(5))", "parenthesis-close [)]"},
           Row{"(5 mg = 5 mg", "parenthesis-open [(]"},
           Row{"5 (mg", "number-missing [mg]"},
           Row{"[5", "parenthesis-open [[]"},
           Row{"5 mg mg", "unit-twice [mg mg]"},
           Row{"5 mg mL", "unit-twice [mg mL]"},
           Row{"5 mg kg × 2", "unit-twice [mg kg]"},
           Row{"5 5", "space-in-number [5 5]"},
           Row{"5 mg 5", "operator-missing [5]"},
           Row{"5 mg 5 mL", "operator-missing [5]"},
           Row{"120 mg 5 mL", "operator-missing [5]"},
           Row{"1 000 mg", "space-in-number [1 000]"},
           Row{"1 000 000 mg", "space-in-number [1 000 000]"},
           Row{"5 2 mg", "space-in-number [5 2]"},
           Row{"5 mg ½ tablet", "operator-missing [½]"},
           Row{"√-4", "sign-here [-]"},
           Row{"√−4", "sign-here [−]"},
           Row{"√ + 4", "sign-here [+]"},
           Row{"√mg", "number-missing [mg]"},
           Row{"√)", "parenthesis-close [)]"},
           Row{"√(4", "parenthesis-open [(]"},
           Row{"√(−4)", "sign-here [−]"},
           Row{"-5 mg", "sign-here [-]"},
           Row{"+5 mg", "sign-here [+]"},
           Row{"5 × -2", "sign-here [-]"},
           Row{"5 − −2", "sign-here [−]"},
           Row{"5 ÷ 0", "division-by-zero [0]"},
           Row{"5 ÷ 0 mL", "division-by-zero [0 mL]"},
           Row{"5 / 0", "division-by-zero [0]"},
           Row{"5/0.0", "division-by-zero [0.0]"},
           Row{"0/0", "division-by-zero [0]"},
           Row{"5 mg / (3 − 3)", "division-by-zero [(3 − 3)]"},
           Row{"5 ÷ (0 × 7)", "division-by-zero [(0 × 7)]"},
           Row{"5 mg × / 2", "operand-missing [/]"},
           Row{"5 × × 2", "operand-missing [×]"},
           Row{"5 ÷", "operand-missing [÷]"},
           Row{"5 mg /", "operand-missing [/]"},
           Row{"5 mg ×", "operand-missing [×]"},
           Row{"× 5", "operand-missing [×]"},
           Row{"÷ 5", "operand-missing [÷]"},
           Row{"/ 5", "operand-missing [/]"},
           Row{"5 +", "operand-missing [+]"},
           Row{"5 −", "operand-missing [−]"},
           Row{"+ 5", "sign-here [+]"},
           Row{"= 5", "side-missing [=]"},
           Row{"5 =", "side-missing [=]"},
           Row{"5 = = 5", "side-missing [=]"},
           Row{"5 = 6 =", "side-missing [=]"},
           Row{"5 == 5", "side-missing [=]"},
           Row{"5 => 5", "side-missing [>]"},
           Row{"5 ≤", "side-missing [≤]"},
           Row{"≤ 5", "side-missing [≤]"},
           Row{"5 = mg", "number-missing [mg]"},
           Row{"5 ≠ 6", "sign-unknown [≠]"},
           Row{"5 ± 1", "sign-unknown [±]"},
           Row{"5 → 6", "sign-unknown [→] ="},
           Row{"5 : 6", "sign-unknown [:]"},
           Row{"1:1000", "sign-unknown [:]"},
           Row{"5 %", "percent-here [%]"},
           Row{"1%", "percent-here [%]"},
           Row{"25-50 mg/kg", "below-zero [25-50 mg/kg]"},
           Row{"25–50 mg/kg/day", "below-zero [25–50 mg/kg/day]"},
           Row{"124.7 mg − 249.5 mg", "below-zero [124.7 mg − 249.5 mg]"},
           Row{"3 − 5", "below-zero [3 − 5]"},
           Row{"80 mg + 5 mL", "unlike-units [80 mg + 5 mL] mL"},
           Row{"80 mg − 5 mL", "unlike-units [80 mg − 5 mL] mL"},
           Row{"80 mg + 1 g", "unlike-units [80 mg + 1 g] g"},
           Row{"7 lb + 8 oz", "unlike-units [7 lb + 8 oz] oz"},
           Row{"5 mg/mL + 5 mg", "unlike-units [5 mg/mL + 5 mg] mg"},
           Row{"5 mg + 5 mg ÷ 5 mg", "unlike-units [5 mg + 5 mg ÷ 5 mg]"},
           Row{"5 mg/mg + 5 mL", "unlike-units [5 mg/mg + 5 mL] mL"},
           Row{"100 ÷ 2/5", "unclear-division [100 ÷ 2/5]"},
           Row{"100 ÷ 2 / 5", "unclear-division [100 ÷ 2 / 5]"},
           Row{"18 mL ÷ 30/60 h", "unclear-division [18 mL ÷ 30/60 h]"},
           Row{"80 mg ÷ 5 mL/2", "unclear-division [80 mg ÷ 5 mL/2]"},
           Row{"80 ÷ 120/5 mL", "unclear-division [80 ÷ 120/5 mL]"},
           Row{"80 mg/120 mg/5 mL", "unclear-division [80 mg/120 mg/5 mL]"},
           Row{"80 mg / 120 mg / 5 mL", "unclear-division [80 mg / 120 mg / 5 mL]"},
           Row{"240/2/3 mL", "unclear-division [240/2/3 mL]"},
           Row{"6/2(3)", "unclear-division [6/2(3)]"},
           Row{"6 ÷ 2(3)", "unclear-division [6 ÷ 2(3)]"},
           Row{"6/2(1 + 2)", "unclear-division [6/2(1 + 2)]"},
           Row{"80 mg/120 mg (5 mL)", "unclear-division [80 mg/120 mg (5 mL)]"},
           Row{"0,70 m²", "comma [0,70]"},
           Row{"1,5 mL", "comma [1,5]"},
           Row{"05 mg", "leading-zero [05]"},
           Row{"007 mg", "leading-zero [007]"},
           Row{"00.5 mg", "leading-zero [00.5]"},
           Row{"5. mL", "trailing-point [5.]"},
           Row{"1,50 mL", "comma [1,50]"},
           Row{"12,34 mg", "comma [12,34]"},
           Row{"1,0000 mg", "comma [1,0000]"},
           Row{"0,100 mg", "comma [0,100]"},
           Row{"1,00,000 mg", "comma [1,00,000]"},
           Row{"1,000,00 mg", "comma [1,000,00]"},
           Row{"1.000,5 mg", "comma [1.000,5]"},
           Row{"1.2.3 mg", "second-point [1.2.3]"},
           Row{"1..2 mg", "second-point [1..2]"},
           Row{"1e3 mg", "exponent [1e3]"},
           Row{"1E3", "exponent [1E3]"},
           Row{"2.5e-3 mg", "exponent [2.5e-]"},
           Row{"10^3 mg", "power-unknown [^]"},
           Row{"10² mg", "power-unknown [²]"},
           Row{"(5)²", "power-unknown [²]"},
           Row{"1234567890123456789012345678901 mg", "too-many-digits [1234567890123456789012345678901]"},
           Row{"1,234,567,890,123,456,789,012,345,678,901 mg",
               "too-many-digits [1,234,567,890,123,456,789,012,345,678,901]"},
           Row{"0.1234567890123456789012345678901", "too-many-digits [0.1234567890123456789012345678901]"},
           Row{"٣ mg", "other-digits [٣]"},
           Row{"५ mg", "other-digits [५]"},
           Row{"５ mg", "other-digits [５]"},
           Row{"5 µ", "word-unknown [µ]"},
           Row{"5 tsp", "unit-unsafe [tsp]"},
           Row{"2 teaspoons", "unit-unsafe [teaspoons]"},
           Row{"5 gr", "unit-unsafe [gr]"},
           Row{"5 ng", "unit-unsafe [ng]"},
           Row{"5 dL", "unit-other-size [dL] 100 mL"},
           Row{"50 mm", "unit-other-size [mm] 0.1 cm"},
           Row{"1 stone", "unit-other-size [stone] 14 lb"},
           Row{"5 mg/kg/d", "per-unclear [d]"},
           Row{"5 mg D", "per-unclear [D]"},
           Row{"80 mg QD", "schedule-here [QD]"},
           Row{"80 mg BID", "schedule-here [BID] 2 times a day"},
           Row{"80 mg q12h", "schedule-here [q]"},
           Row{"QOD", "schedule-here [QOD]"},
           Row{"5 foo", "word-unknown [foo]"},
           Row{"foo", "word-unknown [foo]"},
           Row{"84 mg safe", "word-unknown [safe]"},
           Row{"safe", "word-unknown [safe]"},
           Row{"5 mg every 12 h", "word-unknown [every]"},
           Row{"84 mg and 168 mg", "word-unknown [and]"},
           Row{"5 ft²3", "power-unknown [ft²3]"},
           Row{"5 m^", "power-unknown [m^]"},
           Row{"5 m^19", "power-unknown [m^19]"},
           Row{"5 m^25 mg", "power-unknown [m^25]"},
           Row{"5 m^120 mg", "power-unknown [m^120]"},
           Row{"5 m12", "power-unknown [m12]"},
           Row{"5 m^x", "power-unknown [m^]"},
           Row{"5 m^0", "power-unknown [m^]"},
           Row{"5 mg2", "power-unknown [mg2]"},
           Row{"5 kg3", "power-unknown [kg3]"},
           Row{"5 mg⁻¹", "sign-unknown [⁻]"},
           Row{"0·70 m²", "high-point [0·7]"},
           Row{"5 ⁴", "power-unknown [⁴]"},
           Row{"5 {mg}", "sign-unknown [{] ("},
           Row{"5 mg;", "sign-unknown [;]"},
           Row{"5 mg, 6 mg", "sign-unknown [,]"},
           Row{"5 mg?", "sign-unknown [?]"},
           Row{"5 mg!", "sign-unknown [!]"},
           Row{"5 $", "sign-unknown [$]"},
           Row{"5 € ", "sign-unknown [€]"},
           Row{"5 mg \\ 2", "sign-unknown [\\] /"},
           Row{"5 ✓", "sign-unknown [✓]"},
           Row{"😀", "sign-unknown [😀]"},
           Row{"5 mg 😀", "sign-unknown [😀]"},
           Row{"Ω", "sign-unknown [Ω]"},
           Row{"7.5 lb 8 oz", "part-not-whole [7.5 lb 8 oz]"},
           Row{"7 lb 16 oz", "part-too-large [7 lb 16 oz]"},
           Row{"7 lb 20 oz", "part-too-large [7 lb 20 oz]"},
           Row{"8 oz 7 lb", "parts-out-of-order [8 oz 7 lb]"},
           Row{"7 lb 8 lb", "parts-out-of-order [7 lb 8 lb]"},
           Row{"7 lb 8 cm", "operator-missing [8]"},
           Row{"7 lb 8 oz/day", "operator-missing [8]"},
           Row{"(5) mg mg", "unit-twice [mg mg]"},
           Row{"(5 mg) mg", "unit-twice [(5 mg) mg]"},
           Row{"(5 mg) 5", "operator-missing [5]"},
           Row{"(5)5", "operator-missing [5]"},
           Row{"1/2 3 mL", "space-in-number [2 3]"},
           Row{"5 mg per", "operand-missing [per]"},
           Row{"per 5 mg", "operand-missing [per]"},
           Row{"5 mg over", "operand-missing [over]"},
           Row{"5 in in", "operand-missing [in]"},
           Row{"divided 5", "word-unknown [divided]"},
           Row{"10 divided 5", "word-unknown [divided]"},
           Row{"square 5", "word-unknown [square]"},
           Row{"sq 5", "word-unknown [sq]"},
           Row{"x", "operand-missing [x]"},
           Row{"5 x", "operand-missing [x]"},
           Row{"x 5", "operand-missing [x]"},
           Row{"mg = 84", "number-missing [mg]"},
           Row{"mL: 3.33", "sign-unknown [:]"},
           Row{"BSA =", "side-missing [=]"},
           Row{"BSA = = 5", "side-missing [=]"},
           Row{"BSA", "word-unknown [BSA]"},
           Row{"dose =", "side-missing [=]"},
           Row{"((((((((((((((((((((((((((5))))))))))))))))))))))))))", "too-deep [(]"},
           Row{"√√√√√√√√√√√√√√√√√√√√√√√√√√√√√√√5", "too-deep [√]"},
       })
    EXPECT_EQ(describe(readStudentLine(row.line), row.line), row.read) << row.line;
}

LineFault faultOf(const std::string& line) {
  const ReadLine read = readStudentLine(line);
  const auto* fault = std::get_if<LineFault>(&read);
  return fault ? *fault : LineFault{LineFaultCode::empty, {}, "it was read", {}};
}

TEST(LineFaults, unlikeUnitsAreNamedOnBothSides) {
  const LineFault fault = faultOf("80 mg + 5 mL/h");
  EXPECT_EQ(fault.typed, "mg");
  EXPECT_EQ(fault.instead, "mL/h");
  EXPECT_EQ(sentence(faultOf("5 mg/mg + 5 mL")), sentence(faultOf("5 mL + 5 mg/mg")));
}

TEST(LineFaults, bytesThatAreNoTextAreToldWithTheirPlace) {
  for (const std::string bytes : {"\xFF", "\xC3", "\xE2\x88", "\x80", "\xC0\xAF", "\xF8\x88\x80\x80\x80"}) {
    const LineFault fault = faultOf("5 mg " + bytes);
    EXPECT_EQ(fault.code, LineFaultCode::notUtf8);
    EXPECT_EQ(fault.at, (Span{5, 6}));
  }
}

TEST(LineFaults, aLineIsNoLongerThanAThousandBytes) {
  EXPECT_EQ(faultOf(std::string(1000000, '1')).code, LineFaultCode::tooLong);
  EXPECT_EQ(faultOf(std::string(longestLine + 1, ' ')).code, LineFaultCode::tooLong);
  EXPECT_EQ(faultOf(std::string(longestLine, ' ')).code, LineFaultCode::empty);
  EXPECT_LE(faultOf(std::string(1000000, '1')).typed.size(), 64U);
}

TEST(LineFaults, theDeepestNestingIsRead) {
  const std::string open(deepestParentheses, '(');
  const std::string close(deepestParentheses, ')');
  EXPECT_TRUE(std::holds_alternative<StudentLine>(readStudentLine(open + "5" + close)));
  EXPECT_EQ(faultOf("(" + open + "5" + close + ")").code, LineFaultCode::tooDeep);
}

/// Each fault, and what may be left out of its sentence.
TEST(LineFaults, haveSentencesWithNothingLeftToFillIn) {
  for (std::size_t i = 0; i < lineFaultIds.size(); ++i)
    for (const char* instead : {"", "mL"}) {
      const std::string text = sentence({static_cast<LineFaultCode>(i), {}, "mg", instead});
      EXPECT_GT(text.size(), 20U);
      EXPECT_EQ(text.find_first_of("{}[]"), std::string::npos) << text;
    }
}

}  // namespace
}  // namespace wardchalk::test::line_faults_test
