#include "tests/support/case_text.h"

#include <stdexcept>

#include "core/record/case_entry.h"
#include "core/record/rules_file.h"
#include "core/words/sentences.h"
#include "tests/support/csv.h"

namespace wardchalk::test {

namespace {

[[noreturn]] void refuse(const Refusal& refusal, std::string_view where) {
  throw std::runtime_error(std::string(where) + ": " + refusal.path + ": " + std::string(idOf(refusal.code)) +
                           " (" + refusal.typed + ")");
}

bool isBare(std::string_view value) {
  return value == "null" || value.find_first_not_of("0123456789.") == std::string_view::npos;
}

}  // namespace

std::vector<WrittenEntry> entriesOf(std::string_view text) {
  std::vector<WrittenEntry> entries;
  for (const std::string& part : partsOf(text)) {
    const std::size_t equals = part.find('=');
    if (equals == std::string::npos) throw std::runtime_error("no '=' in " + part);
    entries.push_back({part.substr(0, equals), part.substr(equals + 1)});
  }
  return entries;
}

std::string textOf(std::span<const WrittenEntry> entries) {
  std::string text;
  for (const WrittenEntry& entry : entries)
    text.append(text.empty() ? "" : "; ").append(entry.path).append("=").append(entry.text);
  return text;
}

Case caseOf(std::span<const WrittenEntry> entries) {
  Case inputs;
  for (const WrittenEntry& entry : entries)
    if (const auto set = setEntry(inputs, entry.path, entry.text); !set)
      refuse(set.refusal(), textOf(entries));
  if (const auto refusal = contradictionIn(inputs)) refuse(*refusal, textOf(entries));
  return inputs;
}

Case caseOf(std::string_view text) { return caseOf(entriesOf(text)); }

HouseRules rulesOf(std::string_view text) {
  std::string json = R"({"format": "wardchalk.house-rules", "version": 1)";
  for (const WrittenEntry& rule : entriesOf(text)) {
    const std::string quote = isBare(rule.text) ? "" : "\"";
    json.append(", \"").append(rule.path).append("\": ").append(quote).append(rule.text).append(quote);
  }
  const Result<HouseRules> rules = readRules(json + "}");
  if (!rules) refuse(rules.refusal(), text);
  return *rules;
}

std::vector<WrittenEntry> with(std::vector<WrittenEntry> entries, std::string_view path, std::string text) {
  for (WrittenEntry& entry : entries) {
    if (entry.path != path) continue;
    entry.text = std::move(text);
    return entries;
  }
  entries.push_back({std::string(path), std::move(text)});
  return entries;
}

}  // namespace wardchalk::test
