#include "core/words/phrasebook.h"

#include <algorithm>
#include <array>
#include <numeric>

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

std::string_view valueOf(std::string_view name, std::span<const Filling> fillings) {
  const auto last = std::find_if(fillings.rbegin(), fillings.rend(),
                                 [&](const Filling& filling) { return filling.name == name; });
  return last == fillings.rend() ? std::string_view() : last->value;
}

/// Fills one stretch of text at the end of `result`; tells whether a value in it was empty.
bool fillStretch(std::string& result, std::string_view text, std::span<const Filling> fillings) {
  bool anyEmpty = false;
  while (!text.empty()) {
    const std::size_t open = text.find('{');
    result.append(text.substr(0, open));
    if (open == std::string_view::npos) break;
    const std::size_t close = text.find('}', open);
    const std::string_view value = valueOf(text.substr(open + 1, close - open - 1), fillings);
    anyEmpty = anyEmpty || value.empty();
    // Every value, and not those alone that somebody remembered to mark: figures and words of ours have
    // nothing that runs from the right and stay as they are.
    appendIsolated(result, value);
    text.remove_prefix(close + 1);
  }
  return anyEmpty;
}

}  // namespace

std::span<const Phrase> allPhrases() { return phraseTable; }

std::string fill(std::string_view text, std::span<const Filling> fillings) {
  std::string result;
  result.reserve(
      std::accumulate(fillings.begin(), fillings.end(), text.size(),
                      [](std::size_t size, const Filling& one) { return size + one.value.size(); }));
  while (!text.empty()) {
    const std::size_t open = text.find('[');
    fillStretch(result, text.substr(0, open), fillings);
    if (open == std::string_view::npos) break;
    const std::size_t close = text.find(']', open);
    const std::size_t before = result.size();
    if (fillStretch(result, text.substr(open + 1, close - open - 1), fillings)) result.resize(before);
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
