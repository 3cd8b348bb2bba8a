#include "core/practice/marking/replay.h"

#include <algorithm>

#include "core/check/usable_volume.h"
#include "core/practice/lines/student_line.h"

namespace wardchalk {

namespace {

const Step* stepNamed(const Worksheet& key, std::string_view id) {
  const auto found = std::ranges::find(key.steps, id, [](const Step& step) { return idOf(step.id); });
  return found == key.steps.end() ? nullptr : &*found;
}

bool mentions(const Worksheet& key, const Chain& chain, const Origin& origin,
              std::span<const Instead> instead) {
  return std::ranges::any_of(chain.factors, [&](const Factor& factor) {
    return std::ranges::any_of(std::array{factor.over.origin, factor.under.origin}, [&](const Origin& from) {
      if (from == origin) return true;
      if (from.kind != Origin::Kind::step ||
          std::ranges::find(instead, from, &Instead::origin) != instead.end())
        return false;
      const Step* earlier = stepNamed(key, from.name);
      return earlier && restsOn(key, earlier->id, origin, instead);
    });
  });
}

const Origin& originOf(const Factor& factor) {
  return factor.over.origin.kind == Origin::Kind::none ? factor.under.origin : factor.over.origin;
}

}  // namespace

const Chain* chainOf(const Worksheet& key, StepId id) {
  const Step* step = key.step(id);
  const auto* solved = step ? std::get_if<Solved>(&step->body) : nullptr;
  return solved ? &solved->chain : nullptr;
}

bool restsOn(const Worksheet& key, StepId id, const Origin& origin, std::span<const Instead> instead) {
  const Chain* chain = chainOf(key, id);
  return chain && mentions(key, *chain, origin, instead);
}

Replay::Replay(const Worksheet& key, std::vector<Instead> instead, std::optional<StepId> last)
    : key_(key), instead_(std::move(instead)) {
  lines_.reserve(key.steps.size());
  for (const Step& step : key.steps) {
    work(step);
    if (step.id == last) break;
  }
}

const Replay::Line* Replay::line(StepId id) const {
  const auto found = std::ranges::find(lines_, id, &Line::id);
  return found == lines_.end() ? nullptr : &*found;
}

const Number* Replay::exact(StepId id) const {
  const Line* found = line(id);
  return found && found->exact ? &*found->exact : nullptr;
}

const Number* Replay::result(StepId id) const {
  const Line* found = line(id);
  return found && found->result ? &*found->result : nullptr;
}

std::optional<Replay::Sides> Replay::sides(StepId id) const {
  const Line* found = line(id);
  return found ? found->sides : std::nullopt;
}

std::optional<bool> Replay::holds(StepId id) const {
  const Line* found = line(id);
  if (!found) return std::nullopt;
  if (!found->sides) return found->wordsHold;
  const auto& [left, right] = *found->sides;
  return found->relation == Relation::atMost ? left <= right : left >= right;
}

const Number* Replay::placed(const Origin& origin) const {
  const auto found = std::ranges::find(instead_, origin, &Instead::origin);
  return found == instead_.end() ? nullptr : &found->value;
}

/// The number to be used where this origin is named, if it is another than the one that stands there.
std::optional<Number> Replay::known(const Origin& origin) const {
  if (const Number* value = placed(origin)) return *value;
  if (origin.kind != Origin::Kind::step) return std::nullopt;
  const auto found =
      std::ranges::find(lines_, origin.name.view(), [](const Line& line) { return idOf(line.id); });
  return found == lines_.end() ? std::nullopt : found->result;
}

/// An earlier result stands above the bar or, turned over, below it, by its unit; the other side is 1.
bool Replay::isTurned(const Factor& factor) const {
  const Origin& origin = originOf(factor);
  const Step* step = origin.kind == Origin::Kind::step ? stepNamed(key_, origin.name) : nullptr;
  return step ? factor.over.units != step->lookingFor.over : factor.over.isPlainOne();
}

Number Replay::factorValue(const Factor& factor) const {
  const std::optional<Number> value = known(originOf(factor));
  if (!value) return factor.over.value / factor.under.value;
  return isTurned(factor) ? Number(1) / *value : *value;
}

Chain Replay::placedIn(const Chain& chain) const {
  Chain placed = chain;
  for (Factor& factor : placed.factors) {
    const std::optional<Number> value = known(originOf(factor));
    if (!value) continue;
    Term& term = isTurned(factor) ? factor.under : factor.over;
    if (term.value != *value) term.fixedDecimals = -1;
    term.value = *value;
  }
  return placed;
}

Step Replay::shown(StepId id) const {
  Step step = *key_.step(id);
  auto* solved = std::get_if<Solved>(&step.body);
  if (!solved) return step;
  solved->chain = placedIn(solved->chain);
  solved->product = cancel(solved->chain);
  if (const Number* value = result(id)) solved->result = *value;
  return step;
}

Number Replay::valueOf(const Chain& chain) const {
  Number product(1);
  for (const Factor& factor : chain.factors) product = product * factorValue(factor);
  return product;
}

std::optional<Number> Replay::sideValue(const Side& side) const {
  if (side.chain) return valueOf(*side.chain);
  if (isStated(side.stated)) return std::nullopt;
  const std::optional<Number> value = known(side.term.origin);
  return value ? value : std::optional(side.term.value);
}

void Replay::work(const Step& step) {
  Line line{step.id, {}, {}, {}, {}, {}};
  if (const auto* solved = std::get_if<Solved>(&step.body)) {
    const Number product = valueOf(solved->chain);
    line.exact = solved->chain.rooted ? product.rootCut(endlessRootDecimals) : product;
    line.result = !step.rounding          ? *line.exact
                  : step.rounding->isUp() ? roundedUpVolume(product)
                  : solved->chain.rooted  ? product.rootRounded(step.rounding->decimals)
                                          : product.rounded(step.rounding->decimals);
  } else if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body)) {
    line.exact = formula->unrounded;
    line.result = formula->result;
  } else if (const auto* compared = std::get_if<Comparison>(&step.body)) {
    const auto left = sideValue(compared->left);
    const auto right = sideValue(compared->right);
    if (left && right)
      line.sides = Sides{*left, *right};
    else
      line.wordsHold = compared->holds;
    line.relation = compared->relation;
  }
  if (const Number* other = placed(Origin::step(step.id))) line.result = *other;
  lines_.push_back(std::move(line));
}

}  // namespace wardchalk
