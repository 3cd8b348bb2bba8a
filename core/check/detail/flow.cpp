#include "core/check/detail/flow.h"

namespace wardchalk::detail {

namespace {

/// The nearer of the two settings around the flow that is not zero and keeps every check.
std::optional<Number> settingFor(const Number& exact, int decimals, const Keeps& keeps) {
  const Number step = Number::powerOfTen(-decimals);
  const Number below = (exact / step).floor() * step;
  const Number above = below == exact ? below : below + step;
  const bool upFirst = above - exact <= exact - below;  // half up
  for (const Number& candidate : {upFirst ? above : below, upFirst ? below : above})
    if (!candidate.isZero() && keeps(candidate / exact)) return candidate;
  return std::nullopt;
}

void askAboutRounding(Notebook& notes, Flow& flow, const Number& shown, Unit under) {
  const auto perTime = [&](const Number& value) { return QuantityPer{{value, flow.exact.unit}, {under}}; };
  const Number change = (shown - flow.exact.value).absolute() * Number(100) / flow.exact.value;
  flow.percentChange = change;
  if (flow.measured && change <= notes.rules.askRoundingPercent) return;
  notes.tell(FindingCode::roundingChangesRate, path::infusionOver,
             {{"exact", perTime(flow.exact.value)},
              {"measured", flow.measured ? Stated(perTime(shown)) : Stated()},
              {"percent", PlainPercent{change}}});
}

}  // namespace

std::optional<Running> flowOf(Notebook& notes, StepId id, Chain chain, const Units& wanted, int decimals,
                              const Keeps& keeps) {
  std::optional<Solution> solution = notes.found(solve(chain, wanted));
  std::optional<Found> exact = solution ? notes.found(foundBy(*solution, Origin::step(id))) : std::nullopt;
  if (!exact) return std::nullopt;
  Running running{{exact->amount, settingFor(exact->value(), decimals, keeps), {}}, std::nullopt};
  const Number shown = running.flow.measured.value_or(exact->value());
  Step step{id, wanted, Solved{std::move(chain), std::move(solution->product), shown, -1}, {}, {}};
  if (shown != exact->value()) step.rounding = Rounding{"rate_decimals", decimals};
  notes.in(Section::amount).push_back(std::move(step));
  askAboutRounding(notes, running.flow, shown, exact->under.front());
  if (running.flow.measured) running.set = Found({shown, exact->amount.unit}, exact->under, exact->origin);
  return running;
}

}  // namespace wardchalk::detail
