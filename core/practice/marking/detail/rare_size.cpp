#include "core/practice/marking/detail/wrong.h"

// Rarer mistakes with weight, height and body surface area. W, H stand for kg and cm, L and I for pounds and
// inches.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

const Number overMetric(3600);
const Number overHousehold(3131);

Number rootOf(const Number& value) { return value.rootCut(endlessRootDecimals); }

/// A height and a weight with the constant that goes with them.
void addMeasures(const Number& height, const Number& weight, const Number& constant, WrongList& list) {
  list.add(M::surfaceNotDivided, rootOf(height * weight));
  list.add(M::heightOverWeight, rootOf(height / weight));
  list.add(M::rootOfBottomOnly, height * weight / rootOf(constant));
}

void addRareSurface(const Papers& papers, WrongList& list) {
  if (!papers.cm || !papers.kg) return;
  addMeasures(*papers.cm, *papers.kg, overMetric, list);
  const bool household = papers.inches && papers.pounds;
  if (household) addMeasures(*papers.inches, *papers.pounds, overHousehold, list);
  if (!papers.years) return;
  list.add(M::ageForWeight, surface(*papers.cm, *papers.years, overMetric));
  if (household) list.add(M::ageForWeight, surface(*papers.inches, *papers.years, overHousehold));
}

}  // namespace

void addRareSize(const WrongGround& ground, WrongList& list) {
  const Papers& papers = ground.papers;
  if (ground.step == StepId::weight && papers.pounds)
    list.add(M::factorSubtracted, *papers.pounds - Number::ratio(22, 10));
  if (ground.step == StepId::height && papers.inches)
    list.add(M::factorSubtracted, *papers.inches - Number::ratio(254, 100));
  if (ground.step == StepId::bsa) addRareSurface(papers, list);
}

}  // namespace wardchalk::detail
