#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/check/worksheet.h"
#include "core/number/number.h"
#include "core/working/origin.h"
#include "core/working/step.h"

namespace wardchalk {

/// A number that takes the place of the one a working used: of an entry (in the unit that stands in the
/// chains) or of an earlier step.
struct Instead {
  Origin origin;
  Number value;
  friend bool operator==(const Instead&, const Instead&) = default;
};

/// The steps of a worksheet worked again, chain by chain, with other numbers in some places: what the later
/// lines of a student come to who carried an earlier answer on. Chains know where each of their numbers comes
/// from, so that no formula stands here a second time.
class Replay {
 public:
  /// The key must outlive it; the numbers are its own. With a `last` step none after it is worked, and none
  /// of those has a number here.
  Replay(const Worksheet& key, std::vector<Instead> instead, std::optional<StepId> last = {});
  Replay(Worksheet&& key, std::vector<Instead> instead, std::optional<StepId> last = {}) = delete;

  /// What the step comes to before it is rounded (a root is cut after 20 decimals); null if it has no number.
  [[nodiscard]] const Number* exact(StepId id) const;
  /// What later steps use: rounded by the step's rule, or the number put in its place.
  [[nodiscard]] const Number* result(StepId id) const;
  /// Whether the comparison of this step holds; no value if it is none. What compares words holds as in the
  /// key: no number of a student's moves it.
  [[nodiscard]] std::optional<bool> holds(StepId id) const;
  /// The two sides of a comparison; no value if they are words.
  struct Sides {
    Number left;
    Number right;
  };
  [[nodiscard]] std::optional<Sides> sides(StepId id) const;
  /// The step with the numbers as they stand here, to be shown. It is a step of the key.
  [[nodiscard]] Step shown(StepId id) const;

 private:
  struct Line {
    StepId id;
    std::optional<Number> exact;
    std::optional<Number> result;
    std::optional<Sides> sides;
    Relation relation = Relation::atMost;
    std::optional<bool>
        wordsHold;  ///< of a comparison of words ("40 min" of a chart with "80 min"), as the key has it
  };

  [[nodiscard]] const Line* line(StepId id) const;
  [[nodiscard]] const Number* placed(const Origin& origin) const;
  [[nodiscard]] std::optional<Number> known(const Origin& origin) const;
  [[nodiscard]] Number valueOf(const Chain& chain) const;
  [[nodiscard]] Number factorValue(const Factor& factor) const;
  [[nodiscard]] bool isTurned(const Factor& factor) const;
  [[nodiscard]] Chain placedIn(const Chain& chain) const;
  [[nodiscard]] std::optional<Number> sideValue(const Side& side) const;
  void work(const Step& step);

  const Worksheet& key_;
  std::vector<Instead> instead_;
  std::vector<Line> lines_;
};

/// The step's chain; null if it has none.
[[nodiscard]] const Chain* chainOf(const Worksheet& key, StepId id);

/// Whether the step rests on this entry or step, by way of others too, but not by way of one that has a
/// number put in its place.
[[nodiscard]] bool restsOn(const Worksheet& key, StepId id, const Origin& origin,
                           std::span<const Instead> instead = {});

}  // namespace wardchalk
