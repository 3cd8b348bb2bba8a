#include "core/words/spoken_verdict.h"

#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/unit/print.h"
#include "core/words/amount_words.h"
#include "core/words/sentences.h"
#include "tests/support/case_text.h"
#include "tests/support/golden_cases.h"
#include "tests/support/settled.h"

// What a screen reader is told of a working, over every golden case, and in the words of a few.

namespace wardchalk::test::spoken_verdict_test {
namespace {

constexpr std::string_view plover =
    "child.height=103 cm; child.weight=17.2 kg; order.dose=80 mg; order.schedule=every 12 h; "
    "reference.high=120 mg/m2/dose; reference.schedule=every 12 h; stock.kind=liquid; stock.strength=25 "
    "mg/mL";

Worksheet sheetOf(std::string_view entries) { return workOut(caseOf(entries), exactRules()); }

std::string with(std::string_view entries, std::string_view path, std::string text) {
  return textOf(test::with(entriesOf(entries), path, std::move(text)));
}

TEST(SpokenVerdict, saysTheVerdictFirstAndTheFigureThatWasJudged) {
  for (const GoldenCase& golden : goldenCases()) {
    const Worksheet sheet = workOut(golden.given, golden.rules);
    for (const std::string& said : {spokenVerdict(Shown(sheet)), spokenWhole(Shown(sheet))}) {
      EXPECT_TRUE(said.starts_with(verdictTitle(sheet))) << golden.name << ": " << said;
      const bool judged = sheet.orderedDose && sheet.verdict != VerdictKind::undecided;
      const std::string dose = judged ? printed(*sheet.orderedDose) : std::string();
      EXPECT_NE(said.find(dose), std::string::npos) << golden.name << ": " << said;
      EXPECT_EQ(said.find(".."), std::string::npos) << golden.name << ": " << said;
    }
  }
}

TEST(SpokenVerdict, tellsNoAmountThatWaitsForAnswers) {
  int waiting = 0;
  for (const GoldenCase& golden : goldenCases()) {
    const Worksheet sheet = workOut(golden.given, golden.rules);
    const Shown open(sheet);
    const AmountWords answered = amountWords(settled(sheet));
    if (!open.waits() || answered.measure.empty()) continue;
    ++waiting;
    for (const std::string& said : {spokenVerdict(open), spokenWhole(open)}) {
      EXPECT_EQ(said.find(answered.measure), std::string::npos) << golden.name << ": " << said;
      EXPECT_NE(said.find("Ask first"), std::string::npos) << golden.name << ": " << said;
    }
    EXPECT_NE(spokenVerdict(settled(sheet)).find(answered.measure), std::string::npos) << golden.name;
  }
  EXPECT_GT(waiting, 5);
}

TEST(SpokenVerdict, saysWhatTheFlagAndTheAmountSay) {
  const std::string said = spokenVerdict(Shown(sheetOf(plover)));
  EXPECT_EQ(said,
            "SAFE by this reference. 80 mg ordered; safe up to 84 mg per dose. Measure 3.2 mL (80 mg) for "
            "one dose.");
  const std::string whole = spokenWhole(Shown(sheetOf(plover)));
  for (const char* part : {"NOT checked: ", "Label must read: ", "no rounding needed."})
    EXPECT_NE(whole.find(part), std::string::npos) << whole;
}

TEST(SpokenVerdict, namesTheDoseWhereTheReasonDoesNot) {
  std::vector<WrittenEntry> entries = entriesOf(plover);
  std::erase_if(entries, [](const WrittenEntry& entry) { return entry.path == "reference.schedule"; });
  const std::string said = spokenVerdict(Shown(workOut(caseOf(entries), exactRules())));
  EXPECT_TRUE(said.starts_with("ASK BEFORE GIVING. Ordered: 80 mg. ")) << said;
}

/// 180 mg is not 80 mg.
TEST(SpokenVerdict, takesNoLongerFigureForTheDose) {
  for (const char* dose : {"4 mg", "8 mg", "84 mg", "800 mg", "0.8 mg", "8000 mg"}) {
    const Worksheet sheet = sheetOf(with(plover, "order.dose", dose));
    const std::string said = " " + spokenVerdict(Shown(sheet));
    EXPECT_NE(said.find(" " + printed(*sheet.orderedDose)), std::string::npos) << said;
  }
}

TEST(SpokenVerdict, saysNothingWhileAnEntryIsBeingChanged) {
  const Worksheet sheet = workOut(caseOf(plover), exactRules(), Withheld("order.dose"));
  EXPECT_EQ(spokenVerdict(Shown(sheet)), "");
  EXPECT_EQ(spokenWhole(Shown(sheet)).find("80"), std::string::npos);
}

struct Row {
  const char* name;
  Refusal refusal;
  std::vector<std::string> writes;
  const char* end;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class SpokenRefusal : public testing::TestWithParam<Row> {};

TEST_P(SpokenRefusal, saysWhichEntryWhyAndWhatToDo) {
  const Row& row = GetParam();
  const std::string said = spokenRefusal(row.refusal, "order.dose", row.writes);
  EXPECT_TRUE(said.starts_with("NO VERDICT: “dose ordered” cannot be read yet. ")) << said;
  EXPECT_NE(said.find(sentence(row.refusal)), std::string::npos) << said;
  EXPECT_TRUE(said.ends_with(row.end)) << said;
}

INSTANTIATE_TEST_SUITE_P(
    Entries, SpokenRefusal,
    testing::Values(Row{"nothingToWrite", {RefusalCode::empty, {}, {}, {}, {}}, {}, " F5 goes there."},
                    Row{"oneSafeForm",
                        {RefusalCode::empty, {}, {}, {}, {}},
                        {"0.5 mg"},
                        " F5 goes there; Alt+Enter then writes 0.5 mg."},
                    Row{"aChoice",
                        {RefusalCode::empty, {}, {}, {}, {}},
                        {"17.2 kg", "17.2 lb"},
                        " F5 goes there; write 17.2 kg or 17.2 lb."}),
    [](const auto& one) { return std::string(one.param.name); });

}  // namespace
}  // namespace wardchalk::test::spoken_verdict_test
