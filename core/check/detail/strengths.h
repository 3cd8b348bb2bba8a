#pragma once

#include "core/check/detail/notebook.h"

namespace wardchalk::detail {

/// The strength that the amount is worked out by, as far as the papers state one or allow one.
struct Strengths {
  std::optional<StrengthFound> used;
  std::optional<Step> mixing;   ///< how it was found, for a powder after mixing
  bool amountWithheld = false;  ///< a question about the stock leaves no amount
};

[[nodiscard]] Strengths findStrength(Notebook& notes);

}  // namespace wardchalk::detail
