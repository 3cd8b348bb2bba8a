#pragma once

#include <optional>
#include <string>

#include "core/medicine/medicine.h"

namespace wardchalk {

/// How often, as it is said: "every 8 hours", "3 times a day", "continuously". Files and fields keep the
/// schedule's own text.
[[nodiscard]] std::string scheduleWords(const Schedule& schedule);

/// By which way and how often: "by mouth every 8 hours", "by continuous infusion". Empty where neither is
/// stated.
[[nodiscard]] std::string givenWords(const std::optional<Route>& route,
                                     const std::optional<Schedule>& schedule);

/// An ordered dose with how it is given, as an order is written: "250 mg by mouth every 8 hours", "2 mg/kg/h
/// by continuous infusion", "750 mg per day, by mouth every 8 hours". Empty parts are left out.
[[nodiscard]] std::string orderWords(const Order& order);

}  // namespace wardchalk
