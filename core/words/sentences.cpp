#include "core/words/sentences.h"

#include <algorithm>
#include <array>

#include "core/check/slips/slip.h"
#include "core/child/size_slip.h"
#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/number/unseen_text.h"
#include "core/unit/print.h"
#include "core/words/isolated.h"
#include "core/words/phrase_id_list.h"
#include "core/words/phrasebook.h"
#include "core/words/step_words.h"

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

std::string printedArgument(const Argument& argument) {
  if (const auto* quantity = std::get_if<Quantity>(&argument.value))
    return givenText(*quantity, argument.significant);
  if (const auto* number = std::get_if<Number>(&argument.value))
    return show(*number, Grouping::commas).marked();
  return std::get<std::string>(argument.value);
}

std::string textArgument(const Finding& finding, std::string_view name) {
  for (const Argument& argument : finding.arguments)
    if (argument.name == name && std::holds_alternative<std::string>(argument.value))
      return std::get<std::string>(argument.value);
  return {};
}

std::string routeWord(std::string_view id) {
  const auto found = std::find(routeIds.begin(), routeIds.end(), id);
  return found == routeIds.end() ? std::string(id) : routeText(static_cast<Route>(found - routeIds.begin()));
}

struct Reason {
  std::string_view id;
  PhraseId phrase;
};
constexpr std::array basisReasons = {Reason{"day-or-dose", PhraseId::basis_dayOrDose},
                                     Reason{"rate-against-dose", PhraseId::basis_rateAgainstDose},
                                     Reason{"dose-against-rate", PhraseId::basis_doseAgainstRate},
                                     Reason{"continuous-without-rate", PhraseId::basis_continuousWithoutRate},
                                     Reason{"rate-with-doses", PhraseId::basis_rateWithDoses}};

std::string basisSentence(const Finding& finding) {
  const std::string reason = textArgument(finding, "reason");
  for (const Reason& known : basisReasons)
    if (known.id == reason) return say(known.phrase);
  return say(PhraseId::need_other);
}

/// The question of a slip named in an argument; empty when there is none.
std::string slipQuestion(std::string_view id) {
  const auto found = std::find(sizeSlipIds.begin(), sizeSlipIds.end(), id);
  if (found == sizeSlipIds.end()) return {};
  return say(sizeSlipPhrases[static_cast<std::size_t>(found - sizeSlipIds.begin())]);
}

Filling slipFilling(const Finding& finding) {
  std::string first = slipQuestion(textArgument(finding, "slip"));
  std::string second = slipQuestion(textArgument(finding, "other_slip"));
  if (second.empty()) return {"slip", std::move(first)};
  return {"slip", say(PhraseId::slip_two, {{"first", std::move(first)}, {"second", std::move(second)}})};
}

PhraseId implausiblePhrase(std::string_view what) {
  if (what == "weight") return PhraseId::implausible_weight;
  if (what == "height") return PhraseId::implausible_height;
  return what == "both" ? PhraseId::implausible_both : PhraseId::implausible_surface;
}

