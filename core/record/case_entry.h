#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"
#include "core/medicine/case.h"
#include "core/number/refusal.h"

namespace wardchalk {

/// What an entry of a case is written as: text (a quantity, a word, free text), a yes-or-no, or a count.
enum class EntryKind : std::uint8_t { text, flag, count };

/// What was read of an entry: its safe form, and the fields that it fills besides its own. Both are empty for
/// a word, a tick, a count or free text, which mean no more than they say.
struct Taken {
  std::string safe;
  std::vector<AlsoFills> also;
};

/// One entry of a case: its path and how its text becomes part of the case. Files, rows of a spreadsheet and
/// the form all go through this one table, so that a field reads the same wherever it is written.
struct CaseEntry {
  std::string_view path;
  EntryKind kind;
  /// Reads the text into the case, or says why it cannot. A flag reads "true" or "false", a count its digits.
  Result<Taken> (*set)(Case& inputs, std::string_view text, const EntrySetting& setting);
};

/// Every entry that a case can have, in the order of the papers.
[[nodiscard]] std::span<const CaseEntry> caseEntries();

/// The entry with this path; null if there is none.
[[nodiscard]] const CaseEntry* findEntry(std::string_view path);

/// An entry of a case as it stands in a file: its path and its text exactly as typed ("17.2 kg", "true",
/// "4").
struct WrittenEntry {
  std::string path;
  std::string text;
  friend bool operator==(const WrittenEntry&, const WrittenEntry&) = default;
};

/// How what stands in a file is read.
inline constexpr EntrySetting fileSetting{EntryFrom::file, std::nullopt, std::nullopt, false};

/// Reads `text` into the entry `path`, and into the others that it speaks of (a range fills both ends); the
/// refusal carries the path.
[[nodiscard]] Result<Done> setEntry(Case& inputs, std::string_view path, std::string_view text,
                                    const EntrySetting& setting = fileSetting);

/// Reads an entry of a file into the case. The result: the fields that it fills, each with its text: itself
/// as it was written, or, where it fills others besides, all of them in the safe form. Refused where one of
/// them stands among `filled` already: what is said twice may be said in two ways.
[[nodiscard]] Result<std::vector<WrittenEntry>> fillFrom(Case& inputs, std::string_view path,
                                                         std::string_view text,
                                                         std::span<const WrittenEntry> filled);

}  // namespace wardchalk
