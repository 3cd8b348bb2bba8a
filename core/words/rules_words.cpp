#include "core/words/rules_words.h"

#include "core/child/surface_formula.h"
#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

namespace {

std::string formulaRule(const HouseRules& rules) {
  const std::string name(surfaceFormula(rules.bsaFormula).name);
  if (!rules.bsaDecimals) return say(PhraseId::rule_bsaAllDigits, {{"formula", name}});
  const int n = *rules.bsaDecimals;
  return say(PhraseId::rule_bsa, {{"formula", name}, {"n", std::to_string(n)}}, n);
}

std::string weightRule(const HouseRules& rules) {
  const bool exact = rules.pounds == Pounds::exact;
  const std::string pounds = say(exact ? PhraseId::rule_poundsExact : PhraseId::rule_poundsTrade);
  if (!rules.kilogramDecimals) return pounds + " " + say(PhraseId::rule_kgAsItIs);
  const int n = *rules.kilogramDecimals;
  return pounds + " " + say(PhraseId::rule_kgRounded, {{"n", std::to_string(n)}}, n);
}

std::string amountRule(const Worksheet& sheet) {
  const HouseRules& rules = sheet.rules;
  const bool marks = rules.roundTo == RoundTo::marks;
  const bool runs =
      sheet.given.infusion.isStated() || (sheet.given.order.dose && sheet.given.order.dose->isRate());
  return say(marks ? PhraseId::rule_marks : PhraseId::rule_decimals,
             {{"below", std::to_string(rules.volumeDecimalsBelow1Ml)},
              {"from", std::to_string(rules.volumeDecimalsFrom1Ml)},
              {"rate", runs ? std::to_string(rules.rateDecimals) : std::string()}});
}

std::string thresholdRule(const Worksheet& sheet) {
  const HouseRules& rules = sheet.rules;
  const bool charted = sheet.check(CheckId::bsaCharted).isMade();
  return say(PhraseId::rule_asked,
             {{"low", show(rules.askBelowPercent).text},
              {"stated", show(rules.askLowPercent).text},
              {"rounding", show(rules.askRoundingPercent).text},
              {"smallest", printed(rules.smallestVolume)},
              {"many", std::to_string(rules.manyUnits)},
              {"surface", charted ? show(rules.bsaDiffersPercent).text : std::string()}});
}

/// Whether both sets reckon alike, whatever they are called, whoever agreed them and however long they wait.
bool reckonAlike(HouseRules rules, const HouseRules& shipped) {
  rules.name = shipped.name;
  rules.agreedBy = shipped.agreedBy;
  rules.agreedOn = shipped.agreedOn;
  rules.idleMinutes = shipped.idleMinutes;
  return rules == shipped;
}

}  // namespace

std::string rulesTitle(const HouseRules& rules) {
  for (const HouseRules* shipped : {&exactRules(), &classroomRules()})
    if (rules.name == shipped->name && !reckonAlike(rules, *shipped))
      return say(PhraseId::rules_changed, {{"name", rules.name}});
  return rules.name.empty() ? say(PhraseId::rules_noName) : isolated(rules.name);
}

std::string rulesProvenance(const HouseRules& rules) {
  if (!rules.agreedBy.empty() || !rules.agreedOn.empty())
    return say(PhraseId::rule_agreed, {{"who", rules.agreedBy}, {"when", rules.agreedOn}});
  for (const HouseRules* shipped : {&exactRules(), &classroomRules()})
    if (rules.name == shipped->name && reckonAlike(rules, *shipped)) return say(PhraseId::rules_shipped);
  return say(PhraseId::rules_nobody);
}

std::vector<std::string> rulesWords(const Worksheet& sheet) {
  const HouseRules& rules = sheet.rules;
  std::vector<std::string> lines;
  if (sheet.step(StepId::bsa)) lines.push_back(formulaRule(rules));
  if (sheet.step(StepId::weight)) lines.push_back(weightRule(rules));
  if (sheet.given.stock.kind) lines.push_back(amountRule(sheet));
  lines.push_back(thresholdRule(sheet));
  if (rules.weightOlderThan)
    lines.push_back(say(PhraseId::rule_oldWeight, {{"age", printed(*rules.weightOlderThan)}}));
  if (!rules.gracePercent.isZero())
    lines.push_back(say(PhraseId::rule_grace, {{"percent", show(rules.gracePercent).text}}));
  if (rules.referenceScheduleMissing == ReferenceScheduleMissing::note)
    lines.push_back(say(PhraseId::rule_silentReference));
  if (rules.sizeWithoutAge == SizeWithoutAge::note) lines.push_back(say(PhraseId::rule_noAge));
  if (rules.orderScheduleMissing == OrderScheduleMissing::oneDose)
    lines.push_back(say(PhraseId::rule_silentOrder));
  lines.push_back(rulesProvenance(rules));
  return lines;
}

}  // namespace wardchalk
