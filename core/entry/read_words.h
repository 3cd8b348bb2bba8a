#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"
#include "core/medicine/medicine.h"

namespace wardchalk {

/// Lists of words that an entry is chosen from.
enum class WordList : std::uint8_t { route, sex, weightMethod, stockKind };

/// Which of `words` is meant, in any capitals or by another of its spellings: its place among them. Nothing
/// is completed: the beginning of a word is no word.
[[nodiscard]] EntryResult<std::size_t> readWord(std::string_view text, WordList list,
                                                std::span<const std::string_view> words,
                                                const EntrySetting& setting = {});

/// A route: "oral", "PO", "by mouth", "IV".
[[nodiscard]] EntryResult<Route> readRoute(std::string_view text, const EntrySetting& setting = {});

/// Whether a person who writes this speaks of a route: to name what was typed into another field.
[[nodiscard]] bool saysRoute(std::string_view text);

/// What a text says that is wholly a dose, a strength or a schedule, and so belongs to another field than a
/// name or a source; none for other text. "p. 4" and "Plover 5 mg tablets" are other text.
[[nodiscard]] std::optional<RefusalCode> namedInText(std::string_view text);

}  // namespace wardchalk
