#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/check/worksheet.h"
#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/working/found.h"

namespace wardchalk::detail {

/// The parts of a working, in the order a nurse writes them.
enum class Section : std::uint8_t { size, limits, ordered, comparisons, amount };

/// Whether the steps of a working are written down, or only its figures wanted.
enum class Steps : std::uint8_t { written, unwritten };

/// What the stages write down beside their results: steps, what there is to tell and what is wanting. It is
/// written to and, but for what has been told, never read from to find a number.
struct Notebook {
  Notebook(const Case& papers, const HouseRules& house, Steps kept = Steps::written)
      : given(papers), rules(house), steps(kept) {}

  const Case& given;
  const HouseRules& rules;
  const Steps steps;
  std::vector<Finding> findings;
  std::vector<Need> needs;
  std::array<std::vector<Step>, 5> sections;
  std::vector<Step> weightSteps;   ///< to be shown only where the weight in kg is used
  std::vector<Step> surfaceSteps;  ///< to be shown only where the surface is used
  bool weightUsed = false;
  bool surfaceUsed = false;
  bool failed = false;  ///< a chain did not come out in the units wanted: nothing of this may be shown

  [[nodiscard]] bool writesSteps() const { return steps == Steps::written; }
  [[nodiscard]] std::vector<Step>& in(Section section) { return sections[static_cast<std::size_t>(section)]; }
  [[nodiscard]] bool hasTold(FindingCode code) const;
  /// Whether nothing told or wanting so far leaves the order unjudged, unsafe or not covered: only then may
  /// an amount be worked out.
  [[nodiscard]] bool allowsAmount() const;

  void need(StaticText path, Need::For forWhat, bool finer = false);
  Finding& tell(FindingCode code, StaticText field, std::vector<Argument> arguments = {},
                std::optional<CheckId> check = std::nullopt);

  /// Leaves the step out where none is written; a step that is dear to make is not made there to begin with.
  void write(Section section, Step step);

  /// Works the chain, writes the step, gives the value found. A chain of one factor needs no step of its own.
  /// A chain that does not come out in the units wanted fails the whole reckoning.
  std::optional<Found> solveStep(Section section, StepId id, Chain chain, const Units& wanted);
  /// The same without a step: what nobody would write as a line of its own.
  std::optional<Found> solveUnwritten(const Chain& chain, const Units& wanted, Origin origin);
  /// What is found, or a failure of the whole reckoning when it is not there.
  template <typename T>
  std::optional<T> found(std::optional<T> value) {
    if (!value) failed = true;
    return value;
  }
};

}  // namespace wardchalk::detail
