// The handbook's page of hazards is held against what is there: every hazard has its paragraph, and every
// test that a paragraph names stands in a file that is built. So is the page of what is done for people who
// see, hear or move otherwise.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "tests/support/csv.h"

namespace wardchalk::test::handbook_test {

namespace {

namespace fs = std::filesystem;

constexpr int hazards = 40;  // from the first analysis
constexpr std::array seenInUse = {41, 42, 43, 44, 45, 46, 47, 48, 49, 50, 51, 52, 53, 55};  // found later

std::string textOfFile(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

/// Every match of the expression's first group.
std::vector<std::string> matches(const std::string& text, const std::string& expression) {
  const std::regex regex(expression);
  std::vector<std::string> found;
  for (std::sregex_iterator at(text.begin(), text.end(), regex), end; at != end; ++at)
    found.push_back((*at)[1].str());
  return found;
}

/// "H01" to its paragraph.
std::map<std::string, std::string> paragraphs() {
  const std::string page = textOfFile(sourceFile("resources/handbook/hazards.md"));
  std::map<std::string, std::string> found;
  for (std::size_t at = page.find("### H"); at != std::string::npos;) {
    const std::size_t next = page.find("\n#", at + 1);
    found[page.substr(at + 4, 3)] = page.substr(at, next == std::string::npos ? next : next - at);
    at = page.find("### H", at + 1);
  }
  return found;
}

/// Whether a test's source is in the list of its folder's programs.
bool isBuilt(const fs::path& source) {
  const std::string list = textOfFile(source.parent_path() / "CMakeLists.txt");
  if (list.find(source.filename().string()) != std::string::npos) return true;
  const std::string stem = source.stem().string();  // "step_card_test" of the loop over units
  const std::string unit = stem.substr(0, stem.rfind("_test"));
  return list.find("${unit}_test.cpp") != std::string::npos && list.find(unit) != std::string::npos;
}

/// Core tests are listed some folders up, with the way to them: "practice/sessions/free_text_test.cpp".
bool isBuiltAbove(const fs::path& source) {
  std::string way = source.filename().string();
  for (fs::path folder = source.parent_path(); folder.filename() != "tests"; folder = folder.parent_path()) {
    way.insert(0, folder.filename().string() + "/");
    if (textOfFile(folder.parent_path() / "CMakeLists.txt").find(way) != std::string::npos) return true;
  }
  return false;
}

/// "Suite.Name" of each test that is built, with the text of its file.
const std::map<std::string, std::string>& tests() {
  static const std::map<std::string, std::string> all = [] {
    std::map<std::string, std::string> found;
    const std::regex test(
        R"(\n(?:TEST|TEST_F|TEST_P|RC_GTEST_PROP)\((\w+),\s*(\w+)|\nvoid (\w+Test)::(\w+)\(\) \{)");
    for (const auto& file : fs::recursive_directory_iterator(sourceFile("tests"))) {
      if (!file.path().string().ends_with("_test.cpp")) continue;
      if (!isBuilt(file.path()) && !isBuiltAbove(file.path())) continue;
      const std::string text = textOfFile(file.path());
      for (std::sregex_iterator at(text.begin(), text.end(), test), end; at != end; ++at) {
        const bool gtest = (*at)[1].matched;
        if (!gtest && (*at)[4].str().ends_with("_data")) continue;  // the rows of a test
        found[(*at)[gtest ? 1 : 3].str() + "." + (*at)[gtest ? 2 : 4].str()] = text;
      }
    }
    for (const auto& file : fs::recursive_directory_iterator(sourceFile("tests")))
      if (file.path().filename() == "CMakeLists.txt")
        for (const std::string& name : matches(textOfFile(file.path()), R"(add_test\(NAME (\S+))"))
          found[name];
    return found;
  }();
  return all;
}

/// Whether "Suite.Name", or "Suite.Name/H21" with at least one row whose name begins so, is there.
bool exists(const std::string& name) {
  const std::size_t stroke = name.find('/');
  const auto found = tests().find(name.substr(0, stroke));
  if (found == tests().end()) return false;
  return stroke == std::string::npos ||
         found->second.find("\"" + name.substr(stroke + 1) + " ") != std::string::npos;
}

std::vector<std::string> namedIn(const std::string& paragraph) {
  return matches(paragraph, R"(`(\w+\.[\w/]+)`)");
}

}  // namespace

TEST(HazardHandbook, hasAParagraphForEachHazardInOrder) {
  std::vector<std::string> expected;
  for (int i = 1; i <= hazards; ++i) expected.push_back((i < 10 ? "H0" : "H") + std::to_string(i));
  for (const int i : seenInUse) expected.push_back("H" + std::to_string(i));
  const std::string page = textOfFile(sourceFile("resources/handbook/hazards.md"));
  EXPECT_EQ(matches(page, R"(\n### (H\d\d) \(S[1-5]\) \S)"), expected);
}

TEST(HazardHandbook, saysOfEachWhatIsDoneOrNotAndByWhichTests) {
  const std::regex said(R"(\n- (Does|Otherwise|Not handled|Not yet): \S)");
  for (const auto& [id, paragraph] : paragraphs()) {
    EXPECT_TRUE(std::regex_search(paragraph, said)) << id;
    EXPECT_EQ(matches(paragraph, R"(\n(- Tests: ))").size(), 1U) << id;
    const bool nothingDone = paragraph.find("\n- Does: ") == std::string::npos;
    EXPECT_EQ(namedIn(paragraph).empty(), nothingDone) << id << ": what is done has a test";
    EXPECT_EQ(paragraph.find("- Tests: none") != std::string::npos, nothingDone) << id;
  }
}

TEST(HazardHandbook, namesOnlyTestsThatExist) {
  int named = 0;
  for (const auto& [id, paragraph] : paragraphs())
    for (const std::string& name : namedIn(paragraph)) {
      ++named;
      EXPECT_TRUE(exists(name)) << id << ": " << name;
    }
  EXPECT_GE(named, 100);
}

// The finder is itself held against names that are and are not there.
TEST(HazardHandbook, findsWhatIsThereAndNothingElse) {
  EXPECT_TRUE(exists("HazardHandbook.namesOnlyTestsThatExist"));
  EXPECT_TRUE(exists("ReadsNumber.exactly"));
  EXPECT_TRUE(exists("JourneysTest.verdicts"));
  EXPECT_TRUE(exists("HazardCase.isMet/H21"));
  EXPECT_TRUE(exists("NumberProperty.anyTextIsReadExactlyOrRefused"));
  EXPECT_TRUE(exists("RulesOpinion.theConsoleAgreesWithTheRulesInPython"));
  EXPECT_FALSE(exists("HazardCase.isMet/H99"));
  EXPECT_FALSE(exists("HazardCase.isNotMet"));
  EXPECT_FALSE(exists("JourneysTest.isNotThere"));
  EXPECT_FALSE(exists("Nothing.atAll"));
}

// Every test that is written for a hazard is named on its page.
TEST(HazardHandbook, namesEveryTestThatIsNamedAfterAHazard) {
  std::map<std::string, std::string> all = paragraphs();
  for (const auto& [name, text] : tests())
    for (const std::string& id : matches(name, R"((H\d\d)_)")) {
      const std::vector<std::string> named = namedIn(all[id]);
      EXPECT_NE(std::find(named.begin(), named.end(), name), named.end()) << id << ": " << name;
    }
  const std::string rows = textOfFile(sourceFile("tests/hazards/hazard_cases_test.cpp"));
  for (const std::string& id : matches(rows, R"re(HazardRow\{"(H\d\d) )re"))
    EXPECT_NE(all[id].find("`HazardCase.isMet/" + id + "`"), std::string::npos) << id;
}

/// Source: WCAG 2.2, its criteria of levels A and AA (from memory). 4.1.1 is gone from it.
constexpr std::array criteria = {
    "1.1.1",  "1.2.1", "1.2.2", "1.2.3", "1.2.4", "1.2.5",  "1.3.1",  "1.3.2",  "1.3.3",  "1.3.4", "1.3.5",
    "1.4.1",  "1.4.2", "1.4.3", "1.4.4", "1.4.5", "1.4.10", "1.4.11", "1.4.12", "1.4.13", "2.1.1", "2.1.2",
    "2.1.4",  "2.2.1", "2.2.2", "2.3.1", "2.4.1", "2.4.2",  "2.4.3",  "2.4.4",  "2.4.5",  "2.4.6", "2.4.7",
    "2.4.11", "2.5.1", "2.5.2", "2.5.3", "2.5.4", "2.5.7",  "2.5.8",  "3.1.1",  "3.1.2",  "3.2.1", "3.2.2",
    "3.2.3",  "3.2.4", "3.2.6", "3.3.1", "3.3.2", "3.3.3",  "3.3.4",  "3.3.7",  "3.3.8",  "4.1.2", "4.1.3"};

TEST(AccessHandbook, hasARowForEachCriterionInOrder) {
  const std::string page = textOfFile(sourceFile("resources/handbook/access.md"));
  const std::vector<std::string> expected(criteria.begin(), criteria.end());
  EXPECT_EQ(matches(page, R"(\n\| (\d\.\d\.\d+) [^|]+\| A?A \|)"), expected);
}

TEST(AccessHandbook, saysOfEachHowItStands) {
  const std::string page = textOfFile(sourceFile("resources/handbook/access.md"));
  const std::regex said(
      R"(`[\w.]+`|Looked at: |Does not apply: |Not met: |What is entered stays\.|named above)");
  for (const std::string& row : matches(page, R"(\n(\| \d\.\d\.\d+ [^\n]+))"))
    EXPECT_TRUE(std::regex_search(row, said)) << row;
}

TEST(AccessHandbook, namesOnlyTestsThatExist) {
  const std::string page = textOfFile(sourceFile("resources/handbook/access.md"));
  const std::vector<std::string> named = matches(page, R"(`(\w+\.\w+|atspi_\w+)`)");
  for (const std::string& name : named) EXPECT_TRUE(exists(name)) << name;
  EXPECT_GE(named.size(), 60U);
}

}  // namespace wardchalk::test::handbook_test
