#include "core/practice/marking/right_values.h"

#include <algorithm>

#include "core/check/work_out.h"
#include "core/practice/lines/student_line.h"
#include "core/practice/problem/asked_decimals.h"
#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

constexpr int significantDigits = 3;
constexpr int fewestCutDecimals = 2;
constexpr int fewestMeasuredDecimals =
    3;  // an amount that is not yet rounded to a mark, as it was worked out

HouseRules with(HouseRules rules, std::optional<int> bsaDecimals) {
  rules.bsaDecimals = bsaDecimals;
  return rules;
}

/// Digits before the point; 0 below 1.
int wholeDigits(Number value) {
  int digits = 0;
  for (; value >= Number(1); value = value / Number(10)) ++digits;
  return digits;
}

Number unit(int decimals) { return Number::powerOfTen(-decimals); }
Number cut(const Number& value, int decimals) { return (value / unit(decimals)).floor() * unit(decimals); }

/// Rounded or cut at the digits written, or at the tens or hundreds that a number without decimals ends in.
bool isCoarse(const TypedNumber& typed, const Number& value) {
  const int last = 1 - std::max(wholeDigits(value), 1);
  for (int decimals = typed.decimals; decimals >= last; --decimals) {
    const Number at = cut(value, decimals);
    const Number next = (value / unit(decimals)).rounded(0) * unit(decimals);
    if (typed.value == at || typed.value == next) return true;
    if (decimals <= 0 && !(typed.value / unit(decimals - 1)).isWhole()) return false;
  }
  return false;
}

std::vector<HouseRules> conventions(const Problem& problem) {
  std::vector<HouseRules> all = {problem.rules};
  const auto add = [&](const HouseRules& rules) {
    if (std::ranges::find(all, rules) == all.end()) all.push_back(rules);
  };
  const bool surface = problem.key.step(StepId::bsa) != nullptr;
  for (const HouseRules& set : {exactRules(), classroomRules()}) {
    add(set);
    if (!surface) continue;
    for (const int decimals : {3, 4}) add(with(set, decimals));
    add(with(set, std::nullopt));
  }
  return all;
}

/// The child's size turned into cm and kg before anything else: a surface may as well be worked so.
Case metric(Case given, Pounds pounds) {
  given.child.height = MixedQuantity{{{*totalIn(*given.child.height, Unit::cm, pounds), Unit::cm}}};
  given.child.weight = MixedQuantity{{{*totalIn(*given.child.weight, Unit::kg, pounds), Unit::kg}}};
  return given;
}

/// The answers so far, for one way of carrying them on: as typed, or with all the digits that a right one was
/// rounded from.
std::vector<Instead> carriedOn(const Worksheet& key, std::span<const CarriedAnswer> carried, bool allDigits) {
  std::vector<Instead> instead;
  for (const CarriedAnswer& answer : carried) {
    const Replay before(key, instead, answer.step);
    const Number* exact = before.exact(answer.step);
    if (!exact) continue;
    instead.push_back({Origin::step(answer.step), answer.right && allDigits ? *exact : answer.value});
  }
  return instead;
}

using Way = std::vector<Instead>;

void addOnce(std::vector<Way>& ways, Way way) {
  if (std::ranges::find(ways, way) == ways.end()) ways.push_back(std::move(way));
}

/// Where a weight is turned into kg on the way to a line, and was not asked for, it may be rounded to two
/// decimals, or more.
void addKilograms(const Worksheet& key, StepId line, const Way& way, std::vector<Way>& ways) {
  const Origin weight = Origin::step(StepId::weight);
  if (line != StepId::weight && !restsOn(key, line, weight, way)) return;
  if (std::ranges::find(way, weight, &Instead::origin) != way.end()) return;
  const Replay before(key, way, StepId::weight);
  const Number* exact = before.exact(StepId::weight);
  if (!exact) return;
  for (const int decimals : {2, 3, 4, endlessRootDecimals}) {
    Way rounded = way;
    rounded.push_back({weight, exact->rounded(decimals)});
    addOnce(ways, std::move(rounded));
  }
}

