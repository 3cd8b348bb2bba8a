// Nothing the program writes can be misread in the ways that are known (T01 to T03, T07, T08; H29, H30): the
// golden cases, random cases, every phrase, and the texts of the window are scanned.
#include <filesystem>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <regex>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"
#include "core/record/rules_file.h"
#include "core/record/worksheet_file.h"
#include "core/words/amount_words.h"
#include "core/words/phrasebook.h"
#include "core/words/read_back.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "core/words/working_text.h"
#include "tests/property/for_all.h"
#include "tests/support/csv.h"
#include "tests/support/safe_writing.h"

namespace wardchalk::test::safe_writing_test {

namespace {

namespace fs = std::filesystem;

std::string textOfFile(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

/// Whether a member of a worksheet file is a sentence for readers.
bool isForReaders(const nlohmann::json& object, const std::string& key) {
  return key == "words" || key == "reason" || (key == "text" && object.contains("code"));
}

/// The unit of a member that is written without: that beside a value, and the surfaces of this one finding.
std::string unitOf(const nlohmann::json& object, const std::string& key) {
  if (key == "value") return object.value("unit", std::string());
  return key == "arguments" && object.value("code", std::string()) == "household-constant" ? "m2" : "";
}

/// What is written unsafely in a worksheet file; `unit` is that of a number written without one.
std::string unsafeIn(const nlohmann::json& json, const std::string& unit = {}) {
  if (json.is_string())
    return unsafeWriting(json.get<std::string>() + (unit.empty() ? "" : " " + unit), Written::forFiles);
  if (!json.is_structured()) return {};
  for (const auto& [key, value] : json.items()) {
    if (key == "slip") continue;  // an id, never read as words
    std::string wrong;
    if (json.is_object() && isForReaders(json, key))
      wrong = unsafeWriting(value.get<std::string>(), Written::forReaders);
    else
      wrong = unsafeIn(value, unit.empty() && json.is_object() ? unitOf(json, key) : unit);
    if (!wrong.empty()) return key + ": " + wrong;
  }
  return {};
}

std::string unsafeAmount(const AmountWords& words) {
  for (const std::string& text : {words.measure, words.dose, words.when, words.device, words.rounding,
                                  words.run, words.label, words.none})
    if (std::string wrong = unsafeWriting(text, Written::forReaders); !wrong.empty()) return wrong;
  return {};
}

/// What is unsafe in all that is written, spoken and filed of a worksheet.
std::string unsafeSheet(const Worksheet& sheet) {
  if (std::string wrong = unsafeWriting(workingText(sheet), Written::forReaders); !wrong.empty())
    return "text: " + wrong;
  if (std::string wrong = unsafeAmount(amountWords(sheet)); !wrong.empty()) return "amount: " + wrong;
  for (const Step& step : sheet.steps)
    if (std::string wrong = unsafeWriting(sentence(step, sheet), Written::forReaders); !wrong.empty())
      return "spoken: " + wrong;
  for (const Finding& finding : sheet.findings)
    if (std::string wrong = unsafeWriting(sentence(finding), Written::forReaders); !wrong.empty())
      return "finding: " + wrong;
  for (const CaseEntry& entry : caseEntries())
    if (std::string wrong =
            unsafeWriting(readBack(entry.path, sheet.given, sheet.rules), Written::forReaders);
        !wrong.empty())
      return "read back: " + wrong;
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::whole);
  return unsafeIn(nlohmann::json::parse(json));
}

HouseRules rulesBeside(const fs::path& file) {
  std::string rules = file.string();
  rules.replace(rules.find(".case.json"), std::string::npos, ".rules.json");
  return fs::exists(rules) ? *readRules(textOfFile(rules)) : exactRules();
}

/// The literal texts of a source file as they are read: without those that only name things, the marks of
/// mnemonics and the codes of characters.
std::vector<std::string> literalsOf(const fs::path& file) {
  static const std::regex literal(R"re("((?:[^"\\]|\\.)*)")re");
  static const std::regex mark(R"re(&|\\u[0-9A-Fa-f]{4})re");
  std::vector<std::string> found;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) {
    if (line.starts_with("#include") || line.find("setObjectName") != std::string::npos) continue;
    for (std::sregex_iterator at(line.begin(), line.end(), literal), end; at != end; ++at)
      found.push_back(std::regex_replace((*at)[1].str(), mark, ""));
  }
  return found;
}

}  // namespace

struct Sample {
  const char* name;
  const char* text;
  Written written;
  bool safe;
};

// The scanner itself is held against texts that it must and must not find fault with.
TEST(SafeWriting, theScannerFindsWhatIsUnsafeAndNothingElse) {
  constexpr Written readers = Written::forReaders;
  constexpr Written files = Written::forFiles;
  const Sample samples[] = {
      {"plain", "Measure 3.2 mL (80 mg) for one dose.", readers, true},
      {"surface", "0.70 m²", readers, true},
      {"surface in files", "0.70 m2", files, true},
      {"surface spoken", "times 0.70 square metres", readers, true},
      {"struck surface", "0.70 ~m²~a", readers, true},
      {"zero in the middle", "1.05 mg", readers, true},
      {"thousands", "1,200 mg and 12,000 mg", readers, true},
      {"thousands in files", "1200 mg", files, true},
      {"a power", "(17.2 kg)^0.5378", readers, true},
      {"trailing zero", "5.0 mg", readers, false},
      {"two trailing zeros", "0.500 mg", readers, false},
      {"zero at the end of all", "it is 2.50", readers, false},
      {"naked point", "give .5 mg", readers, false},
      {"naked point first", ".5 mg", readers, false},
      {"naked point in brackets", "(.5 mg)", readers, false},
      {"joined", "80mg", readers, false},
      {"no comma", "1200 mg", readers, false},
      {"comma in files", "1,200 mg", files, false},
      {"comma misplaced", "12,00 mg", readers, false},
      {"per d", "30 mg/kg/d", readers, false},
      {"per day", "30 mg/kg/day", readers, true},
      {"micro sign", "50 µg", readers, false},
      {"U", "10 U of it", readers, false},
      {"U within a word", "UNSAFE and Unit", readers, true},
      {"cc", "5 cc.", readers, false},
      {"cc within a word", "accept", readers, true},
      {"SC", "route SC", readers, false},
      {"divided", "30 mg in divided doses", readers, false},
  };
  for (const Sample& sample : samples)
    EXPECT_EQ(unsafeWriting(sample.text, sample.written).empty(), sample.safe)
        << sample.name << ": " << unsafeWriting(sample.text, sample.written);
}

TEST(SafeWriting, everyGoldenCaseIsWrittenSafely) {
  int seen = 0;
  for (const auto& file : fs::directory_iterator(sourceFile("tests/golden/cases"))) {
    if (!file.path().string().ends_with(".case.json")) continue;
    ++seen;
    const Result<Case> inputs = readCase(textOfFile(file.path()));
    ASSERT_TRUE(inputs) << file.path();
    EXPECT_EQ(unsafeSheet(workOut(*inputs, rulesBeside(file.path()))), "") << file.path();
  }
  EXPECT_GE(seen, 20);
}

TEST(SafeWriting, everyRandomCaseIsWrittenSafely) {
  forAll(4000, [](Choices& choices) -> std::string {
    const RandomCase random = choices.onceIn(6) ? randomRateCase(choices) : randomCase(choices);
    const std::string wrong = unsafeSheet(workOut(caseOf(random.entries), rulesFor(random.rules)));
    return wrong.empty() ? "" : wrong + shown(random);
  });
}

// A refusal shows how to type thousands, without commas.
TEST(SafeWriting, everyPhraseIsWrittenSafely) {
  for (const Phrase& phrase : allPhrases())
    for (const std::string_view text : {phrase.one, phrase.other})
      EXPECT_EQ(
          unsafeWriting(text, phrase.id.starts_with("refusal.") ? Written::forFiles : Written::forReaders),
          "")
          << phrase.id;
}

TEST(SafeWriting, everyTextOfTheWindowIsWrittenSafely) {
  int seen = 0;
  for (const char* folder : {"ui", "app"})
    for (const auto& file : fs::recursive_directory_iterator(sourceFile(folder))) {
      if (file.path().extension() != ".cpp") continue;
      for (const std::string& text : literalsOf(file.path())) {
        ++seen;
        EXPECT_EQ(unsafeWriting(text, Written::forFiles), "") << file.path() << ": " << text;
      }
    }
  EXPECT_GT(seen, 300);
}

// The demonstration cases.
TEST(SafeWriting, theShippedCaseIsWrittenSafely) {
  for (const auto& file : fs::directory_iterator(sourceFile("resources/cases")))
    EXPECT_EQ(unsafeIn(nlohmann::json::parse(textOfFile(file.path()))), "") << file.path();
}

}  // namespace wardchalk::test::safe_writing_test
