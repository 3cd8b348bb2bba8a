#include "core/record/rules_examples.h"

#include <array>
#include <cassert>
#include <initializer_list>
#include <utility>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/record/case_entry.h"
#include "core/unit/print.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

using Entries = std::initializer_list<std::pair<std::string_view, std::string>>;

/// The worksheet of an example with an invented order; entries are our own and always readable.
Worksheet worked(const HouseRules& rules, const Entries& entries) {
  Case inputs;
  for (const auto& [path, text] : entries) {
    [[maybe_unused]] const auto set = setEntry(inputs, path, text);
    assert(set);
  }
  return workOut(inputs, rules);
}

std::string milligrams(const Number& value) { return exactText(value) + " mg"; }

/// An order that comes to `mL` of a liquid with 1 mg in 1 mL, allowed with room for rounding.
Worksheet liquid(const HouseRules& rules, const Number& mL, const char* route = "oral") {
  return worked(rules, {{path::dose, milligrams(mL) + "/dose"},
                        {path::route, route},
                        {path::schedule, "every 12 h"},
                        {path::high, milligrams(mL * Number(2)) + "/dose"},
                        {path::low, milligrams(mL / Number(2)) + "/dose"},
                        {path::referenceSchedule, "every 12 h"},
                        {path::stockKind, "liquid"},
                        {path::strength, "1 mg/1 mL"}});
}

std::string inMl(const Number& value) { return exactText(value) + " mL"; }

std::string pounds(const HouseRules& rules) {
  const Worksheet sheet = worked(rules, {{path::weight, "37 lb"}});
  return say(PhraseId::example_becomes,
             {{"from", "37 lb"}, {"to", printed(Quantity{sheet.weight->kg, Unit::kg})}});
}

/// A weight with one decimal more than is kept, so that the rounding shows: 17.25 kg.
std::string kilograms(const HouseRules& rules) {
  const int decimals = rules.kilogramDecimals.value_or(1);
  const std::string typed =
      "17.2" + std::string(decimals < 1 ? 1U : static_cast<std::size_t>(decimals), '5') + " kg";
  const std::string used = exactText(worked(rules, {{path::weight, typed}}).weight->kg) + " kg";
  if (used == typed) return say(PhraseId::example_stays, {{"from", typed}});
  return say(PhraseId::example_becomes, {{"from", typed}, {"to", used}});
}

std::string surface(const HouseRules& rules) {
  const Worksheet sheet = worked(rules, {{path::height, "103 cm"}, {path::weight, "17.2 kg"}});
  const SurfaceFound& found = *sheet.bsa;
  const std::string m2 =
      found.fixedDecimals >= 0 ? fixedText(found.m2, found.fixedDecimals) : show(found.m2).marked();
  return say(PhraseId::example_surface,
             {{"height", "103 cm"}, {"weight", "17.2 kg"}, {"surface", m2 + " m²"}});
}

std::string measured(const HouseRules& rules, const Number& mL) {
  const Worksheet sheet = liquid(rules, mL);
  if (sheet.finding(FindingCode::tooSmallToMeasure))
    return say(PhraseId::example_tooSmall, {{"amount", inMl(mL)}});
  if (!sheet.give || !sheet.give->measured)
    return say(PhraseId::example_notMeasurable, {{"amount", inMl(mL)}});
  const Give& give = *sheet.give;
  return say(PhraseId::example_measured,
             {{"from", inMl(mL)},
              {"to", inMl(*give.measured)},
              {"syringe", give.syringe ? inMl(give.syringe->holdsMl) : std::string()}});
}

std::string aboveOne(const HouseRules& rules) { return measured(rules, Number::ratio(314, 100)); }
std::string belowOne(const HouseRules& rules) { return measured(rules, Number::ratio(347, 1000)); }

std::string rate(const HouseRules& rules) {
  const Worksheet sheet = worked(rules, {{path::dose, "80 mg/dose"},
                                         {path::route, "intravenous"},
                                         {path::schedule, "every 12 h"},
                                         {path::high, "80 mg/dose"},
                                         {path::referenceSchedule, "every 12 h"},
                                         {path::stockKind, "liquid"},
                                         {path::strength, "20 mg/1 mL"},
                                         {path::infusionVolume, "50 mL"},
                                         {path::infusionOver, "45 min"}});
  if (!sheet.rate || !sheet.rate->mlPerHour || !sheet.rate->mlPerHour->measured)
    return say(PhraseId::example_noRate);
  return say(
      PhraseId::example_rate,
      {{"volume", "50 mL"}, {"time", "45 min"}, {"rate", inMl(*sheet.rate->mlPerHour->measured) + "/h"}});
}

