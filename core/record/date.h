#pragma once

#include <compare>
#include <string>
#include <string_view>

#include "core/number/refusal.h"

namespace wardchalk {

/// A day of the calendar. The core knows no clock: today is handed in by whoever asks.
struct Date {
  int year;
  int month;
  int day;
  friend auto operator<=>(const Date&, const Date&) = default;
};

/// Reads "2026-02-28" (ISO 8601, the extended form), year 1900 to 2999, and refuses days that no calendar
/// has. No other order of figures is read: 03/04 is March here and April there.
[[nodiscard]] Result<Date> readDate(std::string_view text);

/// "2026-02-28".
[[nodiscard]] std::string textOf(const Date& date);

}  // namespace wardchalk