/// Drops by way of the student's own rate; none where that was not answered.
std::optional<Number> dropsByRate(const Worksheet& key, StepId line, std::span<const CarriedAnswer> carried) {
  const auto rate = std::ranges::find(carried, StepId::rate, &CarriedAnswer::step);
  const auto& factor = key.given.infusion.dropFactor;
  if (line != StepId::drops || rate == carried.end() || !factor) return std::nullopt;
  return rate->value * factor->value / Number(60);
}

/// Pounds by the shorter constant, 0.4536 kg in a pound, as it is taught; none where the weight is not in
/// pounds.
std::optional<Number> kilogramsAsTaught(const Case& given, StepId line) {
  const auto& weight = given.child.weight;
  if (line != StepId::weight || !weight || dimensionOf(weight->parts.front().unit) != dimensionOf(Unit::lb))
    return std::nullopt;
  const auto pounds = totalIn(*weight, Unit::lb);
  return pounds ? std::optional(*pounds * Number::ratio(4536, 10000)) : std::nullopt;
}

/// The maximum of a dose or a day, where it is less than what the reference gives: "the most in one dose" is
/// as well that. The key's own line comes before it and holds what the reference gives.
const Number* maximumOver(const Worksheet& worked, StepId line, const Number* byReference) {
  const std::optional<Limit>& limit = line == StepId::limitDay ? worked.limitDay : worked.limitDose;
  if ((line != StepId::limitDay && line != StepId::limitDose) || !limit || !byReference) return nullptr;
  if (limit->setBy == SetBy::reference || limit->amount.value >= *byReference) return nullptr;
  return &limit->amount.value;
}

/// Only a right answer may be left to the convention's own rounding.
Way wrongOnes(std::span<const CarriedAnswer> carried) {
  Way instead;
  for (const CarriedAnswer& answer : carried)
    if (!answer.right) instead.push_back({Origin::step(answer.step), answer.value});
  return instead;
}

/// Every way to come to a line by one convention, each once.
std::vector<Way> waysTo(const Worksheet& worked, StepId line, std::span<const CarriedAnswer> carried) {
  std::vector<Way> ways;
  for (const Way& way :
       {carriedOn(worked, carried, false), carriedOn(worked, carried, true), wrongOnes(carried)}) {
    addOnce(ways, way);
    addKilograms(worked, line, way, ways);
  }
  return ways;
}

}  // namespace

const Number& routeTolerance() {
  static const Number tolerance = Number::ratio(35, 10000);
  return tolerance;
}

std::vector<Instead> insteadOf(std::span<const CarriedAnswer> carried) {
  std::vector<Instead> instead;
  for (const CarriedAnswer& answer : carried) instead.push_back({Origin::step(answer.step), answer.value});
  return instead;
}

bool isOverMaximum(const Worksheet& worked, StepId line, const Number& value) {
  return maximumOver(worked, line, &value) != nullptr;
}

RightValues::RightValues(const Problem& problem) : problem_(problem) {
  const bool surface =
      problem.key.step(StepId::bsa) && problem.given.child.height && problem.given.child.weight;
  // What two conventions work alike, to every figure, is kept once.
  const auto keep = [&](Worksheet worked) {
    if (std::ranges::find(worked_, worked.steps, &Worksheet::steps) == worked_.end())
      worked_.push_back(std::move(worked));
  };
  for (const HouseRules& rules : conventions(problem)) {
    keep(workOut(problem.given, rules));
    if (surface) keep(workOut(metric(problem.given, rules.pounds), rules));
  }
}

