#include "core/child/likely_size.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

struct ScoreRange {
  double low;
  double high;
  [[nodiscard]] bool leavesOut(double value) const { return value < low || value > high; }
};

// Limits on the modified z. Chosen on 11,152 children of NHANES 2009-2016 (CDC/NCHS), where they ask about 1
// to 2 in a hundred true sizes and catch more than 9 in 10 weights in the wrong unit; rule E is CDC's own
// flag for implausible values ("Modified z-scores in the CDC growth charts", limits of 2016).
constexpr ScoreRange weightAlone{-3, 3.5};                   // rule A: age known, no height
constexpr ScoreRange statureLimits{-4, 4};                   // rules B and C
constexpr ScoreRange weightBesideHeight{-3.5, 5};            // rule C
constexpr ScoreRange weightForHeight{-2.5, 3};               // rules C and D
constexpr ScoreRange weightForHeightFrom12Years{-2.5, 3.5};  // rule C, its quieter form
constexpr ScoreRange anyStatureCm{40, 210};                  // rule D: age not known
constexpr ScoreRange anyWeightKg{1.5, 250};                  // rule D
constexpr ScoreRange implausibleWeight{-5, 8};               // rule E, beside A and C
constexpr ScoreRange implausibleStature{-5, 4};              // rule E

constexpr double firstMonth = 1;
constexpr double twelveYears = 144;
constexpr double eighteenYears = 216;

double monthsIn(const Number& days) { return converted(days, Unit::day, Unit::month)->roughly(); }

Number total(const MixedQuantity& mixed, Unit unit) {
  Number sum;
  for (const Quantity& part : mixed.parts) sum = sum + *converted(part.value, part.unit, unit, Pounds::exact);
  return sum;
}

std::vector<std::optional<GrowthAge>> agesOf(const Child& child) {
  if (!child.age) return {std::nullopt};
  const double start = monthsIn(child.age->days());
  const bool infant = start < infantMonths;  // at the end of its year or month, which is open, too
  std::vector<std::optional<GrowthAge>> ages = {GrowthAge{start, infant}};
  if (child.age->endIsOpen()) ages.push_back(GrowthAge{monthsIn(child.age->endDays()), infant});
  return ages;
}

std::vector<SizeJudge::Reading> readingsOf(const Child& child) {
  std::vector<SizeJudge::Reading> readings;
  for (const std::optional<GrowthAge>& age : agesOf(child))
    for (const Sex sex : {Sex::female, Sex::male})
      if (!child.sex || *child.sex == sex) readings.push_back({sex, age});
  return readings;
}

/// A size in floating figures, with its distances from the medians as far as they are known.
struct Scores {
  std::optional<double> kg, cm;
  std::optional<double> weight, height, weightForHeight;

  [[nodiscard]] double greatest() const {
    return std::max(
        {std::abs(weight.value_or(0)), std::abs(height.value_or(0)), std::abs(weightForHeight.value_or(0))});
  }
};

Scores scoresOf(const SizeJudge::Reading& reading, const BodySize& size) {
  Scores scores;
  if (size.kg) scores.kg = size.kg->roughly();
  if (size.cm) scores.cm = size.cm->roughly();
  if (reading.age && scores.kg) scores.weight = modifiedZ(weightCurve(reading.sex, *reading.age), *scores.kg);
  if (reading.age && scores.cm)
    scores.height = modifiedZ(statureCurve(reading.sex, *reading.age), *scores.cm);
  if (scores.kg && scores.cm)
    scores.weightForHeight =
        modifiedZ(weightCurve(reading.sex, heightAge(reading.sex, *scores.cm)), *scores.kg);
  return scores;
}

bool leavesOut(const ScoreRange& range, const std::optional<double>& value) {
  return value && range.leavesOut(*value);
}

SizeFaults unlikelyIn(const Scores& scores, double startMonths) {
  const ScoreRange& weight = scores.height ? weightBesideHeight : weightAlone;
  const ScoreRange& forHeight = startMonths >= twelveYears ? weightForHeightFrom12Years : weightForHeight;
  return {leavesOut(weight, scores.weight), leavesOut(statureLimits, scores.height),
          leavesOut(forHeight, scores.weightForHeight)};
}

