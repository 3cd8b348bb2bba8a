#include "core/practice/set_file.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/record/file_head.h"

namespace wardchalk {

namespace {

constexpr FileHead head{"wardchalk.set", 1};
constexpr std::array<std::string_view, 2> schoolIds = {"exact", "classroom"};
constexpr std::array<std::string_view, 4> neededKeys = {"topics", "level", "count", "seed"};

using Maybe = std::optional<Refusal>;

Refusal wrongType(std::string_view key, std::string_view wanted) {
  return {RefusalCode::typeWrong, {}, std::string(wanted), std::string(key)};
}

Refusal outOfRange(std::string_view key, std::string_view typed, std::string_view allowed) {
  Refusal refusal = refusalOf(RefusalCode::valueOutOfRange, typed, allowed);
  refusal.path = key;
  return refusal;
}

template <typename Whole>
Maybe takeWhole(Whole& to, std::string_view key, const JsonValue& value, Whole least, Whole most) {
  if (value.kind != JsonValue::Kind::number) return wrongType(key, "a whole number");
  Whole read{};
  const char* end = value.text.data() + value.text.size();
  const auto [stop, error] = std::from_chars(value.text.data(), end, read);
  if (error != std::errc() || stop != end || read < least || read > most)
    return outOfRange(key, value.text, std::to_string(least) + " to " + std::to_string(most));
  to = read;
  return std::nullopt;
}

Maybe takeTopics(std::vector<Topic>& topics, const JsonValue& value) {
  if (value.kind != JsonValue::Kind::list || value.items.empty())
    return wrongType("topics", "a list of topics, at least one");
  for (const JsonValue& item : value.items) {
    const auto topic = item.kind == JsonValue::Kind::text ? topicWithId(item.text) : std::nullopt;
    if (!topic) return outOfRange("topics", item.text, "the topics that practice knows");
    if (std::ranges::find(topics, *topic) != topics.end())
      return outOfRange("topics", item.text, "each topic once");
    topics.push_back(*topic);
  }
  return std::nullopt;
}

Maybe takeSchool(SchoolRules& school, const JsonValue& value) {
  const auto known = std::ranges::find(schoolIds, value.text);
  if (value.kind != JsonValue::Kind::text || known == schoolIds.end())
    return outOfRange("rules", value.text, "exact or classroom");
  school = static_cast<SchoolRules>(known - schoolIds.begin());
  return std::nullopt;
}

Maybe take(PracticePlan& plan, std::string_view key, const JsonValue& value) {
  if (key == "title") {
    if (value.kind != JsonValue::Kind::text) return wrongType(key, "text in quotation marks");
    plan.title = value.text;
    return std::nullopt;
  }
  if (key == "topics") return takeTopics(plan.topics, value);
  if (key == "level") return takeWhole(plan.level, key, value, lowestLevel, highestLevel);
  if (key == "count") return takeWhole(plan.count, key, value, fewestProblems, mostProblems);
  if (key == "seed") return takeWhole(plan.seed, key, value, std::uint64_t{0}, greatestSeed);
  if (key == "rules") return takeSchool(plan.school, value);
  return Refusal{RefusalCode::keyUnknown, std::string(key), {}, std::string(key)};
}

}  // namespace

Result<PracticePlan> readSet(std::string_view json) {
  Result<JsonValue> file = readJson(json);
  if (!file) return file.refusal();
  if (auto refusal = checkHead(*file, head)) return *refusal;
  for (const std::string_view key : neededKeys)
    if (!file->member(key)) return Refusal{RefusalCode::keyMissing, std::string(key), {}, std::string(key)};
  PracticePlan plan;
  for (const auto& [key, value] : file->members) {
    if (isHeadKey(key)) continue;
    if (auto refusal = take(plan, key, value)) return *refusal;
  }
  return plan;
}

std::string writeSet(const PracticePlan& plan) {
  std::string out;
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, head);
  writer.member("title", plan.title);
  writer.key("topics").openList();
  for (const Topic topic : plan.topics) writer.text(idOf(topic));
  writer.closeList();
  writer.key("level").number(plan.level).key("count").number(plan.count);
  writer.key("seed").bare(std::to_string(plan.seed));
  writer.member("rules", schoolIds[static_cast<std::size_t>(plan.school)]);
  writer.closeObject();
  out.push_back('\n');
  return out;
}

}  // namespace wardchalk
