#include "core/practice/lines/syringe_answer.h"

#include <gtest/gtest.h>

#include <string>

namespace wardchalk::test::syringe_answer_test {
namespace {

std::string described(std::string_view text) {
  const auto read = readSyringeAnswer(text);
  if (!read) return "none";
  const auto number = [](const std::optional<Number>& value) {
    return value ? value->rationalText() : std::string("-");
  };
  return number(read->holds) + " holds " + number(read->drawnUp) + (read->fillsMore ? " more than once" : "");
}

struct Row {
  const char* text;
  const char* read;
};

TEST(SyringeAnswer, tellsTheSyringeFromWhatIsDrawnUp) {
  for (const Row& row : {
           Row{"10 mL syringe, draw up 8.4 mL", "10 holds 42/5"},
           Row{"8.4 mL in a 10 mL oral syringe", "10 holds 42/5"},
           Row{"8.4 mL (10 mL syringe)", "10 holds 42/5"},
           Row{"10-mL syringe, 8.4 mL", "10 holds 42/5"},
           Row{"10ml syringe, 8.4ml", "10 holds 42/5"},
           Row{"10 mL oral syringe\ndraw up 8.4 mL", "10 holds 42/5"},
           Row{"Use the 5 mL oral syringe and draw it up to the 5 mL mark", "5 holds 5"},
           Row{"60 mL syringe: 8.4 mL is under 60 mL", "60 holds 42/5"},
           Row{"1 mL syringe, filled twice: 2 mL", "1 holds 2 more than once"},
           Row{"1 mL oral syringe (marks 0.01 mL): 0.75 mL", "1 holds 3/4"},
           Row{"6.25 mL is between 6.2 and 6.4 mL on the 10 mL syringe, nearest 6.2 mL", "10 holds 31/5"},
           Row{"6.25 mL lies between 6.2 mL and 6.4 mL on the 10 mL syringe (0.2 mL apart): 6.2 mL.",
               "10 holds 31/5"},
           Row{"4 mL = 12 mL on the 5 mL syringe", "5 holds 12"},
           Row{"6 mL, not 5 mL, in the 10 mL syringe", "10 holds 6"},
           Row{"10 mL syringe", "10 holds -"},
           Row{"8.4 mL", "none"},
           Row{"a syringe", "none"},
           Row{"", "none"},
       })
    EXPECT_EQ(described(row.text), row.read) << row.text;
}

}  // namespace
}  // namespace wardchalk::test::syringe_answer_test
