#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/medicine/case.h"
#include "core/number/refusal.h"
#include "core/record/case_entry.h"
#include "core/record/json_value.h"

namespace wardchalk {

/// A case together with the text of each of its entries, so that a form can show what was typed.
struct CaseFile {
  Case inputs;
  std::vector<WrittenEntry> entries;
};

/// Whether JSON of this kind can be an entry, and what it must be: "a whole number".
[[nodiscard]] bool kindFits(EntryKind kind, JsonValue::Kind found);
[[nodiscard]] std::string_view kindName(EntryKind kind);

/// Reads a case file whole or refuses it whole, with the path of what is wrong.
[[nodiscard]] Result<CaseFile> readCaseFile(std::string_view json);
/// The same for a case that stands within another file.
[[nodiscard]] Result<CaseFile> readCaseFile(const JsonValue& value);

/// As readCaseFile, for who needs the case alone.
[[nodiscard]] Result<Case> readCase(std::string_view json);

/// The case file that holds these entries, each text as it stands. Entries must be readable: a form with
/// refused text is not saved.
[[nodiscard]] std::string writeCaseFile(std::span<const WrittenEntry> entries);

}  // namespace wardchalk
