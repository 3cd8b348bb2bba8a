#include "core/practice/marking/detail/mark_number.h"

#include <algorithm>

#include "core/practice/lines/answer_value.h"
#include "core/practice/marking/match_mistakes.h"
#include "core/unit/unit.h"

namespace wardchalk::detail {

namespace {

using M = MistakeId;

constexpr int exactDecimals = 20;

/// How many times the one is the other, at least 1; of a zero nothing is said.
Number apart(const Number& one, const Number& other) {
  if (one.isZero() || other.isZero()) return Number::powerOfTen(exactDecimals);
  return larger(one, other) / smaller(one, other);
}

/// What a working comes to in the wanted unit. Where a number has no unit, or a unit was not converted, it
/// may be meant as it stands: what lies nearer to the result beside it was meant.
InWanted workedIn(const LineSide& side, const Units& wanted, const Number& result) {
  const InWanted asItStands{UnitFit::leftOut, side.value};
  if (side.written == UnitsWritten::none || side.unitsOpen) return asItStands;
  InWanted converted = inWantedUnit(side.value, side.units, wanted);
  const bool nearer = apart(side.value, result) < apart(converted.value, result);
  return nearer ? asItStands : converted;
}

bool measuresSize(Unit unit) {
  const Dimension dimension = dimensionOf(unit);
  return dimension == Dimension::bodyMass || dimension == dimensionOf(Unit::m2) ||
         dimension == dimensionOf(Unit::cm);
}

/// Two measures of a child's size, one above and one below, that do not cancel: pounds, or kilograms for each
/// m².
bool clash(const Units& units) {
  return std::ranges::any_of(units.over, measuresSize) && std::ranges::any_of(units.under, measuresSize);
}

/// Whether no amount is said to equal another: "4 mL = 12 mL". What is within a tenth was rounded to a mark.
bool sidesAgree(const StudentLine& line) {
  for (std::size_t i = 0; i < line.links.size(); ++i) {
    const LineSide& left = line.sides[i];
    const LineSide& right = line.sides[i + 1];
    const bool amounts = left.isAmount && right.isAmount && line.links[i].units == UnitsMeet::same;
    const bool equal = line.links[i].relation == LineRelation::equal;
    if (amounts && equal && line.links[i].truth == Truth::wrong &&
        apart(left.value, right.value) > Number::ratio(11, 10))
      return false;
  }
  return true;
}

/// "BSA² = 31 × 24 ÷ 3131 = 0.2376; BSA = 0.49 m²": on the line after its sum a root may be taken in the
/// head.
void takeRoot(NumberLine& line, const StudentWorking& working, const LineSide& side, const Units& wanted) {
  const std::vector<LineSide>& last = working.answerLine().sides;
  const bool before = std::ranges::none_of(last, [&](const LineSide& one) { return &one == &side; });
  if (!before || wanted != Units{{Unit::m2}, {}}) return;
  const Number root = side.value.rootCut(exactDecimals);
  if (apart(root, line.wanted.value) < Number::ratio(102, 100))
    line.worked = InWanted{UnitFit::leftOut, root};
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
  /// A figure of the papers that was written down as it stands.
  static bool isFigure(M mistake) {
    return mistake == M::volumeAsRate || mistake == M::infusionVolumeCopied || mistake == M::orderForLimit;
  }

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
    if (!line_.sidesAgree) {
      mark_.mark = Mark::wrong;
      mark_.set(Aspect::setUp, Standing::bad);
      mark_.notes.push_back(LineNote::lineDoesNotHold);
      return;
    }
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
    const bool open = !line_.workedUnitsWritten && !(line_.unitsClash && !key_.bareConstant);
    if (line_.worked->fit == UnitFit::fits || open) return;
    mark_.mark = Mark::wrong;
    mark_.mistakes.insert(mark_.mistakes.begin(), M::unitsDoNotCancel);
    mark_.set(Aspect::units, Standing::bad);
    mark_.set(Aspect::setUp, Standing::bad);
  }

  void markFalseWorking() {
    mark_.set(Aspect::setUp, Standing::bad);
    mark_.notes.push_back(LineNote::lineDoesNotHold);
    // whatever it comes to, what is left of its units is not what is asked for
    const bool unitsTell = line_.workedUnitsWritten && line_.worked->fit != UnitFit::fits;
    std::vector<M> found =
        unitsTell ? std::vector{M::unitsDoNotCancel} : matchWorked(line_.worked->value, key_.wrong);
    if (unitsTell) mark_.set(Aspect::units, Standing::bad);
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
    if (std::vector<M> told = toldBySum(); !told.empty()) return markTold(std::move(told));
    if (roundsRight()) return markRounding();
    if (setUpRight())
      markWrongSum();
    else
      markWrongSetUp();
  }

  /// A sum that is written out and comes to a mistake's own figure, and to none that is right, tells it,
  /// however near the two lie: "33 lb ÷ 2.2" of a child who weighs 33 lb 4 oz.
  [[nodiscard]] std::vector<M> toldBySum() const {
    if (!line_.worked || std::ranges::find(key_.right, line_.worked->value) != key_.right.end()) return {};
    // a size that is worked out so comes from the sum, and from no rounding
    return matchFigure(line_.worked->value, key_.wrong, roundingMistake());
  }

  void markTold(std::vector<M> told) {
    mark_.set(Aspect::setUp, Standing::bad);
    mark_.mark = told.size() > 1 ? Mark::unsure : Mark::wrong;
    mark_.mistakes = std::move(told);
  }

