#include "core/practice/marking/hints.h"

#include <algorithm>

#include "core/practice/lines/practice_words.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"

namespace wardchalk {

namespace {

struct MistakePhrases {
  PhraseId name, hint, rule, where;
};

constexpr std::array mistakePhrases = {
#define WARDCHALK_MISTAKE(name, number, kind, spot)                                            \
  MistakePhrases{PhraseId::mistake_##number, PhraseId::hint_##number, PhraseId::rule_##number, \
                 PhraseId::where_##spot},
#include "core/practice/marking/mistakes.def"
#undef WARDCHALK_MISTAKE
};

constexpr std::array notePhrases = {
#define WARDCHALK_LINE_NOTE(name, id) PhraseId::note_##name,
#include "core/practice/marking/notes.def"
#undef WARDCHALK_LINE_NOTE
};

constexpr std::array<PhraseId, aspectCount> praisePhrases = {
    PhraseId::praise_setUp, PhraseId::praise_units, PhraseId::praise_arithmetic, PhraseId::praise_rounding,
    PhraseId::praise_writing};

const MistakePhrases& phrasesOf(MistakeId mistake) {
  return mistakePhrases[static_cast<std::size_t>(mistake)];
}

PhraseId rungOf(MistakeId mistake, int rung) {
  const MistakePhrases& phrases = phrasesOf(mistake);
  return rung <= 1 ? phrases.where : rung == 2 ? phrases.hint : phrases.rule;
}

/// What is said where no mistake is known for what it is. Of a result alone nobody can see how it was
/// reached.
PhraseId unknownRung(int rung, const Ask& ask, const LineMark& mark) {
  const bool bare = mark.mark == Mark::wrong && !mark.fault && mark.notes.empty() &&
                    mark.aspects[static_cast<std::size_t>(Aspect::setUp)] == Standing::unknown;
  if (rung <= 1) return bare ? PhraseId::where_unknownBare : PhraseId::where_unknown;
  if (rung == 2) return PhraseId::hint_unknown;
  return ask.step == StepId::bsa ? PhraseId::rule_unknownSurface : PhraseId::rule_unknown;
}

/// The mistakes that a hint is about: of a pair that was made one after the other, the earlier one alone.
std::vector<MistakeId> hintedOf(const LineMark& mark) {
  std::vector<MistakeId> hinted;
  std::ranges::copy_if(mark.mistakes, std::back_inserter(hinted), [](MistakeId mistake) {
    return infoOf(mistake).kind != MistakeKind::writing || mistake == MistakeId::unitMissingOrOther;
  });
  if (mark.mark == Mark::wrong && hinted.size() > 1) hinted.resize(1);
  return hinted;
}

std::string comparisonLine(const Comparison& comparison, const Replay& carried, StepId step) {
  const auto sides = carried.sides(step);
  if (!sides)
    return sideText(comparison.left) + " " + relationSign(comparison) + " " + sideText(comparison.right);
  Comparison shown = comparison;
  shown.left.term.value = sides->left;
  shown.right.term.value = sides->right;
  return sideText(shown.left) + " " + relationSign(shown) + " " + sideText(shown.right);
}

/// The comparisons that decide, with the student's own numbers: those that fail, or the first one where none
/// does.
std::string decidingLines(const Problem& problem, const Replay& carried) {
  std::string lines;
  for (const bool failing : {true, false}) {
    for (const Step& step : problem.key.steps) {
      const auto* compared = std::get_if<Comparison>(&step.body);
      const std::optional<bool> holds = carried.holds(step.id);
      if (!compared || !holds || *holds == failing || (!failing && !lines.empty())) continue;
      lines += (lines.empty() ? "" : "; ") + comparisonLine(*compared, carried, step.id) + " " +
               say(*holds ? PhraseId::truth_true : PhraseId::truth_false);
    }
  }
  return lines;
}

/// Why the key says so; with a wrong number carried on, what the student's own numbers say.
std::string workedVerdict(const Problem& problem, std::span<const CarriedAnswer> answers,
                          const Replay& carried) {
  const VerdictWord word = verdictWordOf(problem.key, carried);
  const bool own = std::ranges::any_of(answers, [](const CarriedAnswer& answer) { return !answer.right; });
  const std::string reason = own ? decidingLines(problem, carried) : verdictReason(problem.key);
  return say(PhraseId::hint_workedVerdict, {{"word", verdictWord(word)}, {"reason", reason}});
}

std::string workedLine(StepId id, const Replay& carried) {
  const Step step = carried.shown(id);
  if (const auto* compared = std::get_if<Comparison>(&step.body))
    return comparisonLine(*compared, carried, id);
  if (const auto* measured = std::get_if<Measuring>(&step.body)) return measuringLine(*measured);
  const auto* solved = std::get_if<Solved>(&step.body);
  if (!solved) return conclusion(step);
  const std::string sign =
      concludesExactly(step) ? equalsSign(step) + " " : "";  // else "≈" stands before the number
  return chainLine(solved->chain) + " " + sign + conclusion(step);
}

std::string worked(const Problem& problem, const Ask& ask, std::span<const CarriedAnswer> carried) {
  const std::vector<Instead> instead = insteadOf(carried);
  const Replay replay(problem.key, instead);
  if (ask.isVerdict()) return workedVerdict(problem, carried, replay);
  if (!problem.key.step(*ask.step)) return say(PhraseId::hint_workedNothing);
  return say(PhraseId::hint_worked, {{"line", workedLine(*ask.step, replay)}});
}

}  // namespace

std::string hint(const Problem& problem, std::size_t ask, const LineMark& mark,
                 std::span<const CarriedAnswer> carried, int rung) {
  if (mark.mark == Mark::right) return {};
  if (rung >= lastRung) return worked(problem, problem.asks[ask], carried);
  std::vector<std::string> said;
  for (const MistakeId mistake : hintedOf(mark)) {
    std::string text = say(rungOf(mistake, rung));
    if (std::ranges::find(said, text) == said.end()) said.push_back(std::move(text));
  }
  if (said.empty()) return say(unknownRung(rung, problem.asks[ask], mark));
  std::string joined;
  for (const std::string& text : said) joined += (joined.empty() ? "" : " ") + text;
  return joined;
}

std::string praise(const LineMark& mark) {
  std::string text;
  if (mark.mark == Mark::right) return text;
  for (std::size_t i = 0; i < aspectCount; ++i)
    if (mark.aspects[i] == Standing::good && static_cast<Aspect>(i) != Aspect::writing)
      text += (text.empty() ? "" : " ") + say(praisePhrases[i]);
  return text;
}

std::vector<std::string> remarks(const LineMark& mark) {
  std::vector<std::string> lines;
  if (mark.fault) lines.push_back(sentence(*mark.fault));
  for (const LineNote note : mark.notes) lines.push_back(say(notePhrases[static_cast<std::size_t>(note)]));
  for (const LineRemark& remark : mark.remarks) lines.push_back(sentence(remark));
  return lines;
}

std::string mistakeName(MistakeId mistake) { return say(phrasesOf(mistake).name); }

std::string markWord(Mark mark) {
  constexpr std::array words = {PhraseId::mark_right, PhraseId::mark_wrong, PhraseId::mark_unsure,
                                PhraseId::mark_unread, PhraseId::mark_blank};
  return say(words[static_cast<std::size_t>(mark)]);
}

std::string verdictWord(VerdictWord word) {
  constexpr std::array words = {PhraseId::verdictWord_safe, PhraseId::verdictWord_ask,
                                PhraseId::verdictWord_unsafe, PhraseId::verdictWord_doesNotFit};
  return say(words[static_cast<std::size_t>(word)]);
}

}  // namespace wardchalk
