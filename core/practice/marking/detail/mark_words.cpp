#include "core/practice/marking/detail/mark_words.h"

#include <algorithm>
#include <array>

#include "core/practice/marking/detail/papers.h"
#include "core/practice/marking/hints.h"
#include "core/practice/marking/marking.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/marking/wanted_unit.h"
#include "core/practice/problem/problem_text.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk::detail {

namespace {

using M = MistakeId;

bool fails(const Replay& carried, StepId step) { return carried.holds(step) == false; }

LineMark rightMark() {
  LineMark mark;
  mark.mark = Mark::right;
  mark.set(Aspect::setUp, Standing::good);
  return mark;
}

LineMark wrongMark(std::vector<M> mistakes) {
  LineMark mark;
  mark.mark = mistakes.size() > 1 ? Mark::unsure : Mark::wrong;
  mark.mistakes = std::move(mistakes);
  mark.set(Aspect::setUp, Standing::bad);
  return mark;
}

/// The maximum alone is passed: the reference's own limit is kept.
bool onlyMaximumFails(const Replay& carried) {
  const bool maximum = fails(carried, StepId::compareMaxSingle) || fails(carried, StepId::compareMaxDaily);
  return maximum && !fails(carried, StepId::compareSingle) && !fails(carried, StepId::compareDaily);
}

/// Whether a limit of the infusion alone is passed: its strength or its speed.
bool onlyInfusionFails(const Replay& carried) {
  static constexpr std::array ofInfusion = {StepId::compareConcentration, StepId::compareInfusionTime,
                                            StepId::compareInfusionRate};
  static constexpr std::array ofDose = {StepId::compareSingle,   StepId::compareDaily,
                                        StepId::comparePeriod,   StepId::compareMaxSingle,
                                        StepId::compareMaxDaily, StepId::compareRate};
  const auto failing = [&](StepId step) { return fails(carried, step); };
  return std::ranges::any_of(ofInfusion, failing) && std::ranges::none_of(ofDose, failing);
}

/// Whether the papers state what is for a day. Who reads of doses alone holds no day against them.
bool tellsOfDays(const Reference& reference) {
  const auto isForDay = [](const std::optional<DoseAmount>& dose) {
    return dose && dose->perTime == PerTime::day;
  };
  return isForDay(reference.high) || isForDay(reference.low) || reference.maxPerDay.has_value();
}

/// What one dose would be called beside the day's figures, and a day beside the dose's.
bool flipsAcross(const Worksheet& key, const Replay& carried, VerdictWord said) {
  if (!tellsOfDays(key.given.reference)) return false;
  const auto dose = carried.sides(StepId::compareSingle);
  const auto day = carried.sides(StepId::compareDaily);
  const auto low = carried.sides(StepId::compareLow);
  if (!dose || !day) return false;
  switch (said) {
    case VerdictWord::safe:
      return dose->left > dose->right && dose->left <= day->right;
    case VerdictWord::unsafe:
      return day->left > dose->right && day->left <= day->right;
    case VerdictWord::ask:
      return low && low->left >= low->right && dose->left < low->right;
    case VerdictWord::doesNotFit:
      return false;
  }
  return false;
}

/// Why the order is not safe, by the student's own numbers where they were carried on.
class KeyReasons {
 public:
  KeyReasons(const Worksheet& key, const Replay& carried) : key_(key), carried_(carried) {}

  [[nodiscard]] bool has(VerdictReason reason) const {
    switch (reason) {
      case VerdictReason::tooLow:
        return fails(carried_, StepId::compareLow);
      case VerdictReason::tooHigh:
        return anyFails({StepId::compareSingle, StepId::compareDaily, StepId::comparePeriod,
                         StepId::compareRate}) ||
               has(VerdictReason::overMaximum);
      case VerdictReason::overMaximum:
        return anyFails({StepId::compareMaxSingle, StepId::compareMaxDaily, StepId::compareMaxDoses});
      case VerdictReason::schedule:
        return found({FindingCode::scheduleDiffers, FindingCode::scheduleUnknown, FindingCode::intervalOdd});
      case VerdictReason::age:
        return found({FindingCode::notCoveredAge});
      case VerdictReason::route:
        return found({FindingCode::notCoveredRoute});
      case VerdictReason::tooConcentrated:
        return anyFails({StepId::compareConcentration});
      case VerdictReason::tooFast:
        return anyFails({StepId::compareInfusionTime, StepId::compareInfusionRate});
    }
    return false;
  }

 private:
  [[nodiscard]] bool anyFails(std::initializer_list<StepId> steps) const {
    return std::ranges::any_of(steps, [&](StepId step) { return fails(carried_, step); });
  }
  [[nodiscard]] bool found(std::initializer_list<FindingCode> codes) const {
    return std::ranges::any_of(codes, [&](FindingCode code) { return key_.finding(code) != nullptr; });
  }

