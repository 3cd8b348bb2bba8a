#include "core/practice/problem/amount_line.h"

namespace wardchalk {

namespace {

std::optional<Unit> measuredIn(const Stock& stock) {
  if (!stock.kind) return std::nullopt;
  if (*stock.kind != StockKind::solid) return Unit::mL;
  return stock.strength ? std::optional(stock.strength->in.unit) : std::nullopt;
}

}  // namespace

bool isAmountLine(StepId step) {
  return step == StepId::strength || step == StepId::give || step == StepId::rate || step == StepId::drops;
}

std::optional<Units> amountUnits(StepId step, const Case& given) {
  if (step == StepId::strength && given.stock.content) return Units{{given.stock.content->unit}, {Unit::mL}};
  if (step == StepId::rate) return Units{{Unit::mL}, {Unit::h}};
  if (step == StepId::drops) return Units{{Unit::drop}, {Unit::min}};
  const auto unit = step == StepId::give ? measuredIn(given.stock) : std::nullopt;
  return unit ? std::optional(Units{{*unit}, {}}) : std::nullopt;
}

}  // namespace wardchalk
