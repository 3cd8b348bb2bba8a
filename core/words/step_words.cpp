#include "core/words/step_words.h"

#include <array>

#include "core/check/judgement.h"
#include "core/medicine/paths.h"
#include "core/unit/print.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/stated_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

constexpr std::array questionPhrases = {
#define WARDCHALK_STEP(name, id) PhraseId::question_##name,
#include "core/working/step_ids.def"
#undef WARDCHALK_STEP
};

PhraseId limitQuestion(const std::optional<Limit>& limit, const Worksheet& sheet, PhraseId safe,
                       PhraseId plain, PhraseId beforeMaximum) {
  if (!callsAnythingSafe(sheet)) return plain;
  return limit && limit->setBy != SetBy::reference ? beforeMaximum : safe;
}

/// Whether the order is given less than once a day.
bool isRare(const Worksheet& sheet) {
  const auto& schedule = sheet.given.order.schedule;
  return schedule && schedule->isRepeated() && schedule->most < Number(1);
}

PhraseId questionFor(const Step& step, const Worksheet& sheet) {
  if (step.id == StepId::limitDose)
    return limitQuestion(sheet.limitDose, sheet, PhraseId::question_limitDose,
                         PhraseId::question_limitDosePlain, PhraseId::question_limitDoseBeforeMaximum);
  if (step.id == StepId::limitDay)
    return limitQuestion(sheet.limitDay, sheet, PhraseId::question_limitDay, PhraseId::question_limitDayPlain,
                         PhraseId::question_limitDayBeforeMaximum);
  if (!callsAnythingSafe(sheet)) {
    if (step.id == StepId::compareSingle) return PhraseId::question_compareSinglePlain;
    if (step.id == StepId::compareDaily) return PhraseId::question_compareDailyPlain;
    if (step.id == StepId::comparePeriod) return PhraseId::question_comparePeriodPlain;
  }
  if (step.id == StepId::orderedDay && isRare(sheet)) return PhraseId::question_orderedAnyDay;
  if (step.id == StepId::backCheck && step.lookingFor.over == UnitProduct{Unit::min})
    return PhraseId::question_backCheckTime;
  const bool solid = sheet.strength && sheet.strength->in != Unit::mL;
  if (step.id == StepId::give) {
    if (solid) return PhraseId::question_giveSolid;
    const bool powder = sheet.given.stock.kind == StockKind::powder;
    return powder ? PhraseId::question_givePowder : PhraseId::question_give;
  }
  if (step.id == StepId::device) {
    if (solid) return PhraseId::question_deviceSolid;
    const auto* measuring = std::get_if<Measuring>(&step.body);
    if (measuring && measuring->full) return PhraseId::question_devicePair;
    return measuring && measuring->syringe ? PhraseId::question_device : PhraseId::question_deviceNone;
  }
  return questionPhrases[static_cast<std::size_t>(step.id)];
}

bool usesConstant(const Chain& chain, std::string_view name) {
  for (const Factor& factor : chain.factors)
    if (factor.over.origin.kind == Origin::Kind::constant && factor.over.origin.name == name) return true;
  return false;
}

std::string surfaceReason(const Step& step, const Worksheet& sheet) {
  std::string what;
  if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body)) {
    what = say(PhraseId::reason_formula, {{"name", std::string(formula->name)}});
  } else {
    const bool household = usesConstant(std::get<Solved>(step.body).chain, "mosteller-household");
    what = say(household ? PhraseId::reason_mostellerHousehold : PhraseId::reason_mostellerMetric);
  }
  if (sheet.bsa && sheet.bsa->charted) return say(PhraseId::reason_onlyCompared, {{"what", what}});
  const int decimals = step.rounding ? step.rounding->decimals : 20;
  if (decimals == 20) return say(PhraseId::reason_allDigits, {{"what", what}});
  return say(PhraseId::reason_roundedThenUsed, {{"what", what}, {"n", std::to_string(decimals)}}, decimals);
}

