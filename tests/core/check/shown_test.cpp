#include "core/check/shown.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "core/check/disagreement.h"
#include "core/check/work_out.h"
#include "core/record/case_summary.h"
#include "core/unit/print.h"
#include "core/words/amount_words.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "core/words/step_words.h"
#include "core/words/working_markup.h"
#include "core/words/working_text.h"
#include "tests/support/golden_cases.h"

// What may be seen while a question is open, over every golden case that is asked about and every text that a
// person reads.

namespace wardchalk::test::shown_test {
namespace {

Worksheet sheetOf(const GoldenCase& golden) { return workOut(golden.given, golden.rules); }

std::vector<GoldenCase> asked() {
  std::vector<GoldenCase> cases;
  std::ranges::copy_if(goldenCases(), std::back_inserter(cases),
                       [](const GoldenCase& golden) { return sheetOf(golden).verdict == VerdictKind::ask; });
  return cases;
}

Answers allAnswers(const Worksheet& sheet) {
  std::vector<Answer> every;
  for (const std::string_view id : answerIds) every.push_back(*answerOf(id));
  return answersBy(sheet, every);
}

bool hasAmountStep(const Worksheet& sheet) {
  return std::ranges::any_of(sheet.steps, [](const Step& step) { return tellsAmount(step.id); });
}

/// What a nurse could measure by, set by or draw up into.
std::vector<std::string> tellTales(const Worksheet& whole) {
  std::vector<std::string> tales;
  const auto add = [&](const std::string& text) {
    if (!text.empty()) tales.push_back(text);
  };
  const AmountWords words = amountWords(Shown(whole, allAnswers(whole)));
  add(words.measure);
  add(words.device);
  add(words.run);
  if (whole.give && whole.give->measured) add(givenText({*whole.give->measured, whole.give->exact.unit}));
  for (const auto flow : {&RunRate::mlPerHour, &RunRate::dropsPerMinute})
    if (whole.rate && (*whole.rate).*flow && ((*whole.rate).*flow)->measured)
      add(printed(Quantity{*((*whole.rate).*flow)->measured, ((*whole.rate).*flow)->exact.unit}) +
          (flow == &RunRate::mlPerHour ? "/h" : "/min"));
  return tales;
}

/// The text without what the nurse entered herself and what a question must tell to be one.
std::string withoutQuestions(std::string text, const Worksheet& sheet) {
  std::erase(text, '\\');  // of TeX
  for (const Finding& finding : sheet.findings)
    for (std::string said = sentence(finding); text.find(said) != std::string::npos;)
      text.erase(text.find(said), said.size());
  return text;
}

/// A line that was broken at the edge of the page is one line again.
std::string unbroken(std::string text) {
  std::string out;
  for (const char letter : text)
    if (letter != '\n' && letter != ' ')
      out.push_back(letter);
    else if (!out.ends_with(' '))
      out.push_back(' ');
  return out;
}

std::vector<std::string> textsOf(const Shown& shown) {
  return {unbroken(workingText(shown)), workingMarkup(shown, Markup::mathml),
          workingMarkup(shown, Markup::latex)};
}

class AskedTest : public ::testing::TestWithParam<GoldenCase> {};

TEST_P(AskedTest, HoldsNothingOfTheAmountWhileAQuestionIsOpen) {
  const Worksheet whole = sheetOf(GetParam());
  const Shown shown(whole);
  EXPECT_FALSE(shown->give);
  EXPECT_FALSE(shown->rate);
  EXPECT_FALSE(hasAmountStep(shown.sheet()));
  EXPECT_TRUE(amountWords(shown).measure.empty());
  EXPECT_FALSE(amountWords(shown).none.empty());
}

TEST_P(AskedTest, NoTextTellsTheAmountWhileAQuestionIsOpen) {
  const Worksheet whole = sheetOf(GetParam());
  for (const std::string& text : textsOf(whole))
    for (const std::string& tale : tellTales(whole))
      EXPECT_EQ(withoutQuestions(text, whole).find(tale), std::string::npos) << tale << " in\n" << text;
}

TEST_P(AskedTest, CellsSayAskFirst) {
  const Worksheet whole = sheetOf(GetParam());
  const std::vector<std::string> cells = summaryOf(whole);
  const auto cell = [&](std::string_view name) {
    return cells.at(
        static_cast<std::size_t>(std::ranges::find(summaryColumns, name) - summaryColumns.begin()));
  };
  for (const std::string_view name : {"give", "device", "rate", "drops"})
    EXPECT_TRUE(cell(name).empty() || cell(name) == "ask first") << name << ": " << cell(name);
  EXPECT_EQ(cell("give") == "ask first", whole.give && whole.give->measured);
}

TEST_P(AskedTest, HoldsEverythingOnceAllIsSettled) {
  const Worksheet whole = sheetOf(GetParam());
  const Shown shown(whole, allAnswers(whole));
  // how many doses are meant is settled by an entry alone
  EXPECT_EQ(shown.isOpen(), whole.finding(FindingCode::maxDosesOpen) != nullptr);
  if (shown.isOpen()) return;
  EXPECT_EQ(shown->give.has_value(), whole.give.has_value());
  EXPECT_EQ(shown->steps.size(), whole.steps.size());
  for (const FindingCode question : shown.questions()) EXPECT_TRUE(shown.answerTo(question));
  if (!whole.give || !whole.give->measured) return;
  EXPECT_NE(unbroken(workingText(shown)).find(amountWords(shown).measure), std::string::npos);
}

TEST_P(AskedTest, StaysClosedWithOneAnswerTooFew) {
  const Worksheet whole = sheetOf(GetParam());
  const Answers all = allAnswers(whole);
  for (const auto& [question, answer] : all.given) {
    Answers fewer = all;
    fewer.given.erase(question);
    const Shown shown(whole, fewer);
    EXPECT_TRUE(shown.isOpen());
    EXPECT_FALSE(shown->give);
    EXPECT_FALSE(hasAmountStep(shown.sheet()));
  }
}

TEST_P(AskedTest, StaysClosedByAnswersThatSettleOtherQuestions) {
  const Worksheet whole = sheetOf(GetParam());
  Answers wrong;
  for (const FindingCode question : questionsOf(whole))
    for (const std::string_view id : answerIds)
      if (!settles(*answerOf(id), question)) wrong.given.insert_or_assign(question, *answerOf(id));
  const Shown shown(whole, wrong);
  EXPECT_TRUE(shown.isOpen());
  EXPECT_FALSE(shown->give);
  EXPECT_FALSE(hasAmountStep(shown.sheet()));
}

TEST_P(AskedTest, StaysClosedByADisagreementWhateverIsAnswered) {
  const Worksheet apart = unsettled(sheetOf(GetParam()), {"3 mL", "5 mL"});
  const Shown shown(apart, allAnswers(apart));
  EXPECT_TRUE(shown.isOpen());
  EXPECT_FALSE(shown->give);
  EXPECT_FALSE(hasAmountStep(shown.sheet()));
}

INSTANTIATE_TEST_SUITE_P(All, AskedTest, ::testing::ValuesIn(asked()), [](const auto& instance) {
  std::string name = instance.param.name;
  std::ranges::replace(name, '-', '_');
  return name;
});

TEST(Shown, LeavesWhatIsNotAskedAsItIs) {
  for (const GoldenCase& golden : goldenCases()) {
    const Worksheet whole = sheetOf(golden);
    if (whole.verdict == VerdictKind::ask) continue;
    const Shown shown(whole);
    EXPECT_EQ(shown->steps.size(), whole.steps.size()) << golden.name;
    EXPECT_EQ(shown->give.has_value(), whole.give.has_value()) << golden.name;
    EXPECT_FALSE(shown.isOpen()) << golden.name;
    EXPECT_FALSE(shown.asksFirst()) << golden.name;
  }
}

// What tells the amount is hidden by itself, whatever else is there.
TEST(Shown, AStepThatTellsTheAmountAloneWaitsAsWell) {
  for (const GoldenCase& golden : asked()) {
    Worksheet sheet = sheetOf(golden);
    if (!hasAmountStep(sheet)) continue;
    sheet.give.reset();
    sheet.rate.reset();
    const Shown shown(sheet);
    EXPECT_TRUE(shown.asksFirst()) << golden.name;
    EXPECT_FALSE(hasAmountStep(shown.sheet())) << golden.name;
  }
}

TEST(Shown, ASafeSheetThatTwoPeopleDisagreeAboutTellsNothing) {
  for (const GoldenCase& golden : goldenCases()) {
    if (golden.name != "safe-per-surface-liquid") continue;
    const Worksheet apart = unsettled(sheetOf(golden), {"3.2 mL", "32 mL"});
    ASSERT_EQ(apart.verdict, VerdictKind::ask);
    EXPECT_TRUE(allAnswers(apart).given.empty());
    EXPECT_FALSE(Shown(apart, allAnswers(apart))->give);
    return;
  }
  FAIL() << "no such case";
}

struct Row {
  FindingCode question;
  std::vector<Answer> ways;
};

/// R23: a doubt about a fact is settled by looking again, other questions with somebody.
TEST(Answers, SettleTheirOwnKindOfQuestion) {
  using enum Answer;
  const std::vector<Row> rows = {
      {FindingCode::weightUnlikely, {weighedAgain}},
      {FindingCode::heightUnlikely, {measuredAgain}},
      {FindingCode::sizeImplausible, {weighedAgain, measuredAgain}},
      {FindingCode::weightUnlikelyForHeight, {weighedAgain, measuredAgain}},
      {FindingCode::bsaDiffers, {weighedAgain, measuredAgain, chart}},
      {FindingCode::strengthDiffers, {labelReadAgain, pharmacist}},
      {FindingCode::finalSmallerThanDiluent, {labelReadAgain, pharmacist}},
      {FindingCode::belowLow, {prescriber, pharmacist, seniorNurse, chart}},
      {FindingCode::scheduleDiffers, {prescriber, pharmacist, seniorNurse, chart}},
      {FindingCode::tooDilute, {prescriber, pharmacist, seniorNurse, chart}},
      {FindingCode::secondDiffers, {}},
  };
  for (const Row& row : rows) EXPECT_EQ(whatSettles(row.question), row.ways) << idOf(row.question);
}

TEST(Answers, HaveIdsThatReadBack) {
  for (const std::string_view id : answerIds) {
    ASSERT_TRUE(answerOf(id)) << id;
    EXPECT_EQ(idOf(*answerOf(id)), id);
  }
  for (const std::string_view id : {"", "Prescriber", "nurse", "senior nurse", "other"})
    EXPECT_FALSE(answerOf(id)) << id;
}

TEST(Answers, TakeTheFirstWayThatSettles) {
  for (const GoldenCase& golden : goldenCases()) {
    const Worksheet sheet = sheetOf(golden);
    const Answers answers = answersBy(sheet, {Answer::weighedAgain, Answer::pharmacist, Answer::prescriber});
    for (const auto& [question, answer] : answers.given) {
      EXPECT_TRUE(settles(answer, question)) << golden.name;
      EXPECT_NE(answer, Answer::prescriber) << golden.name;
    }
    EXPECT_TRUE(sheet.verdict == VerdictKind::ask || answers.given.empty()) << golden.name;
  }
}

}  // namespace
}  // namespace wardchalk::test::shown_test
