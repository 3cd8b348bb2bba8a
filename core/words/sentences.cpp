#include "core/words/sentences.h"

#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/finding_words.h"
#include "core/words/phrase_id_list.h"
#include "core/words/phrasebook.h"
#include "core/words/stated_words.h"

namespace wardchalk {

namespace {

constexpr std::array findingPhrases = {
#define WARDCHALK_FINDING(name, id, severity) PhraseId::finding_##name,
#include "core/check/finding_codes.def"
#undef WARDCHALK_FINDING
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

}  // namespace

std::string asWritten(const Stated& written, const std::string& compared) {
  return say(PhraseId::rate_asWritten, {{"written", statedText(written)}, {"compared", compared}});
}

std::string doubtText(const Finding& doubt) { return say(doubtPhrase(doubt), argumentFillings(doubt)); }

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

std::string routeText(Route route) { return say(routePhrases[static_cast<std::size_t>(route)]); }

std::string mostDosesText(int most) {
  return say(PhraseId::amount_mostDoses, {{"n", std::to_string(most)}}, most);
}

}  // namespace wardchalk
