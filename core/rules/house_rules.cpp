#include "core/rules/house_rules.h"

namespace wardchalk {

namespace {

/// Usual marks. Source: a nursing review text and a university page as quoted in a syringe reference (1, 3,
/// 5, 10 mL); 20 mL common practice, no source; 60 mL from memory. Makers differ, so the ward's own table
/// overrides it (T32).
std::vector<Syringe> usualSyringes() {
  std::vector<Syringe> syringes;
  for (const SyringeKind kind : {SyringeKind::oral, SyringeKind::injection}) {
    syringes.push_back({Number(1), Number::ratio(1, 100), kind});
    syringes.push_back({Number(3), Number::ratio(1, 10), kind});
    syringes.push_back({Number(5), Number::ratio(2, 10), kind});
    syringes.push_back({Number(10), Number::ratio(2, 10), kind});
    syringes.push_back({Number(20), Number(1), kind});
    syringes.push_back({Number(60), Number(1), kind});
  }
  return syringes;
}

HouseRules makeExact() {
  HouseRules rules;
  rules.name = "exact";
  rules.syringes = usualSyringes();
  return rules;
}

HouseRules makeClassroom() {
  HouseRules rules = makeExact();
  rules.name = "classroom";
  rules.pounds = Pounds::trade;
  rules.kilogramDecimals = 2;
  rules.roundTo = RoundTo::decimals;
  rules.referenceScheduleMissing = ReferenceScheduleMissing::note;
  rules.orderScheduleMissing = OrderScheduleMissing::oneDose;
  // what a book calls right is asked about more rarely than what lies on a ward: see README.md
  rules.sizeWithoutAge = SizeWithoutAge::note;
  rules.askRoundingPercent = Number(6);
  rules.manyUnits = 5;
  rules.smallestVolume = {Number::ratio(2, 100), Unit::mL};
  return rules;
}

}  // namespace

const HouseRules& exactRules() {
  static const HouseRules rules = makeExact();
  return rules;
}

const HouseRules& classroomRules() {
  static const HouseRules rules = makeClassroom();
  return rules;
}

int bsaWorkingDecimals(const HouseRules& rules) { return rules.bsaDecimals.value_or(20); }

}  // namespace wardchalk