  const Worksheet& key_;
  const Replay& carried_;
};

/// What somebody did not look at who calls this order safe.
std::vector<M> overlookedBy(const Replay& carried, const KeyReasons& reasons, VerdictWord meant) {
  if (meant == VerdictWord::ask) {
    if (reasons.has(VerdictReason::tooLow)) return {M::tooLittleNotNoticed};
    if (reasons.has(VerdictReason::schedule)) return {M::scheduleNotNoticed};
    return {};
  }
  if (onlyInfusionFails(carried)) return {M::infusionLimitNotNoticed};
  if (onlyMaximumFails(carried)) return {M::maximumNotNoticed};
  return {};
}

/// Whether it tells of an amount held against another one.
bool comparesAmounts(VerdictReason reason) {
  return reason == VerdictReason::tooLow || reason == VerdictReason::tooHigh ||
         reason == VerdictReason::overMaximum;
}

/// A reason that the figures do not bear out. One that is told of amounts held them against one another the
/// wrong way round.
M falseReason(VerdictReason reason) {
  return comparesAmounts(reason) ? M::comparisonBackwards : M::reasonWrong;
}

/// Whether the one figure that stands beside a verdict is a limit of one dose: then no day was held against
/// it.
bool namesDoseLimit(const Worksheet& key, const Replay& carried, const VerdictAnswer& said) {
  return said.figure && std::ranges::any_of(std::array{StepId::limitDose, StepId::lowDose}, [&](StepId end) {
           const Step* step = key.step(end);
           const Number* limit = carried.result(end);
           if (!step || !limit) return false;
           const Number figure = inWantedUnit(said.figure->value, said.figure->units, step->lookingFor).value;
           return RightValues::isNear(figure, std::array{*limit});
         });
}

/// Why somebody might have said this in place of what the numbers say.
std::vector<M> whySaid(const Worksheet& key, const Replay& carried, const KeyReasons& reasons,
                       VerdictWord meant, const VerdictAnswer& said) {
  const bool isFalse = said.reason && !reasons.has(*said.reason);
  if (meant == VerdictWord::doesNotFit) return {M::otherChildNotNoticed};
  if (said.word == VerdictWord::doesNotFit) return {M::fitDoubtedWrongly};
  if (said.word == VerdictWord::ask && said.wordSaid && !said.reason) return {M::askedInPlaceOfVerdict};
  if (said.word == VerdictWord::safe)
    if (std::vector<M> overlooked = overlookedBy(carried, reasons, meant); !overlooked.empty())
      return overlooked;
  if (said.reason && meant != VerdictWord::safe)
    return {isFalse ? falseReason(*said.reason) : M::reasonWrong};
  if (said.reason == VerdictReason::schedule) return {M::reasonWrong};
  std::vector<M> why;
  if (flipsAcross(key, carried, said.word) && !namesDoseLimit(key, carried, said))
    why.push_back(M::doseAgainstDay);
  why.push_back(M::comparisonBackwards);
  return why;
}

/// A comparison that a student states beside the verdict, against the numbers that are to be compared.
class StatedJudge {
 public:
  StatedJudge(const Worksheet& key, const Replay& carried, const StatedComparison& stated)
      : key_(key), carried_(carried), stated_(stated) {}

  /// Whether it is true of the two numbers as they stand.
  [[nodiscard]] bool holds() const {
    using Relation = StatedComparison::Relation;
    const Number left = stated_.left.value;
    const Number right = inLeftUnit(stated_.right);
    const Number upper = stated_.upper ? inLeftUnit(*stated_.upper) : right;
    switch (stated_.relation) {
      case Relation::below:
        return left < right;
      case Relation::atMost:
        return left <= right;
      case Relation::above:
        return left > right;
      case Relation::atLeast:
        return left >= right;
      case Relation::outside:
        return left < right || left > upper;
      case Relation::within:
        return left >= right && left <= upper;
    }
    return false;
  }

  /// Whether it holds one dose against the day, or a day against the dose.
  [[nodiscard]] bool isAcross() const {
    const auto dose = carried_.sides(StepId::compareSingle);
    const Step* step = key_.step(StepId::compareSingle);
    if (!dose || !step) return false;
    const Number left = inWantedUnit(stated_.left.value, stated_.left.units, step->lookingFor).value;
    const Number right = inWantedUnit(stated_.right.value, stated_.right.units, step->lookingFor).value;
    const Number doses = papersOf(key_).orderDoses;
    if (doses == Number(1)) return false;
    const auto day = carried_.sides(StepId::compareDaily);
    const Number orderedDay = day ? day->left : dose->left * doses;
    const Number limitDay = day ? day->right : dose->right * doses;
    const bool dayToDose = isAbout(left, orderedDay) && isAbout(right, dose->right);
    return dayToDose || (isAbout(left, dose->left) && isAbout(right, limitDay));
  }

 private:
  static bool isAbout(const Number& value, const Number& wanted) {
    return RightValues::isNear(value, std::array{wanted});
  }
  [[nodiscard]] Number inLeftUnit(const LineSide& side) const {
    return inWantedUnit(side.value, side.units, stated_.left.units).value;
  }

