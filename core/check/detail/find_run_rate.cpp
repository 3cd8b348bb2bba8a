#include "core/check/detail/flow.h"

namespace wardchalk::detail {

std::optional<RunRate> findRunRate(Notebook& notes, const Facts& facts, const Checks& checks,
                                   const std::optional<Give>& give) {
  if (!facts.doses.isRate)
    return give ? infusionFlow(notes, *facts.doses.ordered, checks, *give) : std::nullopt;
  if (!bagOf(notes.given.stock, facts.strengths)) {
    if (!facts.strengths.amountWithheld) notes.need(path::strength, Need::For::amount);
    return std::nullopt;
  }
  return rateFlow(notes, facts, checks);
}

}  // namespace wardchalk::detail
