#include "core/words/phrasebook.h"

#include <algorithm>
#include <array>

#include "core/words/isolated.h"
#include "core/words/phrase_id_list.h"

namespace wardchalk {

namespace {

// The files and their order are those of core/words/CMakeLists.txt, where the names are made. A list of this
// length cannot have its size deduced from its elements: clang folds them one inside another and gives up.
constexpr auto phraseTable = std::to_array<Phrase>({
#define WARDCHALK_PHRASE(...) Phrase{__VA_ARGS__},
#include "core/words/mistake_phrases.def"
#include "core/words/phrases.def"
#include "core/words/practice_phrases.def"
#include "core/words/ward_phrases.def"
#undef WARDCHALK_PHRASE
});

static_assert(std::ranges::equal(phraseTable, phraseIds, {}, &Phrase::id),
              "every sentence stands under its own name");

std::string_view textOf(PhraseId id, std::optional<long> count) {
  const Phrase& phrase = phraseTable[static_cast<std::size_t>(id)];
  const bool other = count && *count != 1 && !phrase.other.empty();
  return other ? phrase.other : phrase.one;
}

/// Fills one stretch of text; tells whether a value in it was empty.
struct Filled {
  std::string text;
  bool anyEmpty = false;
};

Filled fillStretch(std::string_view text, std::span<const Filling> fillings) {
  Filled filled;
  while (!text.empty()) {
    const std::size_t open = text.find('{');
    filled.text.append(text.substr(0, open));
    if (open == std::string_view::npos) break;
    const std::size_t close = text.find('}', open);
    const std::string_view name = text.substr(open + 1, close - open - 1);
    std::string_view value;
    for (const Filling& filling : fillings)
      if (filling.name == name) value = filling.value;
    filled.anyEmpty = filled.anyEmpty || value.empty();
    // Every value, and not those alone that somebody remembered to mark: figures and words of ours have
    // nothing that runs from the right and stay as they are.
    filled.text.append(isolated(value));
    text.remove_prefix(close + 1);
  }
  return filled;
}

}  // namespace

std::span<const Phrase> allPhrases() { return phraseTable; }

std::string fill(std::string_view text, std::span<const Filling> fillings) {
  std::string result;
  while (!text.empty()) {
    const std::size_t open = text.find('[');
    result.append(fillStretch(text.substr(0, open), fillings).text);
    if (open == std::string_view::npos) break;
    const std::size_t close = text.find(']', open);
    const Filled part = fillStretch(text.substr(open + 1, close - open - 1), fillings);
    if (!part.anyEmpty) result.append(part.text);
    text.remove_prefix(close + 1);
  }
  return result;
}

std::string say(PhraseId id, std::initializer_list<Filling> fillings, std::optional<long> count) {
  return fill(textOf(id, count), {fillings.begin(), fillings.size()});
}

std::string say(PhraseId id, std::span<const Filling> fillings) {
  return fill(textOf(id, std::nullopt), fillings);
}

}  // namespace wardchalk
