#include "core/practice/marking/detail/mark_number.h"

#include <algorithm>

#include "core/practice/lines/answer_value.h"
#include "core/practice/marking/match_mistakes.h"

namespace wardchalk::detail {

namespace {

using M = MistakeId;

constexpr int exactDecimals = 20;

/// The last side that is still to be worked out; null if the line is an answer alone.
const LineSide* workedSide(const StudentLine& line) {
  for (auto side = line.sides.rbegin(); side != line.sides.rend(); ++side)
    if (!side->isAmount && !side->isParts) return &*side;
  return nullptr;
}

/// A working without units is taken to be in the wanted unit.
InWanted workedIn(const LineSide& side, const Units& wanted) {
  if (side.written == UnitsWritten::none || side.unitsOpen) return {UnitFit::leftOut, side.value};
  return inWantedUnit(side.value, side.units, wanted);
}

class NumberMarker {
 public:
  NumberMarker(const NumberLine& line, const LineKey& key) : line_(line), key_(key) {}

  LineMark run() {
    const Acceptance acceptance = accept(typedInWanted());
    if (isRight(acceptance))
      markRight(acceptance);
    else if (unitAlone())
      markWrongUnit();
    else
      markWrong();
    return std::move(mark_);
  }

 private:
  static bool isRight(Acceptance acceptance) {
    return acceptance == Acceptance::asRounded || acceptance == Acceptance::asCut;
  }

  /// The digits written count for as much in the wanted unit: 0.2495 g is 249.5 mg.
  [[nodiscard]] TypedNumber typedInWanted() const {
    if (line_.typed.value.isZero()) return line_.typed;
    const Number factor = line_.wanted.value / line_.typed.value;
    int moved = 0;
    while (Number::powerOfTen(moved + 1) <= factor) ++moved;
    while (Number::powerOfTen(moved) > factor) --moved;
    return {line_.wanted.value, line_.typed.decimals - moved};
  }

  [[nodiscard]] Acceptance accept(const TypedNumber& typed) const {
    return key_.accepted.accept(key_.step, typed, key_.right);
  }

  /// The set-up is known to be right where the working comes to a right value.
  [[nodiscard]] bool setUpRight() const {
    return line_.worked && RightValues::isNear(line_.worked->value, key_.right);
  }

  /// Whether the number as it stands is right and only its unit is not.
  [[nodiscard]] bool unitAlone() const {
    return line_.wanted.fit != UnitFit::leftOut && line_.wanted.value != line_.typed.value &&
           isRight(accept(line_.typed));
  }

  void markRight(Acceptance acceptance) {
    mark_.mark = Mark::right;
    mark_.set(Aspect::arithmetic, Standing::good);
    mark_.set(Aspect::rounding, acceptance == Acceptance::asCut ? Standing::bad : Standing::good);
    if (acceptance == Acceptance::asCut) mark_.notes.push_back(LineNote::cutOff);
    judgeUnit();
    judgeWorking();
  }

  void judgeUnit() {
    const UnitFit fit = line_.wanted.fit;
    mark_.set(Aspect::units, fit == UnitFit::fits ? Standing::good : Standing::bad);
    if (fit == UnitFit::fits) return;
    mark_.mistakes.push_back(M::unitMissingOrOther);
    if (fit != UnitFit::leftOut) mark_.mark = Mark::wrong;
  }

  /// A right number whose working gives another, or does not cancel to the wanted unit, does not earn full
  /// marks.
  void judgeWorking() {
    if (!line_.worked) return;
    if (!setUpRight()) {
      markFalseWorking();
      return;
    }
    mark_.set(Aspect::setUp, Standing::good);
    const bool cancels = line_.worked->fit == UnitFit::fits || !line_.workedUnitsWritten;
    if (cancels) return;
    mark_.mark = Mark::wrong;
    mark_.mistakes.insert(mark_.mistakes.begin(), M::unitsDoNotCancel);
    mark_.set(Aspect::units, Standing::bad);
    mark_.set(Aspect::setUp, Standing::bad);
  }

