#include "core/record/case_draft.h"

#include <gtest/gtest.h>

#include <array>
#include <random>

#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "core/record/line_choices.h"
#include "core/words/sentences.h"

namespace wardchalk::case_draft_test {
namespace {

/// Types into a field and leaves it.
void enter(CaseDraft& draft, std::string_view path, std::string_view line) {
  draft.set(path, line);
  draft.commit(path);
}

void enterReference(CaseDraft& draft, std::string_view low, std::string_view high) {
  enter(draft, path::low, low);
  enter(draft, path::high, high);
}

TEST(CaseDraft, startsEmpty) {
  const CaseDraft draft;
  for (const CaseEntry& entry : caseEntries())
    EXPECT_EQ(draft.state(entry.path), FieldState::empty) << entry.path;
  EXPECT_TRUE(draft.isEmpty());
  EXPECT_EQ(draft.toCase(), Case{});
  EXPECT_FALSE(draft.pendingPath());
}

TEST(CaseDraft, aFieldIsPendingUntilItIsCommitted) {
  CaseDraft draft;
  draft.set(path::weight, "17.2 kg");
  EXPECT_EQ(draft.state(path::weight), FieldState::pending);
  EXPECT_EQ(draft.pendingPath(), path::weight);
  EXPECT_FALSE(draft.toCase().child.weight);
  draft.commit(path::weight);
  EXPECT_EQ(draft.state(path::weight), FieldState::read);
  EXPECT_TRUE(draft.toCase().child.weight);
  EXPECT_FALSE(draft.pendingPath());
}

TEST(CaseDraft, settingWhatAlreadyStandsThereChangesNothing) {
  CaseDraft draft;
  enter(draft, path::weight, "17.2 kg");
  draft.set(path::weight, draft.line(path::weight));
  EXPECT_EQ(draft.state(path::weight), FieldState::read);
}

TEST(CaseDraft, aChangedFieldLeavesTheCaseAtOnce) {
  CaseDraft draft;
  enter(draft, path::weight, "17.2 kg");
  draft.set(path::weight, "17.25 kg");
  EXPECT_FALSE(draft.toCase().child.weight);
}

TEST(CaseDraft, refusedTextStaysAndWithholdsEveryComparison) {
  CaseDraft draft;
  enter(draft, path::maxPerDose, "30O mg");
  EXPECT_EQ(draft.state(path::maxPerDose), FieldState::refused);
  EXPECT_EQ(draft.line(path::maxPerDose), "30O mg");
  EXPECT_EQ(draft.refusal(path::maxPerDose)->path, path::maxPerDose);
  EXPECT_EQ(draft.pendingPath(), path::maxPerDose);
  EXPECT_EQ(draft.refusedPath(), path::maxPerDose);
}

TEST(CaseDraft, aFieldBeingChangedComesBeforeARefusedOne) {
  CaseDraft draft;
  enter(draft, path::height, "a");
  draft.set(path::weight, "1");
  EXPECT_EQ(draft.pendingPath(), path::weight);
}

TEST(CaseDraft, emptiedFieldsAreEmptyAgain) {
  CaseDraft draft;
  enter(draft, path::weight, "17.2 kg");
  enter(draft, path::weight, "  ");
  EXPECT_EQ(draft.state(path::weight), FieldState::empty);
  EXPECT_TRUE(draft.entries().empty());
}

TEST(CaseDraft, whatWasReadStandsInTheSafeForm) {
  struct Row {
    std::string_view path, typed, line, saved;
  };
  for (const Row& row :
       {Row{path::weight, "17.2kg", "17.2 kg", "17.2 kg"},
        Row{path::weight, "37 lbs 4 oz", "37 lb 4 oz", "37 lb 4 oz"},
        Row{path::age, "4 years", "4 years", "4 year"},
        Row{path::age, "1 yr 2 mo", "1 year 2 months", "1 year 2 month"},
        Row{path::dose, "80mg", "80 mg", "80 mg"},
        Row{path::high, "120 mg/m2/dose", "120 mg/m²/dose", "120 mg/m2/dose"},
        Row{path::schedule, "q12h", "every 12 h", "every 12 h"}, Row{path::route, "PO", "oral", "oral"}}) {
    CaseDraft draft;
    enter(draft, row.path, row.typed);
    EXPECT_EQ(draft.state(row.path), FieldState::read) << row.typed;
    EXPECT_EQ(draft.line(row.path), row.line) << row.typed;
    EXPECT_EQ(draft.text(row.path), row.saved) << row.typed;
  }
}

TEST(CaseDraft, whatStandsInALineReadsAsTheSame) {
  for (const std::string_view line : {"4 years 2 months", "120 mg/m²/dose", "20 drops/mL", "every 2 days"}) {
    const std::string_view path = line.find("mg") != line.npos     ? path::high
                                  : line.find("drop") != line.npos ? path::dropFactor
                                  : line.find("year") != line.npos ? path::age
                                                                   : path::schedule;
    CaseDraft draft;
    enter(draft, path, line);
    ASSERT_EQ(draft.state(path), FieldState::read) << line;
    EXPECT_EQ(draft.line(path), line);
    CaseDraft again;
    enter(again, path, draft.text(path));
    EXPECT_EQ(again.toCase(), draft.toCase()) << line;
  }
}

TEST(CaseDraft, freeTextStandsAsItWasTyped) {
  CaseDraft draft;
  enter(draft, path::source, "Bench  list m2, 2 day");
  EXPECT_EQ(draft.line(path::source), "Bench  list m2, 2 day");
}

TEST(CaseDraft, aRangeFillsBothEndsOfTheReferenceAndTheSchedule) {
  CaseDraft draft;
  enter(draft, path::high, "20-40 mg/kg/day divided every 8 h");
  EXPECT_EQ(draft.line(path::low), "20 mg/kg/day");
  EXPECT_EQ(draft.line(path::high), "40 mg/kg/day");
  EXPECT_EQ(draft.line(path::referenceSchedule), "every 8 h");
  EXPECT_EQ(draft.state(path::low), FieldState::read);
}

TEST(CaseDraft, asNeededBehindAScheduleTicksItsBox) {
  CaseDraft draft;
  enter(draft, path::schedule, "every 6 h PRN");
  EXPECT_EQ(draft.line(path::schedule), "every 6 h");
  EXPECT_EQ(draft.line(path::asNeeded), "true");
  EXPECT_TRUE(draft.toCase().order.asNeeded);
}

TEST(CaseDraft, whatUndoBringsBackIsReadAndNotRewritten) {
  CaseDraft draft;
  draft.set(path::dose, "240 MG");
  draft.commitAsItStands(path::dose);
  EXPECT_EQ(draft.line(path::dose), "240 MG");
  EXPECT_EQ(draft.state(path::dose), FieldState::read);
  EXPECT_EQ(draft.text(path::dose), "240 mg");
}

TEST(CaseDraft, aTouchedFieldIsPendingThoughItShowsTheSame) {
  CaseDraft draft;
  enter(draft, path::weight, "17.2 kg");
  draft.touch(path::weight);
  EXPECT_EQ(draft.state(path::weight), FieldState::pending);
  EXPECT_FALSE(draft.toCase().child.weight);
  draft.commit(path::weight);
  EXPECT_EQ(draft.state(path::weight), FieldState::read);
}

struct Refused {
  const char* name;
  std::string_view path;
  std::string_view line;
  RefusalCode code;
};

void PrintTo(const Refused& row, std::ostream* out) { *out << row.name; }

class RefusedEntry : public testing::TestWithParam<Refused> {};

TEST_P(RefusedEntry, saysWhyAndKeepsWhatWasTyped) {
  CaseDraft draft;
  enter(draft, GetParam().path, GetParam().line);
  ASSERT_EQ(draft.state(GetParam().path), FieldState::refused);
  EXPECT_EQ(draft.refusal(GetParam().path)->code, GetParam().code);
  EXPECT_EQ(draft.refusal(GetParam().path)->path, GetParam().path);
  EXPECT_EQ(draft.line(GetParam().path), GetParam().line);
}

INSTANTIATE_TEST_SUITE_P(
    Entries, RefusedEntry,
    testing::Values(Refused{"zero", path::weight, "0 kg", RefusalCode::zero},
                    Refused{"comma", path::weight, "17,2 kg", RefusalCode::comma},
                    Refused{"barePoint", path::weight, ".5 kg", RefusalCode::barePoint},
                    Refused{"trailingPoint", path::weight, "5. kg", RefusalCode::trailingPoint},
                    Refused{"exponent", path::weight, "1e1 kg", RefusalCode::exponent},
                    Refused{"sign", path::weight, "-5 kg", RefusalCode::sign},
                    Refused{"unsafeUnit", path::dose, "80 µg", RefusalCode::unitUnsafe},
                    Refused{"percent", path::strength, "1 %", RefusalCode::percentStrength},
                    Refused{"ratio", path::strength, "1:1000", RefusalCode::ratioStrength},
                    Refused{"unsafeSchedule", path::schedule, "QD", RefusalCode::scheduleLookAlike}),
    [](const auto& one) { return std::string(one.param.name); });

TEST(CaseDraft, aReferenceWithoutPerIsAskedAbout) {
  CaseDraft draft;
  enter(draft, path::high, "15 mg/kg");
  EXPECT_EQ(draft.state(path::high), FieldState::refused);
  EXPECT_EQ(draft.answers(path::high), (std::vector<std::string>{"15 mg/kg/dose", "15 mg/kg/day"}));
}

TEST(CaseDraft, aBareWeightIsAskedAboutWhateverTheUserChose) {
  HouseRules household = exactRules();
  household.unitSystem = UnitSystem::household;
  for (const auto& [chosen, rules] :
       {std::pair{UnitSystem::none, exactRules()}, std::pair{UnitSystem::metric, exactRules()},
        std::pair{UnitSystem::household, exactRules()}, std::pair{UnitSystem::none, household},
        std::pair{UnitSystem::metric, household}}) {
    CaseDraft draft;
    draft.offer(bareUnits(chosen, rules));
    enter(draft, path::weight, "16");
    EXPECT_EQ(draft.state(path::weight), FieldState::refused);
    EXPECT_EQ(draft.answers(path::weight), (std::vector<std::string>{"16 kg", "16 lb"}));
  }
}

/// Only a house that agreed on metric has kg in the empty line; a user who chose household there is asked.
TEST(CaseDraft, aBareWeightIsInKilogramsWhereTheHouseSaysMetric) {
  HouseRules metric = exactRules();
  metric.unitSystem = UnitSystem::metric;
  CaseDraft draft;
  draft.offer(bareUnits(UnitSystem::none, metric));
  enter(draft, path::weight, "16");
  EXPECT_EQ(draft.line(path::weight), "16 kg");
  draft.offer(bareUnits(UnitSystem::household, metric));
  EXPECT_EQ(draft.text(path::weight), "16 kg");
  enter(draft, path::weight, "37");
  EXPECT_EQ(draft.state(path::weight), FieldState::refused);
  enter(draft, path::height, "41");
  EXPECT_EQ(draft.line(path::height), "41 in");
}

TEST(CaseDraft, aBareHeightIsInTheUnitOfTheSystemThatStoodInItsLine) {
  CaseDraft draft;
  enter(draft, path::height, "103");
  EXPECT_EQ(draft.state(path::height), FieldState::refused);
  draft.offer({Unit::cm, std::nullopt});
  EXPECT_EQ(draft.state(path::height), FieldState::refused);  // nothing that was typed changes its meaning
  enter(draft, path::height, "");
  enter(draft, path::height, "103");
  EXPECT_EQ(draft.line(path::height), "103 cm");
  draft.offer({Unit::in, std::nullopt});
  EXPECT_EQ(draft.text(path::height), "103 cm");
  enter(draft, path::height, "41");
  EXPECT_EQ(draft.line(path::height), "41 in");
}

TEST(CaseDraft, everyOfferedSpellingIsRead) {
  for (const CaseEntry& entry : caseEntries())
    for (const std::string_view choice : lineChoices(entry.path)) {
      CaseDraft draft;
      enter(draft, entry.path, lineWith(entry.path, "5", choice));
      EXPECT_EQ(draft.state(entry.path), FieldState::read) << entry.path << " " << choice;
    }
}

TEST(CaseDraft, aContradictionIsToldAtItsField) {
  CaseDraft draft;
  enterReference(draft, "400 mg/m2/day", "300 mg/m2/day");
  EXPECT_EQ(draft.state(path::high), FieldState::read);
  ASSERT_EQ(draft.state(path::low), FieldState::refused);
  EXPECT_EQ(draft.refusal(path::low)->code, RefusalCode::lowAboveHigh);
  EXPECT_EQ(draft.pendingPath(), path::low);
  EXPECT_FALSE(draft.toCase().reference.low);
  enter(draft, path::high, "500 mg/m2/day");
  EXPECT_EQ(draft.state(path::low), FieldState::read);
}

TEST(CaseDraft, twoContradictionsAreBothTold) {
  CaseDraft draft;
  enterReference(draft, "400 mg/m2/day", "300 mg/m2/day");
  enter(draft, path::stockKind, "solid");
  enter(draft, path::strength, "25 mg/mL");
  EXPECT_EQ(draft.state(path::low), FieldState::refused);
  EXPECT_EQ(draft.refusal(path::strength)->code, RefusalCode::strengthShape);
  EXPECT_TRUE(sentence(*draft.refusal(path::strength)).starts_with("The strength does not go with what"));
}

/// Whatever was done to the fields, and in whatever order: what the case holds is what those of them make
/// that are read, made anew from nothing.
TEST(CaseDraft, theCaseIsWhatTheReadFieldsMakeAfterEveryChange) {
  constexpr std::array paths = {path::weight, path::height, path::dose, path::schedule, path::high};
  constexpr std::array lines = {"17.2 kg", "103 cm",        "80 mg/dose", "every 12 h",
                                "",        "10 mg/kg/dose", "x",          "8"};
  std::mt19937 dice(20261130);
  CaseDraft draft;
  for (int i = 0; i < 3000; ++i) {
    const std::string_view path = paths[dice() % paths.size()];
    switch (dice() % 5) {
      case 0:
        draft.touch(path);
        break;
      case 1:
        draft.commitAsItStands(path);
        break;
      case 2:
        draft.commit(path);
        break;
      default:
        draft.set(path, lines[dice() % lines.size()]);
    }
    Case made;
    for (const CaseEntry& entry : caseEntries())
      if (draft.state(entry.path) == FieldState::read) {
        ASSERT_TRUE(setEntry(made, entry.path, draft.text(entry.path))) << entry.path;
      }
    ASSERT_EQ(draft.toCase(), made) << "after change " << i << " of " << path;
  }
}

TEST(CaseDraft, clearEmptiesEveryField) {
  CaseDraft draft;
  for (const CaseEntry& entry : caseEntries()) draft.set(entry.path, "1");
  draft.clear();
  for (const CaseEntry& entry : caseEntries()) {
    EXPECT_EQ(draft.line(entry.path), "") << entry.path;
    EXPECT_EQ(draft.state(entry.path), FieldState::empty) << entry.path;
  }
}

const std::vector<WrittenEntry> file = {
    {"child.age", "2 week 3 day"},
    {"child.height", "3 ft 5 in"},
    {"child.weight", "37 lb 4 oz"},
    {"order.dose", "80 mg"},
    {"order.schedule", "q12h"},
    {"reference.low", "240 mg/m2/day"},
    {"reference.high", "300 mg/m2/day"},
    {"reference.max_per_dose", "300 mg"},
    {"stock.kind", "liquid"},
    {"stock.strength", "25 mg/mL"},
};

TEST(CaseDraft, savesAnOpenedFileToTheLetter) {
  CaseDraft draft;
  draft.open(file);
  EXPECT_EQ(draft.entries(), file);
  EXPECT_FALSE(draft.pendingPath());
}

TEST(CaseDraft, anOpenedFileStandsInItsLinesInTheSafeForm) {
  CaseDraft draft;
  draft.open(file);
  EXPECT_EQ(draft.line(path::low), "240 mg/m²/day");
  EXPECT_EQ(draft.line(path::schedule), "every 12 h");
  EXPECT_EQ(draft.line(path::weight), "37 lb 4 oz");
}

TEST(CaseDraft, aChangedFieldOfAFileIsSavedInTheSafeForm) {
  CaseDraft draft;
  draft.open(file);
  enter(draft, path::dose, "90mg");
  EXPECT_EQ(draft.text(path::dose), "90 mg");
}

TEST(CaseDraft, openingReplacesEverything) {
  CaseDraft draft;
  enter(draft, path::medicine, "Wren");
  draft.open(file);
  EXPECT_EQ(draft.state(path::medicine), FieldState::empty);
}

TEST(CaseDraft, whatIsSavedReadsAsTheSameCase) {
  CaseDraft draft;
  draft.open(file);
  enter(draft, path::strength, "25 mg/mL");
  enter(draft, path::maxPerDose, "20 mg/kg/dose");
  CaseDraft again;
  again.open(draft.entries());
  EXPECT_EQ(again.toCase(), draft.toCase());
}

}  // namespace
}  // namespace wardchalk::case_draft_test
