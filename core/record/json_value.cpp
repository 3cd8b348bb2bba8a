#include "core/record/json_value.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>
#include <utility>

#include "core/record/unicode_text.h"

namespace wardchalk {

namespace {

using Json = nlohmann::json;

/// The keys of an object that is being read. Few are compared one by one, as in every file of ours; the rest
/// are kept in order, so that not even a line of nothing but keys takes long.
class KeysSeen {
 public:
  /// False when it was there already.
  bool add(const std::string& key, const std::vector<JsonMember>& members) {
    if (members.size() < few) return std::ranges::find(members, key, &JsonMember::name) == members.end();
    if (sorted_.empty())
      for (const JsonMember& member : members) sorted_.insert(member.name);
    return sorted_.insert(key).second;
  }

 private:
  static constexpr std::size_t few = 32;
  std::set<std::string, std::less<>> sorted_;
};

/// Builds a JsonValue from the reader's events and stops at the first thing that may not be.
class Builder : public nlohmann::json_sax<Json> {
 public:
  bool null() override { return add({}); }
  bool boolean(bool value) override { return add({JsonValue::Kind::flag, value ? "true" : "false", {}, {}}); }
  bool number_integer(number_integer_t value) override { return addNumber(std::to_string(value)); }
  bool number_unsigned(number_unsigned_t value) override { return addNumber(std::to_string(value)); }
  bool number_float(number_float_t, const string_t& text) override { return addNumber(text); }
  bool string(string_t& value) override {
    return isText(value) && add({JsonValue::Kind::text, std::move(value), {}, {}});
  }
  bool binary(binary_t&) override { return fail(RefusalCode::notJson, "binary"); }

  bool start_object(std::size_t) override { return open(JsonValue::Kind::object); }
  bool start_array(std::size_t) override { return open(JsonValue::Kind::list); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }

  bool key(string_t& name) override {
    if (!isText(name)) return false;
    if (!seen_.back().add(name, open_.back()->members)) return fail(RefusalCode::keyDuplicate, pathTo(name));
    open_.back()->members.push_back({std::move(name), JsonValue{}});
    return true;
  }

  bool parse_error(std::size_t position, const std::string&, const Json::exception& error) override {
    if (std::string_view(error.what()).find("UTF-8") != std::string_view::npos)
      return fail(RefusalCode::notUtf8, {});
    return fail(RefusalCode::notJson, "byte " + std::to_string(position));
  }

  [[nodiscard]] bool hasFailed() const { return failure_.has_value(); }
  [[nodiscard]] Refusal failure() const { return *failure_; }
  [[nodiscard]] JsonValue take() { return std::move(root_); }

 private:
  bool fail(RefusalCode code, std::string typed) {
    if (!failure_) failure_ = Refusal{code, std::move(typed), {}, {}};
    return false;
  }

  /// Whether the value may stand in a text at all.
  bool isText(std::string_view value) {
    const std::string found = nonCharacterIn(value);
    return found.empty() || fail(RefusalCode::nonCharacter, found);
  }

  /// A number keeps its text; one that overflowed the reader's own type would not, and is refused.
  bool addNumber(std::string text) { return add({JsonValue::Kind::number, std::move(text), {}, {}}); }

  JsonValue* slot() {
    if (open_.empty()) return &root_;
    JsonValue& parent = *open_.back();
    if (parent.kind == JsonValue::Kind::object) return &parent.members.back().value;
    return &parent.items.emplace_back();
  }

  bool add(JsonValue value) {
    *slot() = std::move(value);
    return true;
  }

  bool open(JsonValue::Kind kind) {
    if (open_.size() >= static_cast<std::size_t>(deepestNesting)) return fail(RefusalCode::tooDeep, {});
    constexpr std::size_t usual = 8;  // members of a room of a case
    JsonValue* place = slot();
    place->kind = kind;
    if (kind == JsonValue::Kind::object) place->members.reserve(usual);
    open_.push_back(place);
    seen_.emplace_back();
    return true;
  }

  bool close() {
    open_.pop_back();
    seen_.pop_back();
    return true;
  }

  /// "child.height": the keys on the way to `name`.
  [[nodiscard]] std::string pathTo(std::string_view name) const {
    std::string path;
    for (std::size_t i = 0; i + 1 < open_.size(); ++i)
      if (!open_[i]->members.empty()) path.append(open_[i]->members.back().name).append(".");
    return path.append(name);
  }

  JsonValue root_;
  std::vector<JsonValue*> open_;  // a child is finished before its parent's vector grows again
  std::vector<KeysSeen> seen_;    // of each that is open
  std::optional<Refusal> failure_;
};

}  // namespace

const JsonValue* JsonValue::member(std::string_view key) const {
  for (const auto& [name, value] : members)
    if (name == key) return &value;
  return nullptr;
}

Result<JsonValue> readJson(std::string_view text) {
  if (text.size() > largestFile) return Refusal{RefusalCode::fileTooLarge, {}, "4 MiB", {}};
  const std::size_t nul = text.find('\0');  // the parser would take one for the end
  if (nul != std::string_view::npos) return Refusal{RefusalCode::nulByte, std::to_string(nul + 1), {}, {}};
  Builder builder;
  const bool whole = Json::sax_parse(text, &builder);
  if (builder.hasFailed()) {
    Refusal refusal = builder.failure();
    if (refusal.code == RefusalCode::keyDuplicate) refusal.path = refusal.typed;
    return refusal;
  }
  if (!whole) return Refusal{RefusalCode::notJson, "its beginning", {}, {}};
  return builder.take();
}

}  // namespace wardchalk
