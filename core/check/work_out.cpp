#include "core/check/work_out.h"

#include "core/check/detail/decide.h"
#include "core/check/detail/giving.h"
#include "core/check/detail/telling.h"

namespace wardchalk {

namespace {

using namespace detail;

/// What goes with the worksheet before anything is compared.
Worksheet sheetOf(const Notebook& notes, const Facts& facts) {
  Worksheet sheet;
  sheet.given = notes.given;
  sheet.rules = notes.rules;
  if (facts.size.kg) sheet.weight = WeightFound{facts.size.kg->value()};
  sheet.bsa = facts.size.surface;
  if (facts.doses.ordered) sheet.orderedDose = facts.doses.ordered->amount;
  if (facts.doses.orderedDay) sheet.orderedDay = facts.doses.orderedDay->amount;
  sheet.limitDose = facts.limits.lowestDose;
  sheet.limitDay = facts.limits.lowestDay;
  if (facts.limits.lowDose) sheet.lowDose = facts.limits.lowDose->amount;
  if (facts.limits.lowDay) sheet.lowDay = facts.limits.lowDay->amount;
  sheet.strength = facts.strengths.used;
  return sheet;
}

void putChecks(Worksheet& sheet, Checks checks) {
  sheet.checks = std::move(checks.all);
  sheet.asWritten = std::move(checks.asWritten);
  sheet.minimumVolume = std::move(checks.minimumVolume);
}

/// Compares, and works out what may be given where nothing forbids it.
void judge(Worksheet& sheet, Notebook& notes, const Facts& facts) {
  Checks checks = makeChecks(notes, facts);
  askForOldWeight(notes);
  judgeSizeDoubts(notes);
  allowGrace(notes, checks);
  noteALittleLess(notes, checks);
  findSlips(notes, facts, checks);
  noteRounding(notes, facts, checks);
  notePounds(notes, facts, checks);
  noteTheRest(notes, facts);
  sheet.remedy = findRemedy(notes, facts, checks);
  if (notes.allowsAmount() && formFits(notes)) {
    sheet.give = measure(notes, facts, checks);
    noteTheMostThatFits(notes, checks, sheet.give);
    sheet.rate = findRunRate(notes, facts, checks, sheet.give);
  }
  putChecks(sheet, std::move(checks));
}

/// A figure is half typed: nothing is compared, and nothing found so far is told.
void awaitTyping(Worksheet& sheet, Notebook& notes, const Withheld& withheld) {
  notes.findings.clear();
  std::vector<Argument> arguments;
  if (withheld.cannotBeRead) arguments.push_back({"reason", ArgumentWord::cannotBeRead});
  notes.tell(FindingCode::finishTyping, path::known(withheld.path), std::move(arguments));
  putChecks(sheet, Checks());
}

/// A chain did not come out in the units wanted: nothing that was worked out is shown (R24).
Worksheet notWorkedOut(const Case& given, const HouseRules& rules) {
  Notebook notes(given, rules);
  notes.tell(FindingCode::notWorkedOut, {});
  Worksheet sheet = sheetOf(notes, {});
  putChecks(sheet, Checks(WhyNot::notWorkedOut));
  decide(sheet, notes);
  return sheet;
}

}  // namespace

Worksheet workOut(const Case& given, const HouseRules& rules, std::optional<Withheld> withheld) {
  Notebook notes(given, rules);
  Facts facts = findFacts(notes);
  Worksheet sheet = sheetOf(notes, facts);
  if (withheld)
    awaitTyping(sheet, notes, *withheld);
  else
    judge(sheet, notes, facts);
  if (notes.failed) return notWorkedOut(given, rules);
  decide(sheet, notes);
  arrange(sheet, notes, facts.size);
  const bool ask = sheet.verdict == VerdictKind::ask;
  if (sheet.give) sheet.give->afterAsking = ask;
  if (sheet.rate) sheet.rate->afterAsking = ask;
  return sheet;
}

}  // namespace wardchalk
