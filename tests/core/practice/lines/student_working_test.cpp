#include "core/practice/lines/student_working.h"

#include <gtest/gtest.h>

#include "core/practice/lines/answer_value.h"
#include "tests/core/practice/lines/described_line.h"

// What several statements, words around a line and proportions are read as.

namespace wardchalk::test::student_working_test {
namespace {

/// The lines that were read, in turn; "-" before how many statements were passed over.
std::string described(std::string_view text) {
  const ReadWorking read = readStudentWorking(text);
  if (const auto* fault = std::get_if<LineFault>(&read)) return describe(ReadLine(*fault), text);
  const auto& working = std::get<StudentWorking>(read);
  std::string all;
  for (const StudentLine& line : working.lines)
    all += (all.empty() ? "" : " ; ") + describe(ReadLine(line), text);
  if (!working.passedOver.empty()) all += " -" + std::to_string(working.passedOver.size());
  return all;
}

struct Row {
  const char* text;
  const char* read;
};

void expectRead(const Row& row) { EXPECT_EQ(described(row.text), row.read) << row.text; }

TEST(StudentWorking, severalStatements) {
  for (const Row& row : {
           Row{"240 mg / 3 mL = 80 mg/mL\n200 mg ÷ 80 mg/mL = 2.5 mL",
               "80 mg/mL | = | 80 mg/mL ; 5/2 mL | = | 5/2 mL"},
           Row{"0.2 g = 200 mg; 200 mg × 3 mL / 150 mg = 4 mL",
               "1/5 g | = converted | 200 mg ; 4 mL | = | 4 mL"},
           Row{"600 mg × 1 tablet\n÷ 200 mg = 3 tablets", "3 tablet | = | 3 tablet"},
           Row{"600 mg × 1 tablet ÷\n200 mg = 3 tablets", "3 tablet | = | 3 tablet"},
           Row{"12 mg/kg × 40 kg\n= 480 mg", "480 mg | = | 480 mg"},
           Row{"3 ft\n5 in", "41 in"},  // as it stands it is one height
           Row{"139.7 cm, 38.3 kg\n1.22 m²", "61/50 m2 -1"},
           Row{"why not; 4 mL", "4 mL -1"},
           Row{"4 mL; why not", "word-unknown [why]"},
           Row{"4 mL;\n\n", "4 mL"},
           Row{";", "sign-unknown [;]"},
           Row{"4 mL\n5 mL", "4 mL ; 5 mL"},
       })
    expectRead(row);
}

TEST(StudentWorking, proportions) {
  for (const Row& row : {
           Row{"80 mg : x mL = 25 mg : 1 mL", "16/5 mg·mL/mg ?"},
           Row{"80 mg : x mL = 25 mg : 1 mL; x = 3.2 mL", "16/5 mg·mL/mg ? ; x: 16/5 mL"},
           Row{"25 mg : 1 mL :: 80 mg : x mL\n25x = 80, x = 3.2 mL", "16/5 mL·mg/mg ? ; x: 16/5 mL -1"},
           Row{"50 mg/3 mL = 250 mg/x mL; x = 15 mL", "15 mL·mg/mg ? ; x: 15 mL"},
           Row{"1000 mg : 5 mL = x mg : 1 mL; x = 200 mg/mL", "200 mg·mL/mL ? ; x: 200 mg/mL"},
           Row{"x mL : 80 mg = 1 mL : 25 mg, x = 3.2 mL", "16/5 mg·mL/mg ? ; x: 16/5 mL"},
           // two unknowns, or none, are no proportion
           Row{"x mg : x mL = 25 mg : 1 mL", "sign-unknown [:]"},
           Row{"80 mg : 4 mL = 25 mg : 1 mL", "sign-unknown [:]"},
       }) {
    const std::string read = described(row.text);
    EXPECT_EQ(read.substr(0, 4), std::string(row.read).substr(0, 4)) << row.text << " " << read;
  }
}

TEST(StudentWorking, wordsAroundALine) {
  for (const Row& row : {
           Row{"Give 9.2 mL IV", "46/5 mL"},
           Row{"give 3 tablets by mouth", "3 tablet"},
           Row{"Measure 5.6 mL of Fieldfare", "28/5 mL"},
           Row{"I would give 4 mL of Teal", "4 mL"},
           Row{"not more than 40 mg per dose", "40 mg/dose"},
           Row{"Safe up to 872 units per day", "872 units/day"},
           Row{"min 12 mg per dose", "12 mg/dose"},
           Row{"set the pump to 80 mL/hr", "80 mL/h"},
           Row{"The child is 152.4 cm tall", "762/5 cm"},
           Row{"once clarified: 4.4 mL", "once clarified: 22/5 mL"},
           Row{"If the prescriber agrees, 4.4 mL", "22/5 mL"},
           Row{"124 units TID", "124 units"},
           Row{"124 units q8h", "124 units"},
           Row{"124 units every 8 h", "124 units"},
           Row{"D/H × Q = 80 mg / 25 mg × 1 mL = 3.2 mL", "16/5 mL | = | 16/5 mL"},
           Row{"want 80 mg, got 25 mg in 1 mL: 80 ÷ 25 × 1 = 3.2 mL", "16/5 bare | = bare | 16/5 mL"},
           Row{"three tablets", "3 tablet"},
           Row{"two and a half tablets", "5/2 tablet"},
           Row{"half a tablet", "1/2 tablet"},
           Row{"One tablet", "1 tablet"},
           // what says no, or anything else, is never passed over
           Row{"do not give 4 mL", "word-unknown [do]"},
           Row{"not 4 mL", "word-unknown [not]"},
           Row{"give 4 mL less", "word-unknown [give]"},
           Row{"give 4 mL or 5 mL", "word-unknown [give]"},
           Row{"80 mg QD", "schedule-here [QD]"},
           Row{"3 spoons", "word-unknown [spoons]"},
       })
    expectRead(row);
}

TEST(StudentWorking, whatIsSaidAroundASumIsPassedOver) {
  for (const Row& row : {
           // words before and behind
           Row{"wt 11.82 kg", "591/50 kg"},
           Row{"pump speed 15.05 mL/h", "301/20 mL/h"},
           Row{"bag must hold 100 mL", "100 mL"},
           Row{"5.6 mL (checked)", "28/5 mL"},
           Row{"5.6 mL - done", "28/5 mL"},
           Row{"5.6 mL!", "28/5 mL"},
           Row{"→ 5.6 mL", "28/5 mL"},
           Row{"705 (I think)", "705 bare"},
           Row{"surface area 0.57 m2", "57/100 m2"},
           Row{"a 42.5 kg child", "85/2 kg"},
           Row{"40 mg × 2 = 80 mg (sorry, messy)", "80 mg partly | = | 80 mg"},
           // words that join a sum and its result
           Row{"40 mg × 2 gives 80 mg", "80 mg partly | = | 80 mg"},
           Row{"40 mg × 2 → 80 mg", "80 mg partly | = | 80 mg"},
           Row{"I did 40 mg × 2 and got 80 mg", "80 mg partly | = | 80 mg"},
           Row{"40 mg times 2 is 80 mg", "80 mg partly | = | 80 mg"},
           // the answer first
           Row{"80 mg (40 mg × 2)", "80 mg partly ; 80 mg"},
           Row{"80 mg, from 40 mg × 2", "80 mg partly ; 80 mg"},
           Row{"80 mg = 40 mg × 2", "80 mg partly ; 80 mg"},
           Row{"0.4 g because 400 mg moves three places", "2/5 g"},
           // what only comments on an answer, or tries it
           Row{"4 mL (100 mg in 2 mL on the label)", "4 mL"},
           Row{"80 mg, check: 80 mg ÷ 20 kg = 4 mg/kg", "80 mg"},
           Row{"2100 / 250: 8 x 250 = 2000, rest 100; 100 / 250 = 0.4; 8.4 mL", "42/5 bare ; 42/5 mL"},
       })
    expectRead(row);
}

TEST(StudentWorking, whatChangesTheMeaningIsNeverPassedOver) {
  for (const char* text : {"not 80 mg",
                           "certainly not 80 mg",
                           "80 or 90 mg",
                           "either 80 mg",
                           "less than 80 mg",
                           "more than 80 mg",
                           "80 mg?",
                           "maybe 80 mg",
                           "80 mg twice",
                           "half 80 mg",
                           "hold 4 mL",
                           "don't give 4 mL",
                           "don’t give 4 mL",
                           "4 mL (not given)",
                           "two tablets of 5 mg",
                           "4 millilitters",
                           "3 spoons",
                           "80 mq",
                           "80 mg QD",
                           "QD dose 80 mg",
                           "80 to 90 mg",
                           "80 mg and 90 mg",
                           "4 mL (5 mL)",
                           "never 2 × 2 = 4 mL is it",
                           "discard 4 mL",
                           "-80 mg",
                           "no idea 4 mL",
                           "between 3 and 4 mL"})
    EXPECT_TRUE(std::holds_alternative<LineFault>(readStudentWorking(text)) ||
                !answerOf(std::get<StudentWorking>(readStudentWorking(text)).answerLine()).isAmount)
        << text << ": " << described(text);
}

TEST(StudentWorking, rootAndSlashes) {
  for (const Row& row : {
           Row{"(36 × 4)^0.5 = 12", "12 bare | = bare | 12 bare"},
           Row{"(36 × 4)^(1/2) = 12", "12 bare | = bare | 12 bare"},
           Row{"(36 × 4)^2 = 12", "power-unknown [^]"},
           Row{"70 mg / 200 mg / 4 mL = 1.4 mL", "unclear-division [70 mg / 200 mg / 4 mL]"},
           Row{"70 mg / 200 mg / 4 mL", "unclear-division [70 mg / 200 mg / 4 mL]"},
       })
    expectRead(row);
}

TEST(StudentWorking, slashesAreReadFromLeftToRightWhereTheResultSaysSo) {
  const ReadWorking read = readStudentWorking("70 mg / 200 mg / 4 mL = 0.0875 mL");
  ASSERT_TRUE(std::holds_alternative<StudentWorking>(read));
  EXPECT_EQ(std::get<StudentWorking>(read).workedSide()->value, Number::ratio(7, 80));
}

TEST(StudentWorking, placesAreThoseInTheWholeText) {
  const std::string text = "0.2 g = 200 mg; 3.0 mL";
  const ReadWorking read = readStudentWorking(text);
  const auto& working = std::get<StudentWorking>(read);
  const LineRemark& remark = working.lines.back().remarks.front();
  EXPECT_EQ(text.substr(remark.at.begin, remark.at.end - remark.at.begin), "3.0");
  const LineFault fault = std::get<LineFault>(readStudentWorking("4 mL; 3 spoons"));
  EXPECT_EQ(fault.at.begin, 8U);
}

TEST(StudentWorking, anyBytesAreAnswered) {
  for (const std::string& text :
       {std::string("\xFF;\n"), std::string("x:x=x:x"), std::string("::="), std::string(", x ="),
        std::string(";;;\n\n"), std::string("every every every q q8"), std::string("min min")})
    EXPECT_FALSE(described(text).empty());
  EXPECT_TRUE(std::holds_alternative<LineFault>(readStudentWorking("")));
}

}  // namespace
}  // namespace wardchalk::test::student_working_test
