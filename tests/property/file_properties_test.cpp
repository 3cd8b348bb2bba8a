// What holds of the files: every worksheet parses and is whole, and the order of keys in a case file is
// nothing.
#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/check/work_out.h"
#include "core/record/worksheet_file.h"
#include "tests/property/for_all.h"

namespace wardchalk::test::file_properties_test {

namespace {

using Json = nlohmann::ordered_json;

std::string jsonOf(const Worksheet& sheet) {
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::whole);
  return json;
}

/// Puts the members of every object in another order.
Json shuffled(const Json& value, Choices& choices) {
  if (!value.is_object()) return value;
  std::vector<std::string> keys;
  for (const auto& item : value.items()) keys.push_back(item.key());
  for (std::size_t i = keys.size(); i > 1; --i)
    std::swap(keys[i - 1], keys[choices.below(static_cast<std::uint32_t>(i))]);
  Json mixed = Json::object();
  for (const std::string& key : keys) mixed[key] = shuffled(value.at(key), choices);
  return mixed;
}

std::string wrongChecks(const Json& sheet) {
  const Json& checks = sheet.at("checks");
  if (checks.size() != checkCount) return "not every check is there";
  for (std::size_t i = 0; i < checkCount; ++i) {
    const Json& check = checks.at(i);
    if (check.at("id") != checkIds[i]) return "checks out of order";
    const bool made = check.at("status") == "within" || check.at("status") == "outside";
    if (made && check.contains("why")) return std::string(checkIds[i]) + " made and yet a reason why not";
    if (check.at("status") == "not-checked" && !check.contains("why"))
      return std::string(checkIds[i]) + " not made, without why";
    if (made != check.contains("value")) return std::string(checkIds[i]) + " made without its value";
  }
  return {};
}

bool hasComma(const std::string& text) {
  for (std::size_t i = 1; i + 1 < text.size(); ++i)
    if (text[i] == ',' && text[i - 1] >= '0' && text[i - 1] <= '9' && text[i + 1] >= '0' &&
        text[i + 1] <= '9')
      return true;
  return false;
}

/// No thousands comma in what a program reads (R1); sentences are for people.
std::string commaIn(const Json& value, const std::string& key) {
  static const std::vector<std::string> forPeople = {"text", "words", "reason"};
  if (std::find(forPeople.begin(), forPeople.end(), key) != forPeople.end()) return {};
  if (value.is_string() && hasComma(value.get<std::string>())) return key + ": " + value.get<std::string>();
  if (!value.is_structured()) return {};
  for (const auto& item : value.items()) {
    const std::string found = commaIn(item.value(), value.is_object() ? item.key() : key);
    if (!found.empty()) return found;
  }
  return {};
}

/// Two values that are not equal never print alike (R1).
std::string alike(const Json& sheet) {
  for (const Json& check : sheet.at("checks"))
    if (check.contains("percent") && check.at("value") == check.at("limit") && check.at("percent") != "100")
      return check.at("id").get<std::string>() + " prints two values alike: " + check.dump();
  for (const Json& finding : sheet.at("findings")) {
    const Json& told = finding.at("arguments");
    const bool rounding =
        finding.at("code") == "rounding-decides";  // an order at the limit as rounded is one
    for (const char* other : {rounding ? "unrounded" : "limit", "expected"})
      if (told.contains("ordered") && told.contains(other) && told.at("ordered") == told.at(other))
        return "a finding prints two values alike: " + finding.dump();
  }
  return {};
}

std::string wrongSteps(const Json& sheet) {
  for (const Json& step : sheet.at("steps")) {
    if (step.at("words").get<std::string>().empty()) return "a step without words";
    const std::string kind = step.at("kind");
    const bool chain = kind == "chain" || kind == "root";
    if (chain && !step.contains("exact")) return "a chain without its result";
    if (!chain && kind != "compare" && kind != "measure" && kind != "formula")
      return "a step of kind " + kind;
  }
  return {};
}

}  // namespace

TEST(FileProperties, everyWorksheetParsesAndIsWhole) {
  forAll(5000, [](Choices& choices) -> std::string {
    const RandomCase random = choices.onceIn(10) ? randomRateCase(choices) : randomCase(choices);
    const std::string text = jsonOf(workOut(caseOf(random.entries), rulesFor(random.rules)));
    const Json sheet = Json::parse(text, nullptr, /*allow_exceptions=*/false);
    if (sheet.is_discarded()) return "no JSON: " + text + shown(random);
    if (text.find('\n') != std::string::npos) return "a line break" + shown(random);
    for (const std::string& wrong : {wrongChecks(sheet), wrongSteps(sheet), alike(sheet), commaIn(sheet, "")})
      if (!wrong.empty()) return wrong + shown(random);
    if (sheet.at("verdict") == "safe" ? sheet.contains("because") : !sheet.contains("because"))
      return "a verdict without its cause, or safe with one" + shown(random);
    return {};
  });
}

TEST(FileProperties, theOrderOfKeysIsNothing) {
  forAll(2000, [](Choices& choices) -> std::string {
    const RandomCase random = choices.onceIn(10) ? randomRateCase(choices) : randomCase(choices);
    const std::string text = writeCaseFile(random.entries);
    const std::string mixed = shuffled(Json::parse(text), choices).dump();
    const Result<Case> one = readCase(text);
    const Result<Case> other = readCase(mixed);
    if (!one || !other) return "refused: " + mixed;
    const HouseRules& rules = rulesFor(random.rules);
    return jsonOf(workOut(*one, rules)) == jsonOf(workOut(*other, rules)) ? "" : "they differ: " + mixed;
  });
}

}  // namespace wardchalk::test::file_properties_test
