#pragma once

#include <string>
#include <string_view>

namespace wardchalk::practice {

/// The text with blanks where words stand that say nothing of the sum, and with numbers in words as figures.
/// It keeps its length, so that places in it are those of the text. A word that is not known stays as it is.
[[nodiscard]] std::string withoutWords(std::string_view text);

}  // namespace wardchalk::practice