std::string weightReason(const Step& step) {
  const Chain& chain = std::get<Solved>(step.body).chain;
  std::string pounds;
  if (usesConstant(chain, "lb-per-kg")) pounds = say(PhraseId::reason_poundsTrade);
  if (usesConstant(chain, "kg-per-lb")) pounds = say(PhraseId::reason_poundsExact);
  if (!step.rounding) return pounds;
  const int decimals = step.rounding->decimals;
  std::string rounded = say(PhraseId::reason_kgRounded, {{"n", std::to_string(decimals)}}, decimals);
  if (pounds.empty()) return rounded;
  return say(PhraseId::reason_both, {{"first", pounds}, {"second", rounded}});
}

/// "120 mg per m²", when the first factor is a dose per size.
std::string perSizeReason(const Step& step) {
  const Chain& chain = std::get<Solved>(step.body).chain;
  const Factor& first = chain.factors.front();
  for (const Unit unit : first.under.units)
    if (unit == Unit::kg || unit == Unit::m2)
      return say(PhraseId::reason_forEachSize,
                 {{"size", std::string(infoOf(unit).one)},
                  {"amount", valueText(first.over) + " " + unitsText(first.over.units, Spelling::printed)}});
  return {};
}

std::string doseReason(const Step& step) {
  std::string perSize = perSizeReason(step);
  if (!perSize.empty()) return perSize;
  const Units& wanted = step.lookingFor;
  const Units& start = {{}, std::get<Solved>(step.body).chain.factors.front().under.units};
  if (wanted.under == UnitProduct{Unit::dose} && start.under == UnitProduct{Unit::day})
    return say(PhraseId::reason_shareTheDay);
  if (wanted.under == UnitProduct{Unit::day} && start.under == UnitProduct{Unit::dose})
    return say(PhraseId::reason_timesTheDoses);
  return {};
}

/// A number of doses that stands in an entry, and was not worked out of an amount.
bool isStatedCount(const Origin& origin) {
  return origin == Origin::field(path::referenceMaxDoses) || origin == Origin::field(path::referenceSchedule);
}

/// As needed: into which day's amount so many doses fit. Empty where the most doses are stated as such.
std::string dosesReason(const Side& most, const Worksheet& sheet) {
  if (!sheet.orderedDose || !sheet.given.order.asNeeded) return {};
  for (const CheckId id : {CheckId::maxDaily, CheckId::daily}) {
    const auto* total = std::get_if<Quantity>(&sheet.check(id).limit);
    if (!total || isStatedCount(most.term.origin) ||
        (total->value / sheet.orderedDose->value).floor() != most.term.value)
      continue;
    return say(PhraseId::reason_dosesFit,
               {{"total", printed(*total)},
                {"n", show(most.term.value).text},
                {"dose", printed(*sheet.orderedDose)}},
               most.term.value == Number(1) ? 1 : 2);
  }
  return {};
}

/// How far a side fills its limit; from twice on as so many times, as the findings tell it.
std::string ratioReason(Relation relation, const Number& ratio) {
  const std::string percent = percentText(ratio, Number(1));
  if (relation == Relation::atLeast) return say(PhraseId::reason_percentOfMinimum, {{"percent", percent}});
  if (ratio >= Number(2)) return say(PhraseId::reason_timesOfLimit, {{"times", plainPercent(ratio)}});
  return say(PhraseId::reason_percentOfLimit, {{"percent", percent}});
}

/// Why less than this is too little.
std::string lowReason(const Check& low, const Worksheet& sheet) {
  const Finding* below = sheet.finding(FindingCode::belowLow);
  if (below && below->severity == Severity::note)
    return say(PhraseId::reason_lowLetPass, {{"percent", percentText(*low.ratio, Number(1))},
                                             {"ask", show(sheet.rules.askLowPercent).text}});
  if (sheet.given.reference.low) return say(PhraseId::reason_statedLow);
  return say(PhraseId::reason_percentExpected, {{"percent", show(sheet.rules.askBelowPercent).text}});
}

