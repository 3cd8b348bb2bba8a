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
constexpr std::size_t longestTitle = 500;

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

}  // namespace

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
  writer.closeList().key("level").number(set.level).key("count").number(set.count).key("rules").openObject();
  writeRuleMembers(writer, set.rules);
  writer.closeObject().closeObject();
}

Result<PracticeSet> readSet(std::string_view json) {
  const Result<JsonValue> file = readPracticeFile(json, setHead);
  if (!file) return file.refusal();
  PracticeSet set;
  JsonFields fields(*file, {});
  if (fields.has("title")) set.title = fields.text("title", longestTitle);
  set.seed = fields.count("seed", 0, greatestSeed);
  takeTopics(set, fields);
  set.level = static_cast<int>(fields.count("level", lowestLevel, highestLevel));
  set.count = static_cast<int>(fields.count("count", 1, mostProblems));
  if (fields.has("rules")) takeRules(set, fields);
  fields.endOfObject();
  if (fields.isRefused()) return fields.refusal();
  return set;
}

}  // namespace wardchalk
