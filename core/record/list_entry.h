#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/record/case_entry.h"
#include "core/record/reference_list.h"

namespace wardchalk {

/// Builds an entry of a reference list key by key, from a file or from the row of a table.
class ListEntryBuilder {
 public:
  /// What kind of text a key takes ("high", "source.edition"); none when an entry has no such key.
  [[nodiscard]] static std::optional<EntryKind> kindOf(std::string_view key);
  /// The keys that a list writes before the figures and after them, in order.
  [[nodiscard]] static std::vector<std::string_view> wordKeys();

  /// Reads the text of a key, or says why it cannot be read; the refusal carries the key.
  [[nodiscard]] Result<Done> set(std::string_view key, std::string_view text);
  /// The entry, or why it is none: a key is missing, or two do not go together.
  [[nodiscard]] Result<ListEntry> finish();

 private:
  [[nodiscard]] Result<Done> addFigure(std::string_view path, std::string_view text);

  ListEntry entry_;
  Case trial_;
  std::vector<std::string_view> seen_;
};

/// A figure's key in a list: "high" for the path "reference.high"; empty for any other path.
[[nodiscard]] std::string_view listKeyOf(std::string_view path);

/// The text of a word key, such as "source.edition"; empty when it is not stated.
[[nodiscard]] std::string wordOf(const ListEntry& entry, std::string_view key);

}  // namespace wardchalk
