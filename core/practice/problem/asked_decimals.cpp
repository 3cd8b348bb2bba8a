#include "core/practice/problem/asked_decimals.h"

#include <algorithm>

#include "core/practice/problem/amount_line.h"
#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

constexpr int usualSizeDecimals = 2;
constexpr int heightDecimals = 1;
constexpr int strengthDecimals = 2;
constexpr int tellingDoseDigits = 3;

/// So many decimals show three digits of a number as large as the ordered dose.
int doseDecimals(const Worksheet& key, Unit unit) {
  const auto& ordered = key.given.order.dose;
  const auto amount = ordered ? converted(ordered->amount.value, ordered->amount.unit, unit) : std::nullopt;
  if (!amount) return usualSizeDecimals;
  int whole = 0;
  for (Number rest = *amount; rest >= Number(1); rest = rest / Number(10)) ++whole;
  return std::max(0, tellingDoseDigits - whole);
}

bool isCounted(StepId step, const Worksheet& key) {
  const auto& stock = key.given.stock;
  return (step == StepId::give && stock.kind == StockKind::solid) || step == StepId::device;
}

}  // namespace

std::optional<int> askedDecimals(StepId step, const Worksheet& key) {
  const HouseRules& rules = key.rules;
  if (isCounted(step, key)) return std::nullopt;
  switch (step) {
    case StepId::weight:
      return rules.kilogramDecimals.value_or(usualSizeDecimals);
    case StepId::bsa:
      return rules.bsaDecimals.value_or(usualSizeDecimals);
    case StepId::height:
      return heightDecimals;
    case StepId::strength:
      return strengthDecimals;
    case StepId::give:
    case StepId::volume:
      return rules.volumeDecimalsFrom1Ml;
    case StepId::rate:
      return rules.rateDecimals;
    case StepId::drops:
      return 0;
    default:
      break;
  }
  const Step* asked = key.step(step);
  if (!asked || asked->lookingFor.over.size() != 1 || !measuresDrug(asked->lookingFor.over.front()))
    return std::nullopt;
  return doseDecimals(key, asked->lookingFor.over.front());
}

std::optional<int> askedDecimalsBelowOne(StepId step, const Worksheet& key) {
  const HouseRules& rules = key.rules;
  const bool differs = rules.volumeDecimalsBelow1Ml != rules.volumeDecimalsFrom1Ml;
  if (step != StepId::give || isCounted(step, key) || !differs) return std::nullopt;
  return rules.volumeDecimalsBelow1Ml;
}

}  // namespace wardchalk
