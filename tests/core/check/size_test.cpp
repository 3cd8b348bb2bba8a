#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "core/check/work_out.h"
#include "core/child/size_slip.h"
#include "core/words/sentences.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// The check of the child's size (R11) in a worksheet: its status, what it tells, and what it leaves alone.

namespace wardchalk::test::size_test {
namespace {

/// A flat order that is safe whatever the size.
const std::string flat =
    "order.dose=80 mg; order.schedule=every 12 h; reference.high=84 mg/dose; "
    "reference.schedule=every 12 h; reference.source=Bench list; ";

Worksheet sheetOf(const std::string& child) { return workOut(caseOf(flat + child), exactRules()); }

/// The findings of the size check with their severity and field: "weight-unlikely ask child.weight".
std::string toldIn(const Worksheet& sheet) {
  std::string text;
  for (const Finding& finding : sheet.findings) {
    if (finding.check != CheckId::size) continue;
    text.append(text.empty() ? "" : ", ").append(idOf(finding.code)).append(" ");
    text.append(idOf(finding.severity)).append(" ").append(finding.field);
  }
  return text;
}

std::string statusIn(const Worksheet& sheet) {
  const Check& check = sheet.check(CheckId::size);
  return std::string(idOf(check.status)) + (check.why ? " " + std::string(idOf(*check.why)) : "");
}

/// A maximum far above the order, for which the weight, or the body surface, is worked with.
constexpr const char* byKg = "; reference.max_per_day=9999 mg/kg";
constexpr const char* byM2 = "; reference.max_per_day=9999 mg/m2";
constexpr const char* unused = "";

struct Row {
  const char* name;
  const char* child;
  const char* status;
  const char* told;
  VerdictKind verdict;
  const char* use = unused;
};

class SizeCheck : public testing::TestWithParam<Row> {};

TEST_P(SizeCheck, isMadeAndTold) {
  const Row& row = GetParam();
  const Worksheet sheet = sheetOf(std::string(row.child) + row.use);
  EXPECT_EQ(statusIn(sheet), row.status);
  EXPECT_EQ(toldIn(sheet), row.told);
  EXPECT_EQ(idOf(sheet.verdict), idOf(row.verdict));
  EXPECT_TRUE(std::none_of(sheet.needs.begin(), sheet.needs.end(),
                           [](const Need& need) { return need.forWhat == Need::For::verdict; }));
  EXPECT_EQ(sheet.check(CheckId::size).value.index() != 0, sheet.check(CheckId::size).isMade());
  EXPECT_EQ(sheet.step(StepId::compareSize), nullptr);
}

constexpr const char* asked = "outside";
constexpr const char* within = "within";

INSTANTIATE_TEST_SUITE_P(
    Made, SizeCheck,
    ::testing::Values(
        Row{"likely", "child.age=4 year; child.weight=17.2 kg; child.height=103 cm", within, "",
            VerdictKind::safe},
        Row{"weight", "child.age=4 year; child.weight=37.9 kg; child.height=103 cm", asked,
            "weight-unlikely ask child.weight", VerdictKind::ask, byKg},
        Row{"weight for height",
            "child.sex=female; child.age=180 month; child.weight=114.6 kg; child.height=162 cm", asked,
            "weight-unlikely-for-height ask child.weight", VerdictKind::ask, byKg},
        Row{"tall and implausible",
            "child.sex=female; child.age=24 month; child.weight=18.4 kg; child.height=102 cm", asked,
            "size-implausible undecided child.height", VerdictKind::undecided, byM2},
        Row{"both too small that go together",
            "child.sex=female; child.age=72 month; child.weight=12 kg; child.height=93 cm", asked,
            "weight-unlikely ask child.weight, height-unlikely ask child.height", VerdictKind::ask, byM2},
        Row{"both that do not go together",
            "child.sex=female; child.age=72 month; child.weight=44.5 kg; child.height=94.9 cm", asked,
            "weight-unlikely-for-height ask child.weight", VerdictKind::ask, byM2},
        Row{"no age", "child.weight=37.9 kg; child.height=103 cm", asked,
            "weight-unlikely-for-height ask child.weight", VerdictKind::ask, byKg},
        Row{"implausible", "child.age=9 year; child.weight=280 kg; child.height=133 cm", asked,
            "size-implausible undecided child.weight", VerdictKind::undecided, byKg},
        Row{"implausible and confirmed",
            "child.age=9 year; child.weight=280 kg; child.height=133 cm; child.size_confirmed=true", asked,
            "size-implausible ask child.weight", VerdictKind::ask, byKg},
        Row{"charted surface too large", "child.bsa=3.01 m2", asked, "size-implausible undecided child.bsa",
            VerdictKind::undecided, byM2},
        Row{"charted surface too small and confirmed", "child.bsa=0.049 m2; child.size_confirmed=true", asked,
            "size-implausible ask child.bsa", VerdictKind::ask, byM2}),
    NameOfRow());

// Nothing is worked out by these sizes (R18).
INSTANTIATE_TEST_SUITE_P(
    MadeAndUnused, SizeCheck,
    ::testing::Values(
        Row{"weight", "child.age=4 year; child.weight=37.9 kg; child.height=103 cm", asked,
            "weight-unlikely note child.weight", VerdictKind::safe},
        Row{"height alone", "child.age=4 year; child.height=40 cm", asked,
            "height-unlikely note child.height", VerdictKind::safe},
        Row{"height beside a limit per kg",
            "child.sex=female; child.age=72 month; child.weight=12 kg; child.height=93 cm", asked,
            "weight-unlikely ask child.weight, height-unlikely note child.height", VerdictKind::ask, byKg},
        Row{"implausible", "child.age=9 year; child.weight=280 kg; child.height=133 cm", asked,
            "size-implausible note child.weight", VerdictKind::safe},
        Row{"implausible and confirmed",
            "child.age=9 year; child.weight=280 kg; child.height=133 cm; child.size_confirmed=true", asked,
            "size-implausible note child.weight", VerdictKind::safe},
        Row{"a weight behind a charted surface", "child.age=4 year; child.weight=37.9 kg; child.bsa=0.7 m2",
            asked, "weight-unlikely note child.weight", VerdictKind::safe, byM2},
        Row{"both behind a charted surface", "child.weight=37.9 kg; child.height=103 cm; child.bsa=1.04 m2",
            asked, "weight-unlikely-for-height note child.weight", VerdictKind::safe, byM2},
        Row{"a charted surface beside a limit per kg", "child.weight=17.2 kg; child.bsa=3.01 m2", asked,
            "size-implausible note child.bsa", VerdictKind::safe, byKg}),
    NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    NotMade, SizeCheck,
    ::testing::Values(
        Row{"nothing", "", "not-checked no-size", "", VerdictKind::safe},
        Row{"age alone", "child.age=4 year", "not-checked no-size", "", VerdictKind::safe},
        Row{"weight alone", "child.weight=280 kg", "not-checked no-age", "", VerdictKind::safe},
        Row{"charted surface at the limits", "child.bsa=3 m2", "not-checked no-size", "", VerdictKind::safe},
        Row{"newborn", "child.age=3 week; child.weight=3.8 kg", "not-checked newborn", "", VerdictKind::safe},
        Row{"newborn, large", "child.age=6 day; child.weight=5.9 kg; child.height=58 cm",
            "not-checked newborn", "", VerdictKind::safe, byKg},
        Row{"newborn, small", "child.age=6 day; child.weight=0.318 kg", "not-checked newborn", "",
            VerdictKind::safe, byKg},
        Row{"newborn of ten times", "child.age=6 day; child.weight=31.8 kg", asked,
            "size-implausible undecided child.weight", VerdictKind::undecided, byKg},
        Row{"newborn in grams as kg", "child.age=0 day; child.weight=3180 kg", asked,
            "size-implausible undecided child.weight", VerdictKind::undecided, byKg},
        Row{"newborn of ten times, in months", "child.age=0 month; child.weight=31.8 kg", asked,
            "size-implausible undecided child.weight", VerdictKind::undecided, byKg},
        Row{"day before a month", "child.age=30 day; child.weight=45 kg", asked,
            "size-implausible undecided child.weight", VerdictKind::undecided, byKg},
        Row{"newborn in pounds as kg", "child.age=6 day; child.weight=8 kg", asked,
            "weight-unlikely ask child.weight", VerdictKind::ask, byKg},
        Row{"newborn, long", "child.age=6 day; child.weight=3.2 kg; child.height=102 cm", asked,
            "size-implausible undecided child.height", VerdictKind::undecided, byM2},
        Row{"newborn, confirmed", "child.age=6 day; child.weight=31.8 kg; child.size_confirmed=true", asked,
            "size-implausible ask child.weight", VerdictKind::ask, byKg},
        Row{"newborn, nothing worked by it", "child.age=6 day; child.weight=31.8 kg", asked,
            "size-implausible note child.weight", VerdictKind::safe},
        Row{"born early, of ten times", "child.age=2 month; child.weight=24 kg; child.born_early=true", asked,
            "size-implausible undecided child.weight", VerdictKind::undecided, byKg},
        Row{"born early, small", "child.age=2 month; child.weight=1.9 kg; child.born_early=true",
            "not-checked newborn", "", VerdictKind::safe, byKg},
        Row{"born early, age not known", "child.weight=31.8 kg; child.born_early=true", "not-checked newborn",
            "", VerdictKind::safe, byKg},
        Row{"born early", "child.age=4 year; child.weight=14 kg; child.born_early=true",
            "not-checked newborn", "", VerdictKind::safe},
        Row{"born early, pounds as kg", "child.age=4 year; child.weight=37.9 kg; child.born_early=true",
            asked, "weight-unlikely ask child.weight", VerdictKind::ask, byKg},
        Row{"adult", "child.age=19 year; child.weight=280 kg", "not-checked adult", "", VerdictKind::safe}),
    NameOfRow());

std::string wordsFor(const std::string& child) {
  const Worksheet sheet = sheetOf(child + byM2);
  return verdictReason(sheet);
}

/// Whether the charted surface decides about the order: "within", "over", or nothing.
std::string decidedBy(const std::string& order) {
  const Worksheet sheet = workOut(
      caseOf("child.height=103 cm; child.weight=17.2 kg; child.bsa=0.9 m2; order.schedule=every 12 h; " +
             order),
      exactRules());
  const Finding* finding = sheet.finding(FindingCode::bsaDiffers);
  const auto* word = finding ? finding->argument<ArgumentWord>("order") : nullptr;
  return word ? std::string(idOf(*word)) : "";
}

// 0.70 m² by height and weight.
TEST(ChartedSurface, SaysWhatItDecides) {
  const std::string stated = "reference.schedule=every 12 h; reference.high=";
  EXPECT_EQ(decidedBy(stated + "120 mg/m2/dose; order.dose=100 mg"), "within");
  EXPECT_EQ(decidedBy(stated + "84 mg/dose; order.dose=100 mg/m2"), "over");
  EXPECT_EQ(decidedBy(stated + "120 mg/m2/dose; order.dose=100 mg/m2"), "");
  EXPECT_EQ(decidedBy("order.dose=100 mg/m2"), "");
}

TEST(SizeSentences, holdWhatWasTypedAndTheQuestions) {
  EXPECT_EQ(wordsFor("child.age=4 year; child.weight=83 lb 9 oz; child.height=103 cm"),
            "A weight of 83 lb 9 oz is unlikely at this age. Weigh again, or check the unit. "
            "Was it pounds, taken for kilograms?");
  EXPECT_EQ(wordsFor("child.weight=280 kg; child.height=210.5 cm"),
            "A weight of 280 kg is unlikely for a height of 210.5 cm. Check both.");
  EXPECT_EQ(wordsFor("child.weight=90 kg; child.height=210.5 cm"),
            "A height of 210.5 cm is unlikely for a child. Measure again, or check the unit.");
  EXPECT_EQ(wordsFor("child.sex=male; child.age=200 month; child.weight=173 kg; child.height=62 cm"),
            "A height of 62 cm is hardly possible at this age. Check the figure and its unit against the "
            "chart, or confirm the size. Was it pounds and inches, taken for kilograms and centimetres? Were "
            "weight and height swapped?");
}

TEST(SizeSentences, everySlipHasOne) {
  for (std::size_t i = 0; i < sizeSlipIds.size(); ++i) {
    const auto slip = static_cast<SizeSlip>(i);
    const MixedQuantity weight{{Quantity{Number(1), Unit::kg}}};
    const MixedQuantity age{{Quantity{Number(4), Unit::year}}};
    const Finding finding{FindingCode::weightUnlikely,
                          Severity::ask,
                          CheckId::size,
                          "child.weight",
                          {{"weight", weight}, {"age", age}, {"slip", slip}}};
    const std::string words = sentence(finding);
    EXPECT_TRUE(words.starts_with("A weight of 1 kg is unlikely at this age.")) << idOf(slip);
    EXPECT_EQ(words.back(), '?') << idOf(slip);
  }
}

}  // namespace
}  // namespace wardchalk::test::size_test
