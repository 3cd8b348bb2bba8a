#include "core/words/unit_words.h"

#include <algorithm>

#include "core/number/decimal_text.h"

namespace wardchalk {

namespace {

/// A unit that stands so many times.
std::string powerText(Unit unit, int power, Spelling spelling) {
  const bool filed = spelling == Spelling::filed;
  if (unit == Unit::m2) {
    if (power == 1) return filed ? "m2" : "m²";
    return filed ? "m" + std::to_string(2 * power) : power == 2 ? "m⁴" : "m^" + std::to_string(2 * power);
  }
  std::string text(filed ? idOf(unit) : infoOf(unit).one);
  if (unit == Unit::units) text = "units";  // "units/kg", never "unit/kg"
  if (power == 1) return text;
  if (unit == Unit::m) {  // "m²" is the square metre, a unit by itself that strikes out no single metre
    while (--power > 0) text += "·m";
    return text;
  }
  if (filed) return text + std::to_string(power);
  return text + (power == 2 ? "²" : power == 3 ? "³" : "^" + std::to_string(power));
}

/// Whether units multiplied together are written with a point between them.
bool standsInParts(const UnitProduct& units) {
  const Unit first = units.front();
  return std::any_of(units.begin() + 1, units.end(),
                     [first](Unit unit) { return unit != first || unit == Unit::m; });
}

/// Equal units stand together as a power.
std::string joinedUnits(const UnitProduct& units, Spelling spelling, std::string_view between) {
  std::string text;
  for (std::size_t i = 0; i < units.size();) {
    std::size_t end = i + 1;
    const bool apart = units[i] == Unit::m && between == "/";  // "/m/m": "/m·m" would be something else
    while (!apart && end < units.size() && units[end] == units[i]) ++end;
    text.append(text.empty() ? "" : between).append(powerText(units[i], static_cast<int>(end - i), spelling));
    i = end;
  }
  return text;
}

}  // namespace

std::string unitsText(const UnitProduct& units, Spelling spelling) {
  return joinedUnits(units, spelling, "·");
}

std::string unitsBeside(const Number& value, const UnitProduct& units) {
  std::string text = unitsText(units, Spelling::printed);
  if (value == Number(1) || units.empty()) return text;
  const UnitInfo& last = infoOf(units.back());
  if (!text.ends_with(last.one)) return text;  // it is raised to a power
  text.resize(text.size() - last.one.size());
  return text.append(last.many);
}

std::string_view unitBeside(const Term& term, std::size_t use) {
  const UnitInfo& info = infoOf(term.units[use]);
  return term.value == Number(1) || use + 1 < term.units.size() ? info.one : info.many;
}

std::string unitsText(const Units& units, Spelling spelling) {
  const std::string over = unitsText(units.over, spelling);
  if (units.under.empty()) return over;
  return (over.empty() ? "1" : over) + perText(units.under, spelling);
}

std::string perText(const UnitProduct& under, Spelling spelling) {
  if (under.empty()) return {};
  // A person reads mcg/kg/min, as the trade writes it; files group what is below the stroke.
  if (spelling == Spelling::printed) return "/" + joinedUnits(under, spelling, "/");
  const std::string text = unitsText(under, spelling);
  return standsInParts(under) ? "/(" + text + ")" : "/" + text;
}

std::string valueText(const Number& value, int fixedDecimals) {
  if (fixedDecimals >= 0) return fixedText(value, fixedDecimals);
  const ShownNumber shown = show(value, Grouping::commas);
  return shown.exact ? shown.text : "≈" + shown.text;
}

std::string valueText(const Term& term) {
  // What was entered, and a constant, stand with all their digits: they are no results to be shortened.
  const Origin::Kind kind = term.origin.kind;
  const bool given =
      kind == Origin::Kind::field || kind == Origin::Kind::constant || kind == Origin::Kind::rule;
  if (given && term.fixedDecimals < 0 && !term.value.endsWithin(4) && term.value.endsWithin(40))
    return exactText(term.value, Grouping::commas);
  return valueText(term.value, term.fixedDecimals);
}

std::string spoken(const UnitProduct& units, bool many) {
  std::string text;
  for (std::size_t i = 0; i < units.size();) {
    std::size_t end = i;
    while (end < units.size() && units[end] == units[i]) ++end;
    const bool last = end == units.size();
    text.append(text.empty() ? "" : " ")
        .append(many && last ? infoOf(units[i]).words : infoOf(units[i]).word);
    if (end - i == 2) text.append(" squared");
    if (end - i > 2) text.append(" to the power ").append(std::to_string(end - i));
    i = end;
  }
  return text;
}

}  // namespace wardchalk
