#include "core/practice/lesson_words.h"

#include <algorithm>
#include <array>

#include "core/practice/hints.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

constexpr std::array topicPhrases = {
#define WARDCHALK_TOPIC(name, id) PhraseId::topic_##name,
#include "core/practice/topics.def"
#undef WARDCHALK_TOPIC
};

constexpr std::array levelPhrases = {PhraseId::level_first, PhraseId::level_usual, PhraseId::level_whole};
static_assert(levelPhrases.size() == highestLevel - lowestLevel + 1);

const Step* keyStep(const Ask& ask, const Problem& problem) {
  return ask.step ? problem.key.step(*ask.step) : nullptr;
}

/// What would be asked of the stock if it were measured.
PhraseId measureQuestion(const Stock& stock) {
  if (stock.kind == StockKind::solid) return PhraseId::question_giveSolid;
  return stock.kind == StockKind::powder ? PhraseId::question_givePowder : PhraseId::question_give;
}

PhraseId plainQuestion(StepId step) {
  return step == StepId::limitDose ? PhraseId::question_limitDosePlain : PhraseId::question_limitDayPlain;
}

}  // namespace

std::string topicWord(Topic topic, const Phrasebook& book) {
  return say(book, topicPhrases[static_cast<std::size_t>(topic)]);
}

std::string levelWord(int level, const Phrasebook& book) {
  const int known = std::clamp(level, lowestLevel, highestLevel) - lowestLevel;
  return say(book, levelPhrases[static_cast<std::size_t>(known)]);
}

std::string lineQuestion(const Ask& ask, const Problem& problem, const Phrasebook& book) {
  if (ask.isVerdict()) return say(book, PhraseId::lesson_verdict);
  if (*ask.step == StepId::limitDose || *ask.step == StepId::limitDay)
    return say(book, plainQuestion(*ask.step));
  if (const Step* step = keyStep(ask, problem)) return question(*step, problem.key, book);
  return say(book, measureQuestion(problem.given.stock));
}

std::string lineUnit(const Ask& ask, const Phrasebook& book) {
  if (ask.isVerdict() || ask.wanted == Units{}) return {};
  return say(book, PhraseId::lesson_inUnit, {{"unit", unitsText(ask.wanted, Spelling::printed)}});
}

std::string lineAnswer(const Ask& ask, const Problem& problem, const Phrasebook& book) {
  if (ask.isVerdict())
    return verdictWord(verdictWordOf(problem.key, Replay(problem.key, std::span<const Instead>())), book);
  const Step* step = keyStep(ask, problem);
  return step ? conclusion(*step, book) : say(book, PhraseId::practiceSheet_nothing);
}

std::vector<ChainFact> lineFacts(const Ask& ask, const Problem& problem) {
  if (ask.isVerdict()) return {};
  if (const Step* step = keyStep(ask, problem)) return chainFacts(problem.key, step->id);
  std::vector<ChainFact> facts;
  for (const Step& step : problem.key.steps)
    if (step.id < *ask.step && facts.empty()) facts = chainFacts(problem.key, step.id);
  return facts;
}

Units lineWanted(const Ask& ask, const Problem& problem) {
  const Step* step = keyStep(ask, problem);
  return step ? step->lookingFor : ask.wanted;
}

}  // namespace wardchalk
