#include "core/words/step_parts.h"

#include "core/number/decimal_text.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

using Sign = ChainOutcome::Sign;

/// The pair that strikes this use of a unit, if one does.
std::optional<std::size_t> pairAt(const Product& product, const Place& place) {
  for (std::size_t i = 0; i < product.pairs.size(); ++i)
    if (product.pairs[i].above == place || product.pairs[i].below == place) return i;
  return std::nullopt;
}

ChainOutcome shown(const ShownNumber& number, const std::string& units) {
  return {number.exact ? Sign::equals : Sign::about, units.empty() ? number.text : number.text + " " + units,
          false};
}

std::vector<ChainOutcome> rootOutcomes(const Step& step, const Solved& solved, const std::string& result) {
  ChainOutcome square = shown(show(solved.product.exact, Grouping::commas), "m⁴");
  square.rooted = true;
  if (equalsSign(step) == "=") return {square, {Sign::equals, result}};
  return {square, {Sign::about, unroundedText(step) + " m²"}, {Sign::rounded, result}};
}

std::vector<ChainOutcome> chainOutcomes(const Step& step, const Solved& solved, const std::string& result) {
  if (equalsSign(step) != "=")
    return {shown(show(solved.product.exact, Grouping::commas), {}), {Sign::rounded, result}};
  if (!concludesExactly(step)) return {{Sign::about, result.substr(aboutSign.size())}};
  return {{Sign::equals, result}};
}

}  // namespace

std::string letterOf(std::size_t pair) {
  return pair < 26 ? std::string(1, static_cast<char>('a' + pair)) : std::to_string(pair);
}

std::vector<UnitMark> unitMarks(const Term& term, const Product& product, int factor, bool over) {
  std::vector<UnitMark> marks;
  UnitProduct plain;
  const auto flush = [&] {
    if (!plain.empty()) marks.push_back({unitsBeside(term.value, plain), std::nullopt});
    plain.clear();
  };
  for (std::size_t use = 0; use < term.units.size(); ++use) {
    const auto pair = pairAt(product, {factor, over, static_cast<int>(use)});
    if (!pair) {
      plain.push_back(term.units[use]);
      continue;
    }
    flush();
    marks.push_back({std::string(unitBeside(term, use)), pair});
  }
  flush();
  return marks;
}

std::vector<ChainOutcome> outcomesOf(const Step& step) {
  if (std::holds_alternative<SurfaceByFormula>(step.body))
    return {{Sign::about, unroundedText(step) + " m²"}, {Sign::rounded, conclusion(step)}};
  const auto* solved = std::get_if<Solved>(&step.body);
  if (!solved) return {};
  const std::string result = conclusion(step);
  return solved->chain.rooted ? rootOutcomes(step, *solved, result) : chainOutcomes(step, *solved, result);
}

}  // namespace wardchalk
