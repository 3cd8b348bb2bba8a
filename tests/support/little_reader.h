#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace wardchalk::test {

/// What an entry means, by a reader that shares nothing with the program's: a line of text that is the same
/// for two entries that mean the same. It knows refused spellings as well, and not those that have two
/// meanings. No value where not every word and figure of the text has one meaning.
[[nodiscard]] std::optional<std::string> quantityMeant(std::string_view text);
/// The same in an age, where d, w and m are days, weeks and months, and in a running time, where m is
/// minutes.
[[nodiscard]] std::optional<std::string> ageMeant(std::string_view text);
[[nodiscard]] std::optional<std::string> timeMeant(std::string_view text);
[[nodiscard]] std::optional<std::string> scheduleMeant(std::string_view text);
[[nodiscard]] std::optional<std::string> wordMeant(std::string_view text);

}  // namespace wardchalk::test
