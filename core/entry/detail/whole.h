#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "core/entry/detail/amount.h"

namespace wardchalk::entry {

/// A value with its safe form.
template <typename T>
struct Meaning {
  T value;
  std::string safe;
  std::optional<std::string> whole =
      std::nullopt;  ///< all that the entry says, where that is more than `safe`
};

/// Reads an entry from its beginning to its end: `read` takes what its field begins with, and nothing but a
/// full stop may be left behind it.
template <typename T, typename Read>
EntryResult<T> readWhole(std::string_view text, const EntrySetting& setting, Read read) {
  if (auto refusal = refusedLength(text)) return UnreadEntry{*std::move(refusal), {}};
  Cursor cursor(text);
  if (auto refusal = refusedText(cursor)) return UnreadEntry{*std::move(refusal), {}};
  Findings findings(setting);
  Result<Meaning<T>> meaning = read(cursor, findings);
  if (!meaning) return UnreadEntry{meaning.refusal(), {}};
  if (auto refusal = refusedRest(cursor, findings)) return UnreadEntry{*std::move(refusal), {}};
  std::string whole = meaning->whole.value_or(meaning->safe);
  return std::move(findings).finish<T>(std::move(meaning->value), std::move(meaning->safe), std::move(whole));
}

}  // namespace wardchalk::entry
