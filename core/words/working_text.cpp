#include "core/words/working_text.h"

#include <array>

#include "core/unit/print.h"
#include "core/words/amount_words.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "core/words/text_block.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

constexpr std::size_t pageWidth = 96;
constexpr std::string_view indent = "    ";

std::string letterOf(std::size_t pair) {
  return pair < 26 ? std::string(1, static_cast<char>('a' + pair)) : std::to_string(pair);
}

/// The pair that strikes this use of a unit, if one does.
std::optional<std::size_t> pairAt(const Product& product, const Place& place) {
  for (std::size_t i = 0; i < product.pairs.size(); ++i)
    if (product.pairs[i].above == place || product.pairs[i].below == place) return i;
  return std::nullopt;
}

/// "0.70 ~m²~a": the number, and each unit plain or struck.
std::string termText(const Term& term, const Product& product, int factor, bool over) {
  std::string text = valueText(term);
  std::vector<Unit> plain;
  std::string units;
  const auto add = [&](const std::string& unit) { units.append(units.empty() ? "" : "·").append(unit); };
  const auto flush = [&] {
    if (!plain.empty()) add(unitsBeside(term.value, plain));
    plain.clear();
  };
  for (std::size_t use = 0; use < term.units.size(); ++use) {
    const auto pair = pairAt(product, {factor, over, static_cast<int>(use)});
    if (!pair) {
      plain.push_back(term.units[use]);
      continue;
    }
    flush();
    add("~" + std::string(unitBeside(term, use)) + "~" + letterOf(*pair));
  }
  flush();
  if (!units.empty()) text.append(" ").append(units);
  return text;
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
std::string resultText(const Step& step, const Solved& solved, const Phrasebook& book) {
  const std::string result = conclusion(step, book);
  const std::string sign = equalsSign(step);
  if (solved.chain.rooted) {
    const ShownNumber square = show(solved.product.exact);
    const std::string root = (square.exact ? " = √" : " ≈ √") + square.text + " m⁴";
    if (sign == "=") return root + " = " + result;
    return root + " ≈ " + unroundedText(step) + " m², rounded to " + result;
  }
  constexpr std::string_view about = "≈";
  if (sign == "=" && result.starts_with(about)) return " ≈ " + result.substr(about.size());
  if (sign == "=") return " = " + result;
  const ShownNumber exact = show(solved.product.exact);
  return (exact.exact ? " = " : " ≈ ") + exact.text + ", rounded to " + result;
}

std::string formulaLine(const SurfaceByFormula& formula) {
  const auto power = [](const Term& term, const Number& exponent) {
    return "(" + valueText(term) + " " + unitsText(term.units, Spelling::printed) + ")^" +
           exactText(exponent);
  };
  return exactText(formula.factor.value) + " × " + power(formula.height, formula.heightPower) + " × " +
         power(formula.weight, formula.weightPower);
}

void writeSideChain(std::string& out, const Side& side, const Phrasebook& book) {
  if (!side.chain) return;
  const std::string result = sideChainText(side, book);
  const bool exact = !result.starts_with("≈");  // "=" stands only where it is exact
  out.append(indent).append(chainLine(*side.chain)).append(exact ? " = " : " ").append(result).append("\n");
}

void writeComparison(std::string& out, const Comparison& comparison, const Phrasebook& book) {
  writeSideChain(out, comparison.left, book);
  writeSideChain(out, comparison.right, book);
  const int significant = digitsApart(comparison.left.term.value, comparison.right.term.value);
  const std::string truth = say(book, comparison.holds ? PhraseId::truth_true : PhraseId::truth_false);
  const std::string sign = relationSign(comparison, book);
  out.append(indent).append(sideText(comparison.left, significant)).append(" ");
  out.append(sign).append(sign.empty() ? "" : " ").append(sideText(comparison.right, significant));
  out.append("    ").append(truth).append("\n");
}

void writeBody(std::string& out, const Step& step, const Phrasebook& book) {
  for (const Sum& sum : step.sums) out.append(indent).append(sumLine(sum)).append("\n");
  if (const auto* solved = std::get_if<Solved>(&step.body)) {
    writeChain(out, solved->chain, solved->product, resultText(step, *solved, book));
  } else if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body)) {
    out.append(indent)
        .append(formulaLine(*formula))
        .append(" ≈ ")
        .append(unroundedText(step))
        .append(" m², rounded to ");
    out.append(conclusion(step, book)).append("\n");
  } else if (const auto* comparison = std::get_if<Comparison>(&step.body)) {
    writeComparison(out, *comparison, book);
  } else {
    out.append(wrapped(measuringLine(std::get<Measuring>(step.body), book), pageWidth, indent)).append("\n");
  }
}

