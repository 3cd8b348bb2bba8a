#include "ui/board/turned_view.h"

#include <algorithm>
#include <functional>

#include "core/words/phrasebook.h"
#include "core/words/spoken.h"
#include "core/words/unit_words.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

using InWords = std::function<std::string(const Units&)>;

/// What is left of the units, and whether they are what was looked for.
struct LeftOver {
  Units units;
  bool underRoot = false;  ///< no root can be taken of them
  bool wanted = false;
};

/// Equal units side by side, so that they are written as a power.
UnitProduct grouped(const UnitProduct& units) {
  UnitProduct all;
  for (const Unit unit : units) {
    if (std::ranges::find(all, unit) != all.end()) continue;
    for (auto i = std::ranges::count(units, unit); i > 0; --i) all.push_back(unit);
  }
  return all;
}

LeftOver leftOf(const StepView& view) {
  const auto& solved = std::get<Solved>(view.step.body);
  const Units left{grouped(solved.product.left.over), grouped(solved.product.left.under)};
  const auto root = solved.chain.rooted ? rootOf(left) : std::optional<Units>(left);
  if (!root) return {left, true, false};
  return {*root, false, sameUnits(*root, view.step.lookingFor)};
}

std::string said(const LeftOver& left, const InWords& words) {
  if (left.units.over.empty() && left.units.under.empty()) return say(PhraseId::board_noUnit);
  const std::string units = words(left.units);
  return left.underRoot ? say(PhraseId::board_underTheRoot, {{"units", units}}) : units;
}

std::string sentenceOf(const StepView& view, const InWords& words) {
  const LeftOver left = leftOf(view);
  const std::string wanted = words(view.step.lookingFor);
  if (left.wanted) return say(PhraseId::board_leftOverSame, {{"units", wanted}});
  if (left.units == Units{}) return say(PhraseId::board_leftOverNone, {{"wanted", wanted}});
  return say(PhraseId::board_leftOver, {{"units", said(left, words)}, {"wanted", wanted}});
}

std::string printed(const Units& units) { return unitsText(units, Spelling::printed); }

}  // namespace

StepView turnedView(const StepView& view, const std::set<int>& turned) {
  StepView other = view;
  auto& solved = std::get<Solved>(other.step.body);
  for (const int factor : turned) {
    Factor& one = solved.chain.factors[static_cast<std::size_t>(factor)];
    one = one.turned();
  }
  solved.product = cancel(solved.chain);
  solved.result = Number();
  for (QString* answer :
       {&other.product, &other.underRoot, &other.conclusion, &other.rounding, &other.sentence})
    answer->clear();
  other.leftOver = held(said(leftOf(other), printed));
  return other;
}

QString leftOverSentence(const StepView& turned) { return fromCore(sentenceOf(turned, printed)); }

QString leftOverSpoken(const StepView& turned) {
  const auto inWords = [&](const Units& units) { return spokenUnits(units); };
  return fromCore(sentenceOf(turned, inWords));
}

int factorsOf(const StepView& view) {
  const auto* solved = std::get_if<Solved>(&view.step.body);
  return solved ? static_cast<int>(solved->chain.factors.size()) : 0;
}

}  // namespace wardchalk::ui
