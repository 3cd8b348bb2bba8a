#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/number/refusal.h"
#include "core/number/unseen_text.h"
#include "core/record/file_head.h"
#include "core/record/json_value.h"

namespace wardchalk {

/// Takes the members of one object of a file, each of a kind, none that is not known. The first thing wrong
/// is kept as the refusal with its path; what is taken afterwards is empty.
class JsonFields {
 public:
  /// `path` leads to the object: "", or "asks[2]".
  JsonFields(const JsonValue& object, std::string path);

  /// The member, which must be there and of this kind; null when it is not.
  const JsonValue* wanted(std::string_view key, JsonValue::Kind kind);
  /// A text of at most so many bytes, without characters that cannot be seen.
  std::string text(std::string_view key, std::size_t most, TextLines lines = TextLines::one);
  /// A whole number.
  std::uint64_t count(std::string_view key, std::uint64_t least, std::uint64_t most);

  [[nodiscard]] bool has(std::string_view key) const { return object_.member(key) != nullptr; }
  /// Refuses keys that were not taken. The head of a file need not be.
  void endOfObject();
  void refuse(RefusalCode code, std::string_view key, std::string_view typed,
              std::string_view suggestion = {});
  /// Takes over what another reader refused, its path prolonged by this one's.
  void refuse(Refusal refusal, std::string_view key);

  [[nodiscard]] bool isRefused() const { return refusal_.has_value(); }
  [[nodiscard]] const Refusal& refusal() const { return *refusal_; }

 private:
  [[nodiscard]] std::string pathOf(std::string_view key) const;

  const JsonValue& object_;
  std::string path_;
  std::vector<std::string> taken_;
  std::optional<Refusal> refusal_;
};

/// Reads the text of a file of this format and version.
[[nodiscard]] Result<JsonValue> readPracticeFile(std::string_view json, const FileHead& head);

/// The kind as a refusal names it: "a list in brackets".
[[nodiscard]] std::string_view kindName(JsonValue::Kind kind);

}  // namespace wardchalk
