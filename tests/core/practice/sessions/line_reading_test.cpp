#include "core/practice/sessions/line_reading.h"

#include <gtest/gtest.h>

#include "core/practice/marking/marking.h"
#include "core/practice/sessions/seat_code.h"
#include "tests/core/practice/marking/marking_cases.h"
#include "tests/support/practice_answers.h"

// How a line is read, told before it is marked; and the code of a seat.

namespace wardchalk::test::line_reading_test {
namespace {

using Kind = LineReading::Kind;

/// Texts as they stand in a field at some moment: whole, half written, and never to be read.
constexpr std::string_view texts[] = {
    "",
    "   ",
    "84 mg",
    "= 84 mg",
    " ≈ 0.70 m²",
    "400 mg ÷ 5 mL = 80 mg/mL",
    "400 mg ÷",
    "400 mg ÷ 5",
    "17,2 kg",
    "0.70",
    ".5 mL",
    "5.0 mL",
    "33 lb ÷ 2.2 = 15 kg",
    "7 lb 8 oz",
    "8 oz 7 lb",
    "do not measure",
    "hold",
    "owls",
    "10 mL syringe, draw up 8.4 mL",
    "draw up 8.4 mL",
    "38 in + 33 lb",
    "100 ÷ 2/5",
    "√(103 cm × 17.2 kg / 3600) = 0.70 m²",
    "5 mg QD",
    "x = 3.2 mL",
    "\xff",
};

TEST(LineReading, tellsWhatWasUnderstood) {
  const Problem problem = casePowder();
  struct Row {
    const char* line;
    const char* text;
    Kind kind;
    const char* said;
  };
  for (const Row& row : {
           Row{"give", "400 mg ÷ 5 mL = 80 mg/mL", Kind::read, "400 mg/5 mL = 80 mg/mL"},
           Row{"give", "= 84 mg", Kind::read, "84 mg"},
           Row{"give", "Give 9.2 mL IV", Kind::read, "9.2 mL"},
           Row{"give", "0.2 g = 200 mg; 200 mg × 3 mL / 150 mg = 4 mL", Kind::read,
               "0.2 g = 200 mg; 200 mg × 3 mL/150 mg = 4 mL"},
           Row{"give", "hold", Kind::read, "do not measure: ask first"},
           Row{"give", "", Kind::nothing, ""},
           Row{"give", "  ", Kind::nothing, ""},
           Row{"verdict", "unsafe", Kind::nothing, ""},
           Row{"give", "17,2 mL", Kind::unread,
               "17,2 has a comma where thousands have none. Decimals have a point."},
           Row{"give", "400 mg ÷", Kind::unread, "Something is missing beside ÷."},
       })
    EXPECT_EQ(readingOf(problem, askNamed(problem, row.line), row.text), (LineReading{row.kind, row.said}))
        << row.line << " " << row.text;
}

TEST(LineReading, tellsWhichSyringeWasUnderstood) {
  Problem problem = casePerDay();
  ask(problem, {"device"});
  EXPECT_EQ(readingOf(problem, 0, "8.4 mL in a 10-mL oral syringe").said,
            "syringe of 10 mL, 8.4 mL drawn up");
  EXPECT_EQ(readingOf(problem, 0, "10 mL syringe, filled twice").said,
            "syringe of 10 mL, filled more than once");
}

/// What is told and what is marked come from one reading: nobody is told that a line cannot be read which is
/// then marked, or the other way round.
TEST(LineReading, isTheMarkersOwn) {
  int unread = 0;
  for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
    for (const int level : {1, 3}) {
      const Problem problem = makeProblem(static_cast<Topic>(topic), level, 11, classroomRules());
      for (std::size_t line = 0; line < problem.asks.size(); ++line) {
        if (problem.asks[line].isVerdict()) continue;
        Marking marking(problem);
        for (const std::string_view text : texts) {
          const LineReading reading = readingOf(problem, line, text);
          const LineMark mark = marking.mark(line, text);
          const bool cannot = mark.fault && !isTry(mark.mark);
          EXPECT_EQ(reading.kind == Kind::unread, cannot) << topicIds[topic] << " " << line << " " << text;
          EXPECT_EQ(reading.kind == Kind::nothing && mark.mark != Mark::blank && !mark.fault, false)
              << topicIds[topic] << " " << line << " " << text;
          unread += cannot ? 1 : 0;
        }
        EXPECT_EQ(readingOf(problem, line, rightAnswer(problem, line)).kind, Kind::read);
      }
    }
  EXPECT_GT(unread, 100);
}

TEST(SeatCode, isACodeAndNeverAName) {
  for (const char* seat : {"1", "A7", "a7", "seat-4", "12345678", "7-", "2026-b"})
    EXPECT_TRUE(isSeatCode(seat)) << seat;
  for (const char* no : {"", " ", "Anna", "A", "A 7", "A7 ", " A7", "123456789", "A7,", "A\t7",
                         "Zo\xC3\xAB 3", "\xD9\xA3", "A7\n", "=A7", "Anna-Lena"})
    EXPECT_FALSE(isSeatCode(no)) << no;
}

}  // namespace
}  // namespace wardchalk::test::line_reading_test
