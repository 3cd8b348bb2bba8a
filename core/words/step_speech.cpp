#include "core/words/spoken.h"

#include <algorithm>

#include "core/unit/print.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

bool isOne(const Number& value) { return value == Number(1); }

}  // namespace

std::string spokenTerm(const Term& term) {
  std::string text = valueText(term.value, term.fixedDecimals);
  if (text.starts_with("≈")) text = "about " + text.substr(std::string("≈").size());
  if (!term.units.empty()) text.append(" ").append(spoken(term.units, !isOne(term.value)));
  return text;
}

namespace {

/// " per square metre per dose".
std::string spokenPer(const std::vector<Unit>& units, const Phrasebook& book) {
  std::string text;
  for (const Unit unit : units) text.append(say(book, PhraseId::say_per)).append(infoOf(unit).word);
  return text;
}

}  // namespace

std::string spokenFactor(const Factor& factor, const Phrasebook& book) {
  std::string over = spokenTerm(factor.over);
  if (factor.under.isPlainOne()) return over;
  if (!isOne(factor.under.value))
    return say(book, PhraseId::say_over, {{"over", over}, {"under", spokenTerm(factor.under)}});
  return over + spokenPer(factor.under.units, book);
}

namespace {

std::string spokenChain(const Chain& chain, const Phrasebook& book) {
  std::string text;
  for (const Factor& factor : chain.factors)
    text.append(text.empty() ? std::string() : say(book, PhraseId::say_times))
        .append(spokenFactor(factor, book));
  return chain.rooted ? say(book, PhraseId::say_root, {{"chain", text}}) : text;
}

/// "square metres and milligrams": each unit once.
std::string cancelledUnits(const std::vector<Cancellation>& pairs) {
  std::vector<Unit> units;
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
bool isInParts(const Number& value, const std::vector<Unit>& units) {
  return units.size() == 1 && dimensionOf(units.front()) == Dimension::tablets &&
         (value * Number(4)).isWhole();
}

}  // namespace

std::string spokenAmount(const Number& value, int fixedDecimals, const Units& units, const Phrasebook& book) {
  const std::string amount = isInParts(value, units.over)
                                 ? givenText({value, units.over.front()})
                                 : spokenTerm({value, units.over, {}, fixedDecimals});
  if (units.under == std::vector{Unit::dose}) return say(book, PhraseId::in_oneDose, {{"amount", amount}});
  if (units.under == std::vector{Unit::day}) return say(book, PhraseId::in_24H, {{"amount", amount}});
  return amount + spokenPer(units.under, book);
}

std::string spokenUnits(const Units& units, const Phrasebook& book) {
  return spoken(units.over, true) + spokenPer(units.under, book);
}

namespace {

std::string spokenSolved(const Step& step, const Solved& solved, const Phrasebook& book) {
  std::string result = spokenAmount(solved.result, solved.fixedDecimals, step.lookingFor, book);
  if (step.rounding && equalsSign(step) != "=") {
    const ShownNumber exact = show(solved.product.exact, Grouping::commas);
    const std::string unrounded = solved.chain.rooted ? unroundedText(step) : exact.text;
    const bool about = solved.chain.rooted || !exact.exact;
    result = say(book, PhraseId::say_rounded,
                 {{"unrounded", about ? say(book, PhraseId::say_about, {{"amount", unrounded}}) : unrounded},
                  {"result", result}});
  }
  const std::string chain = spokenChain(solved.chain, book);
  if (solved.product.pairs.empty())
    return say(book, PhraseId::say_result, {{"chain", chain}, {"result", result}});
  const std::string cancel =
      say(book, PhraseId::say_cancel, {{"units", cancelledUnits(solved.product.pairs)}});
  return say(book, PhraseId::say_resultCancel, {{"chain", chain}, {"cancel", cancel}, {"result", result}});
}

std::string spokenFormula(const Step& step, const SurfaceByFormula& formula, const Phrasebook& book) {
  const auto power = [&](const Term& base, const Number& exponent) {
    return say(book, PhraseId::say_power, {{"base", spokenTerm(base)}, {"power", exactText(exponent)}});
  };
  const std::string times = say(book, PhraseId::say_times);
  const std::string chain = exactText(formula.factor.value) + times +
                            power(formula.height, formula.heightPower) + times +
                            power(formula.weight, formula.weightPower);
  return say(book, PhraseId::say_result,
             {{"chain", chain},
              {"result", spokenAmount(formula.result, formula.fixedDecimals, step.lookingFor, book)}});
}

}  // namespace

std::string spokenSide(const Side& side, int significant, const Phrasebook& book) {
  std::string band = bandInWords(side.text, book);
  if (!band.empty()) return band;
  if (!side.text.empty()) return side.text;
  const ShownNumber shown = show(side.term.value, Grouping::commas, significant);
  return (shown.exact ? "" : "about ") + shown.text + " " + spoken(side.term.units, !isOne(side.term.value));
}

std::string spokenClaim(const Comparison& comparison, const std::string& truth, const Phrasebook& book) {
  const PhraseId phrase = comparison.relation == Relation::atMost    ? PhraseId::say_atMost
                          : comparison.relation == Relation::atLeast ? PhraseId::say_atLeast
                          : comparison.relation == Relation::inside  ? PhraseId::say_inside
                                                                     : PhraseId::say_same;
  const int significant = digitsApart(comparison.left.term.value, comparison.right.term.value);
  return say(book, phrase,
             {{"left", spokenSide(comparison.left, significant, book)},
              {"right", spokenSide(comparison.right, significant, book)},
              {"truth", truth}});
}

namespace {

std::string spokenComparison(const Comparison& comparison, const Phrasebook& book) {
  return spokenClaim(comparison, say(book, comparison.holds ? PhraseId::truth_true : PhraseId::truth_false),
                     book);
}

std::string body(const Step& step, const Phrasebook& book) {
  if (const auto* solved = std::get_if<Solved>(&step.body)) return spokenSolved(step, *solved, book);
  if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body))
    return spokenFormula(step, *formula, book);
  if (const auto* comparison = std::get_if<Comparison>(&step.body))
    return spokenComparison(*comparison, book);
  std::string line = measuringLine(std::get<Measuring>(step.body), book);
  if (line.ends_with('.')) line.pop_back();
  return line;
}

}  // namespace

std::string sentence(const Step& step, const Worksheet& sheet, const Phrasebook& book) {
  std::string text = body(step, book);
  for (const Sum& sum : step.sums) text.insert(0, sumLine(sum) + "; ");
  return say(book, PhraseId::say_step, {{"question", question(step, sheet, book)}, {"sentence", text}});
}

}  // namespace wardchalk
