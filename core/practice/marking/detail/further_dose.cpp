#include <array>
#include <utility>

#include "core/practice/marking/detail/wrong.h"
#include "core/unit/conversion.h"

// Further mistakes with the reference, the size and the schedule.

namespace wardchalk::detail {

namespace {

using M = MistakeId;

const Number dayHours(24);

bool isLimitDose(StepId step) { return step == StepId::limitDose || step == StepId::lowDose; }
bool isLimitDay(StepId step) { return step == StepId::limitDay || step == StepId::lowDay; }
bool isLowEnd(StepId step) { return step == StepId::lowDose || step == StepId::lowDay; }

/// The reference's figure of this line and what it is per.
struct Stated {
  const DoseAmount* amount = nullptr;
  Number inLine;  ///< its number in the unit of medicine that the line asks for
};

std::optional<Stated> statedFor(const WrongGround& ground) {
  const Reference& reference = ground.key.given.reference;
  const auto& end = isLowEnd(ground.step) && reference.low ? reference.low : reference.high;
  const Units& wanted = ground.key.step(ground.step)->lookingFor;
  if (!end || wanted.over.empty()) return std::nullopt;
  const auto value = converted(end->amount.value, end->amount.unit, wanted.over.front());
  if (!value) return std::nullopt;
  return Stated{&*end, *value};
}

class DoseMistakes {
 public:
  DoseMistakes(const WrongGround& ground, const Stated& stated, WrongList& list)
      : ground_(ground), papers_(ground.papers), stated_(stated), list_(list) {
    const auto shared = ground.chain() ? dosesSharing(*ground.chain()) : std::nullopt;
    shared_ = shared.has_value();
    doses_ = shared ? *shared : papers_.referenceDoses;
  }

  void add() {
    addSchedule();
    addOrder();
    if (const auto* size = sizeOf())
      addSize(*size);
    else if (papers_.kg)
      list_.times(M::sizeCountedTwice, *papers_.kg);
    addPounds();
    addHeight();
  }

 private:
  [[nodiscard]] const Number* sizeOf() const {
    if (stated_.amount->perSize == PerSize::none) return nullptr;
    const auto& size = stated_.amount->perSize == PerSize::kg ? papers_.kg : papers_.m2;
    return size ? &*size : nullptr;
  }

  void addSchedule() {
    if (doses_ == Number(1)) {
      addHours(dayHours);
      return;
    }
    const Number interval = dayHours / doses_;
    if (isLimitDay(ground_.step)) {
      list_.times(M::sharedOnceTooOften, Number(1) / doses_);
      list_.times(M::dayTimesDoses, doses_);
      addHours(interval);
      list_.times(M::dividedByHoursOfDay, Number(1) / dayHours);
    } else if (shared_) {
      list_.times(M::timesForDivide, doses_ * doses_);
      list_.times(M::dividedByInterval, doses_ / interval);
      list_.times(M::dividedByHoursOfDay, doses_ / dayHours);
    } else {
      list_.times(M::doseTimesDoses, doses_);
      addHours(interval);
    }
  }

  void addHours(const Number& interval) { list_.times(M::dividedByInterval, Number(1) / interval); }

  void addOrder() {
    const auto& ordered = ground_.key.orderedDose;
    if (!ordered) return;
    const Number* worked = ground_.right.exact(StepId::orderedDose);
    const Number dose = worked ? *worked : ordered->value;
    const Number day = dose * papers_.orderDoses;
    list_.add(M::orderForLimit, dose);
    list_.add(M::orderForLimit, day);
    const Number* size = sizeOf();
    if (!size) return;
    list_.add(M::orderDividedBySize, dose / *size);
    list_.add(M::orderDividedBySize, day / *size);
  }

  void addSize(const Number& size) {
    list_.times(M::dividedBySize, Number(1) / (size * size));
    list_.times(M::sizeCountedTwice, size);
    const Number added = stated_.inLine + size;
    list_.add(M::sizeAdded, added);
    if (shared_) {
      list_.add(M::sizeAdded, added / doses_);
      list_.add(M::sizeAdded, stated_.inLine / doses_ + size);
    }
  }

  void addPounds() {
    if (stated_.amount->perSize != PerSize::kg || !papers_.kg) return;
    const Number trade = Number::ratio(22, 10);
    list_.times(M::kilogramsDivided, Number(1) / trade);
    if (papers_.pounds && ground_.weightAnswered)
      list_.times(M::doseInPounds, *papers_.pounds / *papers_.kg);
    else if (!papers_.pounds)
      list_.times(M::kilogramsToPounds, trade);
  }

  /// The height in place of the size.
  void addHeight() {
    const Number* size = sizeOf();
    if (!size) return;
    if (stated_.amount->perSize == PerSize::m2)
      for (const auto* weight : {&papers_.kg, &papers_.pounds})
        if (*weight) list_.times(M::kilogramsForSurface, **weight / *size);
    for (const auto* height : {&papers_.cm, &papers_.inches})
      if (*height) list_.times(M::heightAndWeightSwapped, **height / *size);
  }

  const WrongGround& ground_;
  const Papers& papers_;
  const Stated& stated_;
  WrongList& list_;
  Number doses_{1};
  bool shared_ = false;
};

}  // namespace

void addFurtherDose(const WrongGround& ground, WrongList& list) {
  if (!isLimitDose(ground.step) && !isLimitDay(ground.step)) return;
  if (const auto stated = statedFor(ground)) DoseMistakes(ground, *stated, list).add();
}

}  // namespace wardchalk::detail
