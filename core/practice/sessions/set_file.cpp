#include "core/practice/sessions/set_file.h"

#include <algorithm>

#include "core/practice/making/problem_draw.h"
#include "core/practice/sessions/json_fields.h"
#include "core/record/file_head.h"
#include "core/record/json_writer.h"
#include "core/record/rules_file.h"

namespace wardchalk {

namespace {

constexpr FileHead setHead{"wardchalk.set", 1};

void takeTopics(PracticeSet& set, JsonFields& fields) {
  const JsonValue* list = fields.wanted("topics", JsonValue::Kind::list);
  if (!list) return;
  if (list->items.empty())
    return fields.refuse(RefusalCode::typeWrong, "topics", {}, "a list of at least one topic");
  for (std::size_t i = 0; i < list->items.size(); ++i) {
    const JsonValue& item = list->items[i];
    const auto topic = item.kind == JsonValue::Kind::text ? topicWithId(item.text) : std::nullopt;
    if (!topic)
      return fields.refuse(RefusalCode::wordUnknown, "topics[" + std::to_string(i) + "]", item.text,
                           topicList());
    set.topics.push_back(*topic);
  }
}

void takeRules(PracticeSet& set, JsonFields& fields) {
  const JsonValue* value = fields.wanted("rules", JsonValue::Kind::object);
  if (!value) return;
  Result<HouseRules> rules = readRuleMembers(*value);
  if (!rules) return fields.refuse(rules.refusal(), "rules");
  set.rules = *rules;
}

void takeMode(PracticeSet& set, JsonFields& fields) {
  const std::string mode = fields.text("mode", 20);
  for (const PracticeMode known : {PracticeMode::learning, PracticeMode::test})
    if (idOf(known) == mode) set.mode = known;
  if (!set.mode) fields.refuse(RefusalCode::wordUnknown, "mode", mode, "learn, test");
}

void takeFlag(bool& into, std::string_view key, JsonFields& fields) {
  if (!fields.has(key)) return;
  if (const JsonValue* value = fields.wanted(key, JsonValue::Kind::flag)) into = value->text == "true";
}

/// What a teacher fixes besides the problems; a set without it is as open as ever.
void takeTerms(PracticeSet& set, JsonFields& fields) {
  if (fields.has("mode")) takeMode(set, fields);
  takeFlag(set.builder, "builder", fields);
  takeFlag(set.hints, "hints", fields);
  if (fields.has("minutes")) set.minutes = static_cast<int>(fields.count("minutes", 1, mostMinutes));
  takeFlag(set.wantsUnits, "wants_units", fields);
  takeFlag(set.wantsReason, "wants_reason", fields);
}

void writeTerms(JsonWriter& writer, const PracticeSet& set) {
  if (set.mode) writer.key("mode").text(idOf(*set.mode));
  if (!set.builder) writer.key("builder").bare("false");
  if (!set.hints) writer.key("hints").bare("false");
  if (set.minutes) writer.key("minutes").number(*set.minutes);
  if (set.wantsUnits) writer.key("wants_units").bare("true");
  if (set.wantsReason) writer.key("wants_reason").bare("true");
}

}  // namespace

std::string setMark(const PracticeSet& set) {
  // FNV-1a, 64 bits; offset and prime are those of draft-eastlake-fnv, from memory
  std::uint64_t mark = 14695981039346656037U;
  std::string text;
  writeSet(text, set);
  for (const char c : text) mark = (mark ^ static_cast<unsigned char>(c)) * 1099511628211U;
  std::string digits;
  for (int shift = 60; shift >= 0; shift -= 4)
    digits += "0123456789abcdef"[(mark >> static_cast<unsigned>(shift)) & 15U];
  return digits;
}

PracticeSet withoutTerms(const PracticeSet& set) {
  PracticeSet open;
  open.seed = set.seed;
  open.topics = set.topics;
  open.level = set.level;
  open.count = set.count;
  open.rules = set.rules;
  return open;
}

std::uint64_t seedInSet(std::uint64_t seed, int index) {
  if (index == 0) return seed;
  return ProblemDraw(ProblemDraw(seed).next() + static_cast<std::uint64_t>(index)).next() & greatestSeed;
}

Topic topicInSet(const PracticeSet& set, int index) {
  if (set.topics.empty()) return Topic::mixed;
  return set.topics[static_cast<std::size_t>(index) % set.topics.size()];
}

Problem problemInSet(const PracticeSet& set, int index) {
  return makeProblem(topicInSet(set, index), set.level, seedInSet(set.seed, index), set.rules);
}

void writeSet(std::string& out, const PracticeSet& set) {
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, setHead);
  writer.key("title").text(set.title).key("seed").bare(std::to_string(set.seed)).key("topics").openList();
  for (const Topic topic : set.topics) writer.text(idOf(topic));
  writer.closeList().key("level").number(set.level).key("count").number(set.count);
  writeTerms(writer, set);
  writer.key("rules").openObject();
  writeRuleMembers(writer, set.rules);
  writer.closeObject().closeObject();
}

Result<PracticeSet> readSet(std::string_view json) {
  const Result<JsonValue> file = readPracticeFile(json, setHead);
  if (!file) return file.refusal();
  PracticeSet set;
  JsonFields fields(*file, {});
  if (fields.has("title")) set.title = fields.text("title", longestSetTitle);
  set.seed = fields.count("seed", 0, greatestSeed);
  takeTopics(set, fields);
  set.level = static_cast<int>(fields.count("level", lowestLevel, highestLevel));
  set.count = static_cast<int>(fields.count("count", 1, mostProblems));
  takeTerms(set, fields);
  if (fields.has("rules")) takeRules(set, fields);
  fields.endOfObject();
  if (fields.isRefused()) return fields.refusal();
  return set;
}

}  // namespace wardchalk
