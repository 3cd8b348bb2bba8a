#include "tests/support/drawn_order.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "tests/support/random_case.h"

namespace wardchalk::test {

namespace {

constexpr std::array steps = {1.0, 2.0, 2.5, 4.0, 5.0, 8.0};

double roundedTo(double value, int decimals) {
  const double scale = std::pow(10, decimals);
  return std::round(value * scale) / scale;
}

/// A reference figure as lists print it: 1, 2, 2.5, 4, 5 or 8 at a power of ten.
double drawFigure(Draw& draw, bool perM2) {
  const double power = std::pow(10, draw.below(3) + (perM2 ? 1 : 0));
  return steps[static_cast<std::size_t>(draw.below(steps.size()))] * power;
}

/// A strength for one mL with which the dose is 2 to 8 mL.
double strengthFor(double dose) {
  for (int power = -5; power < 9; ++power)
    for (const double step : steps) {
      const double strength = step * std::pow(10, power);
      if (dose / strength >= 2 && dose / strength <= 8) return strength;
    }
  return dose;
}

std::string ageText(double months) {
  const int whole = static_cast<int>(months);
  if (whole < 24) return std::to_string(whole) + " month";
  return std::to_string(whole / 12) + " year " + std::to_string(whole % 12) + " month";
}

}  // namespace

std::string threeDigits(double value) {
  const int decimals = std::max(0, 2 - static_cast<int>(std::floor(std::log10(value))));
  const double unit = std::pow(10, static_cast<int>(std::floor(std::log10(value))) - 2);
  if (decimals == 0) return std::to_string(std::llround(value / unit) * std::llround(unit));
  return decimal(std::llround(value / unit), decimals);
}

DrawnOrder drawOrder(Draw& draw) {
  DrawnOrder order{};
  order.child = drawChild(draw);
  order.kg = roundedTo(order.child.kg, 1);
  order.m2 = roundedTo(std::sqrt(std::round(order.child.cm) * order.kg / 3600), 2);
  order.perM2 = draw.below(2) == 1;
  order.perDay = draw.below(2) == 1;
  order.hasLow = draw.below(2) == 1;
  constexpr std::array often = {1, 2, 3, 4};
  order.doses = often[static_cast<std::size_t>(draw.below(often.size()))];
  order.high = drawFigure(draw, order.perM2);
  order.share = order.hasLow ? draw.between(0.52, 0.995) : draw.between(0.925, 0.995);
  return order;
}

std::vector<WrittenEntry> entriesOf(const DrawnOrder& order, bool ageKnown) {
  const std::string basis =
      std::string(" mg") + (order.perM2 ? "/m2" : "/kg") + (order.perDay ? "/day" : "/dose");
  const std::string schedule = "every " + std::to_string(24 / order.doses) + " h";
  std::vector<WrittenEntry> entries = {
      {"child.sex", order.child.sex == Sex::female ? "female" : "male"},
      {"child.height", std::to_string(std::lround(order.child.cm)) + " cm"},
      {"child.weight", decimal(std::llround(order.kg * 10), 1) + " kg"},
      {"order.medicine", "Plover"},
      {"order.dose", threeDigits(order.dose()) + " mg"},
      {"order.route", "oral"},
      {"order.schedule", schedule},
      {"reference.high", threeDigits(order.high) + basis},
      {"reference.schedule", schedule},
      {"reference.route", "oral"},
      {"reference.source", "Bench list, p. 4"},
      {"stock.kind", "liquid"},
      {"stock.strength", threeDigits(strengthFor(order.dose())) + " mg/mL"},
  };
  if (ageKnown) entries.push_back({"child.age", ageText(order.child.months)});
  if (order.hasLow) entries.push_back({"reference.low", threeDigits(order.high / 2) + basis});
  return entries;
}

}  // namespace wardchalk::test