/// With whose doses a day's amount is shared among, where one dose of it is compared.
std::string withShare(const std::string& what, const Side& bound) {
  if (!bound.chain || bound.under != UnitProduct{Unit::dose}) return what;
  for (const Factor& factor : bound.chain->factors) {
    if (factor.under.units != UnitProduct{Unit::dose}) continue;
    const bool ofReference = factor.under.origin == Origin::field(path::referenceSchedule);
    return say(ofReference ? PhraseId::reason_dayShared : PhraseId::reason_daySharedByOrder,
               {{"what", what}});
  }
  return what;
}

std::string comparisonReason(const Step& step, const Worksheet& sheet) {
  const Comparison& compared = std::get<Comparison>(step.body);
  if (compared.right.term.origin == Origin::field(path::alsoCalled))
    return say(PhraseId::reason_alsoCalled, {{"name", sheet.given.order.medicine}});
  for (const Check& check : sheet.checks) {
    if (stepOf(check.id) != step.id || !check.ratio) continue;
    if (check.id == CheckId::low) return withShare(lowReason(check, sheet), compared.right);
    if (check.id == CheckId::bsaCharted) return {};
    // "150 % of the limit" would read as too much of what may not be less
    if (check.id == CheckId::infusionTime) return say(PhraseId::reason_statedTime);
    if (check.id == CheckId::concentrationLow) return say(PhraseId::reason_statedConcentration);
    if (check.id == CheckId::maxDoses) return dosesReason(compared.right, sheet);
    return ratioReason(compared.relation, *check.ratio);
  }
  return {};
}

std::string giveReason(const Step& step) {
  const Chain& chain = std::get<Solved>(step.body).chain;
  for (std::size_t i = 1; i < chain.factors.size(); ++i) {
    const Term& under = chain.factors[i].under;
    const bool label = under.origin.kind != Origin::Kind::constant;
    if (label && !under.units.empty())
      return say(PhraseId::reason_turnLabel, {{"unit", unitsText(under.units, Spelling::printed)}});
  }
  return {};
}

/// A setting that is not the nearest is no slip of the rounding.
std::string settingReason(const Step& step, const Worksheet& sheet) {
  std::string text = doseReason(step);
  if (!sheet.rate) return text;
  const std::optional<Flow>& flow =
      step.id == StepId::drops ? sheet.rate->dropsPerMinute : sheet.rate->mlPerHour;
  if (!flow || !flow->passedOver) return text;
  const std::string nearer = printed(Quantity{*flow->passedOver, flow->exact.unit}) +
                             perText(step.lookingFor.under, Spelling::printed);
  if (!text.empty()) text.append("; ");
  return text + say(PhraseId::reason_passedOver, {{"nearer", nearer}});
}

std::string measuringReason(const Measuring& measuring) {
  if (measuring.exact.unit != Unit::mL) return {};
  if (measuring.full) return say(PhraseId::reason_pair);
  if (measuring.byDecimals) return say(PhraseId::reason_byDecimals);
  return measuring.syringe ? say(PhraseId::reason_smallestSyringe) : std::string();
}

struct TagFor {
  std::string_view path;
  PhraseId phrase;
};
constexpr std::array tags = {
    TagFor{path::age, PhraseId::tag_age},
    TagFor{path::height, PhraseId::tag_height},
    TagFor{path::weight, PhraseId::tag_weight},
    TagFor{path::bsa, PhraseId::tag_bsa},
    TagFor{path::medicine, PhraseId::tag_order},
    TagFor{path::dose, PhraseId::tag_order},
    TagFor{path::route, PhraseId::tag_order},
    TagFor{path::schedule, PhraseId::tag_schedule},
    TagFor{path::maxDosesPerDay, PhraseId::tag_mostDoses},
    TagFor{path::referenceMaxDoses, PhraseId::tag_referenceMostDoses},
    TagFor{path::low, PhraseId::tag_reference},
    TagFor{path::high, PhraseId::tag_reference},
    TagFor{path::referenceRoute, PhraseId::tag_reference},
    TagFor{path::referenceSchedule, PhraseId::tag_referenceSchedule},
    TagFor{path::maxPerDose, PhraseId::tag_maximum},
    TagFor{path::maxPerDay, PhraseId::tag_maximum},
    TagFor{path::strength, PhraseId::tag_label},
    TagFor{path::content, PhraseId::tag_vial},
    TagFor{path::finalVolume, PhraseId::tag_mixing},
    TagFor{path::displacement, PhraseId::tag_mixing},
    TagFor{path::infusionVolume, PhraseId::tag_infusion},
    TagFor{path::infusionOver, PhraseId::tag_infusion},
    TagFor{path::dropFactor, PhraseId::tag_infusion},
};

