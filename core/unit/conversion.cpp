#include "core/unit/conversion.h"

#include <array>
#include <cassert>

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

/// A fact as it is read on the way: from its left side to its right, or turned.
struct Step {
  const Conversion* fact;
  bool isTurned;

  [[nodiscard]] Conversion read() const { return isTurned ? fact->turned() : *fact; }
  [[nodiscard]] const Number& over() const { return isTurned ? fact->fromValue : fact->toValue; }
  [[nodiscard]] const Number& under() const { return isTurned ? fact->toValue : fact->fromValue; }
};

/// No way is longer: year, month, day, h, min.
constexpr std::size_t mostSteps = 8;

struct Way {
  std::array<Step, mostSteps> steps;
  std::size_t length = 0;

  [[nodiscard]] const Step* begin() const { return steps.data(); }
  [[nodiscard]] const Step* end() const { return steps.data() + length; }
};

bool extend(Way& way, Unit at, Unit cameFrom, Unit goal, const Conversion& pounds);

bool extendBy(Way& way, const Conversion& fact, Unit at, Unit cameFrom, Unit goal, const Conversion& pounds) {
  if (fact.from != at && fact.to != at) return false;
  const bool isTurned = fact.to == at;
  const Unit next = isTurned ? fact.from : fact.to;
  if (next == cameFrom) return false;
  assert(way.length < mostSteps);
  way.steps[way.length++] = {&fact, isTurned};
  if (extend(way, next, at, goal, pounds)) return true;
  --way.length;
  return false;
}

/// The facts form a tree in each dimension, so that a way is the only one.
bool extend(Way& way, Unit at, Unit cameFrom, Unit goal, const Conversion& pounds) {
  if (at == goal) return true;
  for (const Conversion& fact : allConversions())
    if (extendBy(way, fact, at, cameFrom, goal, pounds)) return true;
  return extendBy(way, pounds, at, cameFrom, goal, pounds);
}

std::optional<Way> wayFrom(Unit from, Unit to, Pounds pounds) {
  if (dimensionOf(from) != dimensionOf(to)) return std::nullopt;
  Way way;
  const Conversion& pound = pounds == Pounds::exact ? poundExact : poundTrade;
  return extend(way, from, from, to, pound) ? std::optional(way) : std::nullopt;
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
  const auto way = wayFrom(from, to, pounds);
  if (!way) return std::nullopt;
  std::vector<Conversion> path;
  path.reserve(way->length);
  for (const Step& step : *way) path.push_back(step.read());
  return path;
}

std::optional<Number> converted(const Number& value, Unit from, Unit to, Pounds pounds) {
  if (from == to) return value;
  const auto way = wayFrom(from, to, pounds);
  if (!way) return std::nullopt;
  Number result = value;
  for (const Step& step : *way) result = result * step.over() / step.under();
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
