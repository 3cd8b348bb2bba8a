#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/practice/lines/chain_facts.h"
#include "core/working/chain.h"

namespace wardchalk {

/// A chain being put together out of facts, and what is looked for. A plain value: each change below gives a
/// new one, so that what went before is kept by keeping it.
struct ChainWork {
  Chain chain;
  Units wanted;
  friend bool operator==(const ChainWork&, const ChainWork&) = default;
};

// Changes. Places run from 0; one beyond the last factor changes nothing, and a place to put something at
// beyond the end means the end.

/// The fact stands before the factor at `place`.
[[nodiscard]] ChainWork withFact(ChainWork work, const ChainFact& fact, std::size_t place);
/// The factor is turned over: what was above the bar is below.
[[nodiscard]] ChainWork withTurned(ChainWork work, std::size_t place);
/// The factor is taken out.
[[nodiscard]] ChainWork without(ChainWork work, std::size_t place);
/// The factor is taken out and stands at `to` afterwards.
[[nodiscard]] ChainWork withMoved(ChainWork work, std::size_t from, std::size_t to);
/// The square root of the whole is taken, or no longer.
[[nodiscard]] ChainWork withRoot(ChainWork work, bool rooted);

/// What a chain comes to as it stands.
struct ChainState {
  Product product;            ///< before a root is taken: what cancels against what, and what is left
  std::optional<Units> left;  ///< after the root; none where the units under it have no root
  Number value;               ///< after the root, cut after 20 decimals where it does not end
  bool exact = true;          ///< false: `value` is cut
  bool isWanted =
      false;  ///< what is left is what is looked for. It says nothing of whether the facts are the right ones
};
[[nodiscard]] ChainState stateOf(const ChainWork& work);

/// The chain as a student's line, "120 mg/(m²·dose) × 0.70 m²", which `readStudentLine` reads back to the
/// same value and units. Empty for an empty chain. A gram is read back as what the reader is asked to take it
/// for.
[[nodiscard]] std::string lineText(const Chain& chain);

}  // namespace wardchalk
