#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/number/refusal.h"

namespace wardchalk {

struct JsonMember;

/// A value read from a JSON text, with every number kept as the text that stood there, so that no value
/// passes through binary floating point.
struct JsonValue {
  enum class Kind : std::uint8_t { null, flag, number, text, list, object };
  Kind kind = Kind::null;
  std::string text;  ///< of a text, a number ("90", "7.5") or a flag ("true")
  std::vector<JsonValue> items;
  std::vector<JsonMember> members;  ///< in the order of the file

  [[nodiscard]] const JsonValue* member(std::string_view key) const;
};

/// A key of an object with its value: a pair that may be named before JsonValue is whole, as std::pair may
/// not.
struct JsonMember {
  std::string name;
  JsonValue value;
};

/// Limits that a file of ours never comes near.
inline constexpr std::size_t largestFile = std::size_t{4} << 20U;
inline constexpr int deepestNesting = 12;

/// Reads one JSON text whole, or says why not: damaged, a key that stands twice, nested too deeply, not
/// UTF-8, a NUL byte, a text with what Unicode keeps for no character.
[[nodiscard]] Result<JsonValue> readJson(std::string_view text);

}  // namespace wardchalk
