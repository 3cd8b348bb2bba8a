#include "core/medicine/schedule.h"

#include "core/number/decimal_text.h"

namespace wardchalk {

namespace {

std::string rangeText(const Number& low, const Number& high) {
  std::string text = exactText(low);
  if (low != high) text.append(" to ").append(exactText(high));
  return text;
}

int hoursIn(Unit unit) { return unit == Unit::week ? 168 : unit == Unit::day ? 24 : 1; }

}  // namespace

Schedule everyInterval(const Number& fewest, const Number& most, Unit unit) {
  const Number hours(hoursIn(unit));
  std::string text = "every " + rangeText(fewest, most) + " " + std::string(idOf(unit));
  return {Schedule::Kind::repeated,
          Number(24) / (most * hours),
          Number(24) / (fewest * hours),
          std::move(text),
          true,
          unit};
}

Schedule timesIn(const Number& fewest, const Number& most, Unit unit) {
  const Number days(unit == Unit::week ? 7 : 1);
  const bool one = most == Number(1);
  std::string text = rangeText(fewest, most) + (one ? " time a " : " times a ") + std::string(idOf(unit));
  if (one && unit == Unit::day) text = "daily";
  return {Schedule::Kind::repeated, fewest / days, most / days, std::move(text), false, unit};
}

Schedule givenWeekly() {
  return {Schedule::Kind::repeated, Number::ratio(1, 7), Number::ratio(1, 7), "weekly", false, Unit::week};
}

Schedule givenOnce() { return {Schedule::Kind::once, Number(1), Number(1), "once"}; }

Schedule givenContinuously() { return {Schedule::Kind::continuous, Number(1), Number(1), "continuous"}; }

}  // namespace wardchalk
