#include "core/record/case_summary.h"

#include "core/check/shown.h"
#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/amount_words.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

std::string filedOr(const std::optional<Quantity>& quantity) {
  return quantity ? filed(*quantity) : std::string();
}
std::string filedOr(const std::optional<Limit>& limit) {
  return limit ? filed(limit->amount) : std::string();
}

std::string surfaceText(const std::optional<SurfaceFound>& bsa) {
  if (!bsa) return {};
  return (bsa->fixedDecimals >= 0 ? fixedText(bsa->m2, bsa->fixedDecimals) : show(bsa->m2).marked()) + " m2";
}

std::string giveText(const Worksheet& sheet) {
  if (!sheet.give || !sheet.give->measured || !sheet.give->doseGiven) return {};
  const Give& give = *sheet.give;
  std::string amount = filed({*give.measured, give.exact.unit}) + " (" + filed(*give.doseGiven) + ")";
  if (const std::string use = limitOfUse(sheet.given); !use.empty()) amount.append(", ").append(use);
  return amount;
}

std::string flowText(const std::optional<RunRate>& rate, std::optional<Flow> RunRate::*flow,
                     std::string_view per) {
  if (!rate || !((*rate).*flow) || !((*rate).*flow)->measured) return {};
  const Flow& found = *((*rate).*flow);
  return filed({*found.measured, found.exact.unit}).append(per);
}

template <typename List, typename Id>
std::string idsOf(const List& list, Id id) {
  std::string ids;
  for (const auto& one : list) ids.append(ids.empty() ? "" : " ").append(id(one));
  return ids;
}

}  // namespace

std::vector<std::string> summaryOf(const Worksheet& sheet) {
  std::string reason = verdictReason(sheet);
  if (reason.empty()) reason = verdictTitle(sheet);
  const Shown seen(sheet);
  // in place of what is there and may not be seen: a blank cell would say that there is nothing
  const auto cell = [&](std::string text, const std::string& whole) {
    if (whole.empty() || !(seen.waits() || seen.awaitsSecondCheck())) return text;
    return say(seen.waits() ? PhraseId::row_askFirst : PhraseId::row_secondCheck);
  };
  const auto flowCell = [&](std::optional<Flow> RunRate::*flow, std::string_view per) {
    return cell(flowText(seen->rate, flow, per), flowText(sheet.rate, flow, per));
  };
  return {std::string(idOf(sheet.verdict)),
          std::move(reason),
          surfaceText(sheet.bsa),
          sheet.weight ? show(sheet.weight->kg).marked() : std::string(),
          filedOr(sheet.orderedDose),
          filedOr(sheet.orderedDay),
          filedOr(sheet.limitDose),
          filedOr(sheet.limitDay),
          cell(giveText(seen.sheet()), giveText(sheet)),
          cell(amountWords(seen).device, giveText(sheet)),
          flowCell(&RunRate::mlPerHour, "/h"),
          flowCell(&RunRate::dropsPerMinute, "/min"),
          idsOf(sheet.findings, [](const Finding& finding) { return idOf(finding.code); }),
          idsOf(sheet.needs, [](const Need& need) { return need.path; }),
          {}};
}

std::vector<std::string> summaryOf(const Refusal& refusal) {
  std::vector<std::string> cells(summaryColumns.size());
  cells.back() = placedSentence(refusal);
  return cells;
}

}  // namespace wardchalk
