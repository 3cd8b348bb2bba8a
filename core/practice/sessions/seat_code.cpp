#include "core/practice/sessions/seat_code.h"

#include <algorithm>

#include "core/number/ascii.h"

namespace wardchalk {

bool isSeatCode(std::string_view text) {
  const auto may = [](char c) { return isDigit(c) || isLetter(c) || c == '-'; };
  return text.size() <= longestSeat && std::ranges::all_of(text, may) && std::ranges::any_of(text, isDigit);
}

}  // namespace wardchalk
