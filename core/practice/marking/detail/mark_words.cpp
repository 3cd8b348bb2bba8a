#include "core/practice/marking/detail/mark_words.h"

#include <algorithm>

#include "core/practice/marking/marking.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/marking/wanted_unit.h"

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

/// What one dose would be called beside the day's figures, and a day beside the dose's.
bool flipsAcross(const Replay& carried, VerdictWord said) {
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

/// Why somebody might have said this in place of what the numbers say.
std::vector<M> reasonsFor(const Replay& carried, VerdictWord meant, VerdictWord said) {
  if (meant == VerdictWord::doesNotFit) return {M::otherChildNotNoticed};
  if (said == VerdictWord::doesNotFit) return {};
  if (meant == VerdictWord::ask && said == VerdictWord::safe && fails(carried, StepId::compareLow))
    return {M::tooLittleNotNoticed};
  if (meant == VerdictWord::unsafe && onlyMaximumFails(carried)) return {M::maximumNotNoticed};
  std::vector<M> reasons;
  if (flipsAcross(carried, said)) reasons.push_back(M::doseAgainstDay);
  reasons.push_back(M::comparisonBackwards);
  return reasons;
}

/// Where the key asks: *unsafe* of an order below its low end, and *safe* where no number fails, is near
/// enough.
bool nearEnough(const Replay& carried, VerdictWord meant, VerdictWord said) {
  if (meant != VerdictWord::ask) return false;
  const bool low = fails(carried, StepId::compareLow);
  return low ? said == VerdictWord::unsafe : said == VerdictWord::safe;
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
  const std::optional<VerdictWord> said = readVerdictWord(text);
  if (!said) {
    LineMark mark;
    mark.notes.push_back(LineNote::notAVerdict);
    return mark;
  }
  const VerdictWord meant = verdictWordOf(key, carried);
  if (*said == meant) return rightMark();
  if (!nearEnough(carried, meant, *said)) return wrongMark(reasonsFor(carried, meant, *said));
  LineMark mark = rightMark();
  mark.notes.push_back(LineNote::askIsTheWord);
  return mark;
}

LineMark markComparison(const Problem& problem, const Replay& carried, StepId step, const StudentLine& line) {
  const auto sides = carried.sides(step);
  if (!sides || line.sides.size() != 2) {
    LineMark mark;
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
