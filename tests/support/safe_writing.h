#pragma once

#include <span>
#include <string>
#include <string_view>

namespace wardchalk::test {

/// A way of writing that has been misread, what is written instead, and who lists it.
struct UnsafeSpelling {
  std::string_view spelling;
  std::string_view instead;
  std::string_view source;
};

/// Spellings that no text of ours may hold, in the capitals in which they stand here.
[[nodiscard]] std::span<const UnsafeSpelling> unsafeSpellings();

/// For a reader: thousands are set off with commas. For files: they are not.
enum class Written { forReaders, forFiles };

/// What is written unsafely in `text`, with a little of the text around it; empty when nothing is. Looked for
/// are a zero at the end of a decimal (T01; only a body surface keeps its decimals), a point without a digit
/// before it (T01), a number joined to its unit (T03), thousands without or, in files, with commas (T03), and
/// the unsafe spellings (T02, T07).
[[nodiscard]] std::string unsafeWriting(std::string_view text, Written written);

}  // namespace wardchalk::test
