#include "core/practice/problem/problem_text.h"

#include <algorithm>

#include "core/number/ascii.h"
#include "core/practice/problem/problem_story.h"
#include "core/unit/print.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "core/words/text_block.h"

namespace wardchalk {

namespace {

constexpr std::size_t sheetWidth = 78;
constexpr std::string_view blank = "________________________________";

constexpr char together = '\x1F';  // stands for a space at which no line is broken

/// Broken into lines, but never between a number and its unit, nor before a rounded number.
std::string lines(std::string text, std::string_view first, std::string_view rest) {
  for (std::size_t i = 1; i + 1 < text.size(); ++i)
    if (text[i] == ' ' && (isDigit(text[i - 1]) || std::string_view(text).substr(0, i).ends_with("≈")))
      text[i] = together;
  std::string broken = wrapped(text, sheetWidth, first, rest);
  std::replace(broken.begin(), broken.end(), together, ' ');
  return broken;
}

std::string heading(PhraseId phrase, std::size_t number) {
  return say(phrase, {{"n", std::to_string(number)}});
}

void writeStory(std::string& out, std::string_view story) {
  while (!story.empty()) {
    const std::size_t end = std::min(story.find('\n'), story.size());
    out.append(lines(std::string(story.substr(0, end)), "", "")).append("\n");
    story.remove_prefix(std::min(end + 1, story.size()));
  }
}

void writeProblem(std::string& out, const Problem& problem, std::size_t number) {
  out.append(heading(PhraseId::practice_problem, number)).append(" (");
  out.append(say(PhraseId::practice_made, {{"topic", std::string(idOf(problem.topic))},
                                           {"level", std::to_string(problem.level)},
                                           {"seed", std::to_string(problem.seed)}}));
  out.append(")\n\n");
  writeStory(out, problem.story);
  out.append("\n");
  for (std::size_t i = 0; i < problem.asks.size(); ++i) {
    const std::string letter(1, static_cast<char>('a' + i));
    out.append(lines(askText(problem.asks[i], problem), "  " + letter + "  ", "     ")).append("\n");
    out.append("     ").append(blank).append("\n");
  }
  out.append("\n");
}

/// Where a safe order was held against two ends, the reason names the high one: the low one stands behind it.
std::string lowEndOf(const Worksheet& key) {
  if (key.verdict != VerdictKind::safe || !key.lowDose || !key.given.reference.low) return {};
  return " " + say(PhraseId::practiceSheet_lowEnd, {{"amount", printed(*key.lowDose)}});
}

void writeKey(std::string& out, const Problem& problem, std::size_t number) {
  out.append(heading(PhraseId::practice_key, number)).append("\n");
  for (std::size_t i = 0; i < problem.asks.size(); ++i) {
    const std::string letter(1, static_cast<char>('a' + i));
    out.append(lines(keyAnswer(problem.asks[i], problem.key), "  " + letter + "  ", "     "));
    out.append("\n");
  }
  out.append("\n");
}

}  // namespace

std::string keyAnswer(const Ask& ask, const Worksheet& key) {
  if (ask.isVerdict()) {
    const std::string reason = verdictReason(key);
    return verdictTitle(key) + (reason.empty() ? "" : ". " + reason) + lowEndOf(key);
  }
  if (!key.step(*ask.step)) return say(PhraseId::practiceSheet_nothing);
  const Step& step = *key.step(*ask.step);
  const auto* solved = std::get_if<Solved>(&step.body);
  if (!solved) return conclusion(step);
  const bool counted = step.id == StepId::give && key.give && key.give->exact.unit != Unit::mL;
  const std::string result =
      counted ? givenText(key.give->exact) : conclusion(step);  // "½ tablet", not "0.5"
  const bool exact = counted ? show(key.give->exact.value).exact : concludesExactly(step);
  const std::string sign = exact ? equalsSign(step) + " " : "";  // "=" only where it is exact
  return chainLine(solved->chain) + " " + sign + result;
}

std::string problemsText(const std::vector<Problem>& problems) {
  std::string out = say(PhraseId::practice_invented) + "\n";
  out.append(lines(say(PhraseId::practiceSheet_how), "", "")).append("\n\n");
  for (std::size_t i = 0; i < problems.size(); ++i) writeProblem(out, problems[i], i + 1);
  out.append(say(PhraseId::practice_keys)).append("\n\n");
  for (std::size_t i = 0; i < problems.size(); ++i) writeKey(out, problems[i], i + 1);
  return out;
}

}  // namespace wardchalk