std::string askedOrNot(bool asked, const std::string& what) {
  return say(asked ? PhraseId::example_asked : PhraseId::example_notAsked, {{"what", what}});
}

/// A usual dose of 100 mg, and an order of the first whole milligram below the house's part of it.
std::string tooLittle(const HouseRules& rules) {
  const Number order = rules.askBelowPercent.ceil() - Number(1);
  if (order < Number(1)) return say(PhraseId::example_neverLittle);
  const Worksheet sheet = worked(rules, {{path::dose, milligrams(order) + "/dose"},
                                         {path::schedule, "every 12 h"},
                                         {path::high, "100 mg/dose"},
                                         {path::referenceSchedule, "every 12 h"}});
  const std::string what = say(PhraseId::example_usual, {{"order", milligrams(order)}, {"usual", "100 mg"}});
  return askedOrNot(sheet.finding(FindingCode::belowUsual) != nullptr, what);
}

/// A low end of 100 mg, and an order of the first whole milligram below the house's part of it.
std::string belowTheLowEnd(const HouseRules& rules) {
  const Number order = rules.askLowPercent.ceil() - Number(1);
  if (order < Number(1)) return say(PhraseId::example_neverLittle);
  const Worksheet sheet = worked(rules, {{path::dose, milligrams(order) + "/dose"},
                                         {path::schedule, "every 12 h"},
                                         {path::low, "100 mg/dose"},
                                         {path::high, "200 mg/dose"},
                                         {path::referenceSchedule, "every 12 h"}});
  const Finding* finding = sheet.finding(FindingCode::belowLow);
  const std::string what = say(PhraseId::example_lowEnd, {{"order", milligrams(order)}, {"least", "100 mg"}});
  return askedOrNot(finding && finding->severity == Severity::ask, what);
}

/// By a route for which no second syringe makes up the difference.
std::string roundingChange(const HouseRules& rules) {
  const Number mL = Number::ratio(113, 100);
  const Worksheet sheet = liquid(rules, mL, "intramuscular");
  if (!sheet.give || !sheet.give->measured)
    return say(PhraseId::example_notMeasurable, {{"amount", inMl(mL)}});
  const std::string what =
      say(PhraseId::example_change, {{"from", inMl(mL)},
                                     {"to", inMl(*sheet.give->measured)},
                                     {"percent", plainPercent(*sheet.give->percentChange)}});
  return askedOrNot(sheet.finding(FindingCode::roundingChangesDose) != nullptr, what);
}

std::string charted(const HouseRules& rules) {
  const Worksheet sheet =
      worked(rules, {{path::height, "103 cm"}, {path::weight, "17.2 kg"}, {path::bsa, "0.75 m2"}});
  const std::string what =
      say(PhraseId::example_charted, {{"charted", "0.75 m²"}, {"height", "103 cm"}, {"weight", "17.2 kg"}});
  return askedOrNot(sheet.finding(FindingCode::bsaDiffers) != nullptr, what);
}

std::string tablets(const HouseRules& rules, int count) {
  const std::string dose = milligrams(Number(10 * count)) + "/dose";
  const Worksheet sheet = worked(rules, {{path::dose, dose},
                                         {path::route, "oral"},
                                         {path::schedule, "every 12 h"},
                                         {path::high, dose},
                                         {path::referenceSchedule, "every 12 h"},
                                         {path::stockKind, "solid"},
                                         {path::strength, "10 mg/tablet"}});
  const std::string what = say(PhraseId::many_tablets, {{"count", std::to_string(count)}}, count);
  return askedOrNot(sheet.finding(FindingCode::manyUnits) != nullptr, what);
}

std::string manyUnits(const HouseRules& rules) {
  return tablets(rules, rules.manyUnits) + " " + tablets(rules, rules.manyUnits + 1);
}

/// A child whose weight is one day older than the house wants.
std::string oldWeight(const HouseRules& rules) {
  if (!rules.weightOlderThan) return say(PhraseId::example_anyWeight);
  const Number days = Age{*rules.weightOlderThan}.days().floor() + Number(1);
  const Worksheet sheet = worked(rules, {{path::weight, "17.2 kg"},
                                         {path::weighed, exactText(days) + " day"},
                                         {path::dose, "80 mg/dose"},
                                         {path::schedule, "every 12 h"},
                                         {path::high, "5 mg/kg/dose"},
                                         {path::referenceSchedule, "every 12 h"}});
  const Quantity age{days, Unit::day};
  return askedOrNot(sheet.finding(FindingCode::weightOld) != nullptr,
                    say(PhraseId::example_oldWeight, {{"age", printed(age)}}));
}

