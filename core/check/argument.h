#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

#include "core/check/slips/slip.h"
#include "core/child/size_slip.h"
#include "core/number/number.h"
#include "core/number/static_text.h"
#include "core/unit/quantity.h"
#include "core/working/stated.h"

namespace wardchalk {

/// A value in percent of another.
struct Percent {
  Number value;
  Number of;
};

/// By how many percent a value is over a limit.
struct Excess {
  Number value;
  Number limit;
};

/// A percentage that is no comparison: a change.
struct PlainPercent {
  Number percent;
};

/// A number that is shown with exactly so many decimals.
struct FixedNumber {
  Number value;
  int decimals;
};

/// A word out of a fixed list; the list is in argument_words.def.
enum class ArgumentWord : std::uint8_t {
#define WARDCHALK_WORD(name, id) name,
#include "core/check/argument_words.def"
#undef WARDCHALK_WORD
};

inline constexpr std::array argumentWordIds = {
#define WARDCHALK_WORD(name, id) std::string_view(id),
#include "core/check/argument_words.def"
#undef WARDCHALK_WORD
};

[[nodiscard]] constexpr std::string_view idOf(ArgumentWord word) {
  return argumentWordIds[static_cast<std::size_t>(word)];
}

/// What two people came to, which is told in the words of whoever compared it.
struct Told {
  std::string text;
};

using ArgumentValue = std::variant<Stated, Number, Percent, Excess, PlainPercent, FixedNumber, Unit,
                                   DoseAmount, Strength, SizeSlip, Slip, ArgumentWord, Told>;

/// A named value that a finding's sentence needs.
struct Argument {
  StaticText name;
  ArgumentValue value;
  int significant = 4;  ///< digits when it is not shown exactly; more where two values would print alike
};

}  // namespace wardchalk
