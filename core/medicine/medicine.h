#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/child/age.h"
#include "core/medicine/schedule.h"
#include "core/unit/quantity.h"

namespace wardchalk {

enum class Route : std::uint8_t {
  oral,
  enteral,
  intravenous,
  intramuscular,
  subcutaneous,
  rectal,
  inhaled,
  topical,
};

inline constexpr std::array<std::string_view, 8> routeIds = {
    "oral", "enteral", "intravenous", "intramuscular", "subcutaneous", "rectal", "inhaled", "topical"};
[[nodiscard]] constexpr std::string_view idOf(Route route) {
  return routeIds[static_cast<std::size_t>(route)];
}

/// Whether the route is given with a needle or into a vein.
[[nodiscard]] constexpr bool isInjection(Route route) {
  return route == Route::intravenous || route == Route::intramuscular || route == Route::subcutaneous;
}

/// The prescriber's dose, route and schedule.
struct Order {
  std::string medicine;
  std::optional<DoseAmount> dose;
  std::optional<Route> route;
  std::optional<Schedule> schedule;
  bool asNeeded = false;
  std::optional<int> maxDosesPerDay;

  friend bool operator==(const Order&, const Order&) = default;
};

/// The four ways to state an edge of a band: from (at or above), over (above), below, up to (at or below).
template <typename T>
struct Band {
  std::optional<T> from;
  std::optional<T> over;
  std::optional<T> below;
  std::optional<T> upTo;

  [[nodiscard]] bool isStated() const { return from || over || below || upTo; }
  friend bool operator==(const Band&, const Band&) = default;
};

/// What the drug reference allows. Always the user's own: none is shipped.
struct Reference {
  std::string medicine;                 ///< what it is for; empty: not stated
  std::vector<std::string> alsoCalled;  ///< the ward's other names of the same: a brand, a salt
  std::optional<DoseAmount> low;
  std::optional<DoseAmount> high;
  bool limitOnly = false;  ///< the high end is a ceiling and no usual dose
  std::optional<Schedule> schedule;
  std::optional<Route> route;
  std::optional<DoseAmount> maxPerDose;
  std::optional<DoseAmount> maxPerDay;
  std::optional<int> maxDosesPerDay;
  Band<Age> age;
  Band<MixedQuantity> weight;
  Band<Quantity> bsa;
  std::optional<Strength> maxConcentration;
  std::optional<Strength> minConcentration;
  std::optional<Quantity> minInfusionTime;
  std::optional<DoseAmount> maxInfusionRate;
  std::string source;
  bool secondCheckRequired = false;  ///< by the ward's list: the amount waits for a second check that agrees

  friend bool operator==(const Reference&, const Reference&) = default;
};

enum class StockKind : std::uint8_t { liquid, powder, solid };

/// What is in hand.
struct Stock {
  std::optional<StockKind> kind;
  std::optional<Strength> strength;
  std::optional<Quantity> content;
  std::optional<Quantity> diluent;
  std::optional<Quantity> finalVolume;
  std::optional<Quantity> displacement;
  std::optional<int> dividesInto;  ///< parts a tablet may be cut into: 1, 2 or 4; none: not known

  /// A capsule is given whole.
  [[nodiscard]] bool isCapsule() const { return strength && strength->in.unit == Unit::capsule; }

  friend bool operator==(const Stock&, const Stock&) = default;
};

/// How the dose runs in.
struct Infusion {
  std::optional<Quantity> volume;
  std::optional<Quantity> over;
  std::optional<Quantity> dropFactor;  ///< drops in one mL

  [[nodiscard]] bool isStated() const { return volume || over || dropFactor; }
  friend bool operator==(const Infusion&, const Infusion&) = default;
};

}  // namespace wardchalk
