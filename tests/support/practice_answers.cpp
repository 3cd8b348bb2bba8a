#include "tests/support/practice_answers.h"

#include "core/number/decimal_text.h"
#include "core/words/unit_words.h"

namespace wardchalk::test {

namespace {

std::string inUnits(const std::string& number, const Units& units) {
  return number + " " + unitsText(units, Spelling::printed);
}

std::string verdictOf(VerdictKind verdict) {
  switch (verdict) {
    case VerdictKind::safe:
      return "safe";
    case VerdictKind::ask:
      return "ask";
    case VerdictKind::notCovered:
      return "not covered";
    case VerdictKind::unsafe:
    case VerdictKind::undecided:
      break;
  }
  return "unsafe";
}

/// The result of a step as it is shown, a surface with its two decimals.
std::string resultOf(const Step& step) {
  if (const auto* solved = std::get_if<Solved>(&step.body))
    return solved->fixedDecimals < 0 ? show(solved->result).text
                                     : valueText(solved->result, solved->fixedDecimals);
  const auto* measuring = std::get_if<Measuring>(&step.body);
  if (!measuring) return {};
  return show(measuring->syringe ? measuring->syringe->holdsMl : measuring->exact.value).text;
}

}  // namespace

std::string rightAnswer(const Problem& problem, std::size_t ask) {
  const Ask& asked = problem.asks[ask];
  if (asked.isVerdict()) return verdictOf(problem.key.verdict);
  const Step* step = problem.key.step(*asked.step);
  return step ? inUnits(resultOf(*step), asked.wanted) : "do not measure";
}

std::string wrongAnswer(const Problem& problem, std::size_t ask) {
  const Ask& asked = problem.asks[ask];
  if (asked.isVerdict()) return problem.key.verdict == VerdictKind::safe ? "unsafe" : "safe";
  return inUnits("987654", asked.wanted);
}

}  // namespace wardchalk::test
