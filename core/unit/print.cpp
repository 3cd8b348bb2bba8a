#include "core/unit/print.h"

namespace wardchalk {

std::string_view signFor(Unit unit, const Number& value) {
  // a value that is printed as 1 is one, however near it lies
  const bool isNear = Number(0) < value && value < Number(2);
  return isNear && show(value).text == "1" ? infoOf(unit).one : infoOf(unit).many;
}

std::string printed(const Quantity& quantity, Grouping grouping, int significant) {
  return show(quantity.value, grouping, significant)
      .marked()
      .append(" ")
      .append(signFor(quantity.unit, quantity.value));
}

std::string printed(const MixedQuantity& mixed) {
  std::string text;
  for (const Quantity& part : mixed.parts) text.append(text.empty() ? "" : " ").append(printed(part));
  return text;
}

std::string printed(const DoseAmount& dose) {
  std::string text = printed(dose.amount);
  if (dose.perSize != PerSize::none) text.append("/").append(infoOf(unitOf(dose.perSize)).one);
  if (dose.perTime != PerTime::none) text.append("/").append(infoOf(unitOf(dose.perTime)).one);
  return text;
}

std::string printed(const Strength& strength) {
  return printed(strength.amount).append(" in ").append(printed(strength.in));
}

std::string filed(const Quantity& quantity, int significant) {
  return show(quantity.value, Grouping::none, significant).marked().append(" ").append(idOf(quantity.unit));
}

}  // namespace wardchalk