void writeLine(std::string& out, const std::string& line) {
  if (!line.empty()) out.append(wrapped(line, pageWidth, "")).append("\n");
}

void writeAmount(std::string& out, const Worksheet& sheet, const Phrasebook& book) {
  const AmountWords words = amountWords(sheet, book);
  if (!words.asks.empty()) {
    out.append(say(book, PhraseId::heading_questions)).append("\n");
    for (const std::string& ask : words.asks)
      out.append(wrapped(ask, pageWidth, "  [ ] ", "      ")).append("\n");
    if (!words.measure.empty()) writeLine(out, say(book, PhraseId::amount_afterAsking));
  }
  writeLine(out, words.none);
  if (words.measure.empty()) return;
  writeLine(out, words.measure + " " + words.dose);
  writeLine(out, words.when);
  writeLine(out, words.device.empty() ? words.rounding : words.device + "; " + words.rounding);
  writeLine(out, words.run);
  writeLine(out, words.label);
}

void writeNotes(std::string& out, const Worksheet& sheet, const Phrasebook& book) {
  bool first = true;
  for (const Finding* finding : findingsBeside(sheet, sheet.verdict == VerdictKind::ask)) {
    if (first) out.append(say(book, PhraseId::heading_findings)).append("\n");
    first = false;
    out.append(wrapped(sentence(*finding, book), pageWidth, "  - ", "    ")).append("\n");
  }
  if (!first) out.append("\n");
}

bool hasCancellation(const Worksheet& sheet) {
  for (const Step& step : sheet.steps)
    if (const auto* solved = std::get_if<Solved>(&step.body); solved && !solved->product.pairs.empty())
      return true;
  return false;
}

}  // namespace

std::string stepText(const Step& step, int number, const Worksheet& sheet, const Phrasebook& book) {
  std::string heading = std::to_string(number);
  heading.insert(0, heading.size() < 2 ? 2 - heading.size() : 0, ' ');
  std::string out = heading + "  " + question(step, sheet, book);
  const std::string looking = lookingFor(step, book);
  if (!looking.empty()) out.append("  (").append(looking).append(")");
  out.append("\n");
  writeBody(out, step, book);
  const std::string why = reason(step, sheet, book);
  if (!why.empty()) out.append(wrapped(why, pageWidth, indent)).append("\n");
  return out;
}

std::string workingText(const Worksheet& sheet, const Phrasebook& book) {
  std::string out;
  if (!sheet.given.title.empty()) writeLine(out, sheet.given.title + "\n");
  writeLine(out, verdictTitle(sheet, book));
  writeLine(out, verdictReason(sheet, book));
  writeLine(out, checksNotMade(sheet, book));
  out.append("\n");
  writeAmount(out, sheet, book);
  out.append("\n");
  writeNotes(out, sheet, book);
  if (!sheet.steps.empty()) out.append(say(book, PhraseId::heading_working)).append("\n");
  if (hasCancellation(sheet)) writeLine(out, say(book, PhraseId::legend_struck));
  int number = 1;
  for (const Step& step : sheet.steps) out.append("\n").append(stepText(step, number++, sheet, book));
  out.append("\n");
  writeLine(out, say(book, PhraseId::rules_used, {{"name", sheet.rules.name}}));
  writeLine(out, say(book, PhraseId::caution));
  return out;
}

}  // namespace wardchalk
