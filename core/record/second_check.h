#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/check/disagreement.h"
#include "core/check/worksheet.h"
#include "core/record/case_file.h"

namespace wardchalk {

/// How one thing stands in the entries of two people who worked from the same papers.
/// `shownOnly`: not alike, for the two to look at, and no difference of the case.
enum class Agreement : std::uint8_t { same, writtenDifferently, differs, onlyFirst, onlySecond, shownOnly };

[[nodiscard]] constexpr std::string_view idOf(Agreement agreement) {
  constexpr std::array<std::string_view, 6> ids = {"same",       "written-differently", "differs",
                                                   "only-first", "only-second",         "shown-only"};
  return ids[static_cast<std::size_t>(agreement)];
}

/// Whether the two mean the same. 17.2 kg and 17200 g do.
[[nodiscard]] constexpr bool agrees(Agreement agreement) {
  return agreement == Agreement::same || agreement == Agreement::writtenDifferently ||
         agreement == Agreement::shownOnly;
}

/// An entry of the case as each of the two typed it.
struct EntryCompared {
  std::string_view path;
  std::string first;
  std::string second;
  Agreement agreement;
};

/// A figure that is worked out from the entries.
enum class Outcome : std::uint8_t {
  weight,
  surface,
  safeDose,
  safeDay,
  orderedDose,
  orderedDay,
  strength,
  amount,
  hourlyRate,
  drops,
};
inline constexpr std::size_t outcomeCount = static_cast<std::size_t>(Outcome::drops) + 1;

/// A figure as each of the two came to it; only figures that at least one of them came to are listed. An
/// amount that must be asked about is compared but not told: `first` and `second` say so.
struct OutcomeCompared {
  Outcome outcome;
  std::string first;
  std::string second;
  Agreement agreement;
};

/// Two people's independent entries of the same papers, laid side by side. It finds what one of them misread
/// or mistyped; it cannot find a paper that is itself wrong, or that belongs to another child.
struct SecondCheck {
  std::vector<EntryCompared> entries;  ///< in the order of the papers; what nobody entered is left out
  std::vector<OutcomeCompared> outcomes;
  std::string firstVerdict;  ///< the words of the flag
  std::string secondVerdict;
  bool sameVerdict = false;

  /// Whether everything agrees: each entry, each figure and the verdict.
  [[nodiscard]] bool agree() const;
};

/// What one person entered, and what was worked out from it.
struct Checked {
  std::span<const WrittenEntry> entries;
  const Worksheet& sheet;
};

/// Compares by value, whatever unit it is written in, and free text but for capitals and spaces. The title of
/// a sheet belongs to whoever made it and is not compared; the source of a reference, which each writes in
/// other words, is shown and does not count. Both sheets are by the same house rules.
[[nodiscard]] SecondCheck compareChecks(const Checked& first, const Checked& second);

/// The entries alone: what differs between two states of one case.
[[nodiscard]] std::vector<EntryCompared> compareEntries(std::span<const WrittenEntry> first,
                                                        std::span<const WrittenEntry> second, Pounds pounds);

/// The first figure that differs, on the way from the papers to the dose, or else the first entry; never the
/// amount to measure, which nobody is to take from here. Nothing when the two agree.
[[nodiscard]] std::optional<Disagreement> disagreementOf(const SecondCheck& check);

/// What is wanting on this sheet and not on the other: two who both have no label in hand are as far.
[[nodiscard]] std::vector<Need> needsBeyond(const Worksheet& other, const Worksheet& sheet);

/// An entry read back, "4 years" or "300 mg in 24 h"; as it was typed where it cannot be read.
[[nodiscard]] std::string enteredText(std::string_view path, const std::string& typed);

/// The name of a figure: "safe dose".
[[nodiscard]] std::string outcomeName(Outcome outcome);

/// "differs", "only the first entered it"; stands beside a sign of its own.
[[nodiscard]] std::string agreementWords(Agreement agreement);

/// "Same result: nothing differs.", "2 entries and 3 results differ."
[[nodiscard]] std::string secondCheckSummary(const SecondCheck& check);

}  // namespace wardchalk
