#include "core/words/stated_words.h"

#include <array>

#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/given_words.h"
#include "core/words/phrasebook.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

constexpr std::array<std::string_view, 4> edgeSigns = {"≥ ", "> ", "< ", "≤ "};
constexpr std::array edgePhrases = {PhraseId::band_from, PhraseId::band_over, PhraseId::band_below,
                                    PhraseId::band_upTo};

/// What is stated, one kind after the other.
struct StatedPrinter {
  std::string operator()(std::monostate /*nothing*/) const { return {}; }
  std::string operator()(const Quantity& quantity) const { return printed(quantity); }
  std::string operator()(const QuantityPer& per) const {
    std::string text = printed(per.amount, Grouping::commas, per.significant);
    for (const Unit unit : per.under) text.append("/").append(idOf(unit));
    return text;
  }
  std::string operator()(const FixedQuantity& fixed) const {
    return fixedText(fixed.amount.value, fixed.decimals)
        .append(" ")
        .append(signFor(fixed.amount.unit, fixed.amount.value));
  }
  std::string operator()(const MixedQuantity& mixed) const { return printed(mixed); }
  std::string operator()(const StatedBand& band) const {
    std::string text;
    for (const BandEdge& edge : band.edges)
      text.append(text.empty() ? "" : ", ")
          .append(edgeSigns[static_cast<std::size_t>(edge.kind)])
          .append(printed(edge.at));
    return text;
  }
  std::string operator()(const StatedSize& size) const {
    std::string text;
    if (size.weight) text = printed(*size.weight);
    if (size.height) text.append(text.empty() ? "" : ", ").append(printed(*size.height));
    return text;
  }
  std::string operator()(const StatedName& name) const { return name.text; }
  std::string operator()(const Schedule& schedule) const { return scheduleWords(schedule); }
  std::string operator()(Route route) const { return std::string(idOf(route)); }
};

/// An argument that is no plain quantity.
struct ArgumentPrinter {
  std::string operator()(const Stated& stated) const { return statedText(stated); }
  std::string operator()(const Number& number) const { return show(number, Grouping::commas).marked(); }
  std::string operator()(const Percent& percent) const { return percentText(percent.value, percent.of); }
  std::string operator()(const Excess& excess) const { return excessText(excess.value, excess.limit); }
  std::string operator()(const PlainPercent& plain) const { return plainPercent(plain.percent); }
  std::string operator()(const FixedNumber& fixed) const { return fixedText(fixed.value, fixed.decimals); }
  std::string operator()(Unit unit) const { return unitsText({unit}, Spelling::printed); }
  std::string operator()(const DoseAmount& dose) const { return printed(dose); }
  std::string operator()(const Strength& strength) const { return printed(strength); }
  std::string operator()(SizeSlip slip) const { return std::string(idOf(slip)); }
  std::string operator()(Slip slip) const { return std::string(idOf(slip)); }
  std::string operator()(ArgumentWord word) const { return std::string(idOf(word)); }
  std::string operator()(const Told& told) const { return told.text; }
};

const Quantity* plainQuantity(const Argument& argument) {
  const auto* stated = std::get_if<Stated>(&argument.value);
  return stated ? std::get_if<Quantity>(stated) : nullptr;
}

}  // namespace

std::string statedText(const Stated& stated) { return std::visit(StatedPrinter{}, stated); }

std::string filedStated(const Stated& stated) {
  if (const auto* name = std::get_if<StatedName>(&stated)) return name->text;
  if (const auto* schedule = std::get_if<Schedule>(&stated)) return schedule->text;
  return withoutThousands(statedText(stated));
}

std::string unitText(const QuantityPer& quantity) {
  std::string text(signFor(quantity.amount.unit, quantity.amount.value));
  for (const Unit unit : quantity.under) text.append("/").append(idOf(unit));
  return text;
}

std::string bandInWords(const StatedBand& band) {
  std::string text;
  for (const BandEdge& edge : band.edges)
    text.append(text.empty() ? "" : ", ")
        .append(say(edgePhrases[static_cast<std::size_t>(edge.kind)], {{"edge", printed(edge.at)}}));
  return text;
}

std::string argumentText(const Argument& argument) {
  if (const Quantity* quantity = plainQuantity(argument)) return givenText(*quantity, argument.significant);
  return std::visit(ArgumentPrinter{}, argument.value);
}

std::string filedArgument(const Argument& argument) {
  if (const Quantity* quantity = plainQuantity(argument)) return filed(*quantity, argument.significant);
  if (const auto* number = std::get_if<Number>(&argument.value)) return exactText(*number);
  if (const auto* stated = std::get_if<Stated>(&argument.value)) return filedStated(*stated);
  return withoutThousands(argumentText(argument));
}

}  // namespace wardchalk
