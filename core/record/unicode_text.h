#pragma once

#include <string>
#include <string_view>

namespace wardchalk {

/// Whether the bytes are UTF-8 as Unicode defines it: nothing overlong, no halves of a pair, nothing cut off.
[[nodiscard]] bool isUtf8(std::string_view text);

/// The first of its characters that no text may hold ("U+FFFE"): NUL, and the 66 that Unicode keeps for no
/// character (The Unicode Standard, 23.7). Empty if there is none. The text is UTF-8.
[[nodiscard]] std::string nonCharacterIn(std::string_view text);

/// The text for comparing names: small letters without accents, compatible forms made one ("Ärger" is
/// "arger"), the same in every locale. Letters that Unicode takes for letters of their own (ø, ł) stay. Text
/// that is not UTF-8 is given back as it is.
[[nodiscard]] std::string folded(std::string_view text);

}  // namespace wardchalk
