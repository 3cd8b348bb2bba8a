#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/medicine/case.h"
#include "core/number/refusal.h"

namespace wardchalk {

/// What an entry of a case is written as: text (a quantity, a word, free text), a yes-or-no, or a count.
enum class EntryKind : std::uint8_t { text, flag, count };

/// One entry of a case: its path and how its text becomes part of the case. Files, rows of a spreadsheet and
/// the form all go through this one table, so that a field reads the same wherever it is written.
struct CaseEntry {
  std::string_view path;
  EntryKind kind;
  /// Reads the text into the case, or says why it cannot. A flag reads "true" or "false", a count its digits.
  Result<Done> (*set)(Case& inputs, std::string_view text);
};

/// Every entry that a case can have, in the order of the papers.
[[nodiscard]] std::span<const CaseEntry> caseEntries();

/// The entry with this path; null if there is none.
[[nodiscard]] const CaseEntry* findEntry(std::string_view path);

/// Reads `text` into the entry `path`; the refusal carries the path.
[[nodiscard]] Result<Done> setEntry(Case& inputs, std::string_view path, std::string_view text);

}  // namespace wardchalk
