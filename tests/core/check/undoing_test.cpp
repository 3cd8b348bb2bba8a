#include <gtest/gtest.h>

#include <string>
#include <variant>

#include "core/check/slips/slip.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// What was meant, for each slip by itself; whether it explains an order is shown in slips_test.

namespace wardchalk::test::undoing_test {
namespace {

struct Row {
  const char* name;
  Slip slip;
  const char* inputs;
  const char* meant;  ///< how many times the dose, the entry that is another, or "impossible"
};
void PrintTo(const Row& row, std::ostream* out) { *out << idOf(row.slip) << " " << row.inputs; }

class Undone : public testing::TestWithParam<Row> {};

std::string textOf(const Undoing& undoing) {
  if (const auto* factor = std::get_if<Number>(&undoing)) return factor->rationalText();
  const auto* meant = std::get_if<Case>(&undoing);
  return meant && meant->order.schedule ? meant->order.schedule->text : "impossible";
}

TEST_P(Undone, IsWhatWasMeant) {
  const Case given = caseOf(GetParam().inputs);
  EXPECT_EQ(
      textOf(undone(GetParam().slip, {given, Pounds::exact, Number(20), Number::ratio(8, 10), Number(2)})),
      GetParam().meant);
}

using enum Slip;

INSTANTIATE_TEST_SUITE_P(
    PapersThatHoldLittle, Undone,
    testing::Values(
        Row{"a day as a dose of no order", dayAsDose, "", "1/2"},
        Row{"a day as a day", dayAsDose, "order.dose=80 mg/day", "impossible"},
        Row{"a size counted twice in no order", sizeCountedTwice, "reference.high=5 mg/kg/dose", "1/20"},
        Row{"a size counted twice without one", sizeCountedTwice, "", "impossible"},
        Row{"pounds of no weight", poundsAsKg, "", "impossible"},
        Row{"pounds of a weight in two parts", poundsAsKg, "child.weight=37 lb 4 oz", "impossible"},
        Row{"ten times no weight", weightTenTimesTooMuch, "", "impossible"},
        Row{"ten times no surface", bsaTenTimesTooMuch, "", "impossible"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Labels, Undone,
    testing::Values(
        Row{"in five and no order", labelPer5AsPer1, "stock.strength=25 mg/mL", "impossible"},
        Row{"in five and no label", labelPer5AsPer1, "order.dose=4 mL", "impossible"},
        Row{"in five of a tablet", labelPer5AsPer1, "order.dose=4 mL; stock.strength=25 mg/tablet",
            "impossible"},
        Row{"in five of an order in mg", labelPer5AsPer1, "order.dose=4 mg; stock.strength=25 mg/mL",
            "impossible"},
        Row{"in five for in one", labelPer5AsPer1, "order.dose=4 mL; stock.strength=25 mg/mL", "1/5"},
        Row{"in five that is in two", labelPer5AsPer1, "order.dose=4 mL; stock.strength=25 mg/2 mL",
            "impossible"},
        Row{"in one for in two", labelPer1AsPerMore, "order.dose=4 mL; stock.strength=25 mg/2 mL", "2"},
        Row{"in one that is in one", labelPer1AsPerMore, "order.dose=4 mL; stock.strength=25 mg/mL",
            "impossible"},
        Row{"in one and no label", labelPer1AsPerMore, "order.dose=4 mL", "impossible"}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Schedules, Undone,
    testing::Values(Row{"another one", scheduleNotOfReference,
                        "order.schedule=every 6 h; reference.schedule=every 8 h", "every 8 h"},
                    Row{"the same", scheduleNotOfReference,
                        "order.schedule=every 6 h; reference.schedule=4 times a day", "impossible"},
                    Row{"an order that runs on", scheduleNotOfReference,
                        "order.schedule=continuous; reference.schedule=every 8 h", "impossible"},
                    Row{"a reference that runs on", scheduleNotOfReference,
                        "order.schedule=every 6 h; reference.schedule=continuous", "impossible"},
                    Row{"no order", scheduleNotOfReference, "reference.schedule=every 8 h", "impossible"},
                    Row{"no reference", scheduleNotOfReference, "order.schedule=every 8 h", "impossible"},
                    Row{"one dose under several", scheduleNotOfReference,
                        "order.schedule=once; reference.schedule=every 24 h", "every 24 h"},
                    Row{"fewer at the least", scheduleNotOfReference,
                        "order.schedule=every 4 to 6 h; reference.schedule=every 4 h", "every 4 h"},
                    Row{"fewer at the most", scheduleNotOfReference,
                        "order.schedule=every 4 to 6 h; reference.schedule=every 6 h", "every 6 h"}),
    NameOfRow());

}  // namespace
}  // namespace wardchalk::test::undoing_test