  /// The right amount stands there, and what it was rounded to is too far from it.
  [[nodiscard]] bool roundsRight() const {
    return line_.before && RightValues::isNear(*line_.before, key_.right) &&
           apart(*line_.before, line_.wanted.value) < Number::ratio(3, 2);
  }

  void markRounding() {
    mark_.set(Aspect::rounding, Standing::bad);
    mark_.mistakes = {roundingMistake()};
  }

  /// The set-up is right, and what stands at the end is not what it comes to.
  void markWrongSum() {
    mark_.set(Aspect::setUp, Standing::good);
    const bool tooFar = accept(typedInWanted()) == Acceptance::roundedTooFar;
    // what is rounded too far is no right number, and is not praised as one
    mark_.set(tooFar ? Aspect::rounding : Aspect::arithmetic, Standing::bad);
    mark_.mistakes = {tooFar ? roundingMistake() : pointMoved() ? M::pointMoved : M::sumWrong};
  }

  [[nodiscard]] M roundingMistake() const { return isSize() ? M::sizeRoundedEarly : M::roundedElsewhere; }

  [[nodiscard]] bool isSize() const { return key_.step == StepId::bsa || key_.step == StepId::weight; }

  [[nodiscard]] bool pointMoved() const {
    return std::ranges::any_of(std::array{1, 2, -1, -2}, [&](int power) {
      const TypedNumber moved{line_.wanted.value * Number::powerOfTen(power), line_.typed.decimals - power};
      return isRight(accept(moved));
    });
  }

  void markWrongSetUp() {
    if (line_.worked) mark_.set(Aspect::setUp, Standing::bad);
    std::vector<M> found;
    if (line_.worked) found = matchWorked(line_.worked->value, key_.wrong);
    if (found.empty()) found = otherSize();
    if (found.empty()) found = matchAnswer();
    if (found.size() > 1) mark_.mark = Mark::unsure;
    if (found.empty() && !key_.right.empty())
      found = matchPair(typedInWanted(), key_.right.front(), key_.wrong.values);
    // the medicine's number with the unit of a piece
    if (found == std::vector{M::medicineAsPieces}) {
      found.push_back(M::unitMissingOrOther);
      mark_.set(Aspect::units, Standing::bad);
    }
    mark_.mistakes = std::move(found);
  }

  /// A reference for each kg beside a surface, or the reverse: the units left tell it, whatever the figure.
  [[nodiscard]] std::vector<M> otherSize() const {
    const auto has = [](const UnitProduct& units, Unit unit) {
      return std::ranges::find(units, unit) != units.end();
    };
    const Units& left = line_.workedUnits;
    if (has(left.over, Unit::m2) && has(left.under, Unit::kg)) return {M::surfaceForKilograms};
    if (has(left.over, Unit::kg) && has(left.under, Unit::m2)) return {M::kilogramsForSurface};
    return {};
  }

  [[nodiscard]] std::vector<M> matchAnswer() const {
    const bool tooFar = accept(typedInWanted()) == Acceptance::roundedTooFar;
    std::vector<M> found = matchTiers(typedInWanted(), key_.wrong, tooFar);
    const bool named = std::ranges::any_of(
        found, [](M mistake) { return mistake == M::sizeRoundedEarly || mistake == M::roundedElsewhere; });
    const bool copied = std::ranges::any_of(key_.wrong.further, [&](const WrongValue& one) {
      return isFigure(one.mistake) && one.value == line_.wanted.value;
    });
    const TypedNumber typed = typedInWanted();
    const bool inTens =
        typed.decimals <= 0 && (typed.value / Number(10)).isWhole();  // as many digits as were asked for
    if (tooFar && !named && !copied && (found.empty() || !inTens)) found.push_back(roundingMistake());
    const bool partOfDrop = key_.step == StepId::drops && !line_.wanted.value.isWhole();
    if (found.empty() && partOfDrop) found.push_back(M::partOfDrop);
    return found;
  }

  const NumberLine& line_;
  const LineKey& key_;
  LineMark mark_;
};

}  // namespace

std::optional<NumberLine> numberLine(const StudentWorking& working, const Units& wanted) {
  const StudentLine& line = working.answerLine();
  const AnswerValue answer = answerOf(line);
  if (!answer.isAmount) return std::nullopt;
  NumberLine taken;
  taken.typed = {answer.value, answer.decimals < 0 ? exactDecimals : answer.decimals};
  taken.wanted = inWantedUnit(answer.value, answer.hasUnits ? answer.units : Units{}, wanted);
  if (const LineSide* side = working.workedSide()) {
    taken.worked = workedIn(*side, wanted, taken.wanted.value);
    takeRoot(taken, working, *side, wanted);
    if (!side->unitsOpen) taken.workedUnits = side->units;
    taken.workedUnitsWritten = side->written == UnitsWritten::all && !side->unitsOpen;
    taken.unitsClash = side->written == UnitsWritten::partly && !side->unitsOpen && clash(side->units);
  }
  if (line.sides.size() == 2 && line.sides.front().isAmount)
    taken.before = inWantedUnit(line.sides.front().value, line.sides.front().units, wanted).value;
  taken.sidesAgree = sidesAgree(line);
  return taken;
}

LineMark markNumberLine(const NumberLine& line, const LineKey& key) { return NumberMarker(line, key).run(); }

}  // namespace wardchalk::detail
