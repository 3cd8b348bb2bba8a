#pragma once

#include <optional>
#include <string_view>
#include <variant>
#include <vector>

#include "core/number/number.h"
#include "core/rules/house_rules.h"
#include "core/unit/quantity.h"
#include "core/unit/unit_product.h"
#include "core/working/chain.h"
#include "core/working/stated.h"
#include "core/working/step_id.h"

namespace wardchalk {

/// A chain worked out. `result` is what later steps use: the product (or its root), rounded where a rule says
/// so.
struct Solved {
  Chain chain;
  Product product;
  Number result;
  int fixedDecimals = -1;  ///< as in Term
  friend bool operator==(const Solved&, const Solved&) = default;
};

/// A published body-surface formula with powers, which no chain can hold.
struct SurfaceByFormula {
  std::string_view name;
  Term factor;
  Term height;
  Number heightPower;
  Term weight;
  Number weightPower;
  Number unrounded;
  Number result;
  int fixedDecimals = -1;
  friend bool operator==(const SurfaceByFormula&, const SurfaceByFormula&) = default;
};

enum class Relation : std::uint8_t { atMost, atLeast, inside, same };

/// One side of a comparison: a number with its units, and the chain it was found by when it needs one of its
/// own.
struct Side {
  Term term;
  std::optional<Chain> chain;
  Stated stated;           ///< what it is where that is more than the term: a schedule, an age, a route
  UnitProduct under = {};  ///< what the term is per: a week, a mL
  [[nodiscard]] Units units() const { return {term.units, under}; }
  friend bool operator==(const Side&, const Side&) = default;
};

/// An inequality with its truth value; a step of its own.
struct Comparison {
  Side left;
  Relation relation;
  Side right;
  bool holds;
  friend bool operator==(const Comparison&, const Comparison&) = default;
};

/// What can really be measured of an exact amount.
struct Measuring {
  Quantity exact;
  std::optional<Number> measured;    ///< none: no mark keeps every check
  std::optional<Syringe> syringe;    ///< none: tablets, or no device follows from the route
  int syringes = 0;                  ///< how many of them
  Number step;                       ///< distance between neighbouring measurable amounts
  Number below, above;               ///< the two neighbours; equal to `exact` when it lies on a mark
  bool byDecimals = false;           ///< the step comes from the house decimals and not from the device
  bool onMark = true;                ///< the syringe has a mark there
  std::optional<Number> passedOver;  ///< the nearer neighbour, when it would not keep every check
  std::optional<Syringe> full;       ///< another one, drawn full before: `syringe` holds the rest alone
  friend bool operator==(const Measuring&, const Measuring&) = default;
};

/// The rest alone, that is drawn once the other syringe is full: `full` stands.
[[nodiscard]] Measuring restOf(const Measuring& pair);

/// How a result was rounded, and by which house rule; a least volume is rounded up whatever the house says.
struct Rounding {
  StaticText rule;  ///< none where it is rounded up
  int decimals;

  [[nodiscard]] bool isUp() const { return rule.empty(); }
  friend bool operator==(const Rounding&, const Rounding&) = default;
};

/// Parts of one quantity put together before the chain: 3 ft 5 in = 41 in, 4.8 mL + 0.2 mL = 5 mL.
struct Sum {
  std::vector<Quantity> parts;  ///< as entered
  Quantity total;
  friend bool operator==(const Sum&, const Sum&) = default;
};

/// One question of the working with its answer.
struct Step {
  StepId id;
  Units lookingFor;
  std::variant<Solved, SurfaceByFormula, Comparison, Measuring> body;
  std::optional<Rounding> rounding;
  std::vector<Sum> sums;
  friend bool operator==(const Step&, const Step&) = default;
};

}  // namespace wardchalk
