#include "core/practice/marking/detail/mark_syringe.h"

namespace wardchalk::detail {

namespace {

using M = MistakeId;

/// Amounts that differ by less are the same one, rounded to another mark.
const Number& roundingShare() {
  static const Number share = Number::ratio(1, 10);
  return share;
}

class SyringeMarker {
 public:
  SyringeMarker(const Measuring& measuring, const Replay& carried, const SyringeAnswer& said)
      : measuring_(measuring), said_(said), amount_(amountOf(measuring, carried)) {}

  LineMark run() {
    judgeSyringe();
    if (said_.drawnUp) judgeAmount(*said_.drawnUp);
    mark_.mark = mark_.mistakes.empty() && !wrong_ ? Mark::right : Mark::wrong;
    return std::move(mark_);
  }

 private:
  static Number amountOf(const Measuring& measuring, const Replay& carried) {
    const Number* own = carried.result(StepId::give);
    return own ? *own : measuring.exact.value;
  }

  void judgeSyringe() {
    const auto isHeld = [&](const std::optional<Syringe>& syringe) {
      return syringe && syringe->holdsMl == *said_.holds;
    };
    const bool known = (isHeld(measuring_.syringe) || isHeld(measuring_.full)) && !said_.fillsMore;
    if (!known) mark_.mistakes.push_back(M::otherSyringe);
    mark_.set(Aspect::setUp, known ? Standing::good : Standing::bad);
  }

  void judgeAmount(const Number& drawn) {
    const bool right = isOnMark(drawn);
    mark_.set(Aspect::rounding, right ? Standing::good : Standing::bad);
    if (right) return;
    wrong_ = true;
    if (drawn == *said_.holds)
      mark_.mistakes.push_back(M::syringeFilled);
    else if ((drawn - amount_).absolute() <= amount_ * roundingShare())
      mark_.mistakes.push_back(M::roundedElsewhere);
  }

  [[nodiscard]] bool isOnMark(const Number& drawn) const {
    if (measuring_.measured && drawn == *measuring_.measured && amount_ == measuring_.exact.value)
      return true;
    if (measuring_.step.isZero()) return drawn == amount_;
    return (drawn / measuring_.step).isWhole() && (drawn - amount_).absolute() * Number(2) <= measuring_.step;
  }

  const Measuring& measuring_;
  const SyringeAnswer& said_;
  Number amount_;
  bool wrong_ = false;
  LineMark mark_;
};

}  // namespace

LineMark markSyringe(const Measuring& measuring, const Replay& carried, const SyringeAnswer& said) {
  return SyringeMarker(measuring, carried, said).run();
}

}  // namespace wardchalk::detail
