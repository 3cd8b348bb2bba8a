#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/unit/quantity.h"
#include "core/unit/unit_product.h"
#include "core/working/chain.h"
#include "core/working/origin.h"

namespace wardchalk {

/// A value found on the way, ready to stand in the next chain: how much, per what, and where it was found. It
/// cannot be made without its units.
struct Found {
  Found(Quantity howMuch, UnitProduct per, Origin from)
      : amount(std::move(howMuch)), under(std::move(per)), origin(from) {}

  Quantity amount;
  UnitProduct under;  ///< what it is per: a dose, a day, a mL; empty for a plain amount
  Origin origin;

  [[nodiscard]] const Number& value() const { return amount.value; }
  [[nodiscard]] Units units() const { return {{amount.unit}, under}; }
  friend bool operator==(const Found&, const Found&) = default;
};

/// What a chain without a root comes to. No value when it does not come out in the units wanted, or these
/// have not exactly one unit above.
[[nodiscard]] std::optional<Found> foundBy(const Chain& chain, const Units& wanted, Origin origin);

/// The same of a chain that is already worked out.
[[nodiscard]] std::optional<Found> foundBy(const Solution& solution, Origin origin);

/// A found value as a factor: "84 mg over 1 dose".
[[nodiscard]] Factor factorOf(const Found& found);

/// How much is in one: of 84 mg/dose, 84 mg in one dose. No value when the found one is not per just that.
[[nodiscard]] std::optional<Found> inOne(Unit unit, const Found& found);

}  // namespace wardchalk
