#include "core/practice/marking/wrong_values.h"

#include <algorithm>

#include "core/medicine/paths.h"
#include "core/practice/marking/detail/wrong.h"

namespace wardchalk {

namespace detail {

void WrongList::add(MistakeId mistake, const Number& value) {
  if (value <= Number(0)) return;
  if (value == right_) {
    hidden_.push_back(mistake);
    return;
  }
  const bool known = std::ranges::any_of(
      values_, [&](const WrongValue& other) { return other.mistake == mistake && other.value == value; });
  if (!known) values_.push_back({mistake, value});
}

}  // namespace detail

namespace {

using detail::Papers;
using detail::WrongGround;
using detail::WrongList;
using M = MistakeId;

/// The line whose wrong values are sought.
class Search {
 public:
  Search(const Worksheet& key, StepId line, std::span<const Instead> carried, Rare seeks)
      : key_(key),
        line_(line),
        carried_(carried.begin(), carried.end()),
        papers_(detail::papersOf(key)),
        right_(key, carried_),
        list_(right_.exact(line) ? *right_.exact(line) : Number(0)),
        further_(list_.right()),
        rare_(list_.right()),
        seeks_(seeks) {}

  WrongValues run() {
    if (!right_.exact(line_)) return {};
    addOwn();
    addEarlierSteps();
    addSizeMisused();
    addFurther();
    return {list_.right(), list_.take(), further_.take(), rare_.take(), list_.hidden()};
  }

 private:
  void addOwn() {
    const WrongGround ground{key_, papers_, right_, line_};
    addMade(ground, list_);
    detail::addWrongPoint(ground, list_);
  }

  static void addMade(const WrongGround& ground, WrongList& list) {
    detail::addWrongWeight(ground, list);
    detail::addWrongHeight(ground, list);
    detail::addWrongSurface(ground, list);
    detail::addWrongSharing(ground, list);
    detail::addWrongEnd(ground, list);
    detail::addWrongConversion(ground, list);
    detail::addWrongAmount(ground, list);
    detail::addWrongMixing(ground, list);
    detail::addWrongRate(ground, list);
    detail::addWrongDilution(ground, list);
  }

  void addFurther() {
    const WrongGround ground{key_, papers_, right_, line_, isCarried(Origin::step(StepId::weight))};
    detail::addFurtherSize(ground, further_);
    detail::addFurtherDose(ground, further_);
    detail::addFurtherAmount(ground, further_);
    detail::addFurtherRate(ground, further_);
    if (seeks_ == Rare::leftOut) return;
    detail::addRareSize(ground, rare_);
    detail::addRareDose(ground, rare_);
    detail::addRareAmount(ground, rare_);
  }

  [[nodiscard]] bool isCarried(const Origin& origin) const {
    return std::ranges::find(carried_, origin, &Instead::origin) != carried_.end();
  }

  /// Mistakes of steps that this line rests on and that the student was not asked for, or left out.
  void addEarlierSteps() {
    for (const Step& step : key_.steps) {
      if (step.id == line_) return;
      const Origin origin = Origin::step(step.id);
      if (isCarried(origin) || !right_.exact(step.id) || !restsOn(key_, line_, origin, carried_)) continue;
      WrongList made(*right_.exact(step.id));
      addMade({key_, papers_, right_, step.id}, made);
      for (const WrongValue& wrong : made.take()) addWith(wrong.mistake, {{origin, wrong.value}});
    }
  }

  /// What the line comes to with these numbers in place of the right ones.
  void addWith(MistakeId mistake, std::vector<Instead> instead) {
    for (const Instead& own : carried_)
      if (std::ranges::find(instead, own.origin, &Instead::origin) == instead.end()) instead.push_back(own);
    const Replay replay(key_, std::move(instead), line_);
    if (const Number* value = replay.exact(line_)) list_.add(mistake, *value);
  }

  /// The origin by which the chains name the size; none if this line does not rest on it.
  [[nodiscard]] std::optional<Origin> sizeOrigin(StepId step, StaticText path) const {
    for (const Origin& origin : {Origin::step(step), Origin::field(path)})
      if (restsOn(key_, line_, origin, carried_)) return origin;
    return std::nullopt;
  }

  /// A size that is right in itself and wrongly used on this line.
  void addSizeMisused() {
    if (line_ == StepId::bsa || line_ == StepId::weight || line_ == StepId::height) return;
    const auto surface = sizeOrigin(StepId::bsa, path::bsa);
    if (surface && papers_.m2) {
      if (papers_.kg) addWith(M::kilogramsForSurface, {{*surface, *papers_.kg}});
      addRounded(*surface, *papers_.m2);
      return;
    }
    const auto weight = sizeOrigin(StepId::weight, path::weight);
    if (weight && papers_.kg) addWeightMisused(*weight);
  }

  void addRounded(const Origin& origin, const Number& size) {
    for (const int decimals : {1, 0}) {
      const Number rounded = size.rounded(decimals);
      if (!rounded.isZero() && rounded != size) addWith(M::sizeRoundedEarly, {{origin, rounded}});
    }
  }

  void addWeightMisused(const Origin& origin) {
    if (papers_.m2) addWith(M::surfaceForKilograms, {{origin, *papers_.m2}});
    addRounded(origin, *papers_.kg);
    if (isCarried(origin)) return;  // an answer that was marked already
    if (papers_.cm) addWith(M::heightAndWeightSwapped, {{origin, *papers_.cm}});
    if (papers_.inches) addWith(M::heightAndWeightSwapped, {{origin, *papers_.inches}});
    addWith(M::kilogramsDivided, {{origin, *papers_.kg / Number::ratio(22, 10)}});
  }

  const Worksheet& key_;
  StepId line_;
  std::vector<Instead> carried_;
  Papers papers_;
  Replay right_;
  WrongList list_;
  WrongList further_;
  WrongList rare_;
  Rare seeks_;
};

}  // namespace

WrongValues wrongValues(const Worksheet& key, StepId line, std::span<const Instead> carried, Rare rare) {
  return Search(key, line, carried, rare).run();
}

}  // namespace wardchalk
