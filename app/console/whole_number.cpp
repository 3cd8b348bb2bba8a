#include "app/console/whole_number.h"

#include <algorithm>
#include <charconv>

#include "core/number/ascii.h"

namespace wardchalk::console {

namespace {

bool isPlain(const std::string& text) {
  const bool digits = std::all_of(text.begin(), text.end(), isDigit);
  return !text.empty() && digits && (text.size() == 1 || text.front() != '0');
}

}  // namespace

CLI::Validator wholeNumber(std::uint64_t least, std::uint64_t most) {
  const std::string range = std::to_string(least) + " to " + std::to_string(most);
  const auto check = [least, most, range](std::string& text) -> std::string {
    std::uint64_t value = 0;
    const bool fits =
        isPlain(text) && std::from_chars(text.data(), text.data() + text.size(), value).ec == std::errc();
    if (fits && value >= least && value <= most) return {};
    return text + " is not a whole number from " + range + " written in plain digits";
  };
  return CLI::Validator(check, range);
}

}  // namespace wardchalk::console
