#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/number/refusal.h"
#include "core/number/static_text.h"

namespace wardchalk {

/// What is said beside an entry that was read.
enum class EntryRemark : std::uint8_t {
  trailingZero,  ///< "5.0 mg" is read and loses its zero: 50 at a glance (T01)
};

/// A field that an entry fills besides its own, and with what: both ends of a range, a schedule, as needed.
/// It is done where it can be seen, or not at all.
struct AlsoFills {
  StaticText path;
  std::string text;  ///< in the safe form
  friend bool operator==(const AlsoFills&, const AlsoFills&) = default;
};

/// An entry that was read.
template <typename T>
struct ReadEntryAs {
  T value;
  std::string safe;  ///< the safe form in the spelling of files; read again it is the same
  std::vector<EntryRemark> remarks;
  std::vector<AlsoFills> also;
};

/// An entry that was not read.
struct UnreadEntry {
  /// Why. Its `suggestion` is what a button may write: it is read, and says all that was typed; empty where
  /// there is no such line.
  Refusal refusal;
  /// A question with two answers, none preferred: what each of two buttons writes. Empty where nothing is
  /// asked.
  std::vector<std::string> answers;
};

template <typename T>
using EntryResult = std::variant<ReadEntryAs<T>, UnreadEntry>;

/// The same without the value: what a line of a form shows.
struct EntryAnswer {
  bool isRead = false;
  std::string safe;
  std::vector<EntryRemark> remarks;
  std::vector<AlsoFills> also;
  std::optional<Refusal> refusal;
  std::vector<std::string> answers;
};

template <typename T>
[[nodiscard]] EntryAnswer answerOf(const EntryResult<T>& result) {
  if (const auto* unread = std::get_if<UnreadEntry>(&result))
    return {false, {}, {}, {}, unread->refusal, unread->answers};
  const auto& read = std::get<ReadEntryAs<T>>(result);
  return {true, read.safe, read.remarks, read.also, std::nullopt, {}};
}

/// The value alone, or why there is none.
template <typename T>
[[nodiscard]] Result<T> valueOf(EntryResult<T> result) {
  if (auto* unread = std::get_if<UnreadEntry>(&result)) return std::move(unread->refusal);
  return std::move(std::get<ReadEntryAs<T>>(result).value);
}

}  // namespace wardchalk
