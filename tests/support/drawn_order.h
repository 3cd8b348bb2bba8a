#pragma once

#include <string>
#include <vector>

#include "core/record/case_file.h"
#include "tests/support/drawn_child.h"

namespace wardchalk::test {

/// An ordinary case of a ward: a child of the growth tables, an invented medicine with a reference for each
/// kg or m², per dose or per day, an order that follows it, and a liquid of a usual strength.
struct DrawnOrder {
  DrawnChild child;
  bool perM2;
  bool perDay;
  bool hasLow;
  int doses;      ///< a day
  double high;    ///< of the reference, mg
  double share;   ///< of the high end that is ordered
  double kg, m2;  ///< as they are entered

  [[nodiscard]] double size() const { return perM2 ? m2 : kg; }
  /// The ordered single dose, mg.
  [[nodiscard]] double dose() const { return share * high * size() / (perDay ? doses : 1); }
};

/// Orders from 92.5 to 99.5 % of the high end, or where a low end is stated anywhere above it.
[[nodiscard]] DrawnOrder drawOrder(Draw& draw);

/// The case as it is typed, the dose to three digits. The age is left out where `ageKnown` is false.
[[nodiscard]] std::vector<WrittenEntry> entriesOf(const DrawnOrder& order, bool ageKnown = true);

/// To three digits, as typed.
[[nodiscard]] std::string threeDigits(double value);

}  // namespace wardchalk::test
