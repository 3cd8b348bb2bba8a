#include "core/practice/sessions/lesson_words.h"

#include <algorithm>
#include <array>

#include "core/practice/marking/hints.h"
#include "core/practice/problem/problem_story.h"
#include "core/words/phrasebook.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

constexpr std::array topicPhrases = {
#define WARDCHALK_TOPIC(name, id) PhraseId::topic_##name,
#include "core/practice/problem/topics.def"
#undef WARDCHALK_TOPIC
};

constexpr std::array levelPhrases = {PhraseId::level_first, PhraseId::level_usual, PhraseId::level_whole};
static_assert(levelPhrases.size() == highestLevel - lowestLevel + 1);

const Step* keyStep(const Ask& ask, const Problem& problem) {
  return ask.step ? problem.key.step(*ask.step) : nullptr;
}

}  // namespace

std::string topicWord(Topic topic) { return say(topicPhrases[static_cast<std::size_t>(topic)]); }

std::string levelWord(int level) {
  const int known = std::clamp(level, lowestLevel, highestLevel) - lowestLevel;
  return say(levelPhrases[static_cast<std::size_t>(known)]);
}

std::string lineQuestion(const Ask& ask, const Problem& problem) {
  if (ask.isVerdict()) return say(PhraseId::lesson_verdict);
  return askQuestion(*ask.step, problem);
}

std::string lineUnit(const Ask& ask) {
  if (ask.isVerdict() || ask.wanted == Units{}) return {};
  return say(PhraseId::lesson_inUnit,
             {{"unit", unitsText(ask.wanted, Spelling::printed)}, {"precision", askedPrecision(ask)}});
}

std::string lineAnswer(const Ask& ask, const Problem& problem) {
  if (ask.isVerdict()) return verdictWord(verdictWordOf(problem.key, Replay(problem.key, {})));
  const Step* step = keyStep(ask, problem);
  return step ? conclusion(*step) : say(PhraseId::practiceSheet_nothing);
}

std::vector<ChainFact> lineFacts(const Ask& ask, const Problem& problem,
                                 std::span<const CarriedAnswer> earlier) {
  if (ask.isVerdict()) return {};
  std::vector<OwnResult> own;
  for (const CarriedAnswer& answer : earlier) own.push_back({answer.step, answer.value});
  return chainFacts(problem.key, *ask.step, own);
}

Units lineWanted(const Ask& ask, const Problem& problem) {
  const Step* step = keyStep(ask, problem);
  return step ? step->lookingFor : ask.wanted;
}

}  // namespace wardchalk