std::vector<Number> RightValues::of(StepId line, std::span<const CarriedAnswer> carried) const {
  std::vector<Number> values;
  const auto add = [&](const Number* value) {
    if (value && std::ranges::find(values, *value) == values.end()) values.push_back(*value);
  };
  if (const auto kilograms = kilogramsAsTaught(problem_.given, line)) add(&*kilograms);
  for (const Worksheet& worked : worked_) {
    for (Way& way : waysTo(worked, line, carried)) {
      const Replay replay(worked, std::move(way), line);
      add(replay.exact(line));
      add(replay.result(line));
      add(maximumOver(worked, line, replay.result(line)));
    }
    if (const auto drops = dropsByRate(worked, line, carried)) add(&*drops);
  }
  return values;
}

Acceptance RightValues::accept(StepId line, const TypedNumber& typed, std::span<const Number> values) const {
  Acceptance best = Acceptance::no;
  for (const Number& value : values) {
    const Acceptance way = acceptOne(line, typed, value);
    if (way == Acceptance::asRounded) return way;
    if (best == Acceptance::no || way == Acceptance::asCut) best = way == Acceptance::no ? best : way;
  }
  return best;
}

bool RightValues::isNear(const Number& value, std::span<const Number> values) {
  return std::ranges::any_of(
      values, [&](const Number& right) { return (value - right).absolute() <= right * routeTolerance(); });
}

Acceptance RightValues::acceptOne(StepId line, const TypedNumber& typed, const Number& value) const {
  if (typed.value == value) return Acceptance::asRounded;
  const bool measured = line == StepId::give || line == StepId::device;
  if (measured && isOnDevice(typed.value, value)) return Acceptance::asRounded;
  if (line == StepId::device && typed.decimals < fewestMeasuredDecimals)
    return Acceptance::no;  // no mark shows it
  // fewer digits than asked for are enough where those left out are zeros: 25.4 for 25.40
  const int fewest = fewestDecimals(line, value);
  const int decimals = std::max(typed.decimals, fewest);
  if (typed.value == value.rounded(decimals)) return Acceptance::asRounded;
  const bool fine = typed.decimals >= fewest;
  if (fine && decimals >= fewestCutDecimals && typed.value == cut(value, decimals)) return Acceptance::asCut;
  return isCoarse(typed, value) ? Acceptance::roundedTooFar : Acceptance::no;
}

/// How many decimals a rounded answer keeps at least: those that the line asks for. Where it asks for none, a
/// value is written as it comes out, or with three digits that count where it does not end.
int RightValues::fewestDecimals(StepId line, const Number& value) const {
  constexpr int mostDecimals = 4;
  if (const auto asked = decimalsAsked(line, value)) return *asked;
  const int whole = wholeDigits(value);
  if (value.endsWithin(std::max(0, mostDecimals - whole))) return mostDecimals;
  int zeros = 0;  // behind the point
  for (Number small = value * Number(10); whole == 0 && small < Number(1); small = small * Number(10))
    ++zeros;
  return whole >= significantDigits ? 0 : significantDigits - whole + zeros;
}

std::optional<int> RightValues::decimalsAsked(StepId line, const Number& value) const {
  const auto ask = std::ranges::find(problem_.asks, std::optional(line), &Ask::step);
  const bool stated = ask != problem_.asks.end() && ask->decimals;
  const auto below = stated ? ask->decimalsBelowOne : askedDecimalsBelowOne(line, problem_.key);
  if (below && value < Number(1)) return below;
  return stated ? ask->decimals : askedDecimals(line, problem_.key);
}

/// Whether the number is one of the two marks around the value, on the device that the key measures with.
bool RightValues::isOnDevice(const Number& typed, const Number& value) const {
  const Step* device = problem_.key.step(StepId::device);
  const auto* measuring = device ? std::get_if<Measuring>(&device->body) : nullptr;
  if (!measuring || measuring->step.isZero()) return false;
  if (measuring->measured && measuring->exact.value == value && typed == *measuring->measured) return true;
  return (typed / measuring->step).isWhole() && (typed - value).absolute() * Number(2) <= measuring->step;
}

}  // namespace wardchalk
