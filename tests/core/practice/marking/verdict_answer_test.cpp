#include "core/practice/marking/verdict_answer.h"
#include "core/practice/marking/nothing_measured.h"

#include <gtest/gtest.h>

#include <array>
#include <string>

// What a verdict in a student's words is read as: its word, in parentheses where only the reason says it, the
// reason, and whether it compares two amounts.

namespace wardchalk::test::verdict_answer_test {
namespace {

std::string described(std::string_view text) {
  constexpr std::array<std::string_view, 4> words = {"safe", "ask", "unsafe", "does not fit"};
  constexpr std::array<std::string_view, 8> reasons = {"low", "high",  "maximum",      "schedule",
                                                       "age", "route", "concentrated", "fast"};
  const auto read = readVerdictAnswer(text);
  if (!read) return "unread";
  std::string told(words[static_cast<std::size_t>(read->word)]);
  if (!read->wordSaid) told = "(" + told + ")";
  if (read->reason) told.append(" ").append(reasons[static_cast<std::size_t>(*read->reason)]);
  return told + (read->compared ? " compares" : "");
}

struct Row {
  const char* text;
  const char* read;
};

TEST(VerdictAnswer, isReadInManyWords) {
  for (const Row& row : {
           Row{"safe.", "safe"},
           Row{"SAFE by this reference", "safe"},
           Row{"a safe dose", "safe"},
           Row{"dose is within the safe range", "safe"},
           Row{"in range", "safe"},
           Row{"yes, safe", "safe"},
           Row{"not safe", "unsafe"},
           Row{"no, not safe", "unsafe"},
           Row{"unsafe, do not give", "unsafe"},
           Row{"Don’t give", "unsafe"},
           Row{"do not give as ordered", "unsafe"},
           Row{"ask the prescriber", "ask"},
           Row{"hold and ask", "ask"},
           Row{"do not give, ask the prescriber", "ask"},
           Row{"clarify with the prescriber", "ask"},
           Row{"does not fit", "does not fit"},
           Row{"Not covered by this reference", "does not fit"},
           Row{"too low", "(ask) low"},
           Row{"hold and ask: dose too low", "ask low"},
           Row{"overdose, unsafe", "unsafe high"},
           Row{"Unsafe: above the maximum dose", "unsafe maximum"},
           Row{"unsafe, no dose may be more than 125 mcg", "unsafe maximum"},
           Row{"wrong schedule", "(ask) schedule"},
           Row{"wrong schedule, continuous does not fit", "(ask) schedule"},
           Row{"ask: ordered every 8 h, reference says every 6 h", "ask schedule"},
           Row{"does not fit, too old", "does not fit age"},
           Row{"does not fit: ordered oral, reference is for intravenous", "does not fit route"},
           Row{"unsafe, too concentrated", "unsafe concentrated"},
           Row{"unsafe, runs too fast", "unsafe fast"},
           Row{"280 units < 290.67 units, safe", "safe compares"},
           Row{"safe, 300 mg is less than 486 mg", "safe compares"},
           Row{"Ordered 60 mg is not more than the safe ≈ 80.4 mg in one dose.", "(safe) compares"},
           Row{"unsafe, 1,000 units is more than 852.5 units", "unsafe compares"},
           Row{"ask, 50 mg is outside 38.64 mg to 77.28 mg", "ask compares"},
           Row{"looks safe to me", "safe"},
           Row{"safe (I think)", "safe"},
           Row{"no problem, safe", "safe"},
           Row{"too high, unsafe (checked)", "unsafe high"},
           Row{"Unsafe, I would not give it", "unsafe"},
           Row{"ask: the schedule does not match", "ask schedule"},
           Row{"reference is for another age, not covered", "does not fit age"},
           Row{"does not fit: route differs", "does not fit route"},
           Row{"safe, 20 mcg lies between 18.25 and 29.2 mcg", "safe compares"},
           Row{"unsafe, 300 not between 207 and 414", "unsafe compares"},
           // what denies or doubts, or says two things, is not read
           Row{"almost safe", "unread"},
           Row{"safe if diluted", "unread"},
           Row{"safe only once diluted", "unread"},
           Row{"safe after dilution", "unread"},
           Row{"probably safe", "unread"},
           Row{"neither safe", "unread"},
           Row{"the weather", "unread"},
           Row{"perhaps", "unread"},
           Row{"safe, I think", "unread"},
           Row{"safe or unsafe", "unread"},
           Row{"safe but ask", "unread"},
           Row{"safe, ask", "unread"},
           Row{"no", "unread"},
           Row{"the dose", "unread"},
           Row{"60 mg", "unread"},
           Row{"", "unread"},
       })
    EXPECT_EQ(described(row.text), row.read) << row.text;
}

TEST(VerdictAnswer, keepsTheFiguresOfAComparisonWhole) {
  const auto read = readVerdictAnswer("safe, 1,060.5 mg is less than 1,280.4");
  ASSERT_TRUE(read && read->compared);
  EXPECT_EQ(read->compared->left.value, Number::ratio(10605, 10));
  EXPECT_EQ(read->compared->right.value, Number::ratio(12804, 10));
  EXPECT_FALSE(read->compared->upper);
}

TEST(NothingMeasured, isSaidInManyWords) {
  for (const char* text : {"none",
                           "Nothing",
                           "do not give",
                           "DON'T GIVE",
                           "hold",
                           "hold the dose",
                           "call the prescriber",
                           "do not give, call the prescriber",
                           "withhold",
                           "not to be given",
                           "Do not prepare",
                           "hold - phone the prescriber",
                           "— do not measure —",
                           "no dose - ask first",
                           "I am holding this one",
                           "would not give",
                           "ring the prescriber",
                           "nothing until the prescriber answers",
                           "not drawing anything up until it is sorted",
                           "hold (see above)",
                           "give nothing",
                           "do not measure: ask first"})
    EXPECT_TRUE(saysNothingMeasured(text)) << text;
  for (const char* text :
       {"", "give", "measure", "4 mL", "do not give 4 mL", "give 4 mL, then hold", "no", "nothing but 4 mL",
        "do not hold", "no need to ask", "nothing wrong", "not too much",
        "do not give three tablets, give two", "hold or give", "give unless held", "no problem"})
    EXPECT_FALSE(saysNothingMeasured(text)) << text;
}

}  // namespace
}  // namespace wardchalk::test::verdict_answer_test
