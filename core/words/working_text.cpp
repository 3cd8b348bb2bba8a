#include "core/words/working_text.h"

#include <array>

#include "core/unit/print.h"
#include "core/words/outline.h"
#include "core/words/phrasebook.h"
#include "core/words/step_parts.h"
#include "core/words/step_words.h"
#include "core/words/text_block.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

constexpr std::size_t pageWidth = 96;
constexpr std::string_view indent = "    ";

/// "0.70 ~m²~a": the number, and each unit plain or struck.
std::string termText(const Term& term, const Product& product, int factor, bool over) {
  std::string units;
  for (const UnitMark& mark : unitMarks(term, product, factor, over)) {
    units.append(units.empty() ? "" : "·");
    units.append(mark.pair ? "~" + mark.text + "~" + letterOf(*mark.pair) : mark.text);
  }
  return units.empty() ? valueText(term) : valueText(term) + " " + units;
}

TextBlock factorBlock(const Factor& factor, const Product& product, int index) {
  const std::string over = termText(factor.over, product, index, true);
  if (factor.under.isPlainOne()) return TextBlock(over);
  return TextBlock::fraction(over, termText(factor.under, product, index, false));
}

void writeLines(std::string& out, const TextBlock& block) {
  for (const std::string& line : block.lines()) {
    std::string text = std::string(indent) + line;
    while (text.ends_with(' ')) text.pop_back();
    out.append(text).append("\n");
  }
}

/// Factors side by side, broken before a factor that would pass the edge of the page.
void writeChain(std::string& out, const Chain& chain, const Product& product, const std::string& result) {
  TextBlock row(chain.rooted ? "√( " : "");
  for (std::size_t i = 0; i < chain.factors.size(); ++i) {
    TextBlock piece(i == 0 ? "" : " × ");
    piece.append(factorBlock(chain.factors[i], product, static_cast<int>(i)));
    if (row.width() > 0 && row.width() + piece.width() > pageWidth) {
      writeLines(out, row);
      row = TextBlock("");
    }
    row.append(piece);
  }
  if (chain.rooted) row.append(TextBlock(" )"));
  if (row.width() + columns(result) > pageWidth) {
    writeLines(out, row);
    row = TextBlock(" ");
  }
  row.append(TextBlock(result));
  writeLines(out, row);
}

/// " = 84 mg in one dose"; a root shows what it is taken of and what it came to before it was rounded.
std::string resultText(const Step& step) {
  constexpr std::array<std::string_view, 3> signs = {" = ", " ≈ ", ", rounded to "};
  std::string text;
  for (const ChainOutcome& outcome : outcomesOf(step))
    text.append(signs[static_cast<std::size_t>(outcome.sign)])
        .append(outcome.rooted ? "√" : "")
        .append(outcome.text);
  return text;
}

std::string formulaLine(const SurfaceByFormula& formula) {
  const auto power = [](const Term& term, const Number& exponent) {
    return "(" + valueText(term) + " " + unitsText(term.units, Spelling::printed) + ")^" +
           exactText(exponent);
  };
  return exactText(formula.factor.value) + " × " + power(formula.height, formula.heightPower) + " × " +
         power(formula.weight, formula.weightPower);
}

void writeSideChain(std::string& out, const Side& side) {
  if (!side.chain) return;
  const std::string result = sideText(side);
  const bool exact = isShownExactly(side);  // "=" stands only where it is exact
  out.append(indent).append(chainLine(*side.chain)).append(exact ? " = " : " ").append(result).append("\n");
}

void writeComparison(std::string& out, const Comparison& comparison) {
  writeSideChain(out, comparison.left);
  writeSideChain(out, comparison.right);
  const int significant = digitsApart(comparison.left.term.value, comparison.right.term.value);
  const std::string truth = say(comparison.holds ? PhraseId::truth_true : PhraseId::truth_false);
  const std::string sign = relationSign(comparison);
  out.append(indent).append(sideText(comparison.left, significant)).append(" ");
  out.append(sign).append(sign.empty() ? "" : " ").append(sideText(comparison.right, significant));
  out.append("    ").append(truth).append("\n");
}

void writeBody(std::string& out, const Step& step) {
  for (const Sum& sum : step.sums) out.append(indent).append(sumLine(sum)).append("\n");
  if (const auto* solved = std::get_if<Solved>(&step.body)) {
    writeChain(out, solved->chain, solved->product, resultText(step));
  } else if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body)) {
    out.append(indent).append(formulaLine(*formula)).append(resultText(step)).append("\n");
  } else if (const auto* comparison = std::get_if<Comparison>(&step.body)) {
    writeComparison(out, *comparison);
  } else {
    out.append(wrapped(measuringLine(std::get<Measuring>(step.body)), pageWidth, indent)).append("\n");
  }
}

/// A line of the outline as a terminal shows it.
void writeLine(std::string& out, const OutlineLine& line) {
  using Kind = OutlineLine::Kind;
  switch (line.kind) {
    case Kind::line:
      out.append(wrapped(line.text, pageWidth, ""));
      break;
    case Kind::heading:
      out.append(line.text);
      break;
    case Kind::question:
      out.append(wrapped(line.text, pageWidth, "  [ ] ", "      "));
      break;
    case Kind::settled:
      out.append(wrapped(line.text, pageWidth, "  [x] ", "      "));
      break;
    case Kind::note:
      out.append(wrapped(line.text, pageWidth, "  - ", "    "));
      break;
    case Kind::gap:
      break;
  }
  out.append("\n");
}

bool hasCancellation(const Worksheet& sheet) {
  for (const Step& step : sheet.steps)
    if (const auto* solved = std::get_if<Solved>(&step.body); solved && !solved->product.pairs.empty())
      return true;
  return false;
}

}  // namespace

std::string stepText(const Step& step, int number, const Worksheet& sheet) {
  std::string heading = std::to_string(number);
  heading.insert(0, heading.size() < 2 ? 2 - heading.size() : 0, ' ');
  std::string out = heading + "  " + question(step, sheet);
  const std::string looking = lookingFor(step);
  if (!looking.empty()) out.append("  (").append(looking).append(")");
  out.append("\n");
  writeBody(out, step);
  const std::string why = reason(step, sheet);
  if (!why.empty()) out.append(wrapped(why, pageWidth, indent)).append("\n");
  return out;
}

std::string workingText(const Shown& shown) {
  const Worksheet& sheet = shown.sheet();
  std::string out;
  for (const OutlineLine& line : outlineBefore(shown)) writeLine(out, line);
  if (!sheet.steps.empty()) out.append(say(PhraseId::heading_working)).append("\n");
  if (hasCancellation(sheet)) out.append(wrapped(say(PhraseId::legend_struck), pageWidth, "")).append("\n");
  int number = 1;
  for (const Step& step : sheet.steps) out.append("\n").append(stepText(step, number++, sheet));
  out.append("\n");
  for (const OutlineLine& line : outlineAfter(sheet)) writeLine(out, line);
  return out;
}

}  // namespace wardchalk
