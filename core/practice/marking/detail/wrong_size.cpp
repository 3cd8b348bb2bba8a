#include "core/practice/marking/detail/wrong.h"

// Mistakes with the child's weight, height and body surface area. Mosteller's constants are 3600 for cm and
// kg and 3131 for inches and pounds; sources stand in core/child and core/unit. Every signature here follows
// from the formula.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

const Number metricConstant(3600);
const Number householdConstant(3131);

void addEarlyRounding(WrongList& list) {
  for (const int decimals : {1, 0}) list.add(M::sizeRoundedEarly, list.right().rounded(decimals));
}

/// Ounces written behind the point: 7 lb 8 oz as 7.8 lb, 7 lb 12 oz as 7.12 lb.
void addDecimalOunces(const Papers& papers, WrongList& list) {
  if (!papers.ounces || !papers.pounds) return;
  const Number perPound = list.right() / *papers.pounds;
  for (const int tens : {10, 100}) {
    const Number part = *papers.ounces / Number(tens);
    if (part < Number(1)) list.add(M::ouncesAsDecimals, (*papers.wholePounds + part) * perPound);
    if (*papers.ounces < Number(10)) return;
  }
}

/// One of the two sizes left in the other system.
void addMixedUnits(const Papers& papers, WrongList& list) {
  for (const Number& constant : {metricConstant, householdConstant}) {
    if (papers.pounds) list.add(M::unitSystemsMixed, surface(*papers.cm, *papers.pounds, constant));
    if (papers.inches) list.add(M::unitSystemsMixed, surface(*papers.inches, *papers.kg, constant));
  }
}

void addOtherConstant(const Papers& papers, WrongList& list) {
  if (papers.inches && papers.pounds)
    list.add(M::metricConstantInHousehold, surface(*papers.inches, *papers.pounds, metricConstant));
  list.add(M::householdConstantInMetric, surface(*papers.cm, *papers.kg, householdConstant));
}

void addSum(const Papers& papers, WrongList& list) {
  list.add(M::heightAndWeightAdded,
           ((*papers.cm + *papers.kg) / metricConstant).rootCut(endlessRootDecimals));
  if (papers.inches && papers.pounds)
    list.add(M::heightAndWeightAdded,
             ((*papers.inches + *papers.pounds) / householdConstant).rootCut(endlessRootDecimals));
}

/// √(over) ÷ under in place of √(over ÷ under).
void addRootOverTop(const Papers& papers, WrongList& list) {
  list.add(M::rootOfTopOnly, list.right() / Number(60));
  if (papers.inches && papers.pounds)
    list.add(M::rootOfTopOnly,
             (*papers.inches * *papers.pounds).rootCut(endlessRootDecimals) / householdConstant);
}

}  // namespace

void addWrongWeight(const WrongGround& ground, WrongList& list) {
  if (ground.step != StepId::weight) return;
  const Papers& papers = ground.papers;
  if (papers.pounds) {
    list.add(M::poundsAsKilograms, *papers.pounds);
    list.add(M::poundsMultiplied, *papers.pounds * Number::ratio(22, 10));
  }
  addDecimalOunces(papers, list);
  addEarlyRounding(list);
}

void addWrongHeight(const WrongGround& ground, WrongList& list) {
  if (ground.step != StepId::height || !ground.papers.inches) return;
  list.add(M::inchesAsCentimetres, *ground.papers.inches);
  list.add(M::inchesAsCentimetres, *ground.papers.inches / Number::ratio(254, 100));
}

void addWrongSurface(const WrongGround& ground, WrongList& list) {
  const Chain* chain = ground.chain();
  if (ground.step != StepId::bsa || !chain || !chain->rooted || !ground.papers.cm || !ground.papers.kg)
    return;
  const Number squared = list.right() * list.right();
  list.add(M::rootForgotten, squared);
  list.add(M::halvedForRoot, squared / Number(2));
  addOtherConstant(ground.papers, list);
  addMixedUnits(ground.papers, list);
  addSum(ground.papers, list);
  addRootOverTop(ground.papers, list);
  addEarlyRounding(list);
}

}  // namespace wardchalk::detail
