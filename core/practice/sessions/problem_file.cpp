#include "core/practice/sessions/problem_file.h"

#include <algorithm>
#include <array>

#include "core/check/work_out.h"
#include "core/practice/sessions/json_fields.h"
#include "core/record/file_head.h"
#include "core/record/json_writer.h"
#include "core/record/rules_file.h"
#include "core/record/worksheet_file.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

constexpr FileHead problemHead{"wardchalk.problem", 1};
constexpr std::size_t longestStory = 4000;
constexpr int mostAskedDecimals = 6;

std::string withoutLineEnd(std::string text) {
  while (text.ends_with('\n')) text.pop_back();
  return text;
}

/// Members of a worksheet that hold English, which may change.
bool isWording(std::string_view key) { return key == "text" || key == "words" || key == "reason"; }

/// Whether the key names the rules that it is worked by. They are compared as rules, not as text: a file may
/// be older than a rule, which then is what it is where nothing is said.
bool hasRules(const JsonValue& key, const HouseRules& rules) {
  const JsonValue* value = key.member("rules");
  const auto read = value ? readRuleMembers(*value) : Result<HouseRules>(HouseRules());
  return value && read && *read == rules;
}

JsonValue withoutRules(JsonValue key) {
  std::erase_if(key.members, [](const JsonMember& member) { return member.name == "rules"; });
  return key;
}

/// The same figures, ids and codes in whatever order.
bool isSame(const JsonValue& a, const JsonValue& b);

bool haveSameMembers(const JsonValue& a, const JsonValue& b) {
  const auto counted = [](const JsonValue& value) {
    return std::count_if(value.members.begin(), value.members.end(),
                         [](const auto& m) { return !isWording(m.name); });
  };
  if (counted(a) != counted(b)) return false;
  return std::all_of(a.members.begin(), a.members.end(), [&](const auto& member) {
    if (isWording(member.name)) return true;
    const JsonValue* other = b.member(member.name);
    return other && isSame(member.value, *other);
  });
}

bool isSame(const JsonValue& a, const JsonValue& b) {
  if (a.kind != b.kind || a.text != b.text) return false;
  if (!std::equal(a.items.begin(), a.items.end(), b.items.begin(), b.items.end(), isSame)) return false;
  return haveSameMembers(a, b);
}

std::string keyText(const Worksheet& key) {
  std::string text;
  writeWorksheet(text, key, WorksheetExtent::whole);
  return text;
}

void takeCase(Problem& problem, JsonFields& fields) {
  const JsonValue* value = fields.wanted("case", JsonValue::Kind::object);
  if (!value) return;
  Result<CaseFile> file = readCaseFile(*value);
  if (!file) return fields.refuse(file.refusal(), "case");
  problem.given = file->inputs;
  problem.entries = file->entries;
}

void takeRules(Problem& problem, JsonFields& fields) {
  const JsonValue* value = fields.wanted("rules", JsonValue::Kind::object);
  if (!value) return;
  Result<HouseRules> rules = readRuleMembers(*value);
  if (!rules) return fields.refuse(rules.refusal(), "rules");
  problem.rules = *rules;
}

void takeKey(Problem& problem, JsonFields& fields) {
  const JsonValue* value = fields.wanted("key", JsonValue::Kind::object);
  if (!value) return;
  problem.key = workOut(problem.given, problem.rules);
  const Result<JsonValue> again = readJson(keyText(problem.key));
  if (!again || !hasRules(*value, problem.rules) || !isSame(withoutRules(*value), withoutRules(*again)))
    fields.refuse(RefusalCode::problemAltered, "key", {});
}

Result<Ask> readAsk(const JsonValue& item, const std::string& path, const Worksheet& key) {
  JsonFields fields(item, path);
  const std::string id = fields.text("id", 40);
  const bool verdict = id == "verdict";
  const std::string unit = verdict ? std::string() : fields.text("unit", 40);
  const auto decimals = fields.has("decimals")
                            ? std::optional(static_cast<int>(fields.count("decimals", 0, mostAskedDecimals)))
                            : std::nullopt;
  fields.endOfObject();
  auto ask = askFor(id, key);
  if (!ask)
    fields.refuse(RefusalCode::askNotInKey, "id", id);
  else if (!verdict && unitsText(ask->wanted, Spelling::filed) != unit)
    fields.refuse(RefusalCode::askNotInKey, "unit", id, unit);
  if (fields.isRefused()) return fields.refusal();
  if (decimals) ask->decimals = decimals;  // a file from before they were stated has those of its rules
  return *ask;
}

void takeAsks(Problem& problem, JsonFields& fields) {
  const JsonValue* list = fields.wanted("asks", JsonValue::Kind::list);
  if (!list) return;
  if (list->items.empty())
    return fields.refuse(RefusalCode::typeWrong, "asks", {}, "a list of at least one line");
  for (std::size_t i = 0; i < list->items.size() && !fields.isRefused(); ++i) {
    const std::string path = "asks[" + std::to_string(i) + "]";
    const Result<Ask> ask = readAsk(list->items[i], path, problem.key);
    if (!ask) return fields.refuse(ask.refusal(), {});
    if (std::ranges::find(problem.asks, ask->step, &Ask::step) != problem.asks.end())
      return fields.refuse(RefusalCode::keyDuplicate, path, idOf(*ask));
    problem.asks.push_back(*ask);
  }
}

void writeAsk(JsonWriter& writer, const Ask& ask) {
  writer.openObject().key("id").text(idOf(ask));
  if (!ask.isVerdict()) writer.key("unit").text(unitsText(ask.wanted, Spelling::filed));
  if (ask.decimals) writer.key("decimals").number(*ask.decimals);
  writer.closeObject();
}

}  // namespace

void writeProblem(std::string& out, const Problem& problem) {
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, problemHead);
  writer.key("seed").bare(std::to_string(problem.seed)).key("topic").text(idOf(problem.topic));
  writer.key("level").number(problem.level).key("story").text(problem.story);
  writer.key("case").bare(withoutLineEnd(writeCaseFile(problem.entries)));
  writer.key("rules").openObject();
  writeRuleMembers(writer, problem.rules);
  writer.closeObject().key("key").bare(keyText(problem.key)).key("asks").openList();
  for (const Ask& ask : problem.asks) writeAsk(writer, ask);
  writer.closeList().closeObject();
}

Result<Problem> readProblem(std::string_view json) {
  const Result<JsonValue> file = readPracticeFile(json, problemHead);
  if (!file) return file.refusal();
  Problem problem;
  JsonFields fields(*file, {});
  problem.seed = fields.count("seed", 0, greatestSeed);
  const std::string topic = fields.text("topic", 40);
  if (const auto known = topicWithId(topic))
    problem.topic = *known;
  else
    fields.refuse(RefusalCode::wordUnknown, "topic", topic, topicList());
  problem.level = static_cast<int>(fields.count("level", lowestLevel, highestLevel));
  problem.story = fields.text("story", longestStory, TextLines::several);
  takeCase(problem, fields);
  takeRules(problem, fields);
  takeKey(problem, fields);
  takeAsks(problem, fields);
  fields.endOfObject();
  if (fields.isRefused()) return fields.refusal();
  return problem;
}

}  // namespace wardchalk
