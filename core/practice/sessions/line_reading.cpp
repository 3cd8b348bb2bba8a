#include "core/practice/sessions/line_reading.h"

#include "core/number/ascii.h"
#include "core/number/decimal_text.h"
#include "core/practice/lines/practice_words.h"
#include "core/practice/lines/syringe_answer.h"
#include "core/practice/lines/understood.h"
#include "core/practice/marking/marking.h"
#include "core/practice/marking/nothing_measured.h"
#include "core/practice/marking/read_answer.h"
#include "core/practice/marking/verdict_answer.h"
#include "core/practice/problem/amount_line.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

namespace {

using Kind = LineReading::Kind;

std::string inMl(const std::optional<Number>& amount) { return amount ? exactText(*amount) + " mL" : ""; }

std::string syringeText(const SyringeAnswer& said) {
  return say(PhraseId::reading_syringe,
             {{"holds", inMl(said.holds)},
              {"drawn", inMl(said.drawnUp)},
              {"more", said.fillsMore ? say(PhraseId::reading_filledMore) : std::string()}});
}

/// On its lines together: a screen has one for each answer.
std::string inOneLine(std::string text) {
  for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at))
    text.replace(at, 1, "; ");
  return text;
}

/// The marker has the last word on what cannot be read: it knows the sentences that a key is printed with,
/// and the faults that are mistakes of their own, which are for it to tell.
LineReading unreadBy(const Problem& problem, std::size_t ask, std::string_view text) {
  const LineMark mark = Marking(problem).mark(ask, text);
  if (!mark.fault || isTry(mark.mark)) return {};
  return {Kind::unread, sentence(*mark.fault)};
}

}  // namespace

LineReading readingOf(const Problem& problem, std::size_t ask, std::string_view text) {
  const std::optional<StepId> step = problem.asks[ask].step;
  if (isBlank(text) || !step) return {};
  if (isAmountLine(*step) && saysNothingMeasured(text))
    return {Kind::read, say(PhraseId::practiceSheet_nothing)};
  if (*step == StepId::device)
    if (const auto said = readSyringeAnswer(text)) return {Kind::read, syringeText(*said)};
  const ReadWorking read = readAnswer(*step, text);
  if (const auto* working = std::get_if<StudentWorking>(&read))
    return {Kind::read, inOneLine(understoodText(*working))};
  return unreadBy(problem, ask, text);
}

}  // namespace wardchalk
