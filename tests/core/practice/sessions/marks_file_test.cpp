#include "core/practice/sessions/marks_file.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/core/practice/marking/marking_cases.h"

namespace wardchalk::marks_file_test {
namespace {

using nlohmann::json;

Problem problem() {
  Problem made = test::casePerDay();
  test::ask(made, {"weight", "low-dose", "limit-dose", "ordered-day", "verdict", "give"});
  return made;
}

const std::vector<std::string> answers = {"14.97 kg", "374 mg", "mg/m²", "", "safe"};

json marks(int rung) {
  const Problem made = problem();
  std::string text;
  writeMarks(text, made, markedLines(made, answers), rung);
  EXPECT_EQ(text.find('\n'), std::string::npos);
  return json::parse(text);
}

TEST(MarksFile, tellsEachLineByItsIds) {
  const json file = marks(1);
  EXPECT_EQ(file["format"], "wardchalk.marks");
  EXPECT_EQ(file["version"], 1);
  const json& lines = file["lines"];
  ASSERT_EQ(lines.size(), 6U);
  const auto told = [&](std::size_t i) {
    return lines[i]["id"].get<std::string>() + " " + lines[i]["mark"].get<std::string>() + " " +
           lines[i]["slips"].dump();
  };
  EXPECT_EQ(told(0), "weight right []");
  EXPECT_EQ(told(1), R"(low-dose wrong ["E20"])");
  EXPECT_EQ(told(2), "limit-dose unread []");
  EXPECT_TRUE(lines[2].contains("fault")) << lines[2];
  EXPECT_EQ(told(3), "ordered-day blank []");
  EXPECT_EQ(told(4), "verdict right []");
  EXPECT_EQ(told(5), "give blank []");  // one that was not handed in at all
  EXPECT_FALSE(lines[0].contains("fault") || lines[0].contains("notes"));
}

TEST(MarksFile, tellsTheHintOfItsRung) {
  EXPECT_EQ(marks(1)["lines"][1]["hint"], "Look at how many doses there are.");
  EXPECT_EQ(marks(2)["lines"][1]["hint"], "Is your number for one dose, or for the whole day?");
}

TEST(MarksFile, tellsNotesWhereThereAreSome) {
  const Problem made = problem();
  std::string text;
  const std::vector<std::string> unsure = {"", "", "", "", "perhaps"};
  writeMarks(text, made, markedLines(made, unsure), 1);
  EXPECT_EQ(json::parse(text)["lines"][4]["notes"], json::array({"not-a-verdict"}));
}

TEST(MarksText, hasAParagraphForEachLine) {
  const Problem made = problem();
  const std::string text = marksText(made, answers, markedLines(made, answers), 1);
  for (const char* part : {"    14.97 kg\n    right\n", "    374 mg\n    not yet; E20 ",
                           "    Look at how many doses there are.\n", "    mg/m²\n    not read yet\n",
                           "    nothing written\n", "    safe\n    right\n"})
    EXPECT_NE(text.find(part), std::string::npos) << part << text;
  const std::string blank = "    nothing written\n";
  EXPECT_NE(text.find(blank), text.rfind(blank)) << text;  // the one that was not handed in has its paragraph
}

TEST(Answers, standInTheOrderOfTheAsks) {
  const std::vector<WrittenAnswer> written = {{"verdict", "safe"}, {"weight", "14.97 kg"}};
  const Result<std::vector<std::string>> ordered = inOrderOfAsks(problem(), written);
  ASSERT_TRUE(ordered);
  EXPECT_EQ(*ordered, (std::vector<std::string>{"14.97 kg", "", "", "", "safe", ""}));
}

TEST(Answers, toWhatNobodyAsksAreRefused) {
  const std::vector<WrittenAnswer> written = {{"weight", "14.97 kg"}, {"bsa", "0.61 m2"}};
  const Result<std::vector<std::string>> ordered = inOrderOfAsks(problem(), written);
  ASSERT_FALSE(ordered);
  EXPECT_EQ(idOf(ordered.refusal().code), "key-unknown");
  EXPECT_EQ(ordered.refusal().typed, "bsa");
}

}  // namespace
}  // namespace wardchalk::marks_file_test
