#pragma once

#include <string>
#include <string_view>

#include "core/number/number.h"
#include "core/number/refusal.h"
#include "core/unit/unit.h"

namespace wardchalk {

/// How often a dose is given (R4): a range of doses a day, usually of one value.
struct Schedule {
  enum class Kind : std::uint8_t { repeated, once, continuous };
  Kind kind = Kind::repeated;
  Number fewest;            ///< doses a day; 1 for once
  Number most;              ///< doses a day; 1 for once
  std::string text;         ///< in our words: "every 12 h", whatever abbreviation was typed
  bool byInterval = false;  ///< said as "every 12 h", which is not "2 times a day"
  Unit in = Unit::day;      ///< the unit in which it is said: h, day or week

  [[nodiscard]] bool isOnce() const { return kind == Kind::once; }
  [[nodiscard]] bool isContinuous() const { return kind == Kind::continuous; }
  [[nodiscard]] bool isRepeated() const { return kind == Kind::repeated; }

  friend bool operator==(const Schedule&, const Schedule&) = default;
};

/// Reads "every 12 h", "every 4 to 6 h", "3 times a day", "2 to 3 times a day", "2 times a week", "every 2
/// day", "weekly", "once", "continuous", and the abbreviations in common use (BID, TID, QID, bd, tds, qds,
/// q6h, q4-6h, daily). Abbreviations that have been misread (QD, QOD, OD …) are refused with the words to
/// write.
[[nodiscard]] Result<Schedule> readSchedule(std::string_view text);

}  // namespace wardchalk
