#include "core/words/amount_words.h"

#include <array>

#include "core/medicine/paths.h"
#include "core/unit/print.h"
#include "core/words/given_words.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "core/words/stated_words.h"
#include "core/words/step_words.h"

namespace wardchalk {

namespace {

std::string joined(std::string first, const std::string& second, std::string_view with) {
  if (first.empty()) return second;
  if (!second.empty()) first.append(with).append(second);
  return first;
}

std::string whenText(const Case& inputs) {
  return joined(givenWords(inputs.order.route, inputs.order.schedule), limitOfUse(inputs), ", ");
}

std::string millilitres(const Number& mL) { return printed(Quantity{mL, Unit::mL}); }

std::string kindText(const Syringe& syringe) {
  return say(syringe.kind == SyringeKind::oral ? PhraseId::kind_oral : PhraseId::kind_injection);
}

/// Whether what is measured lies on no mark of the syringe that it is measured in.
bool liesBetweenMarks(const Worksheet& sheet) {
  const Step* step = sheet.step(StepId::device);
  const auto* measuring = step ? std::get_if<Measuring>(&step->body) : nullptr;
  return measuring && !measuring->onMark;
}

std::string syringeText(const Give& give) {
  if (give.pair)
    return say(PhraseId::amount_pair, {{"full", millilitres(give.pair->full.holdsMl)},
                                       {"kind", kindText(give.pair->full)},
                                       {"holds", millilitres(give.pair->of.holdsMl)},
                                       {"rest", millilitres(give.pair->rest)},
                                       {"marks", millilitres(give.pair->of.marksMl)}});
  if (!give.syringe) return {};
  return say(PhraseId::amount_syringe,
             {{"holds", millilitres(give.syringe->holdsMl)},
              {"kind", kindText(*give.syringe)},
              {"marks", millilitres(give.syringe->marksMl)},
              {"n", std::to_string(give.syringes)}},
             give.syringes);
}

std::string deviceText(const Worksheet& sheet) {
  const Give& give = *sheet.give;
  std::string text = syringeText(give);
  if (liesBetweenMarks(sheet))
    text = say(PhraseId::amount_betweenMarks,
               {{"device", text}, {"measured", millilitres(give.pair ? give.pair->rest : *give.measured)}});
  if (give.measured && !give.measured->isWhole() && dimensionOf(give.exact.unit) == Dimension::tablets)
    return say(PhraseId::amount_scored);
  if (!give.containers) return text;
  return joined(
      text, say(PhraseId::amount_vials, {{"n", std::to_string(*give.containers)}}, *give.containers), "; ");
}

std::string roundingText(const Give& give) {
  if (*give.measured == give.exact.value) return say(PhraseId::amount_noRounding);
  const auto amount = [&](const Number& value) { return givenText({value, give.exact.unit}); };
  return say(give.passedOver ? PhraseId::amount_roundedAway : PhraseId::amount_rounded,
             {{"exact", amount(give.exact.value)},
              {"measured", amount(*give.measured)},
              {"nearer", give.passedOver ? amount(*give.passedOver) : std::string()},
              {"percent", plainPercent(*give.percentChange)}});
}

/// The dose that is really measured, beside the ordered one where they differ.
std::string doseText(const Worksheet& sheet) {
  const Quantity& dose = *sheet.give->doseGiven;
  const Quantity& ordered = *sheet.orderedDose;
  if (dose.value == ordered.value) return say(PhraseId::amount_dose, {{"dose", printed(dose)}});
  const int significant = digitsApart(dose.value, ordered.value);
  return say(PhraseId::amount_doseInstead, {{"dose", printed(dose, Grouping::commas, significant)},
                                            {"ordered", printed(ordered, Grouping::commas, significant)}});
}

/// One amount stands on the line; of what two it is made follows it.
std::string inSyringes(const Give& give, const std::string& dose) {
  if (!give.pair) return dose;
  return say(PhraseId::amount_inTwo, {{"dose", dose},
                                      {"full", millilitres(give.pair->full.holdsMl)},
                                      {"rest", millilitres(give.pair->rest)}});
}

/// How each vial is made ready, before anything is measured of it.
std::string prepareText(const Give& give) {
  if (!give.prepare) return {};
  const Prepare& prepare = *give.prepare;
  const auto text = [](const std::optional<Quantity>& quantity) {
    return quantity ? printed(*quantity) : std::string();
  };
  const PhraseId phrase = !prepare.add    ? PhraseId::prepare_makeUp
                          : prepare.makes ? PhraseId::prepare_addToMake
                                          : PhraseId::prepare_add;
  const QuantityPer strength{{prepare.strength.perOne, prepare.strength.drugUnit}, {prepare.strength.in}};
  return say(
      phrase,
      {{"add", text(prepare.add)}, {"makes", text(prepare.makes)}, {"strength", statedText(strength)}});
}

std::string flowAt(const Flow& flow, const Number& value, std::string_view per) {
  return printed(Quantity{value, flow.exact.unit}).append("/").append(per);
}

std::string flowText(const Flow& flow, std::string_view per) { return flowAt(flow, *flow.measured, per); }

bool isSet(const std::optional<Flow>& flow) { return flow && flow->measured; }

/// "2.1 % more", "20 % less, since 4 drops/min would not pass every check"; empty where nothing changes.
std::string changeText(const Flow& flow, std::string_view per) {
  if (*flow.measured == flow.exact.value) return {};
  const PhraseId phrase = *flow.measured > flow.exact.value ? PhraseId::change_more : PhraseId::change_less;
  const std::string change = say(phrase, {{"percent", plainPercent(flow.percentChange)}});
  if (!flow.passedOver) return change;
  return say(PhraseId::change_away, {{"change", change}, {"nearer", flowAt(flow, *flow.passedOver, per)}});
}

/// Drops stand for a rate, and are much coarser: they carry their own change.
std::string dropsText(const RunRate& rate) {
  if (!isSet(rate.dropsPerMinute)) return {};
  const Flow& flow = *rate.dropsPerMinute;
  return say(PhraseId::amount_flow, {{"flow", flowText(flow, "min")}, {"change", changeText(flow, "min")}});
}

std::string orDrops(const RunRate& rate, const std::string& hourly) {
  const std::string drops = dropsText(rate);
  if (hourly.empty() || drops.empty()) return hourly + drops;
  return say(PhraseId::amount_orDrops, {{"rate", hourly}, {"drops", drops}});
}

std::string rateText(const RunRate& rate) {
  return orDrops(rate, isSet(rate.mlPerHour) ? flowText(*rate.mlPerHour, "h") : std::string());
}

/// Of an infusion, whose line says nothing else of how its rate was rounded.
std::string forcedRateText(const RunRate& rate) {
  if (!isSet(rate.mlPerHour) || !rate.mlPerHour->passedOver) return rateText(rate);
  return orDrops(rate, say(PhraseId::amount_flow, {{"flow", flowText(*rate.mlPerHour, "h")},
                                                   {"change", changeText(*rate.mlPerHour, "h")}}));
}

/// How the rate in mL/h was rounded; the drops say so themselves.
std::string rateRoundingText(const RunRate& rate) {
  if (!isSet(rate.mlPerHour)) return {};
  const Flow& flow = *rate.mlPerHour;
  if (*flow.measured == flow.exact.value) return say(PhraseId::amount_noRounding);
  return say(flow.passedOver ? PhraseId::amount_rateRoundedAway : PhraseId::amount_rateRounded,
             {{"exact", flowAt(flow, flow.exact.value, "h")},
              {"measured", flowText(flow, "h")},
              {"nearer", flow.passedOver ? flowAt(flow, *flow.passedOver, "h") : std::string()},
              {"percent", plainPercent(flow.percentChange)}});
}

/// "80 mg in 30 min", "4.978 mcg/kg/min".
std::string deliveredText(const Delivered& delivered) {
  std::string amount = printed(delivered.amount);
  if (!delivered.over) {
    for (const Unit per : delivered.per) amount.append("/").append(infoOf(per).one);
    return amount;
  }
  return say(PhraseId::amount_inTime, {{"amount", amount}, {"time", printed(*delivered.over)}});
}

/// How the measured dose runs in.
std::string runText(const Worksheet& sheet) {
  if (!sheet.rate) return {};
  const std::string rate = forcedRateText(*sheet.rate);
  if (rate.empty()) return {};
  const Infusion& infusion = sheet.given.infusion;
  const std::optional<Quantity>& rest = sheet.rate->toAdd;
  std::string run = say(rest ? PhraseId::amount_madeUp : PhraseId::amount_runs,
                        {{"volume", printed(*infusion.volume)},
                         {"rest", rest ? printed(*rest) : std::string()},
                         {"time", printed(*infusion.over)},
                         {"rate", rate}});
  if (!sheet.rate->delivered) return run;
  return say(PhraseId::amount_delivers, {{"run", run}, {"delivers", deliveredText(*sheet.rate->delivered)}});
}

/// The line to hold against the bottle. A strength worked out after mixing says so.
std::string labelText(const Worksheet& sheet) {
  const StrengthFound& strength = *sheet.strength;
  const bool labelled = strength.from == StrengthFrom::labelled;
  std::string medicine = sheet.given.order.medicine;
  if (medicine.empty()) medicine = say(PhraseId::amount_thisMedicine);
  const std::string text = labelled ? printed(*sheet.given.stock.strength)
                                    : printed(Quantity{strength.perOne, strength.drugUnit}) + " in 1 mL";
  return say(labelled ? PhraseId::amount_label : PhraseId::amount_labelMixed,
             {{"medicine", medicine}, {"strength", text}});
}

const Need* needForAmount(const Worksheet& sheet) {
  for (const Need& need : sheet.needs)
    if (need.forWhat == Need::For::amount) return &need;
  return nullptr;
}

/// First judge, then measure: what the verdict waits for is what the amount waits for.
std::string undecidedText(const Worksheet& sheet) {
  if (sheet.finding(FindingCode::notWorkedOut)) return say(PhraseId::amount_noneNotWorkedOut);
  if (!sheet.deciding && !sheet.needs.empty())
    return say(PhraseId::amount_noneStock, {{"what", sentence(sheet.needs.front())}});
  return say(PhraseId::amount_noneUndecided);
}

std::string noneText(const Shown& shown) {
  const Worksheet& sheet = shown.sheet();
  switch (sheet.verdict) {
    case VerdictKind::unsafe:
      if (!sheet.remedy) return say(PhraseId::amount_noneUnsafe);
      return say(PhraseId::amount_noneAsPrepared,
                 {{"what", remedyText(*sheet.remedy)}, {"by-order", say(PhraseId::remedy_byOrder)}});
    case VerdictKind::notCovered:
      return say(PhraseId::amount_noneNotCovered);
    case VerdictKind::undecided:
      return undecidedText(sheet);
    case VerdictKind::safe:
    case VerdictKind::ask:
      break;
  }
  if (sheet.finding(FindingCode::secondDiffers)) return say(PhraseId::amount_noneUnsettled);
  if (sheet.finding(FindingCode::maxDosesOpen)) return say(PhraseId::amount_noneDosesOpen);
  if (shown.waits()) {
    const auto count = static_cast<long>(shown.questions().size());
    return say(PhraseId::ask_before, {{"n", std::to_string(count)}}, count);
  }
  if (shown.awaitsSecondCheck()) return say(PhraseId::amount_noneSecondCheck);
  const Need* need = needForAmount(sheet);
  const bool awaitsScoring = need && need->path == path::dividesInto;
  if (sheet.give && !awaitsScoring)
    return say(PhraseId::amount_exactOnly, {{"exact", printed(sheet.give->exact)}});
  if (need) return say(PhraseId::amount_noneStock, {{"what", sentence(*need)}});
  return say(PhraseId::amount_noneWithheld);
}

/// A rate order: the flow is what is given.
void putRate(AmountWords& words, const Shown& shown) {
  const Worksheet& sheet = shown.sheet();
  const std::string rate = sheet.rate ? rateText(*sheet.rate) : std::string();
  if (rate.empty()) {
    words.none = noneText(shown);
    return;
  }
  words.measure = say(PhraseId::amount_runAt, {{"rate", rate}});
  if (sheet.rate->delivered)
    words.dose = say(PhraseId::amount_runDose, {{"delivers", deliveredText(*sheet.rate->delivered)}});
  words.when = whenText(sheet.given);
  words.rounding = rateRoundingText(*sheet.rate);
  words.label = labelText(sheet);
}

/// Findings of one code are one question, and one answer is for all of them.
void putQuestions(AmountWords& words, const Shown& shown) {
  for (const FindingCode code : shown.questions()) {
    QuestionWords question{code, {}, {}};
    for (const Finding& finding : shown->findings)
      if (finding.code == code) question.text = joined(question.text, sentence(finding), " ");
    if (const auto answer = shown.answerTo(code)) question.settled = settledText(*answer);
    words.asks.push_back(std::move(question));
  }
}

void putDose(AmountWords& words, const Shown& shown) {
  const Worksheet& sheet = shown.sheet();
  if (!sheet.give || !sheet.give->measured) {
    words.none = noneText(shown);
    return;
  }
  const Give& give = *sheet.give;
  const bool liquid = give.exact.unit == Unit::mL;
  words.measure = say(liquid ? PhraseId::amount_measure : PhraseId::amount_giveSolid,
                      {{"amount", givenText({*give.measured, give.exact.unit})}});
  words.dose = inSyringes(give, doseText(sheet));
  words.when = whenText(sheet.given);
  words.prepare = prepareText(give);
  words.device = deviceText(sheet);
  words.rounding = roundingText(give);
  words.run = runText(sheet);
  words.label = labelText(sheet);
}

}  // namespace

std::string settledText(Answer answer) {
  constexpr std::array texts = {
#define WARDCHALK_ANSWER(name, id) PhraseId::settled_##name,
#include "core/check/answers.def"
#undef WARDCHALK_ANSWER
  };
  return say(texts[static_cast<std::size_t>(answer)]);
}

std::string limitOfUse(const Case& inputs) {
  const std::string asNeeded = inputs.order.asNeeded ? say(PhraseId::fact_asNeeded) : std::string();
  const std::optional<int> most = mostDosesOf(inputs);
  return joined(asNeeded, most ? mostDosesText(*most) : std::string(), ", ");
}

AmountWords amountWords(const Shown& shown) {
  AmountWords words;
  putQuestions(words, shown);
  if (shown->given.order.dose && shown->given.order.dose->isRate())
    putRate(words, shown);
  else
    putDose(words, shown);
  if (shown.asksFirst() && !words.measure.empty()) words.done = say(PhraseId::ask_done);
  return words;
}

}  // namespace wardchalk