  void markFalseWorking() {
    mark_.set(Aspect::setUp, Standing::bad);
    mark_.notes.push_back(LineNote::lineDoesNotHold);
    std::vector<M> found = matchMistakes({line_.worked->value, exactDecimals}, key_.wrong);
    mark_.mark = found.size() > 1 ? Mark::unsure : Mark::wrong;
    mark_.mistakes.insert(mark_.mistakes.begin(), found.begin(), found.end());
  }

  void markWrongUnit() {
    mark_.mark = Mark::wrong;
    mark_.mistakes.push_back(M::unitMissingOrOther);
    mark_.set(Aspect::arithmetic, Standing::good);
    mark_.set(Aspect::units, Standing::bad);
    if (setUpRight()) mark_.set(Aspect::setUp, Standing::good);
  }

  void markWrong() {
    mark_.mark = Mark::wrong;
    mark_.set(Aspect::units, line_.wanted.fit == UnitFit::fits ? Standing::good : Standing::bad);
    if (setUpRight())
      markWrongSum();
    else
      markWrongSetUp();
  }

  /// The set-up is right, and what stands at the end is not what it comes to.
  void markWrongSum() {
    mark_.set(Aspect::setUp, Standing::good);
    const bool tooFar = accept(typedInWanted()) == Acceptance::roundedTooFar;
    mark_.set(tooFar ? Aspect::rounding : Aspect::arithmetic, Standing::bad);
    if (tooFar) mark_.set(Aspect::arithmetic, Standing::good);
    mark_.mistakes = {tooFar ? roundingMistake() : pointMoved() ? M::pointMoved : M::sumWrong};
  }

  [[nodiscard]] M roundingMistake() const {
    return key_.step == StepId::bsa || key_.step == StepId::weight ? M::sizeRoundedEarly
                                                                   : M::roundedElsewhere;
  }

  [[nodiscard]] bool pointMoved() const {
    return std::ranges::any_of(std::array{1, 2, -1, -2}, [&](int power) {
      const TypedNumber moved{line_.wanted.value * Number::powerOfTen(power), line_.typed.decimals - power};
      return isRight(accept(moved));
    });
  }

  void markWrongSetUp() {
    if (line_.worked) mark_.set(Aspect::setUp, Standing::bad);
    std::vector<M> found;
    if (line_.worked) found = matchMistakes({line_.worked->value, exactDecimals}, key_.wrong);
    if (found.empty()) found = matchAnswer();
    if (found.size() > 1) mark_.mark = Mark::unsure;
    if (found.empty() && !key_.right.empty())
      found = matchPair(typedInWanted(), key_.right.front(), key_.wrong);
    mark_.mistakes = std::move(found);
  }

  [[nodiscard]] std::vector<M> matchAnswer() const {
    const bool tooFar = accept(typedInWanted()) == Acceptance::roundedTooFar;
    std::vector<M> found = matchMistakes(typedInWanted(), key_.wrong, tooFar);
    const bool named = std::ranges::any_of(
        found, [](M mistake) { return mistake == M::sizeRoundedEarly || mistake == M::roundedElsewhere; });
    if (tooFar && !named) found.push_back(roundingMistake());
    const bool partOfDrop = key_.step == StepId::drops && !line_.wanted.value.isWhole();
    if (found.empty() && partOfDrop) found.push_back(M::partOfDrop);
    return found;
  }

  const NumberLine& line_;
  const LineKey& key_;
  LineMark mark_;
};

}  // namespace

std::optional<NumberLine> numberLine(const StudentLine& line, const Units& wanted) {
  const AnswerValue answer = answerOf(line);
  if (!answer.isAmount) return std::nullopt;
  NumberLine taken;
  taken.typed = {answer.value, answer.decimals < 0 ? exactDecimals : answer.decimals};
  taken.wanted = inWantedUnit(answer.value, answer.hasUnits ? answer.units : Units{}, wanted);
  if (const LineSide* side = workedSide(line)) {
    taken.worked = workedIn(*side, wanted);
    taken.workedUnitsWritten = side->written == UnitsWritten::all && !side->unitsOpen;
  }
  taken.holds =
      std::ranges::none_of(line.links, [](const LineLink& link) { return link.truth == Truth::wrong; });
  return taken;
}

LineMark markNumberLine(const NumberLine& line, const LineKey& key) { return NumberMarker(line, key).run(); }

}  // namespace wardchalk::detail
