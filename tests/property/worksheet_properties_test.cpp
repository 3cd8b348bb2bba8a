// What holds of the worksheet of every case.
#include <algorithm>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/record/worksheet_file.h"
#include "tests/property/for_all.h"
#include "tests/support/bounds_again.h"
#include "tests/support/measured_again.h"

namespace wardchalk::test::worksheet_properties_test {

namespace {

Worksheet worked(const RandomCase& random) { return workOut(caseOf(random.entries), rulesFor(random.rules)); }

std::string jsonOf(const Worksheet& sheet, WorksheetExtent extent = WorksheetExtent::whole) {
  std::string json;
  writeWorksheet(json, sheet, extent);
  return json;
}

RandomCase anyCase(Choices& choices) {
  return choices.onceIn(10) ? randomRateCase(choices) : randomCase(choices);
}

/// Checks whose bound is worked again.
bool isBound(CheckId id) {
  return (id <= CheckId::low && id != CheckId::maxDoses) || id == CheckId::concentration ||
         id == CheckId::concentrationLow || id == CheckId::infusionRate;
}

/// What is wrong with the check of how many doses there are in 24 h, held against what is counted again.
std::string wrongCount(const Worksheet& sheet, const WorkedAgain& again) {
  const Check& check = sheet.check(CheckId::maxDoses);
  if (again.otherMedicine || !again.unit) return {};
  if (check.isMade() != again.count.has_value()) return "how many doses is not judged as by the rules";
  if (!again.count) return {};
  if ((check.status == CheckStatus::within) != (again.count->ordered <= again.count->most))
    return "how many doses is judged wrongly";
  return *check.ratio == again.count->ordered / again.count->most ? ""
                                                                  : "how many doses is counted otherwise";
}

/// What is wrong with the checks of the dose, held against the bounds worked again.
std::string wrongChecks(const Worksheet& sheet, const WorkedAgain& again) {
  for (const Check& check : sheet.checks) {
    if (!isBound(check.id)) continue;
    const auto bound = std::find_if(again.bounds.begin(), again.bounds.end(),
                                    [&](const BoundAgain& each) { return each.check == check.id; });
    const bool expected = bound != again.bounds.end() && (again.dose || bound->total);
    const std::string name(idOf(check.id));
    if (check.isMade() != expected) return name + (expected ? " is not made" : " is made");
    if (!expected) continue;
    if ((check.status == CheckStatus::within) != bound->holdsFor(again.dose))
      return name + " is judged wrongly";
    const auto* limit = std::get_if<Quantity>(&check.limit);
    if (limit && limit->value != bound->bound) return name + " has another limit";
    if (*check.ratio != bound->valueFor(again.dose) / bound->bound) return name + " is filled otherwise";
  }
  return {};
}

}  // namespace

TEST(WorksheetProperties, checksOfTheDoseAreThoseOfTheRules) {
  forAll(20000, [](Choices& choices) -> std::string {
    const RandomCase random = randomCase(choices);
    const Worksheet sheet = worked(random);
    const WorkedAgain again = workAgain(sheet.given, sheet.rules);
    if (again.dose && (!sheet.orderedDose || sheet.orderedDose->value != *again.dose))
      return "another ordered dose" + shown(random);
    std::string wrong = wrongChecks(sheet, again);
    if (wrong.empty()) wrong = wrongCount(sheet, again);
    return wrong.empty() ? "" : wrong + shown(random);
  });
}

/// What a measured dose has to keep: of a dose that the house lets pass a little below the low end, that
/// share of it.
WorkedAgain toBeKept(const Worksheet& sheet) {
  WorkedAgain again = workAgain(sheet.given, sheet.rules);
  const Finding* below = sheet.finding(FindingCode::belowLow);
  if (!below || below->severity != Severity::note) return again;
  for (BoundAgain& bound : again.bounds)
    if (bound.check == CheckId::low) bound.bound = bound.bound * sheet.rules.askLowPercent / Number(100);
  return again;
}

TEST(WorksheetProperties, measuringNeverPushesACheckThatWasWithinOutside) {
  int measured = 0;
  forAll(40000, [&](Choices& choices) -> std::string {
    const RandomCase random = randomCase(choices);
    const Worksheet sheet = worked(random);
    if (!sheet.give || !sheet.give->measured) return {};
    ++measured;
    const WorkedAgain again = toBeKept(sheet);
    const Number dose = *sheet.give->measured * *again.perMl;
    if (sheet.give->doseGiven->value != dose) return "another dose is given" + shown(random);
    for (const BoundAgain& bound : again.bounds)
      if (bound.holdsFor(again.dose) && !bound.holdsFor(dose))
        return std::string(idOf(bound.check)) + " is pushed outside" + shown(random);
    return {};
  });
  std::cout << "  " << measured << " of them measured\n";
  EXPECT_GT(measured, 3000);
}

/// What is wrong with a flow as it is set: a limit that the ordered rate keeps and the set one does not.
std::string wrongSetting(const Worksheet& sheet, const std::optional<Flow>& flow) {
  if (!flow || !flow->measured) return {};
  const Number times = *flow->measured / flow->exact.value;
  for (const CheckId id : {CheckId::rate, CheckId::infusionRate, CheckId::maxDaily, CheckId::low}) {
    const Check& check = sheet.check(id);
    if (check.status != CheckStatus::within) continue;
    const Number filled = *check.ratio * times;
    if (id == CheckId::low ? filled < Number(1) : filled > Number(1))
      return std::string(idOf(id)) + " is pushed outside";
  }
  return {};
}

TEST(WorksheetProperties, settingNeverPushesALimitOfARateOutside) {
  int set = 0;
  int limited = 0;
  forAll(20000, [&](Choices& choices) -> std::string {
    const RandomCase random = randomRateCase(choices);
    const Worksheet sheet = worked(random);
    if (!sheet.rate) return {};
    ++set;
    limited += sheet.check(CheckId::maxDaily).isMade() || sheet.check(CheckId::infusionRate).isMade() ? 1 : 0;
    std::string wrong = wrongSetting(sheet, sheet.rate->mlPerHour);
    if (wrong.empty()) wrong = wrongSetting(sheet, sheet.rate->dropsPerMinute);
    return wrong.empty() ? "" : wrong + shown(random);
  });
  std::cout << "  " << set << " of them set, " << limited << " within limits beside the reference's rate\n";
  EXPECT_GT(set, 1000);
  EXPECT_GT(limited, 300);
}

/// Syringes of both kinds, few and coarse, so that one alone often comes not close enough; no two hold the
/// same, since the rules do not say which of them is taken.
std::vector<Syringe> coarseSyringes(Choices& choices) {
  std::vector<Syringe> syringes;
  const int count = choices.between(1, 4);
  for (int i = 0; i < count; ++i) {
    const Number holds = *readDecimal(choices.of({"1", "2.5", "3", "5", "10", "20"}));
    const Number marks = holds / Number(choices.between(1, 20));
    if (std::ranges::find(syringes, holds, &Syringe::holdsMl) != syringes.end()) continue;
    for (const SyringeKind kind : {SyringeKind::oral, SyringeKind::injection})
      syringes.push_back({holds, marks, kind});
  }
  return syringes;
}

std::string textOf(const std::vector<Syringe>& syringes) {
  std::string text = "\n  syringes:";
  for (const Syringe& one : syringes)
    if (one.kind == SyringeKind::oral)
      text.append(" ").append(one.holdsMl.rationalText()).append(" by ").append(one.marksMl.rationalText());
  return text;
}

/// What is wrong with what is measured, and with what, held against R9 and R20 worked again.
std::string wrongMeasured(const Give& give, const MeasuredAgain& again) {
  if (give.measured != again.measured) return "something else is measured";
  if (give.pair.has_value() != again.full.has_value()) return "a pair, or none";
  const std::optional<Number> holds = give.pair      ? std::optional(give.pair->of.holdsMl)
                                      : give.syringe ? std::optional(give.syringe->holdsMl)
                                                     : std::nullopt;
  if (holds != again.holds) return "another syringe";
  if (!give.pair) return {};
  if (give.pair->full.holdsMl != *again.full) return "another full syringe";
  return give.pair->rest == *again.rest ? "" : "another rest";
}

/// A liquid that a syringe is needed for: what is drawn for every rule comes to an amount in one of fifteen
/// cases.
RandomCase toBeMeasured(Choices& choices) {
  const std::string dose = decimal(choices.between(3, 4000), 1) + " mg";
  const std::string label(choices.of({"1 mg/1 mL", "2 mg/1 mL", "5 mg/1 mL", "10 mg/1 mL", "25 mg/1 mL"}));
  return {{{"child.weight", "17.2 kg"},
           {"order.dose", dose},
           {"order.schedule", "every 12 h"},
           {"order.route", std::string(choices.of({"oral", "enteral", "intravenous", "intramuscular"}))},
           {"reference.high", "9999 mg/dose"},
           {"reference.limit_only", "true"},
           {"stock.kind", "liquid"},
           {"stock.strength", label}},
          std::string(choices.of({"", "kilogram_decimals=1"}))};
}

TEST(WorksheetProperties, whatIsMeasuredIsThatOfTheRules) {
  int pairs = 0;
  int alone = 0;
  forAll(30000, [&](Choices& choices) -> std::string {
    const RandomCase random = choices.below(3) == 0 ? toBeMeasured(choices) : randomCase(choices);
    HouseRules rules = rulesFor(random.rules);
    if (choices.below(4) > 0) rules.syringes = coarseSyringes(choices);
    const Worksheet sheet = workOut(caseOf(random.entries), rules);
    if (!sheet.give || sheet.give->exact.unit != Unit::mL || sheet.finding(FindingCode::tooSmallToMeasure))
      return {};
    const WorkedAgain again = toBeKept(sheet);
    const std::string wrong = wrongMeasured(*sheet.give, measureAgain(sheet.given, rules, again));
    if (!wrong.empty()) return wrong + shown(random) + textOf(rules.syringes);
    ++(sheet.give->pair ? pairs : alone);
    return {};
  });
  std::cout << "  " << pairs << " pairs, " << alone << " in one or none\n";
  EXPECT_GT(pairs, 300);
  EXPECT_GT(alone, 3000);
}

/// A size that is unlikely and that nothing is worked out by is told as notes alone (R18).
/// Below the low end by no more than the house lets pass, or below the usual dose of what cannot be divided.
bool isLittleBelow(const Worksheet& sheet) {
  if (!sheet.given.reference.low) return sheet.given.stock.kind == StockKind::solid;
  return *sheet.check(CheckId::low).ratio * Number(100) >= sheet.rules.askLowPercent;
}

bool isNoted(const Worksheet& sheet, CheckId id) {
  if (id == CheckId::low) return isLittleBelow(sheet);
  if (id != CheckId::size && id != CheckId::bsaCharted) return false;
  return std::ranges::all_of(sheet.findings, [id](const Finding& finding) {
    return finding.check != id || finding.severity == Severity::note;
  });
}

TEST(WorksheetProperties, amountStandsOnlyWhenSafeOrAsked) {
  forAll(10000, [](Choices& choices) -> std::string {
    const RandomCase random = anyCase(choices);
    const Worksheet sheet = worked(random);
    const bool allowed = sheet.verdict == VerdictKind::safe || sheet.verdict == VerdictKind::ask;
    if (sheet.give && !allowed)
      return "an amount although " + std::string(idOf(sheet.verdict)) + shown(random);
    const bool outside = std::ranges::any_of(sheet.checks, [&](const Check& check) {
      return check.status == CheckStatus::outside && !isNoted(sheet, check.id);
    });
    if (outside && sheet.verdict == VerdictKind::safe) return "safe with a check outside" + shown(random);
    return {};
  });
}

TEST(WorksheetProperties, raisingAnUnsafeDoseLeavesItUnsafe) {
  forAll(20000, [](Choices& choices) -> std::string {
    RandomCase random = anyCase(choices);
    if (worked(random).verdict != VerdictKind::unsafe) return {};
    for (WrittenEntry& entry : random.entries) {
      if (entry.path != "order.dose") continue;
      const std::size_t space = entry.text.find(' ');
      const Number dose = *readDecimal(entry.text.substr(0, space));
      const Number more = dose * (Number(1) + Number(choices.between(1, 500)) * Number::powerOfTen(-2));
      entry.text = exactText(more) + entry.text.substr(space);
    }
    const Worksheet raised = worked(random);
    return raised.verdict == VerdictKind::unsafe ? ""
                                                 : "now " + std::string(idOf(raised.verdict)) + shown(random);
  });
}

TEST(WorksheetProperties, sameCaseGivesTheSameBytes) {
  forAll(3000, [](Choices& choices) -> std::string {
    const RandomCase random = anyCase(choices);
    const std::string first = jsonOf(worked(random));
    return first == jsonOf(worked(random)) ? "" : "two worksheets differ" + shown(random);
  });
}

TEST(WorksheetProperties, nothingIsComparedWhileAFieldIsChanged) {
  forAll(10000, [](Choices& choices) -> std::string {
    const RandomCase random = anyCase(choices);
    const std::size_t entry = choices.below(static_cast<std::uint32_t>(random.entries.size()));
    const std::string pending = random.entries[entry].path;
    const Worksheet sheet = workOut(caseOf(random.entries), rulesFor(random.rules), Withheld(pending));
    const std::string where = " while " + pending + " is changed" + shown(random);
    if (sheet.verdict != VerdictKind::undecided || sheet.because() != "finish-typing")
      return "a verdict" + where;
    if (sheet.give || sheet.rate) return "an amount" + where;
    if (sheet.findings.size() != 1) return "something is told" + where;
    for (const Check& check : sheet.checks)
      if (check.isMade() || check.value.index() != 0 || check.ratio)
        return std::string(idOf(check.id)) + where;
    for (const Step& step : sheet.steps)
      if (std::holds_alternative<Comparison>(step.body) || std::holds_alternative<Measuring>(step.body))
        return "step " + std::string(idOf(step.id)) + where;
    return {};
  });
}

}  // namespace wardchalk::test::worksheet_properties_test
