#include "core/practice/sessions/class_view.h"

#include <gtest/gtest.h>

#include "core/number/decimal_text.h"
#include "core/practice/sessions/session_tally.h"
#include "core/words/sentences.h"

namespace wardchalk::test::class_view_test {
namespace {

PracticeSet sheet() {
  PracticeSet set{"Week 3", 5, {Topic::bsa}, 1, 2, exactRules()};
  set.mode = PracticeMode::test;
  return set;
}

/// The table of a seat that wrote these two answers.
std::string tableOf(const std::string& seat, std::string_view first, std::string_view second) {
  PracticeSession session(sheet(), PracticeMode::test);
  session.write(0, first);
  session.goTo(1);
  session.write(0, second);
  session.handIn();
  return sessionTable(session, {seat, "2026-11-30"});
}

/// A body surface ten times too small.
std::string tenthOfFirst() {
  PracticeSession session(sheet(), PracticeMode::test);
  const Number tenth = session.current().problem.key.bsa->m2 / Number(10);
  return show(tenth).text + " m²";
}

TEST(ClassView, joinsTheTablesOfOneSheet) {
  ClassView view;
  ASSERT_TRUE(view.add(tableOf("A1", tenthOfFirst(), "")));
  ASSERT_TRUE(view.add(tableOf("A2", tenthOfFirst(), "3 spoons")));
  ASSERT_TRUE(view.add(tableOf("A3", "", "")));
  ASSERT_EQ(view.sheets().size(), 1U);
  const ClassSheet& joined = view.sheets().front();
  EXPECT_EQ(joined.set, setMark(sheet()));
  EXPECT_EQ(joined.seats, (std::set<std::string>{"A1", "A2", "A3"}));
  ASSERT_EQ(joined.lines.size(), 2U);
  EXPECT_EQ(joined.lines[0].marks, (std::map<std::string, int>{{"blank", 1}, {"wrong", 2}}));
  EXPECT_EQ(joined.lines[1].marks, (std::map<std::string, int>{{"blank", 2}, {"unread", 1}}));
  EXPECT_EQ(joined.mistakes, (std::map<MistakeId, int>{{MistakeId::pointMoved, 2}}));
  EXPECT_NE(classText(view).find("2 × E40"), std::string::npos) << classText(view);
  EXPECT_NE(classText(view).find(": 0 of 3 right, 1 not read, 2 blank\n"), std::string::npos)
      << classText(view);
  const std::string header =
      "set,mode,problem,topic,line,seats,right,wrong,unsure,unread,blank,skipped,mistakes\r\n";
  EXPECT_TRUE(classTable(view).starts_with(header + joined.set + ",test,1,bsa,bsa,3,0,2,0,0,1,0,E40:2\r\n"))
      << classTable(view);
}

TEST(ClassView, keepsSheetsApart) {
  PracticeSet other = sheet();
  other.hints = false;
  PracticeSession session(other, PracticeMode::test);
  session.handIn();
  ClassView view;
  ASSERT_TRUE(view.add(tableOf("A1", "", "")));
  ASSERT_TRUE(view.add(sessionTable(session, {"A1", ""})));
  EXPECT_EQ(view.sheets().size(), 2U);
}

std::string refusedWith(const std::string& table) {
  ClassView view;
  EXPECT_TRUE(view.add(tableOf("A1", "", "")));
  const auto added = view.add(table);
  EXPECT_EQ(view.sheets().front().seats.size(), added ? 2U : 1U);  // whole or not at all
  return added ? "taken" : std::string(idOf(added.refusal().code));
}

std::string changed(std::string text, std::string_view from, std::string_view to) {
  const std::size_t at = text.rfind(from);
  EXPECT_NE(at, std::string::npos) << from;
  return text.replace(at, from.size(), to);
}

TEST(ClassView, refusesWhatIsNoTableOfResults) {
  const std::string good = tableOf("A2", tenthOfFirst(), "");
  EXPECT_EQ(refusedWith(good), "taken");
  EXPECT_EQ(refusedWith(tableOf("A1", "", "")), "seat-twice");
  EXPECT_EQ(refusedWith(""), "no-results");
  EXPECT_EQ(refusedWith("problem,seed\r\n1,2\r\n"), "no-results");
  EXPECT_EQ(refusedWith(good.substr(0, good.find('\n') + 1)), "no-results");
  EXPECT_EQ(refusedWith(changed(good, "E40", "E999")), "word-unknown");
  EXPECT_EQ(refusedWith(changed(good, "blank", "perfect")), "word-unknown");
  EXPECT_EQ(refusedWith(changed(good, ",0,0,0", ",0,0")), "cells-missing");
  EXPECT_EQ(refusedWith(changed(good, ",2,", ",two,")), "value-out-of-range");
}

TEST(ClassText, saysHowManyWentHowInWordsOfTheTrade) {
  ClassView view;
  ASSERT_TRUE(view.add(tableOf("A1", tenthOfFirst(), "")));
  ASSERT_TRUE(view.add(tableOf("A2", "", "3 spoons")));
  const std::string text = classText(view);
  EXPECT_NE(text.find(", 2 seats\nSeats: A1, A2\n"), std::string::npos) << text;
  EXPECT_NE(text.find("Problem 1, body surface area, body surface area: 0 of 2 right, 1 wrong, 1 blank\n"),
            std::string::npos)
      << text;
  EXPECT_NE(text.find("Problem 2, body surface area, body surface area: 0 of 2 right, 1 not read, 1 blank\n"),
            std::string::npos)
      << text;
}

TEST(ClassText, hasNoHeadingWithNothingBelow) {
  ClassView view;
  ASSERT_TRUE(view.add(tableOf("", "", "")));
  const std::string text = classText(view);
  EXPECT_NE(text.find("No mistakes.\n"), std::string::npos) << text;
  EXPECT_EQ(text.find("most frequent"), std::string::npos) << text;
  EXPECT_EQ(text.find("Seats:"), std::string::npos) << text;
}

std::string toldOf(const std::string& table) {
  ClassView view;
  EXPECT_TRUE(view.add(tableOf("A1", "", "")));
  const auto added = view.add(table);
  return added ? "taken" : sentence(added.refusal());
}

TEST(ClassView, saysWhatIsWrongAndWhatToDo) {
  const std::string good = tableOf("A2", tenthOfFirst(), "");
  EXPECT_EQ(toldOf(tableOf("A1", "", "")),
            "Seat A1 has this sheet already. Give each table once, and each student a seat of their own.");
  EXPECT_EQ(toldOf("child.weight\r\n20 kg\r\n"),
            "This is no table of results. Give the tables that practice saved, one for each seat.");
  EXPECT_EQ(toldOf(changed(good, ",0,0,0", ",0,0")),
            "The row has 14 cells; the header has 15. Check the commas and quotation marks.");
}

TEST(SetMark, changesWithAnythingOfTheSet) {
  const std::string mark = setMark(sheet());
  EXPECT_EQ(mark.size(), 16U);
  EXPECT_EQ(setMark(sheet()), mark);
  const auto differs = [&](auto change) {
    PracticeSet set = sheet();
    change(set);
    return setMark(set) != mark;
  };
  EXPECT_TRUE(differs([](PracticeSet& set) { set.seed = 6; }));
  EXPECT_TRUE(differs([](PracticeSet& set) { set.title = "Week 4"; }));
  EXPECT_TRUE(differs([](PracticeSet& set) { set.mode = PracticeMode::learning; }));
  EXPECT_TRUE(differs([](PracticeSet& set) { set.builder = false; }));
  EXPECT_TRUE(differs([](PracticeSet& set) { set.minutes = 30; }));
  EXPECT_TRUE(differs([](PracticeSet& set) { set.wantsUnits = true; }));
  EXPECT_TRUE(differs([](PracticeSet& set) { set.wantsReason = true; }));
  EXPECT_TRUE(differs([](PracticeSet& set) { set.rules.rateDecimals = 0; }));
}

TEST(SetFile, keepsItsTerms) {
  PracticeSet set = sheet();
  set.builder = false;
  set.hints = false;
  set.minutes = 45;
  set.wantsUnits = true;
  set.wantsReason = true;
  std::string file;
  writeSet(file, set);
  const auto read = readSet(file);
  ASSERT_TRUE(read);
  EXPECT_EQ(*read, set);
  for (const auto& [from, to, code] : {std::tuple("\"mode\":\"test\"", "\"mode\":\"exam\"", "word-unknown"),
                                       std::tuple("\"minutes\":45", "\"minutes\":0", "value-out-of-range"),
                                       std::tuple("\"hints\":false", "\"hints\":\"no\"", "type-wrong")}) {
    const auto refused = readSet(changed(file, from, to));
    ASSERT_FALSE(refused) << to;
    EXPECT_EQ(idOf(refused.refusal().code), code);
  }
}

}  // namespace
}  // namespace wardchalk::test::class_view_test