std::string fieldTag(std::string_view path) {
  for (const TagFor& known : tags)
    if (known.path == path) return say(known.phrase);
  return say(PhraseId::tag_reference);
}

std::string stepTag(std::string_view id, const Worksheet& sheet) {
  for (std::size_t i = 0; i < sheet.steps.size(); ++i)
    if (idOf(sheet.steps[i].id) == id) return say(PhraseId::tag_step, {{"n", std::to_string(i + 1)}});
  return {};
}

}  // namespace

std::string question(const Step& step, const Worksheet& sheet) { return say(questionFor(step, sheet)); }

std::string lookingFor(const Step& step) {
  if (std::holds_alternative<Comparison>(step.body) || std::holds_alternative<Measuring>(step.body))
    return {};
  return say(PhraseId::looking_for, {{"units", unitsText(step.lookingFor, Spelling::printed)}});
}

std::string reason(const Step& step, const Worksheet& sheet) {
  if (std::holds_alternative<Comparison>(step.body)) return comparisonReason(step, sheet);
  if (const auto* measuring = std::get_if<Measuring>(&step.body)) return measuringReason(*measuring);
  switch (step.id) {
    case StepId::bsa:
      return surfaceReason(step, sheet);
    case StepId::weight:
      return weightReason(step);
    case StepId::volume:
      return step.rounding ? say(PhraseId::reason_roundedUp) : doseReason(step);
    case StepId::strength:
      return say(PhraseId::reason_contentOverVolume);
    case StepId::give:
      return giveReason(step);
    case StepId::rate:
    case StepId::drops:
      return settingReason(step, sheet);
    case StepId::orderedDay:
      return isRare(sheet) ? say(PhraseId::reason_oneInAnyDay) : doseReason(step);
    default:
      return doseReason(step);  // limits and ordered doses
  }
}

namespace {

std::string valueWithUnits(const Number& value, int fixedDecimals, const UnitProduct& units) {
  if (units.size() != 1) return valueText(value, fixedDecimals) + " " + unitsText(units, Spelling::printed);
  if (dimensionOf(units.front()) == Dimension::tablets) return givenText({value, units.front()});
  return valueText(value, fixedDecimals).append(" ").append(signFor(units.front(), value));
}

/// A root as near as it takes to be shown. Nine decimals, which are quickly found, decide the digits of a
/// surface but where they end early: then the root may lie on either side of what it seems to be.
Number rootToShow(const Number& square) {
  constexpr int quick = 9;
  constexpr int halfADigitShown = 6;  // of five decimals at most, from a hundredth on
  Number root = square.rootRounded(quick);
  const bool isCertain = !root.endsWithin(halfADigitShown) && root >= Number::powerOfTen(-2);
  return isCertain ? std::move(root) : square.rootRounded(20);
}

}  // namespace

std::string amountText(const Number& value, int fixedDecimals, const Units& units) {
  std::string amount = valueWithUnits(value, fixedDecimals, units.over);
  if (units.under == UnitProduct{Unit::dose}) return say(PhraseId::in_oneDose, {{"amount", amount}});
  if (units.under == UnitProduct{Unit::day}) return say(PhraseId::in_24H, {{"amount", amount}});
  if (units.under == UnitProduct{Unit::week}) return say(PhraseId::in_week, {{"amount", amount}});
  if (units.under.empty()) return amount;
  return amount + perText(units.under, Spelling::printed);
}

