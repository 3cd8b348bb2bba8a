#include <array>

#include "core/practice/marking/detail/wrong.h"

// Further mistakes with weight, height and body surface area. Signatures follow from the formulas; which
// wrong constants are looked for is common practice, no source.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

const Number& poundsInKilogram() {
  static const Number trade = Number::ratio(22, 10);
  return trade;
}
const Number& kilogramsInPound() {
  static const Number exact = Number::ratio(45359237, 100000000);
  return exact;
}
const Number& centimetresInInch() {
  static const Number exact = Number::ratio(254, 100);
  return exact;
}

/// Ounces left out, counted as pounds, as twelfths, or written behind the point: 7 lb 13 oz as 8.3 lb or 7.13
/// lb. Either constant may be used beside it, whatever the house's is.
void addOuncesMistaken(const Papers& papers, WrongList& list) {
  if (!papers.ounces || !papers.pounds || papers.ounces->isZero()) return;
  const Number& whole = *papers.wholePounds;
  const Number& ounces = *papers.ounces;
  for (const Number& perPound :
       {list.right() / *papers.pounds, Number(1) / poundsInKilogram(), kilogramsInPound()}) {
    list.add(M::ouncesLeftOut, whole * perPound);
    list.add(M::ouncesAsPounds, (whole + ounces) * perPound);
    list.add(M::twelveOunces, (whole + ounces / Number(12)) * perPound);
    for (const int parts : {10, 100})
      list.add(M::ouncesAsDecimals, (whole + ounces / Number(parts)) * perPound);
  }
}

/// A step of ten, a hundred or a thousand left out, taken the wrong way, or of another size. `steps` is what
/// right is of what was stated.
void addMetricStep(const Number& steps, WrongList& list) {
  list.times(M::metricStepLeftOut, Number(1) / steps);
  list.times(M::convertedBackwards, Number(1) / (steps * steps));
  for (const int power : {1, 2, 3, 4}) {
    const Number other = Number::powerOfTen(steps < Number(1) ? -power : power);
    if (other != steps) list.times(M::tenOrHundredForThousand, other / steps);
  }
}

void addHeightForWeight(const Papers& papers, WrongList& list) {
  for (const auto* height : {&papers.cm, &papers.inches}) {
    if (!*height) continue;
    list.add(M::heightAndWeightSwapped, **height);
    list.add(M::heightAndWeightSwapped, **height / poundsInKilogram());
  }
}

void addWeightForHeight(const Papers& papers, WrongList& list) {
  for (const auto* weight : {&papers.kg, &papers.pounds}) {
    if (!*weight) continue;
    list.add(M::heightAndWeightSwapped, **weight);
    list.add(M::heightAndWeightSwapped, **weight * centimetresInInch());
  }
}

void addWeightMistakes(const Papers& papers, WrongList& list) {
  addOuncesMistaken(papers, list);
  addHeightForWeight(papers, list);
  if (papers.inGrams) {
    addMetricStep(Number::ratio(1, 1000), list);
    list.times(M::kilogramsDivided, Number(1) / poundsInKilogram());
  }
  if (!papers.pounds) return;
  for (const int hundredths : {254, 240, 200, 202, 220 * 10})
    list.add(M::otherConstant, *papers.pounds / Number::ratio(hundredths, 100));
}

void addHeightMistakes(const Papers& papers, WrongList& list) {
  addWeightForHeight(papers, list);
  if (papers.inMetres) addMetricStep(Number(100), list);
  if (papers.wholeFeet) {
    const Number& feet = *papers.wholeFeet;
    const Number inchesInFoot(12);
    list.add(M::inchesLeftOut, feet * inchesInFoot * centimetresInInch());
    list.add(M::tenInchesToTheFoot, (feet * Number(10) + *papers.overFeet) * centimetresInInch());
    list.add(M::inchesAsTenths, (feet + *papers.overFeet / Number(10)) * inchesInFoot * centimetresInInch());
  }
  if (!papers.inches) return;
  for (const int hundredths : {245, 250, 220})
    list.add(M::otherConstant, *papers.inches * Number::ratio(hundredths, 100));
}

void addSurfaceMistakes(const Papers& papers, WrongList& list) {
  const Number metric(3600);
  const Number household(3131);
  if (!papers.cm || !papers.kg) return;
  list.add(M::constantTenfold, surface(*papers.cm, *papers.kg, metric / Number(10)));
  if (papers.inches && papers.pounds)
    list.add(M::constantTenfold, surface(*papers.inches, *papers.pounds, household / Number(10)));
  if (papers.inches && papers.pounds)
    list.add(M::constantTenfold, surface(*papers.inches, *papers.pounds, metric / Number(10)));
  if (papers.pounds)
    list.add(M::poundsMultiplied, surface(*papers.cm, *papers.pounds * poundsInKilogram(), metric));
  if (!papers.pounds)
    list.add(M::kilogramsDivided, surface(*papers.cm, *papers.kg / poundsInKilogram(), metric));
}

}  // namespace

void addFurtherSize(const WrongGround& ground, WrongList& list) {
  if (ground.step == StepId::weight) addWeightMistakes(ground.papers, list);
  if (ground.step == StepId::height) addHeightMistakes(ground.papers, list);
  if (ground.step == StepId::bsa) addSurfaceMistakes(ground.papers, list);
}

}  // namespace wardchalk::detail
