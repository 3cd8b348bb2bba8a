#pragma once

#include <array>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace wardchalk {

/// Every sentence the program says; the list with its English is in phrases.def.
enum class PhraseId : std::uint16_t {
#define WARDCHALK_PHRASE(name, id, one, other) name,
#include "core/words/phrases.def"
#undef WARDCHALK_PHRASE
};

/// A sentence's stable id and its English, for a count of one and for the rest.
struct Phrase {
  std::string_view id;
  std::string_view one;
  std::string_view other;  ///< empty where no count is meant
};

// A list of this length cannot have its size deduced from its elements: clang folds them one inside another
// and gives up.
inline constexpr auto phraseTable = std::to_array<Phrase>({
#define WARDCHALK_PHRASE(name, id, one, other) Phrase{id, one, other},
#include "core/words/phrases.def"
#undef WARDCHALK_PHRASE
});

/// Where sentences come from: the English table, or a translation of it.
class Phrasebook {
 public:
  virtual ~Phrasebook() = default;
  /// The template of a sentence; `count` chooses the plural form where there is one.
  [[nodiscard]] virtual std::string find(PhraseId id, std::optional<long> count) const = 0;
};

/// The sentences as they stand in phrases.def.
[[nodiscard]] const Phrasebook& englishPhrases();

/// A value to be filled into a sentence.
struct Filling {
  std::string_view name;
  std::string value;
};

/// The sentence with its {names} filled in, each isolated where it runs from the right, and its [optional
/// parts] kept or left out.
[[nodiscard]] std::string say(const Phrasebook& book, PhraseId id,
                              std::initializer_list<Filling> fillings = {},
                              std::optional<long> count = std::nullopt);
[[nodiscard]] std::string fill(std::string_view text, const Filling* first, std::size_t count);

}  // namespace wardchalk