std::string conclusion(const Step& step) {
  if (const auto* solved = std::get_if<Solved>(&step.body))
    return amountText(solved->result, solved->fixedDecimals, step.lookingFor);
  if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body))
    return amountText(formula->result, formula->fixedDecimals, step.lookingFor);
  if (const auto* comparison = std::get_if<Comparison>(&step.body))
    return say(comparison->holds ? PhraseId::truth_true : PhraseId::truth_false);
  return measuringLine(std::get<Measuring>(step.body));
}

bool concludesExactly(const Step& step) {
  const auto exact = [](const auto& found) { return found.fixedDecimals >= 0 || show(found.result).exact; };
  if (const auto* solved = std::get_if<Solved>(&step.body)) return exact(*solved);
  if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body)) return exact(*formula);
  return true;
}

std::string unroundedText(const Step& step) {
  if (const auto* solved = std::get_if<Solved>(&step.body))
    return solved->chain.rooted ? show(rootToShow(solved->product.exact)).text : std::string();
  if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body)) return show(formula->unrounded).text;
  return {};
}

std::string equalsSign(const Step& step) {
  if (const auto* solved = std::get_if<Solved>(&step.body)) {
    const Number& exact = solved->product.exact;
    const bool same =
        solved->chain.rooted ? solved->result * solved->result == exact : solved->result == exact;
    return same ? "=" : "≈";
  }
  return "≈";
}

std::string sideText(const Side& side, int significant) {
  if (const auto* name = std::get_if<StatedName>(&side.stated)) return isolated(name->text);
  if (isStated(side.stated)) return statedText(side.stated);
  const ShownNumber shown = show(side.term.value, Grouping::commas, significant);
  const std::string units = side.under.empty() ? unitsBeside(side.term.value, side.term.units)
                                               : unitsText(side.units(), Spelling::printed);
  return (shown.exact ? "" : "≈") + shown.text + " " + units;
}

bool isShownExactly(const Side& side) {
  const auto* per = std::get_if<QuantityPer>(&side.stated);
  return show(per ? per->amount.value : side.term.value).exact;
}

std::string relationSign(const Comparison& comparison) {
  if (std::holds_alternative<StatedBand>(comparison.right.stated)) return {};
  switch (comparison.relation) {
    case Relation::atMost:
      return "≤";
    case Relation::atLeast:
      return "≥";
    case Relation::inside:
      return say(PhraseId::relation_inside);
    case Relation::same:
      return say(PhraseId::relation_same);
  }
  return {};
}

namespace {

/// By decimals, with no mark of a syringe meant.
std::string decimalsLine(const Measuring& measuring) {
  const auto amount = [&](const Number& value) { return givenText({value, measuring.exact.unit}); };
  const std::string exact = amount(measuring.exact.value);
  if (*measuring.measured == measuring.exact.value) return say(PhraseId::measure_exactly, {{"exact", exact}});
  const std::string nearer = measuring.passedOver ? amount(*measuring.passedOver) : std::string();
  return say(measuring.passedOver ? PhraseId::measure_decimalsAway : PhraseId::measure_decimals,
             {{"exact", exact},
              {"step", amount(measuring.step)},
              {"measured", amount(*measuring.measured)},
              {"nearer", nearer}});
}

}  // namespace

std::string givenText(const Quantity& amount, int significant) {
  struct Part {
    int fourths;
    std::string_view sign;
  };
  const Number whole = amount.value.floor();
  if (dimensionOf(amount.unit) == Dimension::tablets)
    for (const Part& part : {Part{1, "¼"}, Part{2, "½"}, Part{3, "¾"}})
      if (amount.value - whole == Number::ratio(part.fourths, 4))
        return (whole.isZero() ? std::string() : show(whole, Grouping::commas).text)
            .append(part.sign)
            .append(" ")
            .append(whole.isZero() ? infoOf(amount.unit).one : infoOf(amount.unit).many);
  return printed(amount, Grouping::commas, significant);
}

