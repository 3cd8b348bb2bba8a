#include "core/words/sentences.h"

#include <algorithm>
#include <array>

#include "core/check/judgement.h"
#include "core/check/sizes_used.h"
#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/number/unseen_text.h"
#include "core/unit/print.h"
#include "core/words/field_names.h"
#include "core/words/isolated.h"
#include "core/words/phrase_id_list.h"
#include "core/words/phrasebook.h"
#include "core/words/stated_words.h"

namespace wardchalk {

namespace {

constexpr std::array refusalPhrases = {
#define WARDCHALK_REFUSAL(name, id) PhraseId::refusal_##name,
#include "core/number/refusal_codes.def"
#undef WARDCHALK_REFUSAL
};

constexpr std::array findingPhrases = {
#define WARDCHALK_FINDING(name, id, severity) PhraseId::finding_##name,
#include "core/check/finding_codes.def"
#undef WARDCHALK_FINDING
};

constexpr std::array checkPhrases = {
#define WARDCHALK_CHECK(name, id, step) PhraseId::check_##name,
#include "core/check/check_ids.def"
#undef WARDCHALK_CHECK
};

constexpr std::array whyPhrases = {
#define WARDCHALK_WHY(name, id) PhraseId::why_##name,
#include "core/check/why_not.def"
#undef WARDCHALK_WHY
};

constexpr std::array sizeSlipPhrases = {
#define WARDCHALK_SIZE_SLIP(name, id) PhraseId::slip_##name,
#include "core/child/size_slips.def"
#undef WARDCHALK_SIZE_SLIP
};

/// The phrase whose id is `family` and `id`; where there is none it does not compile.
constexpr PhraseId phraseOf(std::string_view family, std::string_view id) {
  std::size_t at = 0;
  while (!phraseIds.at(at).starts_with(family) || phraseIds.at(at).substr(family.size()) != id) ++at;
  return static_cast<PhraseId>(at);
}

constexpr auto possibleSlipPhrases = [] {
  std::array<PhraseId, slipTable.size()> phrases{};
  for (std::size_t i = 0; i < phrases.size(); ++i) phrases[i] = phraseOf("possible.", slipTable[i].id);
  return phrases;
}();

constexpr std::array routePhrases = {PhraseId::route_oral,         PhraseId::route_enteral,
                                     PhraseId::route_intravenous,  PhraseId::route_intramuscular,
                                     PhraseId::route_subcutaneous, PhraseId::route_rectal,
                                     PhraseId::route_inhaled,      PhraseId::route_topical};

constexpr std::array unseenPhrases = {PhraseId::unseen_tab,       PhraseId::unseen_lineBreak,
                                      PhraseId::unseen_control,   PhraseId::unseen_hyphen,
                                      PhraseId::unseen_space,     PhraseId::unseen_direction,
                                      PhraseId::unseen_byteOrder, PhraseId::unseen_noCharacter};

std::string unseenName(const UnseenCharacter& unseen) {
  return say(unseenPhrases[static_cast<std::size_t>(unseen.kind)]);
}

/// The words of ours that an argument can be, where there is no such argument.
std::optional<ArgumentWord> wordOf(const Finding& finding, std::string_view name) {
  const auto* word = finding.argument<ArgumentWord>(name);
  return word ? std::optional(*word) : std::nullopt;
}

std::vector<Filling> argumentFillings(const Finding& finding) {
  std::vector<Filling> fillings;
  for (const Argument& argument : finding.arguments)
    fillings.push_back({argument.name, argumentText(argument)});
  return fillings;
}

std::string routeWord(const Finding& finding, std::string_view name) {
  const auto* stated = finding.argument<Stated>(name);
  const auto* route = stated ? std::get_if<Route>(stated) : nullptr;
  return route ? routeText(*route) : std::string();
}

struct WordPhrase {
  ArgumentWord word;
  PhraseId phrase;
};
constexpr std::array basisReasons = {
    WordPhrase{ArgumentWord::dayOrDose, PhraseId::basis_dayOrDose},
    WordPhrase{ArgumentWord::rateAgainstDose, PhraseId::basis_rateAgainstDose},
    WordPhrase{ArgumentWord::doseAgainstRate, PhraseId::basis_doseAgainstRate},
    WordPhrase{ArgumentWord::continuousWithoutRate, PhraseId::basis_continuousWithoutRate},
    WordPhrase{ArgumentWord::rateWithDoses, PhraseId::basis_rateWithDoses}};

std::string basisSentence(const Finding& finding) {
  const std::optional<ArgumentWord> reason = wordOf(finding, "reason");
  for (const WordPhrase& known : basisReasons)
    if (known.word == reason) return say(known.phrase);
  return say(PhraseId::need_other);
}

/// The question of a slip named in an argument; empty when there is none.
std::string slipQuestion(const Finding& finding, std::string_view name) {
  const auto* slip = finding.argument<SizeSlip>(name);
  return slip ? say(sizeSlipPhrases[static_cast<std::size_t>(*slip)]) : std::string();
}

Filling slipFilling(const Finding& finding) {
  std::string first = slipQuestion(finding, "slip");
  std::string second = slipQuestion(finding, "other_slip");
  if (second.empty()) return {"slip", std::move(first)};
  return {"slip", say(PhraseId::slip_two, {{"first", std::move(first)}, {"second", std::move(second)}})};
}

PhraseId implausiblePhrase(std::optional<ArgumentWord> what) {
  if (what == ArgumentWord::weight) return PhraseId::implausible_weight;
  if (what == ArgumentWord::height) return PhraseId::implausible_height;
  return what == ArgumentWord::both ? PhraseId::implausible_both : PhraseId::implausible_surface;
}

PhraseId implausibleAdvice(Severity severity) {
  if (severity == Severity::note) return PhraseId::implausible_unused;
  return severity == Severity::ask ? PhraseId::implausible_confirmed : PhraseId::implausible_check;
}

std::vector<Filling> implausibleFillings(const Finding& finding) {
  const PhraseId what = implausiblePhrase(wordOf(finding, "what"));
  return {{"what", say(what, argumentFillings(finding))},
          {"advice", say(implausibleAdvice(finding.severity))},
          slipFilling(finding)};
}

bool isUnlikelySize(FindingCode code) {
  return code == FindingCode::weightUnlikely || code == FindingCode::heightUnlikely ||
         code == FindingCode::weightUnlikelyForHeight;
}

bool isBandFinding(FindingCode code) {
  return code == FindingCode::notCoveredAge || code == FindingCode::notCoveredWeight ||
         code == FindingCode::notCoveredBsa;
}

constexpr std::array manyPhrases = {WordPhrase{ArgumentWord::tablets, PhraseId::many_tablets},
                                    WordPhrase{ArgumentWord::capsules, PhraseId::many_capsules},
                                    WordPhrase{ArgumentWord::vials, PhraseId::many_vials},
                                    WordPhrase{ArgumentWord::syringes, PhraseId::many_syringes}};

/// "5 vials"
std::string countedText(const Finding& finding) {
  const auto* count = finding.argument<Number>("count");
  const std::optional<ArgumentWord> what = wordOf(finding, "what");
  if (!count) return {};
  const std::string text = argumentText({"count", *count});
  for (const WordPhrase& many : manyPhrases)
    if (many.word == what) return say(many.phrase, {{"count", text}}, *count == Number(1) ? 1 : 2);
  return text;
}

/// What hangs on the two surfaces; empty when the order passes or fails by both.
std::string decidesText(const Finding& finding) {
  const std::optional<ArgumentWord> order = wordOf(finding, "order");
  if (!order) return {};
  return say(order == ArgumentWord::within ? PhraseId::differs_within : PhraseId::differs_over);
}

/// Of which time both amounts are; a rate says so by its unit.
std::string timeOfLow(const Finding& finding) {
  const auto* per = finding.argument<Unit>("per");
  if (!per) return {};
  if (*per == Unit::week) return say(PhraseId::low_inWeek);
  return say(*per == Unit::day ? PhraseId::low_inDay : PhraseId::low_inDose);
}

std::string bandOf(const Finding& finding) {
  const auto* stated = finding.argument<Stated>("band");
  const auto* band = stated ? std::get_if<StatedBand>(stated) : nullptr;
  return band ? bandInWords(*band) : std::string();
}

/// Each total that is over within the grace: "105 mg per dose, safe up to 100 mg (over by 5 %); …"
std::string gracedList(const Finding& finding) {
  struct Part {
    std::string_view name;
    PhraseId phrase;
  };
  std::string list;
  for (const Part& part : {Part{"single", PhraseId::grace_single}, Part{"daily", PhraseId::grace_daily},
                           Part{"period", PhraseId::grace_period}}) {
    const auto text = [&](std::string_view of) {
      const std::string name = std::string(part.name).append(of);
      for (const Argument& argument : finding.arguments)
        if (argument.name == name) return argumentText(argument);
      return std::string();
    };
    if (text("").empty()) continue;
    list.append(list.empty() ? "" : "; ");
    list.append(
        say(part.phrase, {{"ordered", text("")}, {"limit", text("_limit")}, {"over", text("_over")}}));
  }
  return list;
}

PhraseId howOftenPhrase(const Finding& finding) {
  const std::optional<ArgumentWord> how = wordOf(finding, "more");
  if (!how) return PhraseId::schedule_continuous;
  return how == ArgumentWord::more ? PhraseId::schedule_more : PhraseId::schedule_less;
}

/// A figure of a rate as it is written, with what was compared in brackets: "5 mcg/kg/min (71.5 mcg/min)".
std::string asWritten(const Stated& written, const std::string& compared) {
  return say(PhraseId::rate_asWritten, {{"written", statedText(written)}, {"compared", compared}});
}

/// The two sides of a rate in the terms that are written, where those are others than the ones compared.
std::vector<Filling> writtenFillings(const Finding& finding) {
  std::vector<Filling> fillings;
  for (const auto& [name, written] :
       {std::pair("ordered", "ordered_as_written"), std::pair("limit", "limit_as_written"),
        std::pair("expected", "limit_as_written")}) {
    const auto* stated = finding.argument<Stated>(written);
    for (const Argument& argument : finding.arguments)
      if (stated && argument.name == name)
        fillings.push_back({name, asWritten(*stated, argumentText(argument))});
  }
  return fillings;
}

/// Fillings that are words of ours and not figures.
std::vector<Filling> wordFillings(const Finding& finding) {
  if (finding.code == FindingCode::scheduleDiffers) return {{"how", say(howOftenPhrase(finding))}};
  if (finding.code == FindingCode::formDiffersFromRoute)
    return {{"what", say(wordOf(finding, "form") == ArgumentWord::solid ? PhraseId::form_solid
                                                                        : PhraseId::form_infusion)},
            {"route", routeWord(finding, "route")}};
  if (finding.code == FindingCode::belowLow || finding.code == FindingCode::belowUsual)
    return {{"when", timeOfLow(finding)}};
  if (finding.code == FindingCode::overWithinGrace) return {{"list", gracedList(finding)}};
  if (finding.code == FindingCode::manyUnits) return {{"what", countedText(finding)}};
  if (finding.code == FindingCode::bsaDiffers) return {{"decides", decidesText(finding)}};
  if (finding.code == FindingCode::sizeImplausible) return implausibleFillings(finding);
  if (isUnlikelySize(finding.code)) return {slipFilling(finding)};
  if (isBandFinding(finding.code)) return {{"band", bandOf(finding)}};
  if (finding.code == FindingCode::notCoveredRoute)
    return {{"ordered", routeWord(finding, "ordered")}, {"reference", routeWord(finding, "reference")}};
  return {};
}

PhraseId possibleSlipPhrase(const Finding& finding) {
  const auto* slip = finding.argument<Slip>("slip");
  return slip ? possibleSlipPhrases[static_cast<std::size_t>(*slip)] : PhraseId::need_other;
}

struct TimesPhrase {
  FindingCode code;
  PhraseId phrase;
};
constexpr std::array timesPhrases = {TimesPhrase{FindingCode::overSingle, PhraseId::overSingle_times},
                                     TimesPhrase{FindingCode::overDaily, PhraseId::overDaily_times},
                                     TimesPhrase{FindingCode::overPeriod, PhraseId::overPeriod_times},
                                     TimesPhrase{FindingCode::overMaxSingle, PhraseId::overMaxSingle_times},
                                     TimesPhrase{FindingCode::overMaxDaily, PhraseId::overMaxDaily_times},
                                     TimesPhrase{FindingCode::overRate, PhraseId::overRate_times}};

/// How many times the limit, from twice on: there a percentage says less than "9.8 times".
std::optional<Number> timesOver(const Finding& finding) {
  const auto* over = finding.argument<Excess>("over");
  if (!over || over->value < over->limit * Number(2)) return std::nullopt;
  return over->value / over->limit;
}

PhraseId phraseFor(const Finding& finding) {
  if (timesOver(finding))
    for (const TimesPhrase& known : timesPhrases)
      if (known.code == finding.code) return known.phrase;
  if (finding.code == FindingCode::possibleSlip) return possibleSlipPhrase(finding);
  if (finding.code == FindingCode::strengthDiffers && finding.severity == Severity::note)
    return PhraseId::note_strengthDiffers;
  if (finding.code == FindingCode::volumeSmallerThanDrug && finding.argument<Stated>("measured"))
    return PhraseId::volumeSmallerThanDrug_measured;
  if (finding.code == FindingCode::formDiffersFromRoute && !finding.argument<Stated>("route"))
    return PhraseId::formDiffersFromRoute_runs;
  if (finding.code == FindingCode::tooConcentrated && !finding.argument<Stated>("volume"))
    return PhraseId::tooConcentrated_bag;
  if (finding.code == FindingCode::tooFast && finding.check == CheckId::infusionTime)
    return PhraseId::tooFast_time;
  if (finding.code == FindingCode::roundingChangesRate && !finding.argument<Stated>("measured"))
    return PhraseId::roundingChangesRate_none;
  if (finding.code == FindingCode::weightUnlikely && !finding.argument<Stated>("age"))
    return PhraseId::unlikely_weight;
  if (finding.code == FindingCode::heightUnlikely && !finding.argument<Stated>("age"))
    return PhraseId::unlikely_height;
  if (finding.code == FindingCode::weightOld && !finding.argument<Stated>("weighed"))
    return PhraseId::weightOld_unknown;
  if (wordOf(finding, "by") == ArgumentWord::trade) return PhraseId::roundingDecides_trade;
  if (finding.code == FindingCode::belowLow && finding.severity == Severity::note)
    return PhraseId::note_belowLow;
  if (finding.code == FindingCode::belowUsual && finding.severity == Severity::note)
    return PhraseId::note_belowUsual;
  if (wordOf(finding, "by") == ArgumentWord::sizeEntered)
    return finding.code == FindingCode::belowLow ? PhraseId::bySize_belowLow : PhraseId::bySize_belowUsual;
  return findingPhrases[static_cast<std::size_t>(finding.code)];
}

PhraseId doubtPhrase(const Finding& doubt) {
  const std::optional<ArgumentWord> what = wordOf(doubt, "what");
  switch (doubt.code) {
    case FindingCode::weightUnlikelyForHeight:
      return PhraseId::doubt_both;
    case FindingCode::weightUnlikely:
    case FindingCode::weightOld:
      return PhraseId::doubt_weight;
    case FindingCode::heightUnlikely:
      return PhraseId::doubt_height;
    case FindingCode::bsaDiffers:
      return PhraseId::doubt_surfaces;
    default:
      break;  // a size that cannot be says what of it
  }
  if (!what) return PhraseId::doubt_charted;
  if (what == ArgumentWord::both) return PhraseId::doubt_both;
  return what == ArgumentWord::weight ? PhraseId::doubt_weight : PhraseId::doubt_height;
}

/// What is asked first, beside an order that is unsafe as prepared: it will be asked once that is changed.
std::string firstAsk(const Worksheet& sheet) {
  const auto ask = std::ranges::find(sheet.findings, Severity::ask,
                                     [](const Finding& finding) { return finding.severity; });
  return ask == sheet.findings.end() ? std::string() : " " + sentence(*ask);
}

/// Where another finding decides, a size in doubt is named beside it: the limit hangs on the size (R18).
std::string withSizeDoubt(const Worksheet& sheet, std::string reason) {
  const Finding* doubt = sizeDoubt(sheet);
  const bool decidedByLimit =
      sheet.verdict == VerdictKind::unsafe || sheet.verdict == VerdictKind::notCovered;
  if (!doubt || !decidedByLimit) return reason;
  return say(PhraseId::doubt_beside,
             {{"reason", std::move(reason)}, {"what", say(doubtPhrase(*doubt), argumentFillings(*doubt))}});
}

struct NeedPhrase {
  std::string_view path;
  PhraseId phrase;
};
constexpr std::array needPhrases = {
    NeedPhrase{path::age, PhraseId::need_age},
    NeedPhrase{path::height, PhraseId::need_height},
    NeedPhrase{path::weight, PhraseId::need_weight},
    NeedPhrase{path::medicine, PhraseId::need_medicine},
    NeedPhrase{path::dose, PhraseId::need_dose},
    NeedPhrase{path::schedule, PhraseId::need_schedule},
    NeedPhrase{path::high, PhraseId::need_high},
    NeedPhrase{path::stockKind, PhraseId::need_stockKind},
    NeedPhrase{path::strength, PhraseId::need_strength},
    NeedPhrase{path::dividesInto, PhraseId::need_dividesInto},
    NeedPhrase{path::content, PhraseId::need_content},
    NeedPhrase{path::finalVolume, PhraseId::need_finalVolume},
    NeedPhrase{path::infusionVolume, PhraseId::need_infusionVolume},
    NeedPhrase{path::infusionOver, PhraseId::need_infusionOver},
};

std::string comparedText(const Stated& compared, int significant) {
  if (const auto* quantity = std::get_if<Quantity>(&compared))
    return printed(*quantity, Grouping::commas, significant);
  return statedText(compared);
}

/// "56" of "56 to 84 mg": its unit is said with the high end where that is the same.
std::string lowText(const Quantity& low, const Stated& high) {
  const auto* limit = std::get_if<Quantity>(&high);
  if (limit && limit->unit == low.unit) return show(low.value, Grouping::commas).marked();
  return printed(low);
}

const AsWritten* writtenOf(const Worksheet& sheet, CheckId id) {
  const auto found = std::ranges::find(sheet.asWritten, id, &AsWritten::check);
  return found == sheet.asWritten.end() ? nullptr : &*found;
}

/// Both ends of a range of rates: "4 to 10 mcg/kg/min". Its unit is said once where both have the same.
std::string rangeOf(const Stated& low, const Stated& high) {
  const auto* least = std::get_if<QuantityPer>(&low);
  const auto* most = std::get_if<QuantityPer>(&high);
  const bool alike = least && most && least->amount.unit == most->amount.unit && least->under == most->under;
  return say(PhraseId::range_of,
             {{"low", alike ? show(least->amount.value, Grouping::commas).marked() : statedText(low)},
              {"high", statedText(high)}});
}

/// From where to where a rate is safe, in the terms that are written and in those that were compared.
std::string safeRates(const Worksheet& sheet) {
  const std::string compared = rangeOf(sheet.check(CheckId::low).limit, sheet.check(CheckId::rate).limit);
  const AsWritten* low = writtenOf(sheet, CheckId::low);
  const AsWritten* high = writtenOf(sheet, CheckId::rate);
  return low && high ? say(PhraseId::rate_asWritten,
                           {{"written", rangeOf(low->limit, high->limit)}, {"compared", compared}})
                     : compared;
}

std::string safeReason(const Worksheet& sheet) {
  if (!sheet.worst) return {};
  const Check& check = sheet.check(*sheet.worst);
  int significant = 4;
  if (std::holds_alternative<Quantity>(check.value) && std::holds_alternative<Quantity>(check.limit))
    significant = digitsApart(std::get<Quantity>(check.value).value, std::get<Quantity>(check.limit).value);
  std::string ordered = comparedText(check.value, significant);
  std::string limit = comparedText(check.limit, significant);
  if (const AsWritten* written = writtenOf(sheet, check.id)) {
    ordered = asWritten(written->value, ordered);
    limit = asWritten(written->limit, limit);
  }
  const auto with = [&](PhraseId id) { return say(id, {{"ordered", ordered}, {"limit", limit}}); };
  const bool below = sheet.finding(FindingCode::belowLow) != nullptr;  // by so little that it is safe
  // one dose of a day may be as little as the most doses in a day leave for it: then it is none of the range
  const auto isOutOf = [&](const Quantity& low) {
    const auto* value = std::get_if<Quantity>(&check.value);
    return !below && value && value->value < low.value;
  };
  const auto withRange = [&](PhraseId range, PhraseId without, const std::optional<Quantity>& low) {
    if (!low || isLowLeftOut(sheet.check(CheckId::low)) || isOutOf(*low)) return with(without);
    return say(range, {{"ordered", ordered}, {"low", lowText(*low, check.limit)}, {"limit", limit}});
  };
  switch (check.id) {
    case CheckId::daily:
      return withRange(below ? PhraseId::safe_dailyBelow : PhraseId::safe_dailyRange, PhraseId::safe_daily,
                       sheet.lowDay);
    case CheckId::period:
      return with(PhraseId::safe_period);
    case CheckId::maxSingle:
      return with(PhraseId::safe_maxSingle);
    case CheckId::maxDaily:
      return with(PhraseId::safe_maxDaily);
    case CheckId::rate:
      if (sheet.check(CheckId::low).isMade() && !below)
        return say(PhraseId::safe_rateRange, {{"ordered", ordered}, {"range", safeRates(sheet)}});
      return with(PhraseId::safe_rate);
    case CheckId::infusionRate:
      return with(PhraseId::safe_infusionRate);
    default:
      return withRange(below ? PhraseId::safe_singleBelow : PhraseId::safe_singleRange, PhraseId::safe_single,
                       sheet.lowDose);  // no other check is an upper limit on the dose
  }
}

/// Most important first: what could harm most if it went unseen.
constexpr std::array notMadeOrder = {
    CheckId::medicine,  CheckId::single,           CheckId::rate,         CheckId::daily,
    CheckId::maxSingle, CheckId::maxDaily,         CheckId::maxDoses,     CheckId::period,
    CheckId::schedule,  CheckId::ageBand,          CheckId::weightBand,   CheckId::bsaBand,
    CheckId::route,     CheckId::concentration,    CheckId::infusionTime, CheckId::infusionRate,
    CheckId::low,       CheckId::concentrationLow, CheckId::size,         CheckId::bsaCharted,
};

/// Whether a check that was not made is named on the flag. Not where the reference names no medicine, nor
/// where it states no most doses for an order that says how often; nor beside the sentence that it is for
/// another medicine, which says that nothing of the dose is checked.
bool isListed(const Worksheet& sheet, const Check& check) {
  if (isLowLeftOut(check)) return true;
  if (check.status != CheckStatus::notChecked || check.why == WhyNot::otherMedicine) return false;
  if (check.id == CheckId::maxDoses) return check.why != WhyNot::noMaximum || sheet.given.order.asNeeded;
  return check.id != CheckId::medicine || check.why != WhyNot::notStated;
}

const Need* firstNeed(const Worksheet& sheet) {
  for (const Need& need : sheet.needs)
    if (need.forWhat == Need::For::verdict) return &need;
  return nullptr;
}

/// A strength is refused as it was typed, or because it and the kind of stock contradict each other: then
/// nothing of it is quoted.
PhraseId phraseFor(const Refusal& refusal) {
  if (refusal.code == RefusalCode::strengthShape && refusal.typed.empty())
    return PhraseId::refusal_strengthUnlikeKind;
  return refusalPhrases[static_cast<std::size_t>(refusal.code)];
}

}  // namespace

std::string sentence(const Refusal& refusal) {
  const PhraseId phrase = phraseFor(refusal);
  if (const auto unseen = firstUnseen(refusal.typed); unseen && refusal.code == RefusalCode::unseenCharacter)
    return say(phrase, {{"what", unseenName(*unseen)}, {"number", unseen->number}});
  return say(phrase, {{"typed", withUnseenNamed(refusal.typed)},
                      {"suggestion", withUnseenNamed(refusal.suggestion)},
                      {"hint", refusal.hint}});
}

std::string placeText(const Refusal& refusal) { return isolated(withUnseenNamed(refusal.path)); }

std::string placedSentence(const Refusal& refusal) {
  const std::string why = sentence(refusal);
  return refusal.path.empty() ? why : placeText(refusal) + ": " + why;
}

std::string sentence(const Finding& finding) {
  if (finding.code == FindingCode::basisDoesNotFit) return basisSentence(finding);
  if (finding.code == FindingCode::finishTyping && finding.argument<ArgumentWord>("reason"))
    return say(PhraseId::finding_cannotBeRead);
  std::vector<Filling> fillings = argumentFillings(finding);
  if (const auto times = timesOver(finding)) fillings.push_back({"times", plainPercent(*times)});
  for (Filling& filling : wordFillings(finding)) fillings.push_back(std::move(filling));
  for (Filling& filling : writtenFillings(finding)) fillings.push_back(std::move(filling));
  return say(phraseFor(finding), fillings);
}

std::string sentence(const Need& need) {
  if (need.finer) return say(PhraseId::need_ageFiner);
  for (const NeedPhrase& known : needPhrases)
    if (known.path == need.path) return say(known.phrase);
  return say(PhraseId::need_other);
}

std::string verdictTitle(const Worksheet& sheet) {
  switch (sheet.verdict) {
    case VerdictKind::safe:
      return say(sheet.finding(FindingCode::oneDoseJudged) ? PhraseId::title_safeOneDose
                                                           : PhraseId::title_safe);
    case VerdictKind::ask:
      return say(PhraseId::title_ask);
    case VerdictKind::unsafe:
      return say(sheet.remedy ? PhraseId::title_unsafeAsPrepared : PhraseId::title_unsafe);
    case VerdictKind::notCovered:
      return say(PhraseId::title_notCovered);
    case VerdictKind::undecided:
      break;
  }
  if (sheet.deciding) {
    const Finding& deciding = sheet.findings[*sheet.deciding];
    if (deciding.code != FindingCode::finishTyping) return say(PhraseId::title_undecided);
    const std::string field = fieldName(deciding.field);
    if (field.empty()) return say(PhraseId::title_finishTyping);
    const bool refused = deciding.argument<ArgumentWord>("reason") != nullptr;
    return say(refused ? PhraseId::title_cannotBeRead : PhraseId::title_finishField, {{"field", field}});
  }
  const Need* need = firstNeed(sheet);
  if (!need) return say(PhraseId::title_undecided);
  return say(PhraseId::title_undecidedNeed, {{"what", sentence(*need)}});
}

std::string verdictReason(const Worksheet& sheet) {
  if (sheet.remedy)
    return sentence(sheet.findings[*sheet.deciding]) + " " + remedyText(*sheet.remedy) + firstAsk(sheet);
  if (sheet.deciding) return withSizeDoubt(sheet, sentence(sheet.findings[*sheet.deciding]));
  if (sheet.verdict == VerdictKind::safe) return safeReason(sheet);
  return {};
}

std::string weightUsed(const Worksheet& sheet) {
  const Child& child = sheet.given.child;
  if (!child.weight || !sizesUsed(sheet.given).weight) return {};
  const bool estimated = child.weightMethod == WeightMethod::estimated;
  if (!child.weighed || child.weighed->days().isZero())
    return estimated ? say(PhraseId::weightBy_estimated) : std::string();
  return say(estimated ? PhraseId::weightBy_estimatedOld : PhraseId::weightBy_old,
             {{"age", printed(child.weighed->written)}});
}

std::string belowTitle(const Worksheet& sheet) {
  const std::string reason = verdictReason(sheet);
  const std::string weight = weightUsed(sheet);
  return reason.empty() || weight.empty() ? reason + weight : reason + " " + weight;
}

std::string remedyText(const Remedy& remedy) {
  const auto text = [](const std::optional<Quantity>& quantity) {
    return quantity ? printed(*quantity) : std::string();
  };
  const PhraseId phrase = remedy.cannotBeMadeUp() ? PhraseId::remedy_none
                          : !remedy.leastTime     ? PhraseId::remedy_volume
                          : remedy.leastVolume    ? PhraseId::remedy_volumeAndTime
                                                  : PhraseId::remedy_time;
  return say(phrase, {{"volume", text(remedy.leastVolume)},
                      {"per-kg", text(remedy.volumePerKg)},
                      {"most", text(remedy.greatestVolume)},
                      {"time", text(remedy.leastTime)}});
}

bool isLowLeftOut(const Check& check) {
  return check.id == CheckId::low && check.status == CheckStatus::doesNotApply &&
         (check.why == WhyNot::onceOnly || check.why == WhyNot::asNeeded);
}

std::string checksNotMade(const Worksheet& sheet) {
  // While a figure is being changed nothing is judged, and a list of all there is would only hide that.
  if (sheet.finding(FindingCode::finishTyping) || sheet.finding(FindingCode::notWorkedOut)) return {};
  const auto missed = [&](CheckId id) { return isListed(sheet, sheet.check(id)); };
  const bool maxima = missed(CheckId::maxSingle) && missed(CheckId::maxDaily);
  const bool bands = missed(CheckId::ageBand) && missed(CheckId::weightBand) && missed(CheckId::bsaBand);
  std::string list;
  for (const CheckId id : notMadeOrder) {
    if (!missed(id) || (maxima && id == CheckId::maxDaily)) continue;
    if (bands && (id == CheckId::weightBand || id == CheckId::bsaBand)) continue;
    std::string name = checkName(id);
    if (maxima && id == CheckId::maxSingle) name = say(PhraseId::check_maxima);
    if (bands && id == CheckId::ageBand) name = say(PhraseId::check_bands);
    list.append(list.empty() ? "" : ", ").append(name);
  }
  if (list.empty()) return {};
  return say(PhraseId::checks_notMade, {{"list", list}});
}

std::string checkName(CheckId id) { return say(checkPhrases[static_cast<std::size_t>(id)]); }

std::string whyNotText(WhyNot why) { return say(whyPhrases[static_cast<std::size_t>(why)]); }

std::string mostDosesText(int most) {
  return say(PhraseId::amount_mostDoses, {{"n", std::to_string(most)}}, most);
}

std::string routeText(Route route) { return say(routePhrases[static_cast<std::size_t>(route)]); }

}  // namespace wardchalk
