#include "core/check/detail/flow.h"

namespace wardchalk::detail {

namespace {

/// The two settings around a flow; equal where it can be set itself.
struct Settings {
  Number below;
  Number above;
};

Settings settingsAround(const Number& exact, int decimals) {
  const Number step = Number::powerOfTen(-decimals);
  const Number below = (exact / step).floor() * step;
  return {below, below == exact ? below : below + step};
}

/// Sets the nearer of the two that is not zero and keeps every check.
void setFlow(Flow& flow, const Settings& around, const Keeps& keeps) {
  const Number& exact = flow.exact.value;
  const bool upFirst = around.above - exact <= exact - around.below;  // half up
  std::optional<Number> passedOver;
  for (const Number& candidate :
       {upFirst ? around.above : around.below, upFirst ? around.below : around.above}) {
    if (candidate.isZero()) continue;
    if (keeps(candidate / exact)) {
      flow.measured = candidate;
      flow.passedOver = passedOver;
      flow.percentChange = (candidate - exact).absolute() * Number(100) / exact;
      return;
    }
    passedOver = candidate;
  }
}

void askAboutSetting(Notebook& notes, const Flow& flow, const Settings& around, Unit under) {
  const auto perTime = [&](const Number& value) { return QuantityPer{{value, flow.exact.unit}, {under}}; };
  if (!flow.measured) {
    notes.tell(FindingCode::roundingChangesRate, path::infusionOver,
               {{"exact", perTime(flow.exact.value)},
                {"below", perTime(around.below)},
                {"above", perTime(around.above)}});
  } else if (flow.percentChange > notes.rules.askRoundingPercent) {
    notes.tell(FindingCode::roundingChangesRate, path::infusionOver,
               {{"exact", perTime(flow.exact.value)},
                {"measured", perTime(*flow.measured)},
                {"percent", PlainPercent{flow.percentChange}}});
  }
}

}  // namespace

std::optional<Running> flowOf(Notebook& notes, StepId id, Chain chain, const Units& wanted, int decimals,
                              const Keeps& keeps) {
  std::optional<Solution> solution = notes.found(solve(chain, wanted));
  std::optional<Found> exact = solution ? notes.found(foundBy(*solution, Origin::step(id))) : std::nullopt;
  if (!exact) return std::nullopt;
  Running running{{exact->amount, std::nullopt, {}, std::nullopt}, std::nullopt};
  const Settings around = settingsAround(exact->value(), decimals);
  setFlow(running.flow, around, keeps);
  const Number shown = running.flow.measured.value_or(exact->value());
  Step step{id, wanted, Solved{std::move(chain), std::move(solution->product), shown, -1}, {}, {}};
  if (shown != exact->value()) step.rounding = Rounding{"rate_decimals", decimals};
  notes.write(Section::amount, std::move(step));
  askAboutSetting(notes, running.flow, around, exact->under.front());
  if (running.flow.measured) running.set = Found({shown, exact->amount.unit}, exact->under, exact->origin);
  return running;
}

}  // namespace wardchalk::detail
