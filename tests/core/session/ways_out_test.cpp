#include <gtest/gtest.h>

#include "core/session/case_session.h"
#include "tests/core/session/two_people.h"
#include "tests/core/test_names.h"

// Two people looked at a difference. No way out of it but a new child leaves a case that says nothing of it,
// and none an amount, until an entry that differed has another value or an agreement is recorded (H49).

namespace wardchalk::ways_out_test {
namespace {

using test::Event;
using test::TwoPeople;

struct Way {
  const char* name;
  void (*goes)(TwoPeople&);
  SessionState to;
};

void leave(TwoPeople& people) { people.send(Event::leave); }

void compareAgain(TwoPeople& people, std::string_view weight) {
  people.edit("child.weight", weight);
  people.session.compare(people.form.draft, people.rules);
}

constexpr Way ways[] = {
    {"recorded", [](TwoPeople& people) { people.send(Event::record); }, SessionState::differs},
    {"left", leave, SessionState::differs},
    {"left by the one who was to correct the first entries",
     [](TwoPeople& people) {
       people.send(Event::firstCorrects);
       leave(people);
     },
     SessionState::differs},
    {"left by the one who was to correct the second entries",
     [](TwoPeople& people) {
       people.send(Event::secondCorrects);
       leave(people);
     },
     SessionState::differs},
    {"corrected to be alike and left without comparing",
     [](TwoPeople& people) {
       people.send(Event::secondCorrects);
       people.edit("child.weight", "17.2 kg");
       leave(people);
     },
     SessionState::differs},
    {"corrected, compared alike and left without recording",
     [](TwoPeople& people) {
       people.send(Event::secondCorrects);
       compareAgain(people, "17.2 kg");
       ASSERT_EQ(people.session.state(), SessionState::comparingAlike);
       leave(people);
     },
     SessionState::differs},
    {"compared again, still apart, and left",
     [](TwoPeople& people) {
       people.send(Event::secondCorrects);
       compareAgain(people, "12.8 kg");
       leave(people);
     },
     SessionState::differs},
    {"covered, uncovered and left",
     [](TwoPeople& people) {
       people.send(Event::cover);
       people.send(Event::uncover);
       leave(people);
     },
     SessionState::differs},
    {"left, covered and uncovered",
     [](TwoPeople& people) {
       leave(people);
       people.send(Event::cover);
       people.send(Event::uncover);
     },
     SessionState::differs},
    {"left and another second check left before comparing",
     [](TwoPeople& people) {
       leave(people);
       people.send(Event::begin);
       leave(people);
     },
     SessionState::differs},
    {"left and another second check compared alike but not recorded",
     [](TwoPeople& people) {
       leave(people);
       people.send(Event::begin);
       people.send(Event::compareAlike);
       leave(people);
     },
     SessionState::differs},
    {"left and another entry changed",
     [](TwoPeople& people) {
       leave(people);
       people.edit("child.sex", "female");
     },
     SessionState::differs},
    {"left and the same value written otherwise",
     [](TwoPeople& people) {
       leave(people);
       people.edit("child.weight", "17200 g");
     },
     SessionState::differs},
    {"left, changed and taken back",
     [](TwoPeople& people) {
       leave(people);
       people.edit("child.weight", "12.7 kg");
       people.edit("child.weight", "17.2 kg");
     },
     SessionState::differs},
    {"left and other house rules",
     [](TwoPeople& people) {
       leave(people);
       people.send(Event::rulesChanged);
     },
     SessionState::differs},
    {"left and the same case opened again",
     [](TwoPeople& people) {
       leave(people);
       people.open("17.2 kg");
     },
     SessionState::differs},
    {"left, changed, and the case opened as it was before",
     [](TwoPeople& people) {
       leave(people);
       people.edit("child.weight", "12.7 kg");
       people.open("17.2 kg");
     },
     SessionState::differs},
    {"left, another entry of the child changed, and opened again as saved",
     [](TwoPeople& people) {
       leave(people);
       people.edit("child.sex", "female");
       const CaseDraft saved = people.form.draft;
       people.session.opened(saved, saved);
     },
     SessionState::differs},
    {"left, the case of another child opened, and this one again",
     [](TwoPeople& people) {
       leave(people);
       people.open("20 kg");
       ASSERT_EQ(people.session.state(), SessionState::alone);
       people.open("17.2 kg");
     },
     SessionState::differs},
    {"left, two other cases opened that differ too, and this one again",
     [](TwoPeople& people) {
       leave(people);
       for (const char* weight : {"20 kg", "21 kg"}) {
         people.open(weight);
         people.send(Event::begin);
         people.send(Event::compareApart);
         leave(people);
       }
       people.open("17.2 kg");
     },
     SessionState::differs},
    {"left and the entry that differed changed",
     [](TwoPeople& people) {
       leave(people);
       people.edit("child.weight", "12.7 kg");
     },
     SessionState::differedBefore},
    {"left, changed, and another second check left before comparing",
     [](TwoPeople& people) {
       leave(people);
       people.edit("child.weight", "12.7 kg");
       people.send(Event::begin);
       leave(people);
     },
     SessionState::differedBefore},
    {"the first corrected and left without comparing",
     [](TwoPeople& people) {
       people.send(Event::firstCorrects);
       people.edit("child.weight", "12.7 kg");
       leave(people);
     },
     SessionState::differedBefore},
    {"left, changed, and the changed case opened again",
     [](TwoPeople& people) {
       leave(people);
       people.edit("child.weight", "16.9 kg");
       people.open("16.9 kg");
     },
     SessionState::differedBefore},
    {"left and another second check that agrees recorded",
     [](TwoPeople& people) {
       leave(people);
       people.send(Event::begin);
       people.send(Event::compareAlike);
       people.send(Event::record);
     },
     SessionState::agreed},
    {"corrected, compared alike and recorded",
     [](TwoPeople& people) {
       people.send(Event::secondCorrects);
       compareAgain(people, "17.2 kg");
       people.send(Event::record);
     },
     SessionState::agreed},
    {"left and the case of another child opened",
     [](TwoPeople& people) {
       leave(people);
       people.open("20 kg");
     },
     SessionState::alone},
    {"a new child, and this case opened again",
     [](TwoPeople& people) {
       leave(people);
       people.open("20 kg");
       people.send(Event::newChild);
       people.open("17.2 kg");
     },
     SessionState::alone},
    {"a new child", [](TwoPeople& people) { people.send(Event::newChild); }, SessionState::alone},
};

class WaysOut : public ::testing::TestWithParam<Way> {};

TEST_P(WaysOut, ofADifferenceThatHasBeenLookedAt) {
  TwoPeople people("80 mg/dose", "160 mg/m2/dose");  // safe by either weight
  ASSERT_EQ(people.worked().verdict, VerdictKind::safe);
  people.reach(SessionState::comparingApart);
  ASSERT_EQ(people.session.state(), SessionState::comparingApart);
  GetParam().goes(people);
  EXPECT_EQ(idOf(people.session.state()), idOf(GetParam().to));
  const bool stands = GetParam().to == SessionState::differs;
  EXPECT_EQ(people.session.disagreement().has_value(), stands);
  if (!stands) return;
  EXPECT_EQ(people.worked().verdict, VerdictKind::ask);
  EXPECT_FALSE(people.worked().give);
}

INSTANTIATE_TEST_SUITE_P(Session, WaysOut, ::testing::ValuesIn(ways), test::NameOfRow());

TEST(SessionDifference, nothingOfItIsToldWhileAnotherSecondPersonWorks) {
  TwoPeople people;
  people.reach(SessionState::differs);
  ASSERT_TRUE(people.session.disagreement());
  people.send(Event::begin);
  EXPECT_FALSE(people.session.disagreement());
  people.send(Event::compareAlike);
  EXPECT_FALSE(people.session.disagreement());
}

TEST(SessionDifference, isToldBeforeItIsLeft) {
  TwoPeople people;
  people.send(Event::begin);
  EXPECT_FALSE(people.session.leavesDifference());
  people.send(Event::compareApart);
  EXPECT_TRUE(people.session.leavesDifference());
  people.send(Event::secondCorrects);
  people.send(Event::compareAlike);
  EXPECT_TRUE(people.session.leavesDifference());
  people.send(Event::record);
  EXPECT_FALSE(people.session.leavesDifference());
}

/// What no file keeps: from the first look at a difference until one that agrees is recorded.
TEST(SessionDifference, isUnsettledUntilAnAgreementIsRecorded) {
  TwoPeople people;
  EXPECT_FALSE(people.session.isUnsettled());
  people.send(Event::begin);
  EXPECT_FALSE(people.session.isUnsettled());
  people.send(Event::compareApart);
  EXPECT_TRUE(people.session.isUnsettled()) << "looked at";
  people.send(Event::leave);
  EXPECT_TRUE(people.session.isUnsettled()) << "left";
  people.send(Event::begin);
  EXPECT_TRUE(people.session.isUnsettled()) << "being repeated";
  people.send(Event::compareAlike);
  EXPECT_TRUE(people.session.isUnsettled()) << "alike, and not recorded";
  people.send(Event::record);
  EXPECT_FALSE(people.session.isUnsettled());
}

TEST(SessionDifference, isUnsettledAfterAnEntryThatDifferedWasChanged) {
  TwoPeople people;
  people.reach(SessionState::differedBefore);
  EXPECT_TRUE(people.session.isUnsettled());
  people.session.forget();
  EXPECT_FALSE(people.session.isUnsettled());
}

TEST(SessionDifference, keepsWhenItWasLeftAndNothingOfTheSecondEntriesButWhatDiffered) {
  TwoPeople people;
  people.reach(SessionState::comparingApart);
  people.send(Event::leave);
  ASSERT_TRUE(people.session.record());
  const SecondCheckRecord& record = *people.session.record();
  EXPECT_EQ(record.time, "2026-11-25 14:05");
  EXPECT_EQ(record.apart.paths, std::vector<std::string_view>{"child.weight"});
  EXPECT_EQ(record.differs->second, "12.7 kg");
  EXPECT_EQ(people.allEntries().find("12.7"), std::string::npos);
}

/// A verdict that differs alone has no entry to change: any other value of the case ends it.
TEST(SessionDifference, withoutAnEntryThatDiffersStandsUntilAnyIsChanged) {
  SecondCheckRecord record;
  TwoPeople people;
  record.entries = people.form.draft.entries();
  record.apart.verdict = true;
  EXPECT_FALSE(isChangedSince(record, people.form.draft));
  people.edit("child.weight", "17200 g");
  EXPECT_FALSE(isChangedSince(record, people.form.draft));
  people.edit("stock.strength", "50 mg/1 mL");
  EXPECT_TRUE(isChangedSince(record, people.form.draft));
}

}  // namespace
}  // namespace wardchalk::ways_out_test
