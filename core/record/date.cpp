#include "core/record/date.h"

#include <algorithm>
#include <chrono>

#include "core/number/ascii.h"

namespace wardchalk {

namespace {

constexpr std::string_view shape = "0000-00-00";

bool hasShape(std::string_view text) {
  if (text.size() != shape.size()) return false;
  for (std::size_t i = 0; i < shape.size(); ++i) {
    const bool digit = isDigit(text[i]);
    if (shape[i] == '0' ? !digit : text[i] != '-') return false;
  }
  return true;
}

int figuresOf(std::string_view digits) {
  int value = 0;
  for (const char digit : digits) value = value * 10 + (digit - '0');
  return value;
}

std::string padded(int value, std::size_t width) {
  std::string digits = std::to_string(value);
  return std::string(width - std::min(width, digits.size()), '0') + digits;
}

bool isInCalendar(const Date& date) {
  return std::chrono::year_month_day{std::chrono::year(date.year),
                                     std::chrono::month(static_cast<unsigned>(date.month)),
                                     std::chrono::day(static_cast<unsigned>(date.day))}
      .ok();
}

}  // namespace

Result<Date> readDate(std::string_view text) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  if (!hasShape(text)) return refusalOf(RefusalCode::dateShape, text);
  const Date date{figuresOf(text.substr(0, 4)), figuresOf(text.substr(5, 2)), figuresOf(text.substr(8, 2))};
  if (!isInCalendar(date) || date.year < 1900 || date.year > 2999)
    return refusalOf(RefusalCode::dateUnknown, text);
  return date;
}

std::string textOf(const Date& date) {
  return padded(date.year, 4) + "-" + padded(date.month, 2) + "-" + padded(date.day, 2);
}

}  // namespace wardchalk
