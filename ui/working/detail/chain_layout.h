#pragma once

#include <QHash>
#include <QString>
#include <vector>

#include "core/working/chain.h"
#include "ui/working/box.h"

namespace wardchalk::ui::detail {

/// What stands after the equals sign of a chain, in words already chosen.
struct ChainResult {
  QString product;    ///< as near as it is printed: "84 mg in one dose"
  bool exact = true;  ///< whether "=" may stand before it
  QString rounded;    ///< after rounding by a house rule; empty when nothing was rounded
  QString rule;       ///< "2 decimals"
  QString origin;     ///< "step:bsa", so that the result lights up with the places that use it
  QString under;      ///< for a root: the number under it as printed; empty when there is none
  bool underExact = true;
  QString leftOver;  ///< units that stand in place of all of it, when the chain does not come out as wanted
};

/// A chain, which of its units are struck, what it comes to, and the words under its numbers.
struct ChainParts {
  const Chain& chain;
  const std::vector<Cancellation>& pairs;
  const ChainResult& result;
  const QHash<QString, QString>& tags;
};

/// A chain set out in lines no wider than `width`.
struct ChainBox {
  Box box;
  int lastStage = 0;  ///< the stage at which its last part appears
};

/// The first factor appears at stage `stage` (all of them under a root), each further one a stage later, then
/// each struck pair, what stands under a root, the product, and what it is rounded to.
[[nodiscard]] ChainBox chainBox(const ChainParts& parts, const Metrics& metrics, double width, int stage);

}  // namespace wardchalk::ui::detail
