#include "core/words/spoken.h"

#include <algorithm>

#include "core/unit/print.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "core/words/stated_words.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

bool isOne(const Number& value) { return value == Number(1); }

}  // namespace

std::string spokenTerm(const Term& term) {
  const ShownNumber shown = show(term.value, Grouping::commas);
  std::string text = term.fixedDecimals >= 0 ? valueText(term.value, term.fixedDecimals)
                     : shown.exact           ? shown.text
                                             : "about " + shown.text;
  if (!term.units.empty()) text.append(" ").append(spoken(term.units, !isOne(term.value)));
  return text;
}

namespace {

/// " per square metre per dose".
std::string spokenPer(const UnitProduct& units) {
  std::string text;
  for (const Unit unit : units) text.append(say(PhraseId::say_per)).append(infoOf(unit).word);
  return text;
}

}  // namespace

std::string spokenFactor(const Factor& factor) {
  std::string over = spokenTerm(factor.over);
  if (factor.under.isPlainOne()) return over;
  if (!isOne(factor.under.value))
    return say(PhraseId::say_over, {{"over", over}, {"under", spokenTerm(factor.under)}});
  return over + spokenPer(factor.under.units);
}

namespace {

std::string spokenChain(const Chain& chain) {
  std::string text;
  for (const Factor& factor : chain.factors)
    text.append(text.empty() ? std::string() : say(PhraseId::say_times)).append(spokenFactor(factor));
  return chain.rooted ? say(PhraseId::say_root, {{"chain", text}}) : text;
}

/// "square metres and milligrams": each unit once.
std::string cancelledUnits(const std::vector<Cancellation>& pairs) {
  UnitProduct units;
  for (const Cancellation& pair : pairs)
    if (std::find(units.begin(), units.end(), pair.unit) == units.end()) units.push_back(pair.unit);
  std::string text;
  for (std::size_t i = 0; i < units.size(); ++i) {
    if (i > 0) text.append(i + 1 == units.size() ? " and " : ", ");
    text.append(infoOf(units[i]).words);
  }
  return text;
}

/// Parts of a tablet are said as they are written: "2½ tablets".
bool isInParts(const Number& value, const UnitProduct& units) {
  return units.size() == 1 && dimensionOf(units.front()) == Dimension::tablets &&
         (value * Number(4)).isWhole();
}

}  // namespace

std::string spokenAmount(const Number& value, int fixedDecimals, const Units& units) {
  const std::string amount = isInParts(value, units.over)
                                 ? givenText({value, units.over.front()})
                                 : spokenTerm({value, units.over, {}, fixedDecimals});
  if (units.under == UnitProduct{Unit::dose}) return say(PhraseId::in_oneDose, {{"amount", amount}});
  if (units.under == UnitProduct{Unit::day}) return say(PhraseId::in_24H, {{"amount", amount}});
  return amount + spokenPer(units.under);
}

std::string spokenUnits(const Units& units) { return spoken(units.over, true) + spokenPer(units.under); }

namespace {

std::string spokenSolved(const Step& step, const Solved& solved) {
  std::string result = spokenAmount(solved.result, solved.fixedDecimals, step.lookingFor);
  if (step.rounding && equalsSign(step) != "=") {
    const ShownNumber exact = show(solved.product.exact, Grouping::commas);
    const std::string unrounded = solved.chain.rooted ? unroundedText(step) : exact.text;
    const bool about = solved.chain.rooted || !exact.exact;
    result = say(PhraseId::say_rounded,
                 {{"unrounded", about ? say(PhraseId::say_about, {{"amount", unrounded}}) : unrounded},
                  {"result", result}});
  }
  const std::string chain = spokenChain(solved.chain);
  if (solved.product.pairs.empty()) return say(PhraseId::say_result, {{"chain", chain}, {"result", result}});
  const std::string cancel = say(PhraseId::say_cancel, {{"units", cancelledUnits(solved.product.pairs)}});
  return say(PhraseId::say_resultCancel, {{"chain", chain}, {"cancel", cancel}, {"result", result}});
}

std::string spokenFormula(const Step& step, const SurfaceByFormula& formula) {
  const auto power = [&](const Term& base, const Number& exponent) {
    return say(PhraseId::say_power, {{"base", spokenTerm(base)}, {"power", exactText(exponent)}});
  };
  const std::string times = say(PhraseId::say_times);
  const std::string chain = exactText(formula.factor.value) + times +
                            power(formula.height, formula.heightPower) + times +
                            power(formula.weight, formula.weightPower);
  return say(
      PhraseId::say_result,
      {{"chain", chain}, {"result", spokenAmount(formula.result, formula.fixedDecimals, step.lookingFor)}});
}

}  // namespace

std::string spokenSide(const Side& side, int significant) {
  if (const auto* band = std::get_if<StatedBand>(&side.stated)) return bandInWords(*band);
  if (isStated(side.stated)) return statedText(side.stated);
  const ShownNumber shown = show(side.term.value, Grouping::commas, significant);
  return (shown.exact ? "" : "about ") + shown.text + " " + spoken(side.term.units, !isOne(side.term.value)) +
         spokenPer(side.under);
}

std::string spokenClaim(const Comparison& comparison, const std::string& truth) {
  const PhraseId phrase = comparison.relation == Relation::atMost    ? PhraseId::say_atMost
                          : comparison.relation == Relation::atLeast ? PhraseId::say_atLeast
                          : comparison.relation == Relation::inside  ? PhraseId::say_inside
                                                                     : PhraseId::say_same;
  const int significant = digitsApart(comparison.left.term.value, comparison.right.term.value);
  return say(phrase, {{"left", spokenSide(comparison.left, significant)},
                      {"right", spokenSide(comparison.right, significant)},
                      {"truth", truth}});
}

namespace {

std::string spokenComparison(const Comparison& comparison) {
  return spokenClaim(comparison, say(comparison.holds ? PhraseId::truth_true : PhraseId::truth_false));
}

std::string body(const Step& step) {
  if (const auto* solved = std::get_if<Solved>(&step.body)) return spokenSolved(step, *solved);
  if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body)) return spokenFormula(step, *formula);
  if (const auto* comparison = std::get_if<Comparison>(&step.body)) return spokenComparison(*comparison);
  std::string line = measuringLine(std::get<Measuring>(step.body));
  if (line.ends_with('.')) line.pop_back();
  return line;
}

}  // namespace

std::string sentence(const Step& step, const Worksheet& sheet) {
  std::string text = body(step);
  for (const Sum& sum : step.sums) text.insert(0, sumLine(sum) + "; ");
  return say(PhraseId::say_step, {{"question", question(step, sheet)}, {"sentence", text}});
}

}  // namespace wardchalk
