#include "core/check/deciding_steps.h"

#include <algorithm>
#include <string_view>

namespace wardchalk {

namespace {

void addOrigin(const Term& term, std::vector<StepId>& into) {
  if (term.origin.kind != Origin::Kind::step) return;
  const auto found = std::ranges::find(stepIds, std::string_view(term.origin.name));
  if (found != stepIds.end()) into.push_back(static_cast<StepId>(found - stepIds.begin()));
}

void addOrigins(const Chain& chain, std::vector<StepId>& into) {
  for (const Factor& factor : chain.factors) {
    addOrigin(factor.over, into);
    addOrigin(factor.under, into);
  }
}

void addOrigins(const Side& side, std::vector<StepId>& into) {
  addOrigin(side.term, into);
  if (side.chain) addOrigins(*side.chain, into);
}

/// The steps that this one takes a number from.
std::vector<StepId> restsOn(const Step& step) {
  std::vector<StepId> found;
  if (const auto* solved = std::get_if<Solved>(&step.body)) addOrigins(solved->chain, found);
  if (const auto* surface = std::get_if<SurfaceByFormula>(&step.body))
    for (const Term* term : {&surface->factor, &surface->height, &surface->weight}) addOrigin(*term, found);
  if (const auto* compared = std::get_if<Comparison>(&step.body)) {
    addOrigins(compared->left, found);
    addOrigins(compared->right, found);
  }
  return found;
}

std::vector<StepId> decidingComparisons(const Worksheet& sheet) {
  std::vector<StepId> decide;
  for (const Check& check : sheet.checks)
    if (check.status == CheckStatus::outside) decide.push_back(stepOf(check.id));
  if (decide.empty() && sheet.worst) decide.push_back(stepOf(*sheet.worst));
  return decide;
}

/// Of an infusion its flow, else the amount: what somebody sets or measures.
std::vector<StepId> ends(const Worksheet& sheet) {
  std::vector<StepId> ends;
  for (const StepId flow : {StepId::rate, StepId::drops})
    if (sheet.step(flow)) ends.push_back(flow);
  if (ends.empty() && sheet.step(StepId::give)) ends.push_back(StepId::give);
  return ends;
}

}  // namespace

std::set<StepId> decidingSteps(const Worksheet& sheet) {
  std::vector<StepId> open = decidingComparisons(sheet);
  std::ranges::copy(ends(sheet), std::back_inserter(open));
  std::set<StepId> steps;
  while (!open.empty()) {
    const StepId id = open.back();
    open.pop_back();
    const Step* step = sheet.step(id);
    if (!step || !steps.insert(id).second) continue;
    std::ranges::copy(restsOn(*step), std::back_inserter(open));
  }
  if (steps.empty())
    for (const Step& step : sheet.steps) steps.insert(step.id);
  return steps;
}

}  // namespace wardchalk
