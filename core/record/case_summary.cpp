#include "core/record/case_summary.h"

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

/// An amount that must not be taken for one that may be given at once.
std::string afterAsking(std::string amount, bool ask) {
  return ask && !amount.empty() ? say(PhraseId::row_afterAsking, {{"amount", amount}}) : amount;
}

std::string giveText(const Worksheet& sheet) {
  if (!sheet.give || !sheet.give->measured || !sheet.give->doseGiven) return {};
  const Give& give = *sheet.give;
  std::string amount = filed({*give.measured, give.exact.unit}) + " (" + filed(*give.doseGiven) + ")";
  return afterAsking(std::move(amount), give.afterAsking);
}

std::string flowText(const std::optional<RunRate>& rate, std::optional<Flow> RunRate::*flow,
                     std::string_view per) {
  if (!rate || !((*rate).*flow) || !((*rate).*flow)->measured) return {};
  const Flow& found = *((*rate).*flow);
  return afterAsking(filed({*found.measured, found.exact.unit}).append(per), rate->afterAsking);
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
  return {std::string(idOf(sheet.verdict)),
          std::move(reason),
          surfaceText(sheet.bsa),
          sheet.weight ? show(sheet.weight->kg).marked() : std::string(),
          filedOr(sheet.orderedDose),
          filedOr(sheet.orderedDay),
          filedOr(sheet.limitDose),
          filedOr(sheet.limitDay),
          giveText(sheet),
          amountWords(sheet).device,
          flowText(sheet.rate, &RunRate::mlPerHour, "/h"),
          flowText(sheet.rate, &RunRate::dropsPerMinute, "/min"),
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
