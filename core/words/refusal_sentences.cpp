#include <array>

#include "core/number/unseen_text.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

constexpr std::array refusalPhrases = {
#define WARDCHALK_REFUSAL(name, id) PhraseId::refusal_##name,
#include "core/number/refusal_codes.def"
#undef WARDCHALK_REFUSAL
};

constexpr std::array unseenPhrases = {PhraseId::unseen_tab,       PhraseId::unseen_lineBreak,
                                      PhraseId::unseen_control,   PhraseId::unseen_hyphen,
                                      PhraseId::unseen_space,     PhraseId::unseen_direction,
                                      PhraseId::unseen_byteOrder, PhraseId::unseen_noCharacter};

std::string unseenName(const UnseenCharacter& unseen) {
  return say(unseenPhrases[static_cast<std::size_t>(unseen.kind)]);
}

/// A strength is refused as it was typed, or because it and the kind of stock contradict each other: then
/// nothing of it is quoted.
PhraseId phraseFor(const Refusal& refusal) {
  if (refusal.code == RefusalCode::strengthShape && refusal.typed.empty())
    return PhraseId::refusal_strengthUnlikeKind;
  return refusalPhrases[static_cast<std::size_t>(refusal.code)];
}

}  // namespace

std::string sentence(const Refusal& refusal) {
  const PhraseId phrase = phraseFor(refusal);
  if (const auto unseen = firstUnseen(refusal.typed); unseen && refusal.code == RefusalCode::unseenCharacter)
    return say(phrase, {{"what", unseenName(*unseen)}, {"number", unseen->number}});
  return say(phrase, {{"typed", withUnseenNamed(refusal.typed)},
                      {"suggestion", withUnseenNamed(refusal.suggestion)},
                      {"hint", refusal.hint}});
}

std::string placeText(const Refusal& refusal) { return isolated(withUnseenNamed(refusal.path)); }

std::string placedSentence(const Refusal& refusal) {
  const std::string why = sentence(refusal);
  return refusal.path.empty() ? why : placeText(refusal) + ": " + why;
}

}  // namespace wardchalk
