#include "core/session/case_session.h"

#include <gtest/gtest.h>

#include <array>
#include <fstream>
#include <sstream>

#include "core/check/work_out.h"
#include "tests/core/session/two_people.h"
#include "tests/core/test_names.h"

namespace wardchalk::case_session_test {
namespace {

using test::Event;
using test::TwoPeople;

/// What each event does in each state, in the order of SessionState; the room's README.md has the same table.
struct Row {
  Event event;
  std::array<std::string_view, sessionStateIds.size()> then;
};

constexpr std::string_view nothing = "–";

const std::vector<Row>& table() {
  static const std::vector<Row> rows = [] {
    const std::string_view no = nothing, alone = "alone", agreed = "agreed", differs = "differs",
                           before = "differed before", enters = "second enters", alike = "comparing, alike",
                           apart = "comparing, apart", first = "first corrects", second = "second corrects",
                           covered = "covered";
    return std::vector<Row>{
        {Event::begin, {enters, enters, enters, enters, no, no, no, no, no, no}},
        {Event::compareAlike, {no, no, no, no, alike, no, no, alike, alike, no}},
        {Event::compareApart, {no, no, no, no, apart, no, no, apart, apart, no}},
        {Event::firstCorrects, {no, no, no, no, no, first, first, no, no, no}},
        {Event::secondCorrects, {no, no, no, no, no, second, second, no, no, no}},
        {Event::record, {no, no, no, no, no, agreed, differs, no, no, no}},
        {Event::leave, {no, no, no, no, alone, alone, differs, differs, differs, no}},
        {Event::apartEntryChanged, {alone, alone, before, before, enters, no, no, first, second, no}},
        {Event::otherEntryChanged, {alone, alone, differs, before, enters, no, no, first, second, no}},
        {Event::rulesChanged, {alone, alone, differs, before, enters, alike, apart, first, second, covered}},
        {Event::otherOpened, {alone, alone, alone, alone, no, no, no, no, no, no}},
        {Event::newChild, {alone, alone, alone, alone, alone, alone, alone, alone, alone, alone}},
        {Event::cover, {covered, covered, covered, covered, covered, covered, covered, covered, covered, no}},
        {Event::uncover, {no, no, no, no, no, no, no, no, no, "as it was"}},
        {Event::answer, {alone, agreed, differs, before, enters, no, no, first, second, no}},
    };
  }();
  return rows;
}

/// A cell of the table; for a cover, one for each state that it may lie over.
struct Cell {
  std::string name;
  SessionState from;
  Event event;
  std::string_view then;
  bool covered = false;
};

std::vector<Cell> cells() {
  std::vector<Cell> all;
  for (const Row& row : table())
    for (std::size_t at = 0; at + 1 < sessionStateIds.size(); ++at) {
      const auto from = static_cast<SessionState>(at);
      const std::string event(test::nameOf(row.event));
      all.push_back({std::string(idOf(from)) + ", " + event, from, row.event, row.then[at]});
      all.push_back({"covered while " + std::string(idOf(from)) + ", " + event, from, row.event,
                     row.then.back(), true});
    }
  return all;
}

class EveryStateAndEvent : public ::testing::TestWithParam<Cell> {};

TEST_P(EveryStateAndEvent, leadsWhereTheTableSays) {
  const Cell& cell = GetParam();
  TwoPeople people;
  people.reach(cell.from);
  ASSERT_EQ(idOf(people.session.state()), idOf(cell.from));
  if (cell.covered) {
    ASSERT_TRUE(people.send(Event::cover));
  }
  const SessionState before = people.session.state();
  const std::string held = people.allEntries();
  const bool taken = people.send(cell.event);
  if (cell.then == nothing) {
    EXPECT_FALSE(taken);
    EXPECT_EQ(people.session.state(), before);
    EXPECT_EQ(people.session.stateUnderCover(), cell.from);
    EXPECT_EQ(people.allEntries(), held);
    return;
  }
  EXPECT_TRUE(taken);
  const std::string_view wanted = cell.then == "as it was" ? idOf(cell.from) : cell.then;
  EXPECT_EQ(idOf(people.session.state()), wanted);
}

INSTANTIATE_TEST_SUITE_P(Session, EveryStateAndEvent, ::testing::ValuesIn(cells()), test::NameOfRow());

TEST(SessionTable, standsInTheReadme) {
  std::ifstream in(std::string(WARDCHALK_SOURCE_DIR) + "/core/session/README.md");
  std::ostringstream text;
  text << in.rdbuf();
  const std::string readme = text.str();
  std::string head = "| event |";
  for (const std::string_view id : sessionStateIds) head.append(" ").append(id).append(" |");
  EXPECT_NE(readme.find(head + "\n"), std::string::npos) << head;
  for (const Row& row : table()) {
    std::string line = "| " + std::string(test::nameOf(row.event)) + " |";
    for (const std::string_view then : row.then) line.append(" ").append(then).append(" |");
    EXPECT_NE(readme.find("\n" + line + "\n"), std::string::npos) << line;
  }
  EXPECT_EQ(table().size(), test::eventNames.size());
}

// What is in the form, what is put away and what is forgotten.

TEST(Session, theSecondPersonBeginsOnAnEmptyFormAndTheFirstComesBackAsLeft) {
  TwoPeople people;
  people.form.modified = true;
  people.send(Event::begin);
  EXPECT_TRUE(people.form.draft.isEmpty());
  EXPECT_EQ(people.session.inForm(), Person::second);
  people.enter("99 kg");
  people.send(Event::leave);
  EXPECT_EQ(people.form.draft.text("child.weight"), "17.2 kg");
  EXPECT_TRUE(people.form.modified);
  EXPECT_EQ(people.allEntries().find("99 kg"), std::string::npos);
}

TEST(Session, recordingKeepsNothingOfTheSecondPersonsEntriesWhoeverIsInTheForm) {
  for (const Event last : {Event::firstCorrects, Event::secondCorrects}) {
    TwoPeople people;
    people.reach(SessionState::comparingApart);
    people.send(last);
    people.session.compare(people.form.draft, people.rules);
    people.send(Event::record);
    EXPECT_EQ(people.session.state(), SessionState::differs);
    EXPECT_EQ(people.form.draft.text("child.weight"), "17.2 kg");
    EXPECT_EQ(people.allEntries().find("12.7"), std::string::npos);
  }
}

TEST(Session, beginningIsRefusedOnAnEmptyForm) {
  CaseSession session;
  EXPECT_FALSE(session.begin({}));
  EXPECT_EQ(session.state(), SessionState::alone);
}

TEST(Session, beginningAndComparingAreRefusedWhileAnEntryCannotBeRead) {
  TwoPeople people;
  people.enter("17,2 kg");
  EXPECT_FALSE(people.send(Event::begin));
  people.enter("17.2 kg");
  ASSERT_TRUE(people.send(Event::begin));
  EXPECT_FALSE(people.session.compare(people.form.draft, people.rules));  // nothing is entered yet
  people.enter("17,2 kg");
  EXPECT_FALSE(people.session.compare(people.form.draft, people.rules));
  EXPECT_EQ(people.session.state(), SessionState::secondEnters);
}

TEST(Session, theFirstComparisonIsTheOneThatCounts) {
  TwoPeople people;
  people.send(Event::begin);
  people.enter("12.7 kg");
  people.edit("stock.strength", "");
  EXPECT_EQ(people.session.stillNeeded(people.form.draft, people.rules).size(), 1U);
  people.session.compare(people.form.draft, people.rules);
  EXPECT_FALSE(people.session.wasAlone());
  people.send(Event::secondCorrects);
  people.edit("stock.strength", "25 mg/1 mL");
  people.edit("child.weight", "17.2 kg");
  EXPECT_TRUE(people.session.stillNeeded(people.form.draft, people.rules).empty());
  people.session.compare(people.form.draft, people.rules);
  people.send(Event::record);
  ASSERT_TRUE(people.session.record());
  const SecondCheckRecord& record = *people.session.record();
  EXPECT_FALSE(record.firstLook.alone);
  EXPECT_FALSE(record.firstLook.apart.isNothing());
  EXPECT_TRUE(record.apart.isNothing());
  EXPECT_EQ(record.time, "2026-11-25 13:40");
}

TEST(Session, otherIdleMinutesVoidNoRecord) {
  TwoPeople people;
  people.reach(SessionState::agreed);
  people.rules.idleMinutes += 4;
  EXPECT_FALSE(people.session.rulesChanged(people.rules));
  EXPECT_EQ(people.session.state(), SessionState::agreed);
}

// What a reference that requires a second check waits for (R27).
TEST(Session, onlyARecordThatAgreesIsASecondCheckThatAgrees) {
  for (std::size_t i = 0; i < sessionStateIds.size(); ++i) {
    const auto state = static_cast<SessionState>(i);
    TwoPeople people;
    people.reach(state);
    if (people.session.isCovered()) continue;
    EXPECT_EQ(people.session.answers().secondAgrees, state == SessionState::agreed) << idOf(state);
  }
}

TEST(Session, aRecordThatAgreesIsVoidByAChangeThatIsTakenBack) {
  TwoPeople people;
  people.reach(SessionState::agreed);
  people.edit("child.weight", "17.3 kg");
  people.edit("child.weight", "17.2 kg");
  EXPECT_EQ(people.session.state(), SessionState::alone);
}

TEST(Session, rulesThatChangeUnderACoverVoidTheRecordUnderIt) {
  TwoPeople people;
  people.reach(SessionState::agreed);
  people.send(Event::cover);
  EXPECT_TRUE(people.session.rulesChanged(classroomRules()));
  people.send(Event::uncover);
  EXPECT_EQ(people.session.state(), SessionState::alone);
}

TEST(Session, aCoverKeepsWhatLiesUnderItAndNewChildForgetsIt) {
  TwoPeople people;
  people.form.modified = true;
  people.send(Event::cover);
  EXPECT_TRUE(people.form.draft.isEmpty());
  EXPECT_TRUE(people.session.holdsUnsaved(people.form));
  people.send(Event::uncover);
  EXPECT_EQ(people.form.draft.text("child.weight"), "17.2 kg");
  EXPECT_TRUE(people.form.modified);
  people.send(Event::cover);
  people.send(Event::newChild);
  EXPECT_EQ(people.allEntries(), "");
}

struct Unsaved {
  const char* name;
  SessionState state;
  bool firstModified;
  bool secondModified;
  bool covered;
  bool isUnsaved;
};

class HoldsUnsaved : public ::testing::TestWithParam<Unsaved> {};

TEST_P(HoldsUnsaved, inTheFormPutAwayOrCovered) {
  const Unsaved& row = GetParam();
  TwoPeople people;
  people.form.modified = row.firstModified;
  people.reach(row.state);
  people.form.modified = row.state == SessionState::alone ? row.firstModified : row.secondModified;
  if (row.covered) people.send(Event::cover);
  EXPECT_EQ(people.session.holdsUnsaved(people.form), row.isUnsaved);
}

INSTANTIATE_TEST_SUITE_P(
    Session, HoldsUnsaved,
    ::testing::Values(
        Unsaved{"saved", SessionState::alone, false, false, false, false},
        Unsaved{"edited", SessionState::alone, true, false, false, true},
        Unsaved{"saved, under a cover", SessionState::alone, false, false, true, false},
        Unsaved{"edited, under a cover", SessionState::alone, true, false, true, true},
        Unsaved{"the first saved, the second not begun", SessionState::secondEnters, false, false, false,
                false},
        Unsaved{"the first edited, put away", SessionState::secondEnters, true, false, false, true},
        Unsaved{"the second entered something", SessionState::secondEnters, false, true, false, true},
        Unsaved{"two people's entries under a cover", SessionState::secondEnters, false, false, true, true}),
    test::NameOfRow());

// Answers to questions.

TEST(SessionAnswers, areKeptByTheirQuestionAndCanBeTakenBack) {
  TwoPeople people;
  EXPECT_TRUE(people.session.answer(FindingCode::belowLow, Answer::pharmacist));
  EXPECT_EQ(people.session.answers().given.at(FindingCode::belowLow), Answer::pharmacist);
  EXPECT_TRUE(people.session.answer(FindingCode::belowLow, Answer::seniorNurse));
  EXPECT_EQ(people.session.answers().given.at(FindingCode::belowLow), Answer::seniorNurse);
  EXPECT_TRUE(people.session.answer(FindingCode::belowLow, std::nullopt));
  EXPECT_TRUE(people.session.answers().given.empty());
}

TEST(SessionAnswers, whatDoesNotSettleAQuestionChangesNothing) {
  TwoPeople people;
  EXPECT_FALSE(people.session.answer(FindingCode::belowLow, Answer::weighedAgain));
  EXPECT_TRUE(people.session.answers().given.empty());
  people.session.answer(FindingCode::belowLow, Answer::pharmacist);
  EXPECT_FALSE(people.session.answer(FindingCode::belowLow, Answer::labelReadAgain));
  EXPECT_EQ(people.session.answers().given.at(FindingCode::belowLow), Answer::pharmacist);
}

TEST(SessionAnswers, aQuestionThatIsNotAskedHasNone) {
  TwoPeople people;
  EXPECT_FALSE(people.session.answer(FindingCode::bsaDiffers, Answer::chart));
  EXPECT_TRUE(people.session.answers().given.empty());
}

struct Voiding {
  const char* name;
  void (*happens)(TwoPeople&);
  bool isVoid;
};

class AnswersAreVoid : public ::testing::TestWithParam<Voiding> {};

TEST_P(AnswersAreVoid, byWhateverMakesItAnotherSheet) {
  TwoPeople people;
  ASSERT_TRUE(people.send(Event::answer));
  GetParam().happens(people);
  EXPECT_EQ(people.session.answers().given.empty(), GetParam().isVoid);
}

INSTANTIATE_TEST_SUITE_P(
    Session, AnswersAreVoid,
    ::testing::Values(
        Voiding{"the same sheet again", [](TwoPeople& people) { people.follow(); }, false},
        Voiding{"another spelling of an entry",
                [](TwoPeople& people) { people.edit("child.weight", "17200 g"); }, true},
        Voiding{"an entry is changed", [](TwoPeople& people) { people.edit("child.weight", "17.3 kg"); },
                true},
        Voiding{"an entry is changed and taken back",
                [](TwoPeople& people) {
                  people.edit("child.weight", "17.3 kg");
                  people.edit("child.weight", "17.2 kg");
                },
                true},
        Voiding{"an entry is half typed",
                [](TwoPeople& people) {
                  people.form.draft.set("order.dose", "6");
                  people.follow();
                },
                true},
        Voiding{"the house rules are changed", [](TwoPeople& people) { people.send(Event::rulesChanged); },
                true},
        Voiding{"covered", [](TwoPeople& people) { people.send(Event::cover); }, true},
        Voiding{"covered and uncovered",
                [](TwoPeople& people) {
                  people.send(Event::cover);
                  people.send(Event::uncover);
                },
                true},
        Voiding{"a second person begins", [](TwoPeople& people) { people.send(Event::begin); }, true},
        Voiding{"a second person begins and leaves",
                [](TwoPeople& people) {
                  people.send(Event::begin);
                  people.send(Event::leave);
                },
                true},
        Voiding{"another case is opened", [](TwoPeople& people) { people.send(Event::otherOpened); }, true},
        Voiding{"new child", [](TwoPeople& people) { people.send(Event::newChild); }, true}),
    test::NameOfRow());

TEST(SessionAnswers, allMustBeSettled) {
  Answers answers;
  EXPECT_TRUE(answers.areSettled({}));
  EXPECT_FALSE(answers.areSettled({FindingCode::belowLow}));
  answers.given[FindingCode::belowLow] = Answer::prescriber;
  EXPECT_TRUE(answers.areSettled({FindingCode::belowLow, FindingCode::belowLow}));
  EXPECT_FALSE(answers.areSettled({FindingCode::belowLow, FindingCode::scheduleDiffers}));
}

TEST(SessionAnswers, onlyAVerdictThatAsksHasQuestions) {
  TwoPeople people;
  const Worksheet asks = people.worked();
  ASSERT_EQ(asks.verdict, VerdictKind::ask);
  EXPECT_EQ(questionsOf(asks), std::vector{FindingCode::belowLow});
  people.edit("order.dose", "80 mg/dose");
  EXPECT_TRUE(questionsOf(people.worked()).empty());
  people.edit("order.dose", "800 mg/dose");
  people.edit("order.schedule", "every 6 h");  // a question, and unsafe beside it
  ASSERT_EQ(people.worked().verdict, VerdictKind::unsafe);
  EXPECT_TRUE(questionsOf(people.worked()).empty());
}

}  // namespace
}  // namespace wardchalk::case_session_test
