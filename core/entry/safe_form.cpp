#include "core/entry/safe_form.h"

#include "core/number/decimal_text.h"

namespace wardchalk {

std::string safeForm(const Quantity& quantity) {
  return exactText(quantity.value).append(" ").append(idOf(quantity.unit));
}

std::string safeForm(const MixedQuantity& mixed) {
  std::string text;
  for (const Quantity& part : mixed.parts) text.append(text.empty() ? "" : " ").append(safeForm(part));
  return text;
}

std::string safeForm(const DoseAmount& dose) {
  std::string text = safeForm(dose.amount);
  if (dose.perSize != PerSize::none) text.append("/").append(idOf(unitOf(dose.perSize)));
  if (dose.perTime != PerTime::none) text.append("/").append(idOf(unitOf(dose.perTime)));
  return text;
}

std::string safeForm(const Strength& strength) {
  std::string text = safeForm(strength.amount).append("/");
  if (strength.in.value == Number(1)) return text.append(idOf(strength.in.unit));
  return text.append(safeForm(strength.in));
}

}  // namespace wardchalk
