#include "core/practice/making/problem_traps.h"

#include <algorithm>
#include <array>
#include <vector>

#include "core/practice/marking/match_mistakes.h"
#include "core/practice/marking/wrong_values.h"

namespace wardchalk {

namespace {

/// Mistakes that always lie near the right value and are known by their digits, or not at all: no problem is
/// refused for them.
bool isAlwaysNear(MistakeId mistake) {
  return mistake == MistakeId::sizeRoundedEarly || mistake == MistakeId::ouncesAsDecimals ||
         mistake == MistakeId::medicineVolumeMiscounted;
}

/// Within 3 % of each other; `low` is the smaller.
bool areClose(const Number& low, const Number& high) { return high - low <= low * collisionShare(); }

/// Mistakes with the label's volume, which come to the right value only where that is 1 mL: then there is
/// nothing to leave out, and the number is right.
bool needsVolume(MistakeId mistake) {
  return mistake == MistakeId::labelVolumeLeftOut || mistake == MistakeId::dividedByLabelVolume;
}

bool mayHide(MistakeId mistake) { return isAlwaysNear(mistake) || needsVolume(mistake); }

/// Two that may come to the same: a giving set of 10 drops is left out and a point is moved alike. The marker
/// names both and asks.
bool mayCollide(MistakeId one, MistakeId other) {
  return std::minmax(one, other) == std::minmax(MistakeId::pointMoved, MistakeId::dropFactorLeftOut);
}

bool areApart(WrongValues wrong) {
  if (!std::ranges::all_of(wrong.hidden, mayHide)) return false;
  std::vector<WrongValue>& values = wrong.values;
  std::erase_if(values, [](const WrongValue& one) { return isAlwaysNear(one.mistake); });
  std::ranges::sort(values, {}, &WrongValue::value);
  for (std::size_t i = 0; i < values.size(); ++i) {
    const Number& value = values[i].value;
    if (areClose(smaller(value, wrong.right), larger(value, wrong.right))) return false;
    if (value == wrong.right.rounded(0)) return false;  // it could as well be the right one, rounded too far
    for (std::size_t j = i + 1; j < values.size() && areClose(value, values[j].value); ++j)
      if (values[i].mistake != values[j].mistake && !mayCollide(values[i].mistake, values[j].mistake))
        return false;
  }
  return true;
}

/// Near 0.63 and 0.93 m² a root forgotten looks like a constant or a unit mixed up.
bool isTellingSurface(const Problem& problem) {
  if (!problem.key.bsa) return true;
  return std::ranges::none_of(
      std::array{Number::ratio(63, 100), Number::ratio(93, 100)}, [&](const Number& trap) {
        return areClose(smaller(trap, problem.key.bsa->m2), larger(trap, problem.key.bsa->m2));
      });
}

bool asksFor(const Problem& problem, StepId step) {
  return std::ranges::any_of(problem.asks, [&](const Ask& ask) { return ask.step == step; });
}

/// With 60 drops in 1 mL drops in a minute are mL in an hour: where both are asked for, one could stand for
/// the other.
bool isTellingDropFactor(const Problem& problem) {
  const auto& factor = problem.given.infusion.dropFactor;
  return !factor || factor->value != Number(60) || !asksFor(problem, StepId::rate) ||
         !asksFor(problem, StepId::drops);
}

}  // namespace

bool slipsAreApart(const Problem& problem) {
  if (!isTellingSurface(problem) || !isTellingDropFactor(problem)) return false;
  std::vector<Instead> carried;
  for (const Ask& ask : problem.asks) {
    if (ask.isVerdict() || !problem.key.step(*ask.step)) continue;
    if (!areApart(wrongValues(problem.key, *ask.step, carried))) return false;
    const Replay right(problem.key, carried);
    if (const Number* result = right.result(*ask.step)) carried.push_back({Origin::step(*ask.step), *result});
  }
  return true;
}

}  // namespace wardchalk