namespace {

std::string pairLine(const Measuring& pair) {
  const auto amount = [](const Number& mL) { return givenText({mL, Unit::mL}); };
  const Measuring rest = restOf(pair);
  return say(PhraseId::measure_pair, {{"full", amount(pair.full->holdsMl)},
                                      {"left", amount(rest.exact.value)},
                                      {"line", measuringLine(rest)},
                                      {"rest", amount(*rest.measured)},
                                      {"measured", amount(*pair.measured)}});
}

}  // namespace

std::string measuringLine(const Measuring& measuring) {
  if (measuring.full) return pairLine(measuring);
  const Unit unit = measuring.exact.unit;
  const auto amount = [unit](const Number& value) { return givenText({value, unit}); };
  const std::string exact = amount(measuring.exact.value);
  if (!measuring.measured)
    return say(PhraseId::measure_none,
               {{"exact", exact}, {"below", amount(measuring.below)}, {"above", amount(measuring.above)}});
  const std::string measured = amount(*measuring.measured);
  if (unit != Unit::mL || !measuring.syringe) return decimalsLine(measuring);
  const std::string holds = amount(measuring.syringe->holdsMl);
  const std::string marks = amount(measuring.syringe->marksMl);
  if (measuring.byDecimals && !measuring.onMark)
    return say(PhraseId::measure_betweenMarks,
               {{"line", decimalsLine(measuring)}, {"holds", holds}, {"marks", marks}});
  if (measuring.byDecimals) return decimalsLine(measuring);
  if (*measuring.measured == measuring.exact.value)
    return say(PhraseId::measure_onMark, {{"exact", exact}, {"holds", holds}, {"marks", marks}});
  const std::string nearer = measuring.passedOver ? amount(*measuring.passedOver) : std::string();
  return say(measuring.passedOver ? PhraseId::measure_toMarkAway : PhraseId::measure_toMark,
             {{"exact", exact},
              {"below", amount(measuring.below)},
              {"above", amount(measuring.above)},
              {"holds", holds},
              {"marks", marks},
              {"measured", measured},
              {"nearer", nearer}});
}

std::string factorLine(const Factor& factor) {
  std::string over = valueText(factor.over);
  if (!factor.over.units.empty()) over.append(" ").append(unitsBeside(factor.over.value, factor.over.units));
  if (factor.under.isPlainOne()) return over;
  const std::string units = unitsText(factor.under.units, Spelling::printed);
  if (factor.under.value == Number(1))
    return over + "/" + (factor.under.units.size() > 1 ? "(" + units + ")" : units);
  std::string under = valueText(factor.under);
  if (!units.empty()) under.append(" ").append(unitsBeside(factor.under.value, factor.under.units));
  return over + "/" + (factor.under.units.size() > 1 ? "(" + under + ")" : under);
}

std::string chainLine(const Chain& chain) {
  std::string line;
  for (const Factor& factor : chain.factors)
    line.append(line.empty() ? "" : " × ").append(factorLine(factor));
  return chain.rooted ? "√(" + line + ")" : line;
}

std::string sumLine(const Sum& sum, Grouping grouping) {
  std::string line;
  for (const Quantity& part : sum.parts) {
    line.append(line.empty() ? "" : " + ").append(printed(part, grouping));
    for (const Factor& factor : conversionFactors(part.unit, sum.total.unit, Pounds::exact))
      line.append(" × ").append(factorLine(factor));
  }
  return line + " = " + printed(sum.total, grouping);
}

std::string tag(const Origin& origin, const Worksheet& sheet) {
  switch (origin.kind) {
    case Origin::Kind::none:
      return {};
    case Origin::Kind::field:
      return fieldTag(origin.name);
    case Origin::Kind::step:
      return stepTag(origin.name, sheet);
    case Origin::Kind::constant:
      return say(origin.name.view().starts_with("mosteller") ? PhraseId::tag_formula
                                                             : PhraseId::tag_constant);
    case Origin::Kind::rule:
      return say(PhraseId::tag_rule);
  }
  return {};
}

}  // namespace wardchalk