  const Worksheet& key_;
  const Replay& carried_;
  const StatedComparison& stated_;
};

/// What the program itself prints of the verdict.
bool isPrinted(const Worksheet& key, const Replay& carried, std::string_view text) {
  const std::string words = plainWords(text);
  const std::string title = verdictTitle(key);
  const std::string reason = verdictReason(key);
  const std::string worked = say(PhraseId::hint_workedVerdict,
                                 {{"word", verdictWord(verdictWordOf(key, carried))}, {"reason", reason}});
  return std::ranges::any_of(
      std::array{title, title + " " + reason, reason, worked, keyAnswer(Ask{}, key)},
      [&](const std::string& printed) { return !printed.empty() && plainWords(printed) == words; });
}

/// Whether it begins with the title that the program prints of this verdict.
bool hasTitle(const Worksheet& key, std::string_view text) {
  return plainWords(text).starts_with(plainWords(verdictTitle(key)) + " ");
}

/// Where the key asks for a schedule or too low a dose, "unsafe" is right, with what is to be asked.
std::optional<LineNote> whyAsked(const KeyReasons& reasons) {
  if (reasons.has(VerdictReason::tooLow)) return LineNote::asksForTooLittle;
  if (reasons.has(VerdictReason::schedule)) return LineNote::asksForSchedule;
  return std::nullopt;
}

LineMark markSaid(const Worksheet& key, const Replay& carried, const VerdictAnswer& said) {
  const VerdictWord meant = verdictWordOf(key, carried);
  const KeyReasons reasons(key, carried);
  if (said.compared) {
    const StatedJudge judge(key, carried, *said.compared);
    if (!judge.holds()) return wrongMark({M::comparisonBackwards});
    if (judge.isAcross()) return wrongMark({M::doseAgainstDay});
  }
  const bool reasonFits = !said.reason || said.word == VerdictWord::safe || reasons.has(*said.reason);
  if (said.word == meant) return reasonFits ? rightMark() : wrongMark({falseReason(*said.reason)});
  const auto why = whyAsked(reasons);
  const bool near = meant == VerdictWord::ask && said.word == VerdictWord::unsafe && why && reasonFits;
  if (!near) return wrongMark(whySaid(key, carried, reasons, meant, said));
  LineMark mark = rightMark();
  mark.notes = {LineNote::askIsTheWord};
  if (!said.reason) mark.notes.push_back(*why);
  return mark;
}

/// The other comparison whose sides are taken when a dose is held against a day.
StepId acrossFrom(StepId step) {
  return step == StepId::compareSingle ? StepId::compareDaily : StepId::compareSingle;
}

bool isAbout(const Number& value, const Number& wanted) {
  return RightValues::isNear(value, std::array{wanted});
}

}  // namespace

LineMark markVerdict(const Worksheet& key, const Replay& carried, std::string_view text) {
  const bool asInKey = verdictWordOf(key, carried) == verdictWordOf(key, Replay(key, {}));
  if (asInKey && isPrinted(key, carried, text)) return rightMark();
  if (auto said = readVerdictAnswer(text)) {
    // the program's own sentences behind its own title set out figures without comparing two of them
    if (asInKey && hasTitle(key, text)) said->compared.reset();
    return markSaid(key, carried, *said);
  }
  LineMark mark;
  mark.mark = Mark::unread;
  mark.notes.push_back(LineNote::notAVerdict);
  return mark;
}

LineMark markComparison(const Problem& problem, const Replay& carried, StepId step, const StudentLine& line) {
  const auto sides = carried.sides(step);
  if (!sides || line.sides.size() != 2) {
    LineMark mark;
    mark.mark = Mark::unread;
    mark.notes.push_back(LineNote::notAComparison);
    return mark;
  }
  const Units wanted = problem.key.step(step)->lookingFor;
  Number left = inWantedUnit(line.sides[0].value, line.sides[0].units, wanted).value;
  Number right = inWantedUnit(line.sides[1].value, line.sides[1].units, wanted).value;
  const bool holds = relationHolds(left, line.links[0].relation, right);
  if (isAbout(left, sides->right) && !isAbout(left, sides->left)) std::swap(left, right);
  if (isAbout(left, sides->left) && isAbout(right, sides->right))
    return holds ? rightMark() : wrongMark({M::comparisonBackwards});
  const auto across = carried.sides(acrossFrom(step));
  const bool mixed = across && ((isAbout(left, sides->left) && isAbout(right, across->right)) ||
                                (isAbout(left, across->left) && isAbout(right, sides->right)));
  return wrongMark(mixed ? std::vector{M::doseAgainstDay} : std::vector<M>{});
}

LineMark markNothingMeasured(const Worksheet& key, const Replay& carried) {
  LineMark mark = rightMark();
  const VerdictWord meant = verdictWordOf(key, carried);
  if (meant == VerdictWord::safe) {
    mark = wrongMark({});
    mark.notes.push_back(LineNote::mayBeMeasured);
  } else {
    mark.notes.push_back(LineNote::notMeasured);
  }
  return mark;
}

}  // namespace wardchalk::detail
