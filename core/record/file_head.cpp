#include "core/record/file_head.h"

#include <charconv>

namespace wardchalk {

namespace {

Result<Done> checkVersion(const JsonValue& file, int readable) {
  const JsonValue* version = file.member("version");
  if (!version) return Refusal{RefusalCode::keyMissing, "version", {}, "version"};
  if (version->kind != JsonValue::Kind::number)
    return Refusal{RefusalCode::typeWrong, version->text, "a whole number", "version"};
  int value = 0;
  const char* end = version->text.data() + version->text.size();
  const auto [stop, error] = std::from_chars(version->text.data(), end, value);
  const std::string wanted = std::to_string(readable);
  if (error == std::errc::result_out_of_range && version->text.front() != '-')
    return Refusal{RefusalCode::versionNewer, version->text, wanted, "version"};
  if (error != std::errc() || stop != end || value < 1)
    return Refusal{RefusalCode::versionWrong, version->text, wanted, "version"};
  if (value > readable) return Refusal{RefusalCode::versionNewer, version->text, wanted, "version"};
  return Done{};
}

}  // namespace

Result<Done> checkHead(const JsonValue& file, const FileHead& head) {
  if (file.kind != JsonValue::Kind::object)
    return Refusal{RefusalCode::typeWrong, {}, "an object in braces", {}};
  const JsonValue* format = file.member("format");
  if (!format) return Refusal{RefusalCode::keyMissing, "format", {}, "format"};
  if (format->kind != JsonValue::Kind::text || format->text != head.format)
    return Refusal{RefusalCode::formatWrong, shortened(format->text), std::string(head.format), "format"};
  return checkVersion(file, head.version);
}

bool isHeadKey(std::string_view key) { return key == "format" || key == "version"; }

void writeHead(JsonWriter& writer, const FileHead& head) {
  writer.key("format").text(head.format).key("version").number(head.version);
}

}  // namespace wardchalk
