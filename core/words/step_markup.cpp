#include "core/words/step_markup.h"

#include "core/number/decimal_text.h"
#include "core/words/notation.h"
#include "core/words/step_parts.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

class StepWriter {
 public:
  StepWriter(const Step& step, const Notation& notation) : step_(step), notation_(notation) {}

  std::vector<std::string> lines() {
    for (const Sum& sum : step_.sums) lines_.push_back(notation_.words(sumLine(sum)));
    if (const auto* solved = std::get_if<Solved>(&step_.body))
      lines_.push_back(chain(solved->chain, solved->product) + outcomes());
    else if (const auto* surface = std::get_if<SurfaceByFormula>(&step_.body))
      lines_.push_back(formula(*surface) + outcomes());
    else if (const auto* comparison = std::get_if<Comparison>(&step_.body))
      addComparison(*comparison);
    else
      lines_.push_back(notation_.words(measuringLine(std::get<Measuring>(step_.body))));
    return std::move(lines_);
  }

 private:
  /// "80 mg in one dose": a number and the words after it.
  std::string amount(std::string_view text) const {
    const std::size_t end = text.find_first_not_of("0123456789.,");
    if (end == 0 || end == std::string_view::npos || text[end] != ' ') return notation_.words(text);
    return notation_.number(text.substr(0, end)) + notation_.space(false) +
           notation_.words(text.substr(end + 1));
  }

  std::string term(const Term& term, const Product& product, int factor, bool over) const {
    std::string out = notation_.number(valueText(term));
    bool first = true;
    for (const UnitMark& mark : unitMarks(term, product, factor, over)) {
      out += first ? notation_.space(false) : notation_.sign("·");
      out += mark.pair ? notation_.struck(mark.text, letterOf(*mark.pair)) : notation_.words(mark.text);
      first = false;
    }
    return out;
  }

  std::string chain(const Chain& chain, const Product& product) const {
    std::string out;
    for (std::size_t i = 0; i < chain.factors.size(); ++i) {
      const Factor& factor = chain.factors[i];
      const int at = static_cast<int>(i);
      const std::string over = term(factor.over, product, at, true);
      if (i > 0) out += notation_.sign("×");
      out +=
          factor.under.isPlainOne() ? over : notation_.fraction(over, term(factor.under, product, at, false));
    }
    return chain.rooted ? notation_.root(out) : out;
  }

  std::string outcomes() const {
    std::string out;
    for (const ChainOutcome& outcome : outcomesOf(step_)) {
      const bool equal = outcome.sign == ChainOutcome::Sign::equals;
      out += notation_.sign(equal ? "=" : outcome.sign == ChainOutcome::Sign::about ? "≈" : "→");
      out += outcome.rooted ? notation_.root(amount(outcome.text)) : amount(outcome.text);
    }
    return out;
  }

  std::string formula(const SurfaceByFormula& surface) const {
    const auto raised = [&](const Term& base, const Number& exponent) {
      return notation_.power(notation_.sign("(") + term(base, {}, 0, true) + notation_.sign(")"),
                             exactText(exponent));
    };
    return notation_.number(exactText(surface.factor.value)) + notation_.sign("×") +
           raised(surface.height, surface.heightPower) + notation_.sign("×") +
           raised(surface.weight, surface.weightPower);
  }

  void addSideChain(const Side& side) {
    if (!side.chain) return;
    std::string_view result;
    const std::string text = sideText(side);
    result = text;
    const bool about = !isShownExactly(side);
    if (about) result.remove_prefix(aboutSign.size());
    lines_.push_back(chain(*side.chain, cancel(*side.chain)) + notation_.sign(about ? "≈" : "=") +
                     amount(result));
  }

  void addComparison(const Comparison& comparison) {
    addSideChain(comparison.left);
    addSideChain(comparison.right);
    const int significant = digitsApart(comparison.left.term.value, comparison.right.term.value);
    const std::string relation = relationSign(comparison);
    const bool isSign = relation == "≤" || relation == "≥";
    std::string out = amount(sideText(comparison.left, significant));
    if (isSign) out += notation_.sign(relation);
    if (!isSign) out += notation_.space(false) + notation_.words(relation) + notation_.space(false);
    out += amount(sideText(comparison.right, significant));
    lines_.push_back(out + notation_.space(true) + notation_.words(conclusion(step_)));
  }

  const Step& step_;
  const Notation& notation_;
  std::vector<std::string> lines_;
};

}  // namespace

std::string stepMarkup(const Step& step, const Worksheet& sheet, Markup markup) {
  const Notation& notation = notationOf(markup);
  return notation.display(StepWriter(step, notation).lines(), sentence(step, sheet));
}

}  // namespace wardchalk
