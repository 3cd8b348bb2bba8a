#include "tests/support/measured_again.h"

#include <algorithm>

namespace wardchalk::test {

namespace {

/// R9 and R20 in their own words, every way to draw the dose written out and the first of the best taken.
class Measured {
 public:
  Measured(const Case& inputs, const HouseRules& rules, const WorkedAgain& again)
      : rules_(rules), again_(again), exact_(*again.dose / *again.perMl), route_(inputs.order.route) {
    for (const Syringe& one : rules.syringes)
      if (fitsRoute(one.kind)) ours_.push_back(one);
    std::ranges::sort(ours_, {}, &Syringe::holdsMl);
  }

  MeasuredAgain measured() const {
    const Way alone = inOne();
    const bool asked = !alone.sum || off(*alone.sum) > limit() || alone.count > 1;
    const bool two =
        rules_.roundTo == RoundTo::marks && route_ != Route::intramuscular && route_ != Route::subcutaneous;
    if (!asked || !two) return {alone.sum, {}, {}, alone.holds};
    const std::optional<Way> pair = bestPair();
    if (!pair || off(*pair->sum) > limit()) return {alone.sum, {}, {}, alone.holds};
    const Number allowed = !alone.sum        ? limit()
                           : alone.count > 1 ? off(*alone.sum)
                                             : off(*alone.sum) / Number(2);
    if (off(*pair->sum) > allowed) return {alone.sum, {}, {}, alone.holds};
    return {pair->sum, pair->full, *pair->sum - *pair->full, pair->holds};
  }

 private:
  struct Way {
    std::optional<Number> sum;
    std::optional<Number> full;
    std::optional<Number> holds;
    int count = 0;
  };

  bool fitsRoute(SyringeKind kind) const {
    if (!route_) return false;
    switch (*route_) {
      case Route::oral:
      case Route::enteral:
        return kind == SyringeKind::oral;
      case Route::intravenous:
      case Route::intramuscular:
      case Route::subcutaneous:
        return kind == SyringeKind::injection;
      default:
        return false;
    }
  }

  Number limit() const { return exact_ * rules_.askRoundingPercent / Number(100); }
  Number off(const Number& mL) const { return mL < exact_ ? exact_ - mL : mL - exact_; }

  bool keeps(const Number& mL) const {
    return std::ranges::all_of(again_.bounds, [&](const BoundAgain& bound) {
      return !bound.holdsFor(again_.dose) || bound.holdsFor(mL * *again_.perMl);
    });
  }

  Number stepFor(const Number& mL, const Syringe* syringe) const {
    const int decimals = mL < Number(1) ? rules_.volumeDecimalsBelow1Ml : rules_.volumeDecimalsFrom1Ml;
    Number step(1);
    for (int i = 0; i < decimals; ++i) step = step / Number(10);
    return syringe && rules_.roundTo == RoundTo::marks ? larger(step, syringe->marksMl) : step;
  }

  /// After `before` mL the nearer mark, the upper one of two as near, that leaves some of the rest and no
  /// more than fits.
  std::optional<Number> nearest(const Number& before, const Number& step,
                                const std::optional<Number>& room) const {
    std::vector<Number> sums;
    const Number rest = exact_ - before;
    const Number down = (rest / step).floor() * step;
    for (const Number& one : {rest == down ? down : down + step, down})
      if (!one.isZero() && (!room || one <= *room) && keeps(before + one)) sums.push_back(before + one);
    if (sums.empty()) return std::nullopt;
    return *std::ranges::min_element(sums, {}, [&](const Number& sum) { return off(sum); });
  }

  Way inOne() const {
    const auto holds = std::ranges::find_if(ours_, [&](const Syringe& one) { return one.holdsMl >= exact_; });
    const Syringe* syringe = ours_.empty() ? nullptr : holds == ours_.end() ? &ours_.back() : &*holds;
    Way way{nearest(Number(0), stepFor(exact_, syringe), {}), {}, {}, 0};
    if (!syringe) return way;
    way.holds = syringe->holdsMl;
    for (Number left = way.sum.value_or(Number(0)); left > Number(0); left = left - syringe->holdsMl)
      ++way.count;
    return way;
  }

  std::optional<Way> bestPair() const {
    const Quantity& smallest = rules_.smallestVolume;
    std::optional<Way> best;
    // the largest full one first, so that of equals it stays
    for (auto full = ours_.rbegin(); full != ours_.rend(); ++full) {
      const Number rest = exact_ - full->holdsMl;
      if (rest <= Number(0) || rest < smallest.value) continue;
      const auto second =
          std::ranges::find_if(ours_, [&](const Syringe& one) { return one.holdsMl >= rest; });
      if (second == ours_.end()) continue;
      const auto sum = nearest(full->holdsMl, stepFor(rest, &*second), second->holdsMl);
      if (sum && (!best || off(*sum) < off(*best->sum))) best = Way{sum, full->holdsMl, second->holdsMl, 2};
    }
    return best;
  }

  const HouseRules& rules_;
  const WorkedAgain& again_;
  Number exact_;
  std::optional<Route> route_;
  std::vector<Syringe> ours_;
};

}  // namespace

MeasuredAgain measureAgain(const Case& inputs, const HouseRules& rules, const WorkedAgain& again) {
  return Measured(inputs, rules, again).measured();
}

}  // namespace wardchalk::test
