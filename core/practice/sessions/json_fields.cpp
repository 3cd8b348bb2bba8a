#include "core/practice/sessions/json_fields.h"

#include <algorithm>
#include <charconv>

namespace wardchalk {

Result<JsonValue> readPracticeFile(std::string_view json, const FileHead& head) {
  Result<JsonValue> file = readJson(json);
  if (!file) return file.refusal();
  if (auto fits = checkHead(*file, head); !fits) return fits.refusal();
  return file;
}

std::string_view kindName(JsonValue::Kind kind) {
  switch (kind) {
    case JsonValue::Kind::text:
      return "text in quotation marks";
    case JsonValue::Kind::number:
      return "a whole number";
    case JsonValue::Kind::list:
      return "a list in brackets";
    case JsonValue::Kind::object:
      return "an object in braces";
    case JsonValue::Kind::flag:
    case JsonValue::Kind::null:
      break;
  }
  return "true or false";
}

JsonFields::JsonFields(const JsonValue& object, std::string path) : object_(object), path_(std::move(path)) {
  if (object.kind != JsonValue::Kind::object)
    refusal_ = Refusal{RefusalCode::typeWrong, {}, std::string(kindName(JsonValue::Kind::object)), path_};
}

std::string JsonFields::pathOf(std::string_view key) const {
  if (path_.empty() || key.empty()) return path_.empty() ? std::string(key) : path_;
  return path_ + "." + std::string(key);
}

void JsonFields::refuse(RefusalCode code, std::string_view key, std::string_view typed,
                        std::string_view suggestion) {
  if (refusal_) return;
  refusal_ = refusalOf(code, typed, suggestion);
  refusal_->path = pathOf(key);
}

void JsonFields::refuse(Refusal refusal, std::string_view key) {
  if (refusal_) return;
  const std::string inner = std::move(refusal.path);
  refusal_ = std::move(refusal);
  refusal_->path = pathOf(key);
  if (!inner.empty()) refusal_->path.append(refusal_->path.empty() ? "" : ".").append(inner);
}

const JsonValue* JsonFields::wanted(std::string_view key, JsonValue::Kind kind) {
  if (refusal_) return nullptr;
  taken_.emplace_back(key);
  const JsonValue* value = object_.member(key);
  if (!value)
    refuse(RefusalCode::keyMissing, key, key);
  else if (value->kind != kind)
    refuse(RefusalCode::typeWrong, key, value->text, std::string(kindName(kind)));
  return refusal_ ? nullptr : value;
}

std::string JsonFields::text(std::string_view key, std::size_t most, TextLines lines) {
  const JsonValue* value = wanted(key, JsonValue::Kind::text);
  if (!value) return {};
  if (value->text.size() > most) refuse(RefusalCode::tooLong, key, value->text);
  if (auto refusal = refusedUnseen(value->text, lines)) refuse(*std::move(refusal), key);
  return refusal_ ? std::string() : value->text;
}

std::uint64_t JsonFields::count(std::string_view key, std::uint64_t least, std::uint64_t most) {
  const JsonValue* value = wanted(key, JsonValue::Kind::number);
  if (!value) return 0;
  const char* end = value->text.data() + value->text.size();
  std::uint64_t number = 0;
  const auto [stop, error] = std::from_chars(value->text.data(), end, number);
  if (error == std::errc() && stop == end && number >= least && number <= most) return number;
  refuse(RefusalCode::valueOutOfRange, key, value->text,
         std::to_string(least) + " to " + std::to_string(most));
  return 0;
}

void JsonFields::endOfObject() {
  for (const auto& [key, value] : object_.members) {
    const bool head = path_.empty() && isHeadKey(key);
    if (!head && std::find(taken_.begin(), taken_.end(), key) == taken_.end())
      refuse(RefusalCode::keyUnknown, key, key);
  }
}

}  // namespace wardchalk
