#pragma once

#include <string>

#include "core/number/number.h"
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

/// "Every `fewest` to `most` of this unit", `fewest` not above `most`: h, day or week.
[[nodiscard]] Schedule everyInterval(const Number& fewest, const Number& most, Unit unit);
/// "`fewest` to `most` times a day" or a week; whole numbers.
[[nodiscard]] Schedule timesIn(const Number& fewest, const Number& most, Unit unit);
[[nodiscard]] Schedule givenWeekly();
/// One dose, and no repetition.
[[nodiscard]] Schedule givenOnce();
/// By rate alone.
[[nodiscard]] Schedule givenContinuously();

}  // namespace wardchalk
