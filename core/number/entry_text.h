#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace wardchalk {

// What the readers of entries share: which characters they take for a number, and what plain spacing is.

/// Bytes at the start of `text` that belong to a number or to what people mistake for one: "1,5", "1e3",
/// "-2", "1/2", "½", digits of other scripts, digits set off by narrow spaces. 0 when it starts with nothing
/// of the kind.
[[nodiscard]] std::size_t numberLength(std::string_view text);

/// Whether a digit of another script stands in the text: Arabic, Devanagari, full-width …
[[nodiscard]] bool hasOtherDigits(std::string_view text);

/// Whether there is a space of any kind in the text: plain, tab, line end, no-break, thin, or a mark nobody
/// sees.
[[nodiscard]] bool hasAnySpace(std::string_view text);

/// The text with one plain space wherever spaces of any kind stand, and none at its ends.
[[nodiscard]] std::string withPlainSpaces(std::string_view text);

/// What stands between plain spaces, in views of the text.
[[nodiscard]] std::vector<std::string_view> wordsOf(std::string_view text);

/// The text with every `from` replaced by `to`. `from` is not empty.
[[nodiscard]] std::string withReplaced(std::string_view text, std::string_view from, std::string_view to);

}  // namespace wardchalk
