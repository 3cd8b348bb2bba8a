#include "core/practice/marking/marking.h"

#include <algorithm>

#include "core/check/judgement.h"
#include "core/number/ascii.h"
#include "core/number/decimal_text.h"
#include "core/practice/marking/detail/mark_number.h"
#include "core/practice/marking/detail/mark_words.h"
#include "core/practice/problem/amount_line.h"

namespace wardchalk {

namespace {

using M = MistakeId;

bool isComparison(StepId step) { return std::ranges::find(checkSteps, step) != checkSteps.end(); }

LineMark noted(LineNote note) {
  LineMark mark;
  mark.notes.push_back(note);
  return mark;
}

LineMark mistaken(MistakeId mistake) {
  LineMark mark;
  mark.mistakes.push_back(mistake);
  return mark;
}

/// "= 84 mg" is an answer: the sign is blanked, so that places in the line stay what they are.
std::string withoutFirstSign(std::string_view text) {
  std::string line(text);
  const std::size_t first = line.find_first_not_of(" \t");
  for (const std::string_view sign : {"=", "≈"})
    if (first != std::string::npos && line.compare(first, sign.size(), sign) == 0)
      line.replace(first, sign.size(), sign.size(), ' ');
  return line;
}

/// A gram in a line about the child's weight is the child's.
Gram gramOf(StepId step) { return step == StepId::weight ? Gram::child : Gram::medicine; }

/// A body surface area written without its unit; it may end in a zero, since it is no dose.
bool isBareSurface(const LineRemark& remark, StepId step, const Replay& carried) {
  if (!remark.onBareNumber || remark.code != LineRemarkCode::trailingZero) return false;
  if (step == StepId::bsa) return true;
  const Number* surface = carried.result(StepId::bsa);
  const auto written = readDecimal(remark.instead);
  return surface && written && *written == *surface;
}

/// What was understood and is written unsafely.
void addWriting(const StudentLine& line, StepId step, const Replay& carried, LineMark& mark) {
  for (const LineRemark& remark : line.remarks) {
    const std::string_view number = infoOf(remark.code).error;
    if (isBareSurface(remark, step, carried)) continue;
    mark.remarks.push_back(remark);
    const auto mistake = mistakeWithId(number);
    if (mistake && !mark.has(*mistake)) mark.mistakes.push_back(*mistake);
  }
  const bool unsafe = std::ranges::any_of(
      mark.remarks, [](const LineRemark& remark) { return !infoOf(remark.code).error.empty(); });
  mark.set(Aspect::writing, unsafe ? Standing::bad : Standing::good);
}

/// The syringe that holds the amount and shows it: the one that the key takes, or one of its two.
LineMark markDevice(const Worksheet& key, const Number& holds) {
  const auto* measuring = std::get_if<Measuring>(&key.step(StepId::device)->body);
  LineMark mark;
  const auto isHeld = [&](const std::optional<Syringe>& syringe) {
    return syringe && syringe->holdsMl == holds;
  };
  const bool right = measuring && (isHeld(measuring->syringe) || isHeld(measuring->full));
  mark.mark = right ? Mark::right : Mark::wrong;
  if (!right) mark.mistakes.push_back(M::otherSyringe);
  return mark;
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

Marking::Marking(const Problem& problem)
    : problem_(problem), right_(problem), answers_(problem.asks.size()) {}

std::vector<CarriedAnswer> Marking::carriedTo(std::size_t ask) const {
  std::vector<CarriedAnswer> carried;
  for (std::size_t i = 0; i < ask; ++i)
    if (answers_[i]) carried.push_back(*answers_[i]);
  return carried;
}

LineMark Marking::mark(std::size_t ask, std::string_view text) {
  answers_[ask].reset();
  if (isBlank(text)) return noted(LineNote::unanswered);
  const Ask& asked = problem_.asks[ask];
  const std::vector<Instead> instead = insteadOf(carriedTo(ask));
  if (asked.isVerdict()) return markVerdictWord(Replay(problem_.key, instead), text);
  if (isAmountLine(*asked.step) && saysNothingMeasured(text))
    return detail::markNothingMeasured(problem_.key, Replay(problem_.key, instead));
  return markNumber(ask, *asked.step, text);
}

LineMark Marking::markVerdictWord(const Replay& carried, std::string_view text) const {
  LineMark mark = detail::markVerdict(problem_.key, carried, text);
  if (mark.mark == Mark::right &&
      verdictWordOf(problem_.key, carried) != verdictWordOf(problem_.key, Replay(problem_.key, {})))
    mark.notes.push_back(LineNote::carriedOn);
  return mark;
}

LineMark Marking::markNumber(std::size_t ask, StepId step, std::string_view text) {
  const ReadLine read = readStudentLine(withoutFirstSign(text), gramOf(step));
  if (const auto* fault = std::get_if<LineFault>(&read)) {
    LineMark mark;
    mark.fault = *fault;
    return mark;
  }
  const auto& line = std::get<StudentLine>(read);
  const Replay carried(problem_.key, insteadOf(carriedTo(ask)));
  LineMark mark = markRead(ask, step, line, carried);
  addWriting(line, step, carried, mark);
  return mark;
}

LineMark Marking::markRead(std::size_t ask, StepId step, const StudentLine& line, const Replay& carried) {
  if (isComparison(step)) return detail::markComparison(problem_, carried, step, line);
  const Step* keyed = problem_.key.step(step);
  if (!keyed) return mistaken(M::measuredUnsafe);  // nothing is to be measured, and it was
  const auto number = detail::numberLine(line, keyed->lookingFor);
  if (!number) return noted(LineNote::noResult);
  if (step == StepId::device) return markDevice(problem_.key, number->wanted.value);
  return markAnswer(ask, step, *number, carried);
}

LineMark Marking::markAnswer(std::size_t ask, StepId step, const detail::NumberLine& number,
                             const Replay& replay) {
  const std::vector<CarriedAnswer> carried = carriedTo(ask);
  const detail::LineKey key{step, right_, right_.of(step, carried),
                            wrongValues(problem_.key, step, insteadOf(carried)).values};
  LineMark mark = detail::markNumberLine(number, key);
  const bool right = mark.mark == Mark::right;
  if (right && std::ranges::any_of(carried, [](const CarriedAnswer& answer) { return !answer.right; }) &&
      !RightValues::isNear(number.wanted.value, right_.of(step, {})))
    mark.notes.push_back(LineNote::carriedOn);
  if (right && step == StepId::drops && !number.wanted.value.isWhole())
    mark.mistakes.push_back(M::partOfDrop);
  if (right && step == StepId::give && verdictWordOf(problem_.key, replay) == VerdictWord::ask)
    mark.notes.push_back(LineNote::askFirst);
  answers_[ask] = CarriedAnswer{step, number.wanted.value, right};
  return mark;
}

std::vector<LineMark> markAnswers(const Problem& problem, std::span<const std::string> answers) {
  Marking marking(problem);
  std::vector<LineMark> marks;
  for (std::size_t i = 0; i < problem.asks.size(); ++i)
    marks.push_back(marking.mark(i, i < answers.size() ? std::string_view(answers[i]) : std::string_view()));
  return marks;
}

}  // namespace wardchalk
