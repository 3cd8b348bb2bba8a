#include "tests/marking/frozen_lines.h"

#include <array>
#include <fstream>
#include <stdexcept>
#include <string_view>

#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/json_value.h"
#include "core/record/rules_file.h"

namespace wardchalk::test {

namespace {

std::vector<std::string> linesOf(LineSet set, const std::string& name) {
  static constexpr std::array<const char*, 3> folders = {"", "fresh/", "blind/"};
  const std::string path =
      std::string(WARDCHALK_SOURCE_DIR "/tests/marking/") + folders[static_cast<std::size_t>(set)] + name;
  std::ifstream file(path);
  if (!file) throw std::runtime_error("cannot open " + path);
  std::vector<std::string> lines;
  for (std::string line; std::getline(file, line);) lines.push_back(line);
  return lines;
}

JsonValue jsonOf(const std::string& line) {
  auto read = readJson(line);
  if (!read) throw std::runtime_error("damaged: " + line.substr(0, 60));
  return *std::move(read);
}

std::string textOf(const JsonValue& object, std::string_view key) {
  const JsonValue* value = object.member(key);
  return value ? value->text : std::string();
}

FrozenLine lineOf(const JsonValue& row) {
  FrozenLine line{textOf(row, "id"),
                  textOf(row, "problem"),
                  textOf(row, "line"),
                  textOf(row, "text"),
                  {},
                  {},
                  {},
                  {},
                  {}};
  line.manner = row.member("manner") ? textOf(row, "manner") : textOf(row, "form");
  line.remark = textOf(row, "remark");
  line.mistake = textOf(row, "mistake");
  line.disputed = textOf(row, "disputed") == "true";
  if (const JsonValue* earlier = row.member("earlier"))
    for (const JsonMember& member : earlier->members) line.earlier[member.name] = member.value.text;
  if (const JsonValue* also = row.member("also"))
    for (const JsonValue& name : also->items) line.also.push_back(name.text);
  return line;
}

std::vector<FrozenLine> readLines(LineSet set, const std::string& name) {
  std::vector<FrozenLine> lines;
  for (const std::string& line : linesOf(set, name)) lines.push_back(lineOf(jsonOf(line)));
  return lines;
}

/// The problem without its key, which is worked anew: what is marked here rests on the papers alone, and a
/// working may gain a step or a rounding after the set was frozen.
Problem problemOf(const std::string& id, const JsonValue& file) {
  Problem problem;
  problem.story = textOf(file, "story");
  const auto papers = readCaseFile(*file.member("case"));
  const auto rules = readRuleMembers(*file.member("rules"));
  if (!papers || !rules) throw std::runtime_error(id + " cannot be read");
  problem.given = papers->inputs;
  problem.entries = papers->entries;
  problem.rules = *rules;
  problem.key = workOut(problem.given, problem.rules);
  for (const JsonValue& item : file.member("asks")->items) {
    const auto ask = askFor(textOf(item, "id"), problem.key);
    if (!ask) throw std::runtime_error(id + " has no line " + textOf(item, "id"));
    problem.asks.push_back(*ask);
  }
  return problem;
}

}  // namespace

std::map<std::string, Problem> frozenProblems(LineSet set) {
  std::map<std::string, Problem> problems;
  for (const std::string& line : linesOf(set, "problems.jsonl")) {
    const JsonValue row = jsonOf(line);
    const std::string id = textOf(row, "id");
    problems.emplace(id, problemOf(id, *row.member("problem")));
  }
  return problems;
}

std::vector<FrozenLine> frozenRightLines(LineSet set) { return readLines(set, "right_lines.jsonl"); }
std::vector<FrozenLine> frozenMistakes(LineSet set) { return readLines(set, "mistakes.jsonl"); }

}  // namespace wardchalk::test
