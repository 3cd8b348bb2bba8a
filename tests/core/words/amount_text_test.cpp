#include <gtest/gtest.h>

#include "core/words/spoken.h"
#include "core/words/step_words.h"

namespace wardchalk::amount_text_test {
namespace {

struct Row {
  const char* name;
  Number value;
  Unit unit;
  const char* text;    ///< on paper and screen
  const char* spoken;  ///< by a screen reader
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class AmountText : public testing::TestWithParam<Row> {};

TEST_P(AmountText, isTheSameForTheEyeAndTheEar) {
  const Row& row = GetParam();
  const Units perDose{{row.unit}, {Unit::dose}};
  EXPECT_EQ(amountText(row.value, -1, perDose), row.text + std::string(" per dose"));
  EXPECT_EQ(spokenAmount(row.value, -1, perDose), row.spoken + std::string(" per dose"));
}

// Parts of a tablet are fractions, since a lost point makes 25 of 2.5 (design of our own; common practice, no
// source).
INSTANTIATE_TEST_SUITE_P(
    Amounts, AmountText,
    testing::Values(Row{"twoAndAHalf", Number::ratio(5, 2), Unit::tablet, "2½ tablets", "2½ tablets"},
                    Row{"half", Number::ratio(1, 2), Unit::tablet, "½ tablet", "½ tablet"},
                    Row{"quarter", Number::ratio(1, 4), Unit::tablet, "¼ tablet", "¼ tablet"},
                    Row{"threeQuarters", Number::ratio(7, 4), Unit::tablet, "1¾ tablets", "1¾ tablets"},
                    Row{"whole", Number(3), Unit::tablet, "3 tablets", "3 tablets"},
                    Row{"one", Number(1), Unit::tablet, "1 tablet", "1 tablet"},
                    Row{"noPartThatCanBeBroken", Number::ratio(9, 10), Unit::tablet, "0.9 tablets",
                        "0.9 tablets"},
                    Row{"liquid", Number::ratio(5, 2), Unit::mL, "2.5 mL", "2.5 millilitres"}),
    [](const auto& one) { return std::string(one.param.name); });

}  // namespace
}  // namespace wardchalk::amount_text_test