SizeFaults unlikelyAtAnyAge(const Scores& scores) {
  return {leavesOut(anyWeightKg, scores.kg), leavesOut(anyStatureCm, scores.cm),
          leavesOut(weightForHeight, scores.weightForHeight)};
}

SizeFaults implausibleIn(const Scores& scores) {
  if (!scores.weight) return {};  // a height alone is no size that a dose is worked from
  return {leavesOut(implausibleWeight, scores.weight), leavesOut(implausibleStature, scores.height), false};
}

bool isAbove(const ScoreRange& range, const std::optional<double>& value) {
  return value && *value > range.high;
}

/// Only what is too large. A height beside it does not excuse a weight, since children born early have no
/// table of lengths here.
SizeFaults tooLargeIn(const Scores& scores, const ScoreRange& weight, const ScoreRange& stature) {
  return {isAbove(weight, scores.weight), isAbove(stature, scores.height), false};
}

/// What is outside in every reading; of sizes that are outside in every reading for another reason, the first
/// reason.
SizeFaults agreed(const std::vector<SizeFaults>& faults) {
  SizeFaults all{true, true, true};
  for (const SizeFaults& each : faults) {
    if (!each.any()) return {};
    all = {all.weight && each.weight, all.height && each.height, all.weightForHeight && each.weightForHeight};
  }
  return all.any() ? all : faults.front();
}

}  // namespace

BodySize bodySizeOf(const Child& child) {
  BodySize size;
  if (child.weight) size.kg = total(*child.weight, Unit::kg);
  if (child.height) size.cm = total(*child.height, Unit::cm);
  return size;
}

std::optional<NotJudged> whyNotJudged(const Child& child) {
  if (!child.weight && !child.height) return NotJudged::noSize;
  if (child.bornEarly) return NotJudged::newborn;
  if (!child.age) return child.weight && child.height ? std::nullopt : std::optional(NotJudged::noAge);
  const double months = monthsIn(child.age->days());
  if (months < firstMonth) return NotJudged::newborn;
  if (months > eighteenYears) return NotJudged::adult;
  return std::nullopt;
}

SizeJudgement judgeTooLarge(const Child& child, const BodySize& size) {
  std::vector<SizeFaults> unlikely, implausible;
  SizeJudgement judged;
  for (SizeJudge::Reading reading : readingsOf(child)) {
    if (!reading.age) return judged;
    if (reading.age->months < firstMonth) reading.age = GrowthAge{firstMonth, true};
    const Scores scores = scoresOf(reading, size);
    unlikely.push_back(tooLargeIn(scores, weightAlone, statureLimits));
    implausible.push_back(scores.weight ? tooLargeIn(scores, implausibleWeight, implausibleStature)
                                        : SizeFaults{});
    judged.oddness = std::max(judged.oddness, scores.greatest());
  }
  judged.unlikely = agreed(unlikely);
  judged.implausible = agreed(implausible);
  return judged;
}

SizeJudge::SizeJudge(const Child& child) : readings_(readingsOf(child)) {}

SizeJudgement SizeJudge::judge(const BodySize& size) const {
  const auto& first = readings_.front().age;
  std::vector<SizeFaults> unlikely, implausible;
  unlikely.reserve(readings_.size());
  implausible.reserve(readings_.size());
  SizeJudgement judged;
  for (const SizeJudge::Reading& reading : readings_) {
    const Scores scores = scoresOf(reading, size);
    unlikely.push_back(first ? unlikelyIn(scores, first->months) : unlikelyAtAnyAge(scores));
    implausible.push_back(implausibleIn(scores));
    const double oddness = scores.greatest();
    judged.oddness = unlikely.size() == 1 ? oddness : std::min(judged.oddness, oddness);
  }
  judged.unlikely = agreed(unlikely);
  judged.implausible = agreed(implausible);
  return judged;
}

SizeJudgement judgeSize(const Child& child, const BodySize& size) { return SizeJudge(child).judge(size); }

}  // namespace wardchalk
