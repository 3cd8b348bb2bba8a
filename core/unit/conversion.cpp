#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

constexpr std::string_view si = "SI prefixes and units, SI Brochure (BIPM), 9th edition";
constexpr std::string_view yardAndPound =
    "International yard and pound agreement of 1959; NIST SP 811 appendix B (from memory); 16 CFR 500.19 "
    "states the inch";
constexpr std::string_view custom = "common practice, no source";

const Conversion poundExact{Unit::lb,    Number(1),   Unit::kg, Number::ratio(45359237, 100000000),
                            "kg-per-lb", yardAndPound};
const Conversion poundTrade{
    Unit::kg,    Number(1),
    Unit::lb,    Number::ratio(22, 10),
    "lb-per-kg", "trade value taught in nursing texts: Pharmacology for Nurses, OpenStax 2024, section 2.4"};

/// One step from `unit` to each neighbour. The facts form a tree in each dimension, so a path is unique.
std::vector<Conversion> stepsFrom(Unit unit, Pounds pounds) {
  std::vector<Conversion> steps;
  const auto consider = [&](const Conversion& fact) {
    if (fact.from == unit) steps.push_back(fact);
    if (fact.to == unit) steps.push_back(fact.turned());
  };
  for (const Conversion& fact : allConversions()) consider(fact);
  consider(pounds == Pounds::exact ? poundExact : poundTrade);
  return steps;
}

bool extend(std::vector<Conversion>& path, Unit at, Unit cameFrom, Unit goal, Pounds pounds) {
  if (at == goal) return true;
  for (const Conversion& step : stepsFrom(at, pounds)) {
    if (step.to == cameFrom) continue;
    path.push_back(step);
    if (extend(path, step.to, at, goal, pounds)) return true;
    path.pop_back();
  }
  return false;
}

}  // namespace

const std::vector<Conversion>& allConversions() {
  static const std::vector<Conversion> table = {
      {Unit::mg, Number(1), Unit::mcg, Number(1000), "mcg-per-mg", si},
      {Unit::g, Number(1), Unit::mg, Number(1000), "mg-per-g", si},
      {Unit::kg, Number(1), Unit::bodyG, Number(1000), "g-per-kg", si},
      {Unit::lb, Number(1), Unit::oz, Number(16), "oz-per-lb", yardAndPound},
      {Unit::m, Number(1), Unit::cm, Number(100), "cm-per-m", si},
      {Unit::in, Number(1), Unit::cm, Number::ratio(254, 100), "cm-per-in", yardAndPound},
      {Unit::ft, Number(1), Unit::in, Number(12), "in-per-ft", yardAndPound},
      {Unit::L, Number(1), Unit::mL, Number(1000), "mL-per-L", si},
      {Unit::h, Number(1), Unit::min, Number(60), "min-per-h", si},
      {Unit::day, Number(1), Unit::h, Number(24), "h-per-day", si},
      {Unit::week, Number(1), Unit::day, Number(7), "day-per-week", custom},
      {Unit::year, Number(1), Unit::month, Number(12), "month-per-year", custom},
      // 365.25 / 12 days, the mean month that growth references count in.
      {Unit::month, Number(1), Unit::day, Number::ratio(304375, 10000), "day-per-month",
       "CDC growth charts: age in months = days / 30.4375"},
  };
  return table;
}

std::optional<std::vector<Conversion>> conversionPath(Unit from, Unit to, Pounds pounds) {
  if (dimensionOf(from) != dimensionOf(to)) return std::nullopt;
  std::vector<Conversion> path;
  if (!extend(path, from, from, to, pounds)) return std::nullopt;
  return path;
}

std::optional<Number> converted(const Number& value, Unit from, Unit to, Pounds pounds) {
  const auto path = conversionPath(from, to, pounds);
  if (!path) return std::nullopt;
  Number result = value;
  for (const Conversion& fact : *path) result = result * fact.toValue / fact.fromValue;
  return result;
}

std::optional<Number> totalIn(const MixedQuantity& mixed, Unit unit, Pounds pounds) {
  Number total;
  for (const Quantity& part : mixed.parts) {
    const auto value = converted(part.value, part.unit, unit, pounds);
    if (!value) return std::nullopt;
    total = total + *value;
  }
  return total;
}

}  // namespace wardchalk