std::string grace(const HouseRules& rules) {
  if (rules.gracePercent.isZero()) return say(PhraseId::example_noGrace);
  const Number order = Number(100) + rules.gracePercent;
  const Worksheet sheet = worked(rules, {{path::dose, milligrams(order) + "/dose"},
                                         {path::schedule, "every 12 h"},
                                         {path::high, "100 mg/dose"},
                                         {path::referenceSchedule, "every 12 h"}});
  const std::string what = say(PhraseId::example_over, {{"order", milligrams(order)}, {"limit", "100 mg"}});
  return askedOrNot(sheet.finding(FindingCode::overWithinGrace) != nullptr, what);
}

std::string silentReference(const HouseRules& rules) {
  const Worksheet sheet =
      worked(rules, {{path::dose, "80 mg/dose"}, {path::schedule, "every 12 h"}, {path::high, "84 mg/dose"}});
  const Finding* finding = sheet.finding(FindingCode::scheduleUnknown);
  return askedOrNot(finding && finding->severity == Severity::ask, say(PhraseId::example_silentReference));
}

std::string withoutAge(const HouseRules& rules) {
  const Worksheet sheet = worked(rules, {{path::height, "103 cm"},
                                         {path::weight, "40 kg"},
                                         {path::dose, "80 mg/dose"},
                                         {path::schedule, "every 12 h"},
                                         {path::high, "2 mg/kg/dose"}});
  const Finding* finding = sheet.finding(FindingCode::weightUnlikelyForHeight);
  return askedOrNot(finding && finding->severity == Severity::ask,
                    say(PhraseId::example_noAge, {{"height", "103 cm"}, {"weight", "40 kg"}}));
}

std::string silentOrder(const HouseRules& rules) {
  const Worksheet sheet = worked(rules, {{path::dose, "80 mg/dose"}, {path::high, "84 mg/dose"}});
  return say(PhraseId::example_silentOrder, {{"verdict", verdictTitle(sheet)}});
}

std::string smallest(const HouseRules& rules) {
  return measured(rules, rules.smallestVolume.value * Number::ratio(8, 10));
}

std::string idle(const HouseRules& rules) {
  return say(PhraseId::example_idle, {{"n", std::to_string(rules.idleMinutes)}}, rules.idleMinutes);
}

std::string bareNumbers(const HouseRules& rules) {
  switch (rules.unitSystem.value_or(UnitSystem::none)) {
    case UnitSystem::none:
      break;
    case UnitSystem::metric:
      return say(PhraseId::example_bareMetric);
    case UnitSystem::household:
      return say(PhraseId::example_bareHousehold);
  }
  return say(PhraseId::example_bareNone);
}

struct Example {
  std::string_view key;
  std::string (*tell)(const HouseRules&);
};
constexpr std::array examples = {
    Example{"pounds", pounds},
    Example{"kilogram_decimals", kilograms},
    Example{"bsa_formula", surface},
    Example{"bsa_decimals", surface},
    Example{"round_to", aboveOne},
    Example{"volume_decimals_below_1_mL", belowOne},
    Example{"volume_decimals_from_1_mL", aboveOne},
    Example{"rate_decimals", rate},
    Example{"ask_below_percent", tooLittle},
    Example{"ask_low_percent", belowTheLowEnd},
    Example{"ask_rounding_percent", roundingChange},
    Example{"bsa_differs_percent", charted},
    Example{"weight_older_than", oldWeight},
    Example{"grace_percent", grace},
    Example{"reference_schedule_missing", silentReference},
    Example{"order_schedule_missing", silentOrder},
    Example{"size_without_age", withoutAge},
    Example{"many_units", manyUnits},
    Example{"smallest_volume", smallest},
    Example{"syringes", aboveOne},
    Example{"unit_system", bareNumbers},
    Example{"idle_minutes", idle},
};

}  // namespace

std::string ruleExample(std::string_view key, const HouseRules& rules) {
  for (const Example& example : examples)
    if (example.key == key) return example.tell(rules);
  return {};
}

}  // namespace wardchalk
