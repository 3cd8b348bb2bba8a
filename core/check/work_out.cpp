#include "core/check/work_out.h"

#include "core/check/detail/reckoning.h"

namespace wardchalk {

namespace detail {

namespace {

/// An order in mL needs the strength before it can be compared: then the mixing is shown where it is used.
void showEarlyStrength(Reckoning& reckoning) {
  if (!reckoning.strengthUsed || !reckoning.strengthStep) return;
  std::vector<Step>& steps = reckoning.in(Section::ordered);
  steps.insert(steps.begin(), std::move(*reckoning.strengthStep));
  reckoning.strengthStep.reset();
}

}  // namespace

void prepareChecks(Reckoning& reckoning) {
  for (std::size_t i = 0; i < checkCount; ++i) {
    reckoning.sheet.checks[i].id = static_cast<CheckId>(i);
    reckoning.sheet.checks[i].why = WhyNot::missing;
  }
}

void findFacts(Reckoning& reckoning) {
  findSize(reckoning);
  findSchedule(reckoning);
  findStrength(reckoning);
  checkFit(reckoning);
  findOrder(reckoning);
  showEarlyStrength(reckoning);
  findLimits(reckoning);
}

void compareAmount(Reckoning& reckoning) {
  compareDose(reckoning);
  compareLow(reckoning);
  compareRate(reckoning);
}

}  // namespace detail

namespace {

using detail::Reckoning;

void judge(Reckoning& reckoning) {
  compareAmount(reckoning);
  compareInfusion(reckoning);
  compareSchedule(reckoning);
  compareBands(reckoning);
  compareSize(reckoning);
  findSlips(reckoning);
  noteRounding(reckoning);
  noteTheRest(reckoning);
  decide(reckoning);
  measure(reckoning);
  findRunRate(reckoning);
  decide(reckoning);
  const bool ask = reckoning.sheet.verdict == VerdictKind::ask;
  if (reckoning.sheet.give) reckoning.sheet.give->afterAsking = ask;
  if (reckoning.sheet.rate) reckoning.sheet.rate->afterAsking = ask;
}

/// A figure is half typed: nothing is compared, and nothing found so far is told.
void awaitTyping(Reckoning& reckoning, std::string_view pending) {
  reckoning.sheet.findings.clear();
  reckoning.tell(FindingCode::finishTyping, path::known(pending));
  decide(reckoning);
}

}  // namespace

Worksheet detail::notWorkedOut(const Case& given, const HouseRules& rules) {
  Worksheet sheet;
  sheet.given = given;
  sheet.rules = rules;
  Reckoning reckoning(sheet);
  prepareChecks(reckoning);
  for (Check& check : sheet.checks) check.why = WhyNot::notWorkedOut;
  reckoning.tell(FindingCode::notWorkedOut, {});
  decide(reckoning);
  return sheet;
}

Worksheet workOut(const Case& given, const HouseRules& rules, std::optional<std::string_view> pending) {
  Worksheet sheet;
  sheet.given = given;
  sheet.rules = rules;
  Reckoning reckoning(sheet);
  prepareChecks(reckoning);
  findFacts(reckoning);
  if (pending)
    awaitTyping(reckoning, *pending);
  else
    judge(reckoning);
  if (reckoning.failed) return detail::notWorkedOut(given, rules);
  arrange(reckoning);
  return sheet;
}

}  // namespace wardchalk
