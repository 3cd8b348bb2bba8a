#include "core/practice/marking/marking.h"

#include <algorithm>

#include "core/check/judgement.h"
#include "core/number/ascii.h"
#include "core/number/decimal_text.h"
#include "core/practice/marking/detail/bare_constant.h"
#include "core/practice/marking/detail/mark_number.h"
#include "core/practice/marking/detail/mark_syringe.h"
#include "core/practice/marking/detail/mark_words.h"
#include "core/practice/marking/detail/prepared.h"
#include "core/practice/marking/match_mistakes.h"
#include "core/practice/marking/nothing_measured.h"
#include "core/practice/marking/read_answer.h"
#include "core/practice/problem/amount_line.h"
#include "core/practice/problem/problem_text.h"

namespace wardchalk {

namespace {

using M = MistakeId;

bool isComparison(StepId step) { return std::ranges::find(checkSteps, step) != checkSteps.end(); }

LineMark unread(LineNote note) {
  LineMark mark;
  mark.mark = Mark::unread;
  mark.notes.push_back(note);
  return mark;
}

LineMark rightMeasuring() {
  LineMark mark;
  mark.mark = Mark::right;
  mark.set(Aspect::setUp, Standing::good);
  return mark;
}

LineMark blank() {
  LineMark mark;
  mark.mark = Mark::blank;
  mark.notes.push_back(LineNote::unanswered);
  return mark;
}

LineMark mistaken(MistakeId mistake) {
  LineMark mark;
  mark.mistakes.push_back(mistake);
  return mark;
}

bool asksForLimit(StepId step) {
  return step == StepId::limitDose || step == StepId::limitDay || step == StepId::lowDose ||
         step == StepId::lowDay;
}

/// A line that cannot be read is no try, unless what is wrong with it is itself a mistake: sizes and doses
/// added.
LineMark faulted(const LineFault& fault, StepId step) {
  LineMark mark;
  mark.fault = fault;
  mark.mark = Mark::unread;
  if (fault.code != LineFaultCode::unlikeUnits) return mark;
  if (step == StepId::bsa) mark.mistakes.push_back(M::heightAndWeightAdded);
  if (asksForLimit(step)) mark.mistakes.push_back(M::sizeAdded);
  if (!mark.mistakes.empty()) mark.mark = Mark::wrong;
  return mark;
}

/// A body surface area written without its unit; it may end in a zero, since it is no dose.
bool isBareSurface(const LineRemark& remark, StepId step, const Replay& carried) {
  if (!remark.onBareNumber || remark.code != LineRemarkCode::trailingZero) return false;
  if (step == StepId::bsa) return true;
  const Number* surface = carried.result(StepId::bsa);
  const auto written = readDecimal(remark.instead);
  return surface && written && *written == *surface;
}

/// What was understood and is written unsafely.
void addWriting(const StudentWorking& working, StepId step, const Replay& carried, LineMark& mark) {
  for (const StudentLine& line : working.lines)
    for (const LineRemark& remark : line.remarks) {
      if (isBareSurface(remark, step, carried)) continue;
      mark.remarks.push_back(remark);
      const auto mistake = mistakeWithId(infoOf(remark.code).error);
      if (mistake && !mark.has(*mistake)) mark.mistakes.push_back(*mistake);
    }
  const bool unsafe = std::ranges::any_of(
      mark.remarks, [](const LineRemark& remark) { return !infoOf(remark.code).error.empty(); });
  mark.set(Aspect::writing, unsafe ? Standing::bad : Standing::good);
}

}  // namespace

VerdictWord verdictWordOf(const Worksheet& key, const Replay& carried) {
  switch (verdictWhere(key, [&](CheckId id) { return carried.holds(stepOf(id)); })) {
    case VerdictKind::unsafe:
      return VerdictWord::unsafe;
    case VerdictKind::notCovered:
      return VerdictWord::doesNotFit;
    case VerdictKind::ask:
    case VerdictKind::undecided:
      return VerdictWord::ask;
    case VerdictKind::safe:
      break;
  }
  return VerdictWord::safe;
}

Marking::Marking(const Problem& problem, MarkingTerms terms)
    : problem_(problem), terms_(terms), answers_(problem.asks.size()) {
  const bool prepared = std::ranges::any_of(
      problem.asks, [&](const Ask& ask) { return ask.step && isPreparedOnly(*ask.step); });
  if (prepared) allowed_ = detail::asIfAllowed(problem);
}

const RightValues& Marking::rightValues(bool prepared) {
  std::optional<RightValues>& values = prepared ? allowedRight_ : right_;
  if (!values) values.emplace(prepared ? *allowed_ : problem_);
  return *values;
}

/// How strong a mixed powder is does not hang on whether it may be given.
bool Marking::isPreparedOnly(StepId step) const {
  return step == StepId::strength && !problem_.key.step(step);
}

std::vector<CarriedAnswer> Marking::carriedTo(std::size_t ask) const {
  std::vector<CarriedAnswer> carried;
  for (std::size_t i = 0; i < ask; ++i)
    if (answers_[i]) carried.push_back(*answers_[i]);
  return carried;
}

LineMark Marking::mark(std::size_t ask, std::string_view text) {
  answers_[ask].reset();
  if (isBlank(text)) return blank();
  const Ask& asked = problem_.asks[ask];
  const std::vector<Instead> instead = insteadOf(carriedTo(ask));
  if (asked.isVerdict()) return markVerdictWord(Replay(problem_.key, instead), text);
  if (isAmountLine(*asked.step) && saysNothingMeasured(text))
    return detail::markNothingMeasured(problem_.key, Replay(problem_.key, instead));
  return markNumber(ask, *asked.step, text);
}

LineMark Marking::markVerdictWord(const Replay& carried, std::string_view text) const {
  LineMark mark = detail::markVerdict(problem_.key, carried, text);
  const bool withoutReason = mark.has(LineNote::asksForTooLittle) || mark.has(LineNote::asksForSchedule);
  if (terms_.wantsReason && withoutReason) mark.mark = Mark::wrong;
  if (mark.mark == Mark::right &&
      verdictWordOf(problem_.key, carried) != verdictWordOf(problem_.key, Replay(problem_.key, {})))
    mark.notes.push_back(LineNote::carriedOn);
  return mark;
}

LineMark Marking::markSyringe(const Replay& carried, const SyringeAnswer& said,
                              std::span<const CarriedAnswer> earlier) const {
  const Step* device = problem_.key.step(StepId::device);
  if (!device) return mistaken(M::measuredUnsafe);
  LineMark mark = detail::markSyringe(std::get<Measuring>(device->body), carried, said);
  if (mark.mark != Mark::wrong || !mark.mistakes.empty() || !said.drawnUp) return mark;
  // what is drawn up is an amount like any other
  const WrongValues wrong = wrongValues(problem_.key, StepId::give, insteadOf(earlier), Rare::sought);
  for (const std::span<const WrongValue> tier : wrong.tiers())
    if (mark.mistakes.empty()) mark.mistakes = matchMistakes({*said.drawnUp, said.decimals}, tier);
  if (mark.mistakes.size() > 1) mark.mark = Mark::unsure;
  return mark;
}

/// What the key says of measuring, to the word: "2 mL can be given as it is."
bool Marking::isPrinted(StepId step, std::string_view text) const {
  const Step* keyed = problem_.key.step(step);
  return keyed && plainWords(text) == plainWords(keyAnswer(Ask{step, {}, {}, {}}, problem_.key));
}

LineMark Marking::markNumber(std::size_t ask, StepId step, std::string_view text) {
  const Replay carried(problem_.key, insteadOf(carriedTo(ask)));
  if (step == StepId::device && isPrinted(step, text)) return rightMeasuring();
  if (step == StepId::device)
    if (const auto said = readSyringeAnswer(text)) return markSyringe(carried, *said, carriedTo(ask));
  const ReadWorking read = readAnswer(step, text);
  if (const auto* fault = std::get_if<LineFault>(&read)) return faulted(*fault, step);
  const auto& working = std::get<StudentWorking>(read);
  LineMark mark = markRead(ask, step, working, carried);
  addWriting(working, step, carried, mark);
  return mark;
}

LineMark Marking::markRead(std::size_t ask, StepId step, const StudentWorking& working,
                           const Replay& carried) {
  if (isComparison(step)) return detail::markComparison(problem_, carried, step, working.answerLine());
  const Worksheet& key = isPreparedOnly(step) ? allowed_->key : problem_.key;
  const Step* keyed = key.step(step);
  if (!keyed) return mistaken(M::measuredUnsafe);  // nothing is to be measured, and it was
  const auto number = detail::numberLine(working, keyed->lookingFor);
  if (!number) return unread(LineNote::noResult);
  return markAnswer(ask, step, working, *number, carried);
}

/// Beside pounds a bare 2.2 or 0.4536 is understood, and said to want its unit.
void Marking::remarkConstant(const StudentWorking& working, LineMark& mark) const {
  const auto note = weighsInPounds() ? detail::barePoundsConstant(working) : std::nullopt;
  if (!note || mark.mark != Mark::right) return;
  mark.notes.push_back(*note);
  if (!mark.has(M::unitMissingOrOther)) mark.mistakes.push_back(M::unitMissingOrOther);
}

/// Where a class wants every unit, a right number without one is not right.
void Marking::holdToTerms(LineMark& mark) const {
  if (terms_.wantsUnits && mark.mark == Mark::right && mark.has(M::unitMissingOrOther))
    mark.mark = Mark::wrong;
}

bool Marking::weighsInPounds() const {
  const auto& weight = problem_.given.child.weight;
  return weight && (weight->parts.front().unit == Unit::lb || weight->parts.front().unit == Unit::oz);
}

LineMark Marking::markAnswer(std::size_t ask, StepId step, const StudentWorking& working,
                             const detail::NumberLine& number, const Replay& replay) {
  const std::vector<CarriedAnswer> carried = carriedTo(ask);
  const bool prepared = isPreparedOnly(step);
  const RightValues& accepted = rightValues(prepared);
  // what is drawn up is the amount that is given, on the marks of the syringe
  const StepId valued = step == StepId::device ? StepId::give : step;
  WrongValues wrong =
      wrongValues(prepared ? allowed_->key : problem_.key, valued, insteadOf(carried), Rare::sought);
  const bool bareConstant = weighsInPounds() && detail::barePoundsConstant(working);
  const detail::LineKey key{step, accepted, accepted.of(valued, carried), std::move(wrong), bareConstant};
  LineMark mark = detail::markNumberLine(number, key);
  remarkConstant(working, mark);
  const bool right = mark.mark == Mark::right;
  holdToTerms(mark);
  if (right && std::ranges::any_of(carried, [](const CarriedAnswer& answer) { return !answer.right; }) &&
      !RightValues::isNear(number.wanted.value, accepted.of(valued, {})))
    mark.notes.push_back(LineNote::carriedOn);
  if (right && step == StepId::drops && !number.wanted.value.isWhole())
    mark.mistakes.push_back(M::partOfDrop);
  if (right && isOverMaximum(problem_.key, step, number.wanted.value))
    mark.notes.push_back(LineNote::maximumStated);
  if (right && step == StepId::give && verdictWordOf(problem_.key, replay) == VerdictWord::ask)
    mark.notes.push_back(LineNote::askFirst);
  if (step != StepId::device) answers_[ask] = CarriedAnswer{step, number.wanted.value, right};
  return mark;
}

std::vector<LineMark> markAnswers(const Problem& problem, std::span<const std::string> answers,
                                  MarkingTerms terms) {
  Marking marking(problem, terms);
  std::vector<LineMark> marks;
  for (std::size_t i = 0; i < problem.asks.size(); ++i)
    marks.push_back(marking.mark(i, i < answers.size() ? std::string_view(answers[i]) : std::string_view()));
  return marks;
}

}  // namespace wardchalk
