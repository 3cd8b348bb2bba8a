#pragma once

#include <string>
#include <string_view>

namespace wardchalk::practice {

/// The text with plain signs and spaces in place of those that look alike: arrows as "=", long dashes as "-",
/// spaces of every width. Byte for byte as long, so that places in it are those of the text.
[[nodiscard]] std::string withPlainSigns(std::string_view text);

/// Whether a word of it denies, doubts or changes what is said, or a question is asked. What is said around
/// an answer ("not more than", "bag must hold") does not.
[[nodiscard]] bool saysOtherwise(std::string_view text);

/// Whether something is worked out in it: a sign of × ÷ / + − or a root between numbers.
[[nodiscard]] bool hasOperator(std::string_view text);

/// Whether a word stands in it that is no unit.
[[nodiscard]] bool hasTalk(std::string_view text);

/// Whether a number stands in it; the power of a unit ("m2") is none.
[[nodiscard]] bool hasNumber(std::string_view text);

/// The text with blanks where words without figures stand before its first number and behind the unit of its
/// last. A word directly behind a number stays, since it may be a unit that was not spelled right, and so do
/// words that count.
[[nodiscard]] std::string withoutSurroundings(std::string_view text);

}  // namespace wardchalk::practice
