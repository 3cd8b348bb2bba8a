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

/// A value to be filled into a sentence.
struct Filling {
  std::string_view name;
  std::string value;
};

/// The sentence in its form for `count` (one or the rest; without a count, or where a phrase has one form
/// only, that of one), with its {names} filled in, each isolated where it runs from the right, and its
/// [optional parts] kept or left out.
[[nodiscard]] std::string say(PhraseId id, std::initializer_list<Filling> fillings = {},
                              std::optional<long> count = std::nullopt);
/// The same with fillings that were gathered.
[[nodiscard]] std::string say(PhraseId id, std::span<const Filling> fillings);
/// The same for a text that is in no table: a part that becomes a filling.
[[nodiscard]] std::string fill(std::string_view text, std::span<const Filling> fillings);

}  // namespace wardchalk
