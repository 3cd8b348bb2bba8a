#pragma once

#include <string_view>

namespace wardchalk {

/// Whether a word, in small letters without apostrophe, denies, doubts or changes what is said: "not", "or",
/// "less", "dont". What such a word stands in is never passed over.
[[nodiscard]] bool changesMeaning(std::string_view word);

}  // namespace wardchalk
