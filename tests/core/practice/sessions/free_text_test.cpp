// Every kind of free text, from every reader, refuses every class of characters that cannot be seen.
#include <gtest/gtest.h>

#include <functional>
#include <nlohmann/json.hpp>

#include "core/practice/sessions/answers_file.h"
#include "core/practice/sessions/problem_file.h"
#include "core/practice/sessions/set_file.h"
#include "core/record/case_draft.h"
#include "core/record/case_entry.h"
#include "core/record/case_stream.h"
#include "core/record/list_entry.h"
#include "core/record/reference_list.h"
#include "core/record/rules_file.h"
#include "core/words/sentences.h"

namespace wardchalk::free_text_test {
namespace {

using Json = nlohmann::ordered_json;

struct Unseen {
  std::string_view name;
  std::string_view character;
  std::string_view number;
};

using namespace std::string_view_literals;

constexpr std::array unseenRows = {
    Unseen{"nul", "\0"sv, "U+0000"},
    Unseen{"bell", "\a", "U+0007"},
    Unseen{"tab", "\t", "U+0009"},
    Unseen{"line feed", "\n", "U+000A"},
    Unseen{"carriage return", "\r", "U+000D"},
    Unseen{"escape", "\x1B", "U+001B"},
    Unseen{"delete", "\x7F", "U+007F"},
    Unseen{"next line", "\u0085", "U+0085"},
    Unseen{"control sequence", "\u009B", "U+009B"},
    Unseen{"soft hyphen", "\u00AD", "U+00AD"},
    Unseen{"Arabic letter mark", "\u061C", "U+061C"},
    Unseen{"zero-width space", "\u200B", "U+200B"},
    Unseen{"left-to-right mark", "\u200E", "U+200E"},
    Unseen{"right-to-left mark", "\u200F", "U+200F"},
    Unseen{"line separator", "\u2028", "U+2028"},
    Unseen{"paragraph separator", "\u2029", "U+2029"},
    Unseen{"left-to-right embedding", "\u202A", "U+202A"},
    Unseen{"right-to-left embedding", "\u202B", "U+202B"},
    Unseen{"pop", "\u202C", "U+202C"},
    Unseen{"left-to-right override", "\u202D", "U+202D"},
    Unseen{"right-to-left override", "\u202E", "U+202E"},
    Unseen{"left-to-right isolate", "\u2066", "U+2066"},
    Unseen{"right-to-left isolate", "\u2067", "U+2067"},
    Unseen{"first strong isolate", "\u2068", "U+2068"},
    Unseen{"pop isolate", "\u2069", "U+2069"},
    Unseen{"byte order mark", "\uFEFF", "U+FEFF"},
    Unseen{"first non-character", "\uFDD0", "U+FDD0"},
    Unseen{"last non-character of the block", "\uFDEF", "U+FDEF"},
    Unseen{"non-character of the plane", "\uFFFE", "U+FFFE"},
    Unseen{"last non-character", "\U0010FFFF", "U+10FFFF"},
};

using Refused = std::optional<Refusal>;

template <typename T>
Refused refusalOfReading(const Result<T>& result) {
  return result ? Refused() : Refused(result.refusal());
}

Refused inCaseFile(std::string_view room, std::string_view key, const std::string& text) {
  Json file{{"format", "wardchalk.case"}, {"version", 1}};
  (room.empty() ? file : file[std::string(room)])[std::string(key)] = text;
  return refusalOfReading(readCaseFile(file.dump()));
}

/// A field of the form, typed and left. What was typed stays.
Refused inForm(std::string_view path, const std::string& text) {
  CaseDraft draft;
  draft.set(path, text);
  draft.commit(path);
  EXPECT_EQ(draft.line(path), text);
  return draft.refusal(path);
}

std::string quotedCell(const std::string& text) { return "\"" + text + "\""; }

Refused inCaseTable(std::string_view path, const std::string& text) {
  Refused refusal;
  std::vector<StreamedCase> rows;
  CaseStream stream(StreamKind::table, [&](StreamedCase one) { rows.push_back(std::move(one)); });
  stream.take(std::string(path) + "\n" + quotedCell(text) + "\n");
  stream.end();
  if (rows.size() != 1) return std::nullopt;
  return rows[0].refusal ? rows[0].refusal : refusalOfReading(stream.read(rows[0]));
}

Json listEntry() {
  return Json::parse(
      R"({"medicine": "Plover", "indication": "fever", "route": "oral", "high": "120 mg/m2/dose",
    "source": {"title": "Ward list", "edition": "3rd", "date": "2026-01-15", "page": "4"},
    "checked_by": "A. W.", "checked_on": "2026-02-01", "review_by": "2028-02-01"})");
}

Refused inList(const Json& entry, const std::string& title = "Ward list") {
  const Json file{{"format", "wardchalk.reference-list"},
                  {"version", 1},
                  {"title", title},
                  {"entries", Json::array({entry})}};
  return refusalOfReading(readReferenceList(file.dump()));
}

Refused inListEntry(std::string_view key, const std::string& text) {
  Json entry = listEntry();
  (key.starts_with("source.") ? entry["source"][std::string(key.substr(7))] : entry[std::string(key)]) = text;
  return inList(entry);
}

Refused inListTable(std::string_view key, const std::string& text) {
  std::string header, row;
  const auto add = [&](const std::string& name, const std::string& cell) {
    header += (header.empty() ? "" : ",") + name;
    row += (row.empty() ? "" : ",") + quotedCell(name == key ? text : cell);
  };
  const Json entry = listEntry();
  for (const auto& [name, value] : entry.items()) {
    if (value.is_object())
      for (const auto& [part, inner] : value.items()) add(name + "." + part, inner);
    else
      add(name, value);
  }
  const Result<ReferenceImport> import = importReferenceList(header + "\n" + row + "\n");
  if (!import) return import.refusal();
  return import->refused.empty() ? Refused() : Refused(import->refused[0].refusal);
}

Refused inRules(const std::string& key, const std::string& text) {
  const Json file{{"format", "wardchalk.house-rules"}, {"version", 1}, {key, text}};
  return refusalOfReading(readRules(file.dump()));
}

Refused inRulesEditor(const std::string& key, const std::string& text) {
  HouseRules rules = exactRules();
  return setRule(rules, key, text).refusalIfAny();
}

Json practiceSet() {
  std::string out;
  writeSet(out, PracticeSet{"Class", 1, {Topic::bsa}, 1, 1, exactRules()});
  return Json::parse(out);
}

Refused inSetTitle(const std::string& text) {
  Json set = practiceSet();
  set["title"] = text;
  return refusalOfReading(readSet(set.dump()));
}

Refused inSetRules(const std::string& text) {
  Json set = practiceSet();
  set["rules"]["agreed_by"] = text;
  return refusalOfReading(readSet(set.dump()));
}

Refused inProblem(const std::function<void(Json&)>& spoil) {
  std::string out;
  writeProblem(out, makeProblem(Topic::doseByWeight, 1, 3, exactRules()));
  Json problem = Json::parse(out);
  spoil(problem);
  return refusalOfReading(readProblem(problem.dump()));
}

Refused inAnswers(const std::string& text) {
  const Json file{{"format", "wardchalk.answers"},
                  {"version", 1},
                  {"lines", Json::array({Json{{"id", "bsa"}, {"text", text}}})}};
  return refusalOfReading(readAnswers(file.dump()));
}

struct Kind {
  std::string_view name;
  std::function<Refused(const std::string&)> read;
  std::string_view path;
};

// clang-format off
const std::vector<Kind>& kinds() {
  using T = const std::string&;
  static const std::vector<Kind> all = {
      {"title of a case file", [](T t) { return inCaseFile("", "title", t); }, "title"},
      {"medicine of a case file", [](T t) { return inCaseFile("order", "medicine", t); }, "order.medicine"},
      {"source of a case file", [](T t) { return inCaseFile("reference", "source", t); }, "reference.source"},
      {"title in the form", [](T t) { return inForm("title", t); }, "title"},
      {"medicine in the form", [](T t) { return inForm("order.medicine", t); }, "order.medicine"},
      {"source in the form", [](T t) { return inForm("reference.source", t); }, "reference.source"},
      {"title in a table", [](T t) { return inCaseTable("title", t); }, "title"},
      {"medicine in a table", [](T t) { return inCaseTable("order.medicine", t); }, "order.medicine"},
      {"source in a table", [](T t) { return inCaseTable("reference.source", t); }, "reference.source"},
      {"title of a list", [](T t) { return inList(listEntry(), t); }, "title"},
      {"medicine of a list", [](T t) { return inListEntry("medicine", t); }, "entries[0].medicine"},
      {"indication of a list", [](T t) { return inListEntry("indication", t); }, "entries[0].indication"},
      {"source title of a list", [](T t) { return inListEntry("source.title", t); }, "entries[0].source.title"},
      {"edition of a list", [](T t) { return inListEntry("source.edition", t); }, "entries[0].source.edition"},
      {"page of a list", [](T t) { return inListEntry("source.page", t); }, "entries[0].source.page"},
      {"who checked a list", [](T t) { return inListEntry("checked_by", t); }, "entries[0].checked_by"},
      {"medicine of a list's table", [](T t) { return inListTable("medicine", t); }, "medicine"},
      {"indication of a list's table", [](T t) { return inListTable("indication", t); }, "indication"},
      {"source title of a list's table", [](T t) { return inListTable("source.title", t); }, "source.title"},
      {"edition of a list's table", [](T t) { return inListTable("source.edition", t); }, "source.edition"},
      {"page of a list's table", [](T t) { return inListTable("source.page", t); }, "source.page"},
      {"who checked a list's table", [](T t) { return inListTable("checked_by", t); }, "checked_by"},
      {"name of house rules", [](T t) { return inRules("name", t); }, "name"},
      {"who agreed house rules", [](T t) { return inRules("agreed_by", t); }, "agreed_by"},
      {"name in the editor of house rules", [](T t) { return inRulesEditor("name", t); }, "name"},
      {"who agreed, in the editor", [](T t) { return inRulesEditor("agreed_by", t); }, "agreed_by"},
      {"title of a practice set", inSetTitle, "title"},
      {"rules of a practice set", inSetRules, "rules.agreed_by"},
      {"medicine of a problem", [](T t) { return inProblem([&](Json& p) { p["case"]["order"]["medicine"] = t; }); }, "case.order.medicine"},
      {"answer of a student", inAnswers, "lines[0].text"},
  };
  return all;
}
// clang-format on

std::string around(std::string_view character) { return "Plo" + std::string(character) + "ver"; }

/// NUL and what is no character stand in no file of text; its reader refuses them before there is a place to
/// name.
bool isRefusedInAnyText(const Refusal& refusal, const Unseen& row) {
  if (row.number == "U+0000" && refusal.code == RefusalCode::rowNotUtf8) return true;
  const bool isNone = row.number == "U+0000" || row.name.find("non-character") != std::string_view::npos;
  return isNone && refusal.path.empty() &&
         (refusal.code == RefusalCode::nonCharacter || refusal.code == RefusalCode::nulByte);
}

TEST(FreeText, isRefusedForEachUnseenCharacterWithItsPath) {
  for (const Kind& kind : kinds())
    for (const Unseen& row : unseenRows) {
      const Refused refusal = kind.read(around(row.character));
      ASSERT_TRUE(refusal) << kind.name << ": " << row.name;
      if (isRefusedInAnyText(*refusal, row)) continue;
      EXPECT_EQ(idOf(refusal->code), "unseen-character") << kind.name << ": " << row.name;
      EXPECT_EQ(refusal->typed, row.character) << kind.name << ": " << row.name;
      EXPECT_EQ(refusal->path, kind.path) << kind.name << ": " << row.name;
      const std::string said = sentence(*refusal);
      EXPECT_NE(said.find(row.number), std::string::npos) << said;
      EXPECT_NE(said.find("Type it again."), std::string::npos) << said;
    }
}

TEST(FreeText, isReadInEveryWriting) {
  for (const Kind& kind : kinds())
    for (const std::string text : {"Plover", "חוחית", "زقزاق", "می\u200Cخوش", "टिटहरी", "क्\u200Dष", "นกหัวโต",
                                   "Χαραδριός", "зуёк", "千鳥", "물떼새", "ABC אבג 5 mg"}) {
      const Refused refusal = kind.read(text);
      const bool altered = refusal && refusal->code == RefusalCode::problemAltered;
      EXPECT_TRUE(!refusal || altered) << kind.name << ": " << text << " " << idOf(refusal->code);
    }
}

TEST(FreeText, aStoryMayHaveLinesAndNothingElseUnseen) {
  const auto story = [](const std::string& text) { return inProblem([&](Json& p) { p["story"] = text; }); };
  EXPECT_FALSE(story("First.\nSecond."));
  for (const Unseen& row : unseenRows) {
    if (row.number == "U+000A") continue;
    const Refused refusal = story(around(row.character));
    ASSERT_TRUE(refusal) << row.name;
    if (isRefusedInAnyText(*refusal, row)) continue;
    EXPECT_EQ(refusal->path + " " + refusal->typed, "story " + std::string(row.character));
  }
}

}  // namespace
}  // namespace wardchalk::free_text_test
