#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <string>

#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "tests/core/test_names.h"
#include "tests/support/case_text.h"

// One medicine's reference never judges another (R13): which names go together, and what is left of a
// worksheet where they do not.

namespace wardchalk::test::medicine_test {
namespace {

/// A case that is safe, but for who it is for.
const std::string safe =
    "order.dose=80 mg; order.schedule=every 12 h; order.route=oral; reference.high=84 mg/dose; "
    "reference.schedule=every 12 h; stock.kind=liquid; stock.strength=25 mg/mL; ";

struct NameRow {
  const char* name;
  const char* ordered;
  const char* reference;
  const char* alsoCalled;
  const char* judged;  ///< status, why, verdict and what it is for
};

void PrintTo(const NameRow& row, std::ostream* out) { *out << row.ordered << " for " << row.reference; }

Worksheet named(const std::string& inputs, const NameRow& row) {
  std::vector<WrittenEntry> entries = entriesOf(inputs);
  entries = with(std::move(entries), "order.medicine", row.ordered);
  entries = with(std::move(entries), "reference.medicine", row.reference);
  return workOut(caseOf(with(std::move(entries), "reference.also_called", row.alsoCalled)), exactRules());
}

std::string judged(const Worksheet& sheet) {
  const Check& check = sheet.check(CheckId::medicine);
  std::string text(idOf(check.status));
  if (check.why && !check.isMade()) text.append(" ").append(idOf(*check.why));
  return text.append(", ").append(idOf(sheet.verdict)).append(" ").append(sheet.because());
}

class MedicineOfReference : public testing::TestWithParam<NameRow> {};

TEST_P(MedicineOfReference, IsThatOfTheOrder) {
  EXPECT_EQ(judged(named(safe, GetParam())), GetParam().judged);
}

INSTANTIATE_TEST_SUITE_P(
    R13, MedicineOfReference,
    testing::Values(
        NameRow{"neither is stated", "", "", "", "not-checked not-stated, safe "},
        NameRow{"only the order is", "Plover", "", "", "not-checked not-stated, safe "},
        NameRow{"only the order is, and blanks", "Plover", " \u00A0", " ; ", "not-checked not-stated, safe "},
        NameRow{"only the reference is", "", "Plover", "", "not-checked missing, undecided order.medicine"},
        NameRow{"the order is blank", "  ", "Plover", "", "not-checked missing, undecided order.medicine"},
        NameRow{"the order is nothing that is seen", "\u200D", "Plover", "",
                "not-checked missing, undecided order.medicine"},
        NameRow{"both the same", "Plover", "Plover", "", "within, safe "},
        NameRow{"both the same in other writing", " PL\u00D3VER ", "plover", "", "within, safe "},
        NameRow{"another", "Heron", "Plover", "", "outside, not-covered not-covered-medicine"},
        NameRow{"another strength in the name", "Plover2", "Plover\u00B2", "",
                "outside, not-covered not-covered-medicine"},
        NameRow{"a part of the name", "Plover", "Grey Plover", "",
                "outside, not-covered not-covered-medicine"},
        NameRow{"by another name", "Dotterel", "Plover", "Dotterel", "within, safe "},
        NameRow{"by the last of other names", "DOTTEREL", "Plover", "Plover salt; Brand ; dotterel ;",
                "within, safe "},
        NameRow{"by its own name beside others", "Plover", "Plover", "Dotterel", "within, safe "},
        NameRow{"by none of its names", "Heron", "Plover", "Dotterel; Brand",
                "outside, not-covered not-covered-medicine"},
        NameRow{"by two of its names at once", "Dotterel; Brand", "Plover", "Dotterel; Brand",
                "outside, not-covered not-covered-medicine"},
        NameRow{"the other way round", "Plover", "Dotterel", "Brand",
                "outside, not-covered not-covered-medicine"},
        NameRow{"other names alone", "Heron", "", "Dotterel", "outside, not-covered not-covered-medicine"},
        NameRow{"other names alone, one of them", "Dotterel", "", "Dotterel", "within, safe "},
        NameRow{"other names alone, nothing ordered", "", " ", "Dotterel",
                "not-checked missing, undecided order.medicine"}),
    NameOfRow());

struct OtherRow {
  const char* name;
  std::string inputs;
};
void PrintTo(const OtherRow& row, std::ostream* out) { *out << row.inputs; }

/// Cases that would be told much of, were the reference for the ordered medicine.
const std::array otherRows = {
    OtherRow{"safe", safe},
    OtherRow{"too much",
             "order.dose=800 mg; order.schedule=every 12 h; reference.high=84 mg/dose; "
             "reference.schedule=every 12 h; reference.max_per_dose=300 mg; reference.max_per_day=80 mg"},
    OtherRow{"too little",
             "order.dose=8 mg; order.schedule=every 12 h; reference.low=60 mg/dose; "
             "reference.high=84 mg/dose; reference.schedule=every 12 h"},
    OtherRow{"too often and as needed",
             "order.dose=80 mg; order.schedule=every 4 h; order.as_needed=true; reference.high=84 mg/dose; "
             "reference.schedule=every 12 h; reference.max_doses_per_day=2; reference.max_per_day=160 mg"},
    OtherRow{"a schedule that nobody states",
             "order.dose=80 mg; order.schedule=daily; reference.high=84 mg/dose"},
    OtherRow{"a day that nobody divides", "order.dose=80 mg; order.schedule=daily; reference.high=84 mg/day"},
    OtherRow{"a week", "order.dose=80 mg; order.schedule=weekly; reference.high=70 mg/week"},
    OtherRow{
        "an infusion",
        "order.dose=80 mg; order.schedule=once; order.route=intravenous; reference.high=84 mg/dose; "
        "reference.max_concentration=1 mg/mL; reference.min_concentration=0.9 mg/mL; "
        "reference.min_infusion_time=60 min; reference.max_infusion_rate=1 mg/min; infusion.volume=20 mL; "
        "infusion.over=10 min"},
    OtherRow{"a rate",
             "order.dose=9 mg/h; order.schedule=continuous; reference.high=3 mg/h; reference.low=1 mg/h"},
    OtherRow{"a maximum that lowers",
             "child.weight=20 kg; order.dose=80 mg; order.schedule=daily; "
             "reference.high=10 mg/kg/dose; reference.max_per_dose=100 mg"},
    OtherRow{"the size is missing", "order.dose=80 mg; order.schedule=daily; reference.high=120 mg/m2/dose"},
    OtherRow{"rounding decides",
             "child.weight=37 lb 4 oz; order.dose=84.6 mg; order.schedule=daily; "
             "reference.high=5 mg/kg/dose"},
    OtherRow{"the child is too young",
             "child.age=3 month; order.dose=80 mg; order.schedule=daily; reference.high=84 mg/dose; "
             "reference.age_from=2 year"},
};

class OfAnotherMedicine : public testing::TestWithParam<OtherRow> {};

bool isOfChildOrPapers(CheckId id) {
  constexpr std::array made = {CheckId::ageBand, CheckId::weightBand, CheckId::bsaBand,   CheckId::medicine,
                               CheckId::route,   CheckId::size,       CheckId::bsaCharted};
  return std::ranges::find(made, id) != made.end();
}

TEST_P(OfAnotherMedicine, TellsNothingOfTheDose) {
  const Worksheet sheet = named(GetParam().inputs, {"", "Heron", "Plover", "", ""});
  EXPECT_EQ(sheet.verdict, VerdictKind::notCovered);
  EXPECT_EQ(sheet.because(), "not-covered-medicine");
  for (const Check& check : sheet.checks) {
    if (isOfChildOrPapers(check.id)) continue;
    EXPECT_EQ(check.status, CheckStatus::notChecked) << idOf(check.id);
    EXPECT_EQ(check.why, WhyNot::otherMedicine) << idOf(check.id);
    EXPECT_FALSE(check.ratio || isStated(check.value) || isStated(check.limit)) << idOf(check.id);
    EXPECT_FALSE(sheet.step(stepOf(check.id))) << idOf(check.id);
  }
  for (const Finding& finding : sheet.findings)
    EXPECT_TRUE(finding.severity == Severity::notCovered ||
                (finding.severity == Severity::note && finding.code != FindingCode::possibleSlip &&
                 finding.code != FindingCode::roundingDecides && finding.code != FindingCode::capApplied))
        << idOf(finding.code);
  EXPECT_FALSE(sheet.limitDose || sheet.limitDay || sheet.lowDose || sheet.lowDay);
  EXPECT_FALSE(sheet.minimumVolume || sheet.give || sheet.rate || sheet.worst);
  for (const StepId id : {StepId::limitDose, StepId::limitDay, StepId::lowDose, StepId::lowDay,
                          StepId::maxDose, StepId::maxDay, StepId::volume, StepId::give})
    EXPECT_FALSE(sheet.step(id)) << idOf(id);
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::whole);
  for (const char* key :
       {"\"limit\":{", "\"volume\":{", "\"give\":", "\"rate\":{", "possible-slip", "\"over-"})
    EXPECT_EQ(json.find(key), std::string::npos) << key;
  EXPECT_EQ(checksNotMade(sheet).find("single dose"), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(R13, OfAnotherMedicine, testing::ValuesIn(otherRows), NameOfRow());

/// The same cases under their own reference are judged: what is silent above has something to say.
TEST(OtherMedicine, IsWhatSilencesThem) {
  int told = 0;
  for (const OtherRow& row : otherRows) {
    const Worksheet sheet = named(row.inputs, {"", "Plover", "Plover", "", ""});
    EXPECT_NE(sheet.because(), "not-covered-medicine") << row.name;
    for (const Check& check : sheet.checks) EXPECT_NE(check.why, WhyNot::otherMedicine) << row.name;
    told += std::ranges::any_of(sheet.findings,
                                [](const Finding& finding) { return finding.severity <= Severity::ask; })
                ? 1
                : 0;
  }
  EXPECT_GE(told, 9);
}

struct LeadRow {
  const char* name;
  const char* inputs;
  const char* because;
};

/// What says that the figures cannot be used comes first; other reasons not to be covered come after it.
TEST(OtherMedicine, ComesAfterFiguresThatCannotBeUsedAlone) {
  for (const LeadRow& row : {
           LeadRow{"other units", "order.dose=80 units; order.schedule=daily; reference.high=84 mg/dose",
                   "units-do-not-meet"},
           LeadRow{"a rate against a dose", "order.dose=80 mg/h; reference.high=84 mg/dose",
                   "basis-does-not-fit"},
           LeadRow{"each dose or per day",
                   "order.dose=80 mg/day; order.schedule=weekly; reference.high=84 mg/day",
                   "basis-does-not-fit"},
           LeadRow{"a size that cannot be",
                   "child.age=4 year; child.sex=male; child.weight=170 kg; child.height=103 cm; "
                   "order.dose=80 mg; "
                   "order.schedule=daily; reference.high=84 mg/kg/dose",
                   "size-implausible"},
           LeadRow{"an age outside the band",
                   "child.age=1 year; order.dose=80 mg; order.schedule=daily; reference.high=84 mg/dose; "
                   "reference.age_from=2 year",
                   "not-covered-medicine"},
           LeadRow{"another route",
                   "order.dose=80 mg; order.route=oral; order.schedule=daily; reference.high=84 mg/dose; "
                   "reference.route=rectal",
                   "not-covered-medicine"},
           LeadRow{"everything missing", "order.route=oral", "not-covered-medicine"},
       })
    EXPECT_EQ(named(row.inputs, {"", "Heron", "Plover", "", ""}).because(), row.because) << row.name;
}

/// What is odd about the order and the child alone is told whatever the reference is for.
TEST(OtherMedicine, LeavesWhatIsOddAboutOrderAndChild) {
  const Worksheet sheet = named(
      "child.bsa=1.2 m2; child.height=103 cm; child.weight=17.2 kg; order.dose=80 mg; order.schedule=every 5 "
      "h; "
      "reference.high=84 mg/dose; reference.route=oral; order.route=rectal",
      {"", "Heron", "Plover", "", ""});
  for (const FindingCode code : {FindingCode::intervalOdd, FindingCode::bsaDiffers,
                                 FindingCode::notCoveredRoute, FindingCode::sourceNotStated})
    EXPECT_TRUE(sheet.finding(code)) << idOf(code);
  EXPECT_TRUE(sheet.orderedDose && sheet.orderedDay);
}

TEST(OtherMedicine, AnUnsafeOrderIsUnsafeWhileTheMedicineIsMissing) {
  const std::string over = "order.dose=90 mg; order.schedule=daily; reference.high=84 mg/dose";
  EXPECT_EQ(judged(named(over, {"", "", "Plover", "", ""})), "not-checked missing, unsafe over-single");
  const Worksheet sheet = named(safe, {"", "", "Plover", "", ""});
  EXPECT_EQ(verdictTitle(sheet), "NO VERDICT: enter the medicine ordered");
  EXPECT_FALSE(sheet.give);
  EXPECT_EQ(checksNotMade(sheet).find("NOT checked: medicine, "), 0U);
}

TEST(OtherMedicine, IsToldWithBothNames) {
  const Worksheet sheet = named(safe, {"", "Heron 1,000", "Plover", "Dotterel", ""});
  EXPECT_EQ(
      verdictReason(sheet),
      "The order says Heron 1,000; this reference is for Plover. The dose is not checked. Find the reference "
      "for Heron 1,000. If both labels name the same medicine, write the same name. Do not prepare.");
  const Step& step = *sheet.step(StepId::compareMedicine);
  EXPECT_EQ(sentence(step, sheet), "Is it the same medicine? Heron 1,000 is the same as Plover: false.");
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::whole);
  EXPECT_NE(json.find(R"({"id":"medicine","status":"outside","value":"Heron 1,000","limit":"Plover"})"),
            std::string::npos);
  EXPECT_NE(json.find(R"("arguments":{"ordered":"Heron 1,000","reference":"Plover"})"), std::string::npos);
  EXPECT_NE(json.find(R"("left":{"text":"Heron 1,000","from":"order.medicine"})"), std::string::npos);
}

TEST(OtherMedicine, AnotherNameThatHoldsIsSaid) {
  const Worksheet sheet = named(safe, {"", "DOTTEREL", "Plover", "Brand; Dotterel", ""});
  const Step& step = *sheet.step(StepId::compareMedicine);
  EXPECT_EQ(sentence(step, sheet), "Is it the same medicine? DOTTEREL is the same as Plover: true.");
  EXPECT_EQ(reason(step, sheet), "the reference says it is also called DOTTEREL");
  const Worksheet own = named(safe, {"", "Plover", "Plover", "Dotterel", ""});
  EXPECT_EQ(reason(*own.step(StepId::compareMedicine), own), "");
}

TEST(OtherMedicine, IsNotListedWhereOnlyTheOrderNamesOne) {
  EXPECT_EQ(checksNotMade(named(safe, {"", "Plover", "", "", ""})).find("medicine"), std::string::npos);
}

}  // namespace
}  // namespace wardchalk::test::medicine_test