std::vector<Filling> implausibleFillings(const Finding& finding) {
  std::vector<Filling> values;
  for (const Argument& argument : finding.arguments)
    values.push_back({argument.name, printedArgument(argument)});
  const PhraseId what = implausiblePhrase(textArgument(finding, "what"));
  const bool confirmed = finding.severity == Severity::ask;
  return {{"what", say(what, values)},
          {"advice", say(confirmed ? PhraseId::implausible_confirmed : PhraseId::implausible_check)},
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

struct ManyPhrase {
  std::string_view what;
  PhraseId phrase;
};
constexpr std::array manyPhrases = {
    ManyPhrase{"tablets", PhraseId::many_tablets}, ManyPhrase{"capsules", PhraseId::many_capsules},
    ManyPhrase{"vials", PhraseId::many_vials}, ManyPhrase{"syringes", PhraseId::many_syringes}};

/// "5 vials"
std::string countedText(const Finding& finding) {
  const std::string what = textArgument(finding, "what");
  const auto known = std::find_if(manyPhrases.begin(), manyPhrases.end(),
                                  [&](const ManyPhrase& many) { return many.what == what; });
  std::string count;
  for (const Argument& argument : finding.arguments)
    if (argument.name == "count") count = printedArgument(argument);
  if (known == manyPhrases.end()) return count;
  return say(known->phrase, {{"count", count}}, count == "1" ? 1 : 2);
}

/// What hangs on the two surfaces; empty when the order passes or fails by both.
std::string decidesText(const Finding& finding) {
  const std::string order = textArgument(finding, "order");
  if (order.empty()) return {};
  return say(order == "within" ? PhraseId::differs_within : PhraseId::differs_over);
}

/// Of which time both amounts are; a rate says so by its unit.
std::string timeOfLow(const Finding& finding) {
  const std::string per = textArgument(finding, "per");
  if (per.empty()) return {};
  if (per == idOf(Unit::week)) return say(PhraseId::low_inWeek);
  return say(per == idOf(Unit::day) ? PhraseId::low_inDay : PhraseId::low_inDose);
}

/// Fillings that are words of ours and not figures.
std::vector<Filling> wordFillings(const Finding& finding) {
  if (finding.code == FindingCode::scheduleDiffers)
    return {{"how", say(textArgument(finding, "more") == "more" ? PhraseId::schedule_more
                                                                : PhraseId::schedule_less)}};
  if (finding.code == FindingCode::formDiffersFromRoute)
    return {{"what",
             say(textArgument(finding, "form") == "solid" ? PhraseId::form_solid : PhraseId::form_infusion)},
            {"route", routeWord(textArgument(finding, "route"))}};
  if (finding.code == FindingCode::belowLow || finding.code == FindingCode::belowUsual)
    return {{"when", timeOfLow(finding)}};
  if (finding.code == FindingCode::manyUnits) return {{"what", countedText(finding)}};
  if (finding.code == FindingCode::bsaDiffers) return {{"decides", decidesText(finding)}};
  if (finding.code == FindingCode::sizeImplausible) return implausibleFillings(finding);
  if (isUnlikelySize(finding.code)) return {slipFilling(finding)};
  if (isBandFinding(finding.code)) return {{"band", bandInWords(textArgument(finding, "band"))}};
  if (finding.code == FindingCode::notCoveredRoute)
    return {{"ordered", routeWord(textArgument(finding, "ordered"))},
            {"reference", routeWord(textArgument(finding, "reference"))}};
  return {};
}

PhraseId possibleSlipPhrase(std::string_view id) {
  const auto known =
      std::find_if(slipTable.begin(), slipTable.end(), [id](const SlipInfo& info) { return info.id == id; });
  if (known == slipTable.end()) return PhraseId::need_other;
  return possibleSlipPhrases[static_cast<std::size_t>(known - slipTable.begin())];
}

PhraseId phraseFor(const Finding& finding) {
  if (finding.code == FindingCode::possibleSlip) return possibleSlipPhrase(textArgument(finding, "slip"));
  if (finding.code == FindingCode::strengthDiffers && finding.severity == Severity::note)
    return PhraseId::note_strengthDiffers;
  if (finding.code == FindingCode::tooFast && finding.check == CheckId::infusionTime)
    return PhraseId::tooFast_time;
  if (finding.code == FindingCode::weightUnlikely && textArgument(finding, "age").empty())
    return PhraseId::unlikely_weight;
  if (finding.code == FindingCode::heightUnlikely && textArgument(finding, "age").empty())
    return PhraseId::unlikely_height;
  return findingPhrases[static_cast<std::size_t>(finding.code)];
}

struct NeedPhrase {
  std::string_view path;
  PhraseId phrase;
};
constexpr std::array needPhrases = {
    NeedPhrase{path::age, PhraseId::need_age},
    NeedPhrase{path::height, PhraseId::need_height},
    NeedPhrase{path::weight, PhraseId::need_weight},
    NeedPhrase{path::dose, PhraseId::need_dose},
    NeedPhrase{path::schedule, PhraseId::need_schedule},
    NeedPhrase{path::high, PhraseId::need_high},
    NeedPhrase{path::stockKind, PhraseId::need_stockKind},
    NeedPhrase{path::strength, PhraseId::need_strength},
    NeedPhrase{path::content, PhraseId::need_content},
    NeedPhrase{path::finalVolume, PhraseId::need_finalVolume},
    NeedPhrase{path::infusionVolume, PhraseId::need_infusionVolume},
    NeedPhrase{path::infusionOver, PhraseId::need_infusionOver},
};

std::string comparedText(const Compared& compared, int significant) {
  if (const auto* quantity = std::get_if<Quantity>(&compared))
    return printed(*quantity, Grouping::commas, significant);
  if (const auto* text = std::get_if<std::string>(&compared)) return *text;
  return {};
}

std::string safeReason(const Worksheet& sheet) {
  if (!sheet.worst) return {};
  const Check& check = sheet.check(*sheet.worst);
  int significant = 4;
  if (std::holds_alternative<Quantity>(check.value) && std::holds_alternative<Quantity>(check.limit))
    significant = digitsApart(std::get<Quantity>(check.value).value, std::get<Quantity>(check.limit).value);
  const auto with = [&](PhraseId id) {
    return say(id, {{"ordered", comparedText(check.value, significant)},
                    {"limit", comparedText(check.limit, significant)}});
  };
  switch (check.id) {
    case CheckId::daily:
      return with(PhraseId::safe_daily);
    case CheckId::period:
      return with(PhraseId::safe_period);
    case CheckId::maxSingle:
      return with(PhraseId::safe_maxSingle);
    case CheckId::maxDaily:
      return with(PhraseId::safe_maxDaily);
    case CheckId::rate:
      return with(PhraseId::safe_rate);
    default:
      return with(PhraseId::safe_single);  // no other check is an upper limit on the dose
  }
}

/// Most important first: what could harm most if it went unseen.
constexpr std::array notMadeOrder = {
    CheckId::single,       CheckId::rate,         CheckId::daily,    CheckId::maxSingle,
    CheckId::maxDaily,     CheckId::period,       CheckId::schedule, CheckId::ageBand,
    CheckId::weightBand,   CheckId::bsaBand,      CheckId::route,    CheckId::concentration,
    CheckId::infusionTime, CheckId::infusionRate, CheckId::low,      CheckId::concentrationLow,
    CheckId::size,         CheckId::bsaCharted,
};

const Need* firstNeed(const Worksheet& sheet) {
  for (const Need& need : sheet.needs)
    if (need.forWhat == Need::For::verdict) return &need;
  return nullptr;
}

}  // namespace

std::string sentence(const Refusal& refusal) {
  const PhraseId phrase = refusalPhrases[static_cast<std::size_t>(refusal.code)];
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
  std::vector<Filling> fillings;
  for (const Argument& argument : finding.arguments)
    fillings.push_back({argument.name, printedArgument(argument)});
  for (Filling& filling : wordFillings(finding)) fillings.push_back(std::move(filling));
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
      return say(PhraseId::title_safe);
    case VerdictKind::ask:
      return say(PhraseId::title_ask);
    case VerdictKind::unsafe:
      return say(PhraseId::title_unsafe);
    case VerdictKind::notCovered:
      return say(PhraseId::title_notCovered);
    case VerdictKind::undecided:
      break;
  }
  if (sheet.deciding)
    return say(sheet.findings[*sheet.deciding].code == FindingCode::finishTyping
                   ? PhraseId::title_finishTyping
                   : PhraseId::title_undecided);
  const Need* need = firstNeed(sheet);
  if (!need) return say(PhraseId::title_undecided);
  return say(PhraseId::title_undecidedNeed, {{"what", sentence(*need)}});
}

