#include "core/check/detail/flow.h"

namespace wardchalk::detail {

namespace {

/// A running rate is read from the strength in the bag; it must be a liquid.
bool bagIsKnown(const Stock& stock, const Strengths& strengths) {
  return stock.strength && dimensionOf(stock.strength->in.unit) == Dimension::volume &&
         !strengths.amountWithheld;
}

}  // namespace

std::optional<RunRate> findRunRate(Notebook& notes, const Facts& facts, const Checks& checks,
                                   const std::optional<Give>& give) {
  if (!facts.doses.isRate)
    return give ? infusionFlow(notes, *facts.doses.ordered, checks, *give) : std::nullopt;
  if (!notes.allowsAmount() || !bagIsKnown(notes.given.stock, facts.strengths)) return std::nullopt;
  return rateFlow(notes, facts, checks);
}

}  // namespace wardchalk::detail
