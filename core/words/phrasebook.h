#pragma once

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/words/phrase_id.h"

namespace wardchalk {

/// A sentence's stable id and its English, for a count of one and for the rest.
struct Phrase {
  std::string_view id;
  std::string_view one;
  std::string_view other = {};  ///< empty where no count is meant
};

/// Every sentence, in the order of PhraseId.
[[nodiscard]] std::span<const Phrase> allPhrases();

/// Where sentences come from: the English table, or a translation of it.
class Phrasebook {
 public:
  virtual ~Phrasebook() = default;
  /// The template of a sentence; `count` chooses the plural form where there is one.
  [[nodiscard]] virtual std::string find(PhraseId id, std::optional<long> count) const = 0;
};

/// The sentences as they stand in phrases.def and its companions.
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
