#include "core/record/step_file.h"

#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/stated_words.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

std::string exactValue(const Term& term) {
  return term.fixedDecimals >= 0 ? fixedText(term.value, term.fixedDecimals) : exactText(term.value);
}

void writeTerm(JsonWriter& writer, const Term& term) {
  writer.openObject().key("value").text(exactValue(term));
  writer.key("unit").text(unitsText(term.units, Spelling::filed));
  writer.member("from", term.origin.text()).closeObject();
}

void writeFactors(JsonWriter& writer, const Chain& chain) {
  writer.key("factors").openList();
  for (const Factor& factor : chain.factors) {
    writer.openObject().key("over");
    writeTerm(writer, factor.over);
    writer.key("under");
    writeTerm(writer, factor.under);
    writer.closeObject();
  }
  writer.closeList();
}

void writePlace(JsonWriter& writer, std::string_view key, const Place& place) {
  writer.key(key).openList().number(place.factor).number(place.use).closeList();
}

void writeCancelled(JsonWriter& writer, const std::vector<Cancellation>& pairs) {
  writer.key("cancelled").openList();
  for (const Cancellation& pair : pairs) {
    writer.openObject().key("unit").text(idOf(pair.unit));
    writePlace(writer, "over", pair.above);
    writePlace(writer, "under", pair.below);
    writer.closeObject();
  }
  writer.closeList();
}

std::string shownResult(const Number& result, int fixedDecimals, const Units& units) {
  const std::string value = fixedDecimals >= 0 ? fixedText(result, fixedDecimals) : show(result).marked();
  return value + " " + unitsText(units, Spelling::filed);
}

void writeResult(JsonWriter& writer, const Step& step, const Number& result, int fixedDecimals) {
  writer.key("exact")
      .text(result.rationalText())
      .key("unit")
      .text(unitsText(step.lookingFor, Spelling::filed));
  writer.key("shown").text(shownResult(result, fixedDecimals, step.lookingFor));
}

void writeRounding(JsonWriter& writer, const Step& step) {
  if (!step.rounding) return;
  writer.key("rounding").openObject().key("rule");
  writer.text(step.rounding->isUp() ? "up" : std::string("rule:").append(step.rounding->rule));
  writer.key("decimals").number(step.rounding->decimals).closeObject();
}

void writeSolved(JsonWriter& writer, const Step& step, const Solved& solved) {
  writer.key("kind").text(solved.chain.rooted ? "root" : "chain");
  writer.key("looking_for").text(unitsText(step.lookingFor, Spelling::filed));
  writeFactors(writer, solved.chain);
  writeCancelled(writer, solved.product.pairs);
  if (solved.chain.rooted) {
    writer.key("square").text(solved.product.exact.rationalText());
    writer.key("unrounded").text(fixedText(solved.product.exact.rootCut(6), 6) + "...");
  } else if (step.rounding) {
    writer.key("unrounded").text(solved.product.exact.rationalText());
  }
  writeRounding(writer, step);
  writeResult(writer, step, solved.result, solved.fixedDecimals);
}

void writeFormula(JsonWriter& writer, const Step& step, const SurfaceByFormula& formula) {
  writer.key("kind").text("formula").key("looking_for").text(unitsText(step.lookingFor, Spelling::filed));
  writer.key("name").text(formula.name).key("factor").text(exactText(formula.factor.value)).key("height");
  writeTerm(writer, formula.height);
  writer.key("height_power").text(exactText(formula.heightPower)).key("weight");
  writeTerm(writer, formula.weight);
  writer.key("weight_power").text(exactText(formula.weightPower));
  writeRounding(writer, step);
  writeResult(writer, step, formula.result, formula.fixedDecimals);
}

void writeSide(JsonWriter& writer, std::string_view key, const Side& side) {
  writer.key(key).openObject();
  if (!isStated(side.stated)) {
    writer.key("value")
        .text(exactValue(side.term))
        .key("unit")
        .text(unitsText(side.units(), Spelling::filed));
  } else {
    writer.key("text").text(filedStated(side.stated));
  }
  writer.member("from", side.term.origin.text());
  if (side.chain) writeFactors(writer, *side.chain);
  writer.closeObject();
}

std::string_view relationId(Relation relation) {
  switch (relation) {
    case Relation::atMost:
      return "<=";
    case Relation::atLeast:
      return ">=";
    case Relation::inside:
      return "inside";
    case Relation::same:
      return "=";
  }
  return {};
}

void writeComparison(JsonWriter& writer, const Comparison& comparison) {
  writer.key("kind").text("compare");
  writeSide(writer, "left", comparison.left);
  writer.key("relation").text(relationId(comparison.relation));
  writeSide(writer, "right", comparison.right);
  writer.key("holds").bare(comparison.holds ? "true" : "false");
}

void writeMeasuring(JsonWriter& writer, const Measuring& measuring) {
  writer.key("kind").text("measure").key("exact").text(measuring.exact.value.rationalText());
  writer.key("unit").text(idOf(measuring.exact.unit)).key("shown").text(filed(measuring.exact));
  writer.key("step").text(exactText(measuring.step)).key("between").openList();
  writer.text(exactText(measuring.below)).text(exactText(measuring.above)).closeList();
  if (measuring.measured) writer.key("measured").text(exactText(*measuring.measured));
  if (measuring.full) writer.key("full").text(filed(Quantity{measuring.full->holdsMl, Unit::mL}));
  writer.key("by").text(measuring.exact.unit != Unit::mL ? "parts"
                        : measuring.byDecimals           ? "decimals"
                                                         : "marks");
}

void writeStep(JsonWriter& writer, const Step& step, const Worksheet& sheet) {
  writer.openObject().key("id").text(idOf(step.id));
  if (const auto* solved = std::get_if<Solved>(&step.body))
    writeSolved(writer, step, *solved);
  else if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body))
    writeFormula(writer, step, *formula);
  else if (const auto* comparison = std::get_if<Comparison>(&step.body))
    writeComparison(writer, *comparison);
  else
    writeMeasuring(writer, std::get<Measuring>(step.body));
  if (!step.sums.empty()) {
    writer.key("sums").openList();
    for (const Sum& sum : step.sums) writer.text(sumLine(sum, Grouping::none));
    writer.closeList();
  }
  writer.key("words").text(sentence(step, sheet)).closeObject();
}

}  // namespace

void writeSteps(JsonWriter& writer, const Worksheet& sheet) {
  writer.key("steps").openList();
  for (const Step& step : sheet.steps) writeStep(writer, step, sheet);
  writer.closeList();
}

}  // namespace wardchalk
