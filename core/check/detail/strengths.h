#pragma once

#include "core/check/detail/notebook.h"

namespace wardchalk::detail {

/// The strength that the amount is worked out by, as far as the papers state one or allow one.
struct Strengths {
  std::optional<StrengthFound> used;
  std::optional<Step> mixing;   ///< how it was found, for a powder after mixing
  bool amountWithheld = false;  ///< a question about the stock leaves no amount
};

/// What the bag of an order that is a rate holds: a stated strength of a liquid that nothing speaks against.
[[nodiscard]] std::optional<Strength> bagOf(const Stock& stock, const Strengths& strengths);

[[nodiscard]] Strengths findStrength(Notebook& notes);

}  // namespace wardchalk::detail