std::string verdictReason(const Worksheet& sheet) {
  if (sheet.deciding) return sentence(sheet.findings[*sheet.deciding]);
  if (sheet.verdict == VerdictKind::safe) return safeReason(sheet);
  return {};
}

std::vector<const Finding*> findingsBeside(const Worksheet& sheet, bool questionsStand) {
  const bool sizeUnusable = sheet.deciding &&
                            sheet.findings[*sheet.deciding].code == FindingCode::sizeImplausible &&
                            sheet.verdict == VerdictKind::undecided;
  std::vector<const Finding*> beside;
  for (std::size_t i = 0; i < sheet.findings.size(); ++i) {
    const Finding& finding = sheet.findings[i];
    const bool ofTheSize = finding.code == FindingCode::belowLow || finding.code == FindingCode::belowUsual ||
                           finding.code == FindingCode::possibleSlip;
    if (i == sheet.deciding || (questionsStand && finding.severity == Severity::ask) ||
        (sizeUnusable && ofTheSize))
      continue;
    beside.push_back(&finding);
  }
  return beside;
}

std::string checksNotMade(const Worksheet& sheet) {
  // While a figure is being changed nothing is judged, and a list of all there is would only hide that.
  if (sheet.finding(FindingCode::finishTyping) || sheet.finding(FindingCode::notWorkedOut)) return {};
  const auto missed = [&](CheckId id) { return sheet.check(id).status == CheckStatus::notChecked; };
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

std::string bandInWords(std::string_view band) {
  struct Sign {
    std::string_view sign;
    PhraseId phrase;
  };
  constexpr std::array signs = {Sign{"≥ ", PhraseId::band_from}, Sign{"> ", PhraseId::band_over},
                                Sign{"< ", PhraseId::band_below}, Sign{"≤ ", PhraseId::band_upTo}};
  std::string text;
  while (!band.empty()) {
    const std::size_t end = std::min(band.find(", "), band.size());
    const std::string_view edge = band.substr(0, end);
    for (const Sign& known : signs)
      if (edge.starts_with(known.sign))
        text.append(text.empty() ? "" : ", ")
            .append(say(known.phrase, {{"edge", std::string(edge.substr(known.sign.size()))}}));
    band.remove_prefix(std::min(end + 2, band.size()));
  }
  return text;
}

std::string routeText(Route route) { return say(routePhrases[static_cast<std::size_t>(route)]); }

std::string filedArgument(const Argument& argument) {
  if (const auto* quantity = std::get_if<Quantity>(&argument.value))
    return filed(*quantity, argument.significant);
  if (const auto* number = std::get_if<Number>(&argument.value)) return exactText(*number);
  return withoutThousands(std::get<std::string>(argument.value));
}

}  // namespace wardchalk
