#include <algorithm>

#include "core/check/judgement.h"
#include "core/check/sizes_used.h"
#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/field_names.h"
#include "core/words/finding_words.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "core/words/stated_words.h"

namespace wardchalk {

namespace {

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
  return say(PhraseId::doubt_beside, {{"reason", std::move(reason)}, {"what", doubtText(*doubt)}});
}

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

const Need* firstNeed(const Worksheet& sheet) {
  for (const Need& need : sheet.needs)
    if (need.forWhat == Need::For::verdict) return &need;
  return nullptr;
}

}  // namespace

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

}  // namespace wardchalk
