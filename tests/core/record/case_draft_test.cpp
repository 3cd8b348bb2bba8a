#include "core/record/case_draft.h"

#include <gtest/gtest.h>

#include "core/medicine/paths.h"
#include "core/record/case_entry.h"

namespace wardchalk::case_draft_test {
namespace {

/// Types into a field and leaves it.
void enter(CaseDraft& draft, std::string_view path, Boxes boxes) {
  draft.set(path, std::move(boxes));
  draft.commit(path);
}

void enter(CaseDraft& draft, std::string_view path, std::string_view text) {
  enter(draft, path, {std::string(text), {}, {}, {}});
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
  draft.set(path::weight, "17.2", "kg");
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
  draft.set(path::weight, draft.boxes(path::weight));
  EXPECT_EQ(draft.state(path::weight), FieldState::read);
}

TEST(CaseDraft, aChangedFieldLeavesTheCaseAtOnce) {
  CaseDraft draft;
  enter(draft, path::weight, "17.2 kg");
  draft.set(path::weight, "17.25", "kg");
  EXPECT_FALSE(draft.toCase().child.weight);
}

TEST(CaseDraft, refusedTextStaysAndWithholdsEveryComparison) {
  CaseDraft draft;
  enter(draft, path::maxPerDose, {"30O", "mg", "", "/dose"});
  EXPECT_EQ(draft.state(path::maxPerDose), FieldState::refused);
  EXPECT_EQ(draft.boxes(path::maxPerDose).text, "30O");
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
  enter(draft, path::weight, {"", "kg", "", ""});
  EXPECT_EQ(draft.state(path::weight), FieldState::empty);
  EXPECT_TRUE(draft.entries().empty());
}

struct Refused {
  const char* name;
  std::string_view path;
  Boxes boxes;
  RefusalCode code;
};

void PrintTo(const Refused& row, std::ostream* out) { *out << row.name; }

class RefusedEntry : public testing::TestWithParam<Refused> {};

TEST_P(RefusedEntry, saysWhyAndKeepsWhatWasTyped) {
  CaseDraft draft;
  enter(draft, GetParam().path, GetParam().boxes);
  ASSERT_EQ(draft.state(GetParam().path), FieldState::refused);
  EXPECT_EQ(draft.refusal(GetParam().path)->code, GetParam().code);
  EXPECT_EQ(draft.boxes(GetParam().path), GetParam().boxes);
}

INSTANTIATE_TEST_SUITE_P(
    Entries, RefusedEntry,
    testing::Values(
        Refused{"noUnitChosen", path::weight, {"17.2", "", "", ""}, RefusalCode::unitMissing},
        Refused{"zero", path::weight, {"0", "kg", "", ""}, RefusalCode::zero},
        Refused{"comma", path::weight, {"17,2", "kg", "", ""}, RefusalCode::comma},
        Refused{"barePoint", path::weight, {".5", "kg", "", ""}, RefusalCode::barePoint},
        Refused{"trailingPoint", path::weight, {"5.", "kg", "", ""}, RefusalCode::trailingPoint},
        Refused{"leadingZero", path::weight, {"05", "kg", "", ""}, RefusalCode::leadingZero},
        Refused{"spaceInNumber", path::weight, {"1 000", "g", "", ""}, RefusalCode::spaceInNumber},
        Refused{"exponent", path::weight, {"1e1", "kg", "", ""}, RefusalCode::exponent},
        Refused{"sign", path::weight, {"-5", "kg", "", ""}, RefusalCode::sign},
        Refused{"unsafeUnit", path::dose, {"80 µg", "", "", ""}, RefusalCode::unitUnsafe},
        Refused{"otherUnit", path::weight, {"17.2 kilos", "", "", ""}, RefusalCode::unitUnknown},
        Refused{"bothEndsInOne", path::high, {"10-15 mg/kg/dose", "", "", ""}, RefusalCode::fillsOthers},
        Refused{"asNeededInOne", path::schedule, {"q6h PRN", "", "", ""}, RefusalCode::fillsOthers},
        Refused{"divisionInOne",
                path::high,
                {"40 mg/kg/day divided every 8 h", "", "", ""},
                RefusalCode::fillsOthers},
        Refused{"twoUnits", path::weight, {"3 kg 500 g", "", "", ""}, RefusalCode::twoUnits},
        Refused{"ouncesTooMany", path::weight, {"8", "lb oz", "16", ""}, RefusalCode::partTooLarge},
        Refused{"poundsNotWhole", path::weight, {"8.5", "lb oz", "3", ""}, RefusalCode::partNotWhole},
        Refused{"doseWithoutBasis", path::dose, {"80", "mg", "", ""}, RefusalCode::perMissing},
        Refused{"doseForKgWithoutTime", path::dose, {"4 mg/kg", "", "", ""}, RefusalCode::perMissing},
        Refused{"referenceWithoutBasis", path::high, {"120", "mg", "", ""}, RefusalCode::perMissing},
        Refused{"maximumWithoutBasis", path::maxPerDay, {"2", "g", "", ""}, RefusalCode::perMissing},
        Refused{
            "strengthWithoutItsVolume", path::strength, {"25", "mg", "", "mL"}, RefusalCode::numberMissing},
        Refused{"strengthInNothing", path::strength, {"25", "mg", "", ""}, RefusalCode::strengthShape},
        Refused{"percent", path::strength, {"1 %", "", "", ""}, RefusalCode::percentStrength},
        Refused{"ratio", path::strength, {"1:1000", "", "", ""}, RefusalCode::ratioStrength},
        Refused{"unsafeSchedule", path::schedule, {"QD", "", "", ""}, RefusalCode::scheduleLookAlike},
        Refused{"lowWithoutHigh", path::low, {"240", "", "", ""}, RefusalCode::unitMissing}),
    [](const auto& one) { return std::string(one.param.name); });

struct Spelled {
  std::string_view path;
  Boxes boxes;
  std::string entry;
};

TEST(CaseDraft, whatPeopleTypeIsReadInTheSafeForm) {
  const std::vector<Spelled> rows = {
      {path::age, {"4 years", "", "", ""}, "4 year"},
      {path::age, {"4y2mo", "", "", ""}, "4 year 2 month"},
      {path::weight, {"37 lbs", "", "", ""}, "37 lb"},
      {path::weight, {"37lb4oz", "", "", ""}, "37 lb 4 oz"},
      {path::height, {"1.03m", "", "", ""}, "1.03 m"},
      {path::bsa, {"0.70m²", "", "", ""}, "0.70 m2"},
      {path::infusionVolume, {"5 ml", "", "", ""}, "5 mL"},
      {path::infusionOver, {"30 mins", "", "", ""}, "30 min"},
      {path::dose, {"100mg", "", "", "/dose"}, "100 mg/dose"},
      {path::dose, {"15MG/Kg per dose", "", "", ""}, "15 mg/kg/dose"},
      {path::high, {"15mg", "", "", "/kg/day"}, "15 mg/kg/day"},
      {path::strength, {"120mg in 5ml", "", "", ""}, "120 mg/5 mL"},
      {path::dropFactor, {"20 drops/ml", "", "", ""}, "20 drop/mL"},
  };
  for (const Spelled& row : rows) {
    CaseDraft draft;
    enter(draft, row.path, row.boxes);
    EXPECT_EQ(draft.state(row.path), FieldState::read) << row.boxes.text;
    EXPECT_EQ(draft.text(row.path), row.entry);
  }
  CaseDraft draft;
  enter(draft, path::schedule, "every six hours");
  EXPECT_EQ(draft.toCase().order.schedule->text, "every 6 h");
}

TEST(CaseDraft, aFileOpensAsItWasReadBefore) {
  CaseDraft draft;
  const std::vector<WrittenEntry> entries = {{"child.weight", "3 kg 500 g"}, {"order.schedule", "b.i.d."}};
  draft.open(entries);
  EXPECT_EQ(draft.state(path::weight), FieldState::read);
  EXPECT_EQ(draft.state(path::schedule), FieldState::read);
  EXPECT_EQ(draft.entries(), entries);
}

TEST(CaseDraft, everyStatedBasisIsRead) {
  for (const std::string_view path :
       {path::dose, path::high, path::maxPerDose, path::maxPerDay, path::maxInfusionRate})
    for (const std::string_view basis : secondUnitChoices(path))
      for (const std::string_view unit : unitChoices(path)) {
        const bool mLRate = unit == "mL" && (basis.ends_with("/h") || basis.ends_with("/min"));
        CaseDraft draft;
        enter(draft, path, {"5", std::string(unit), "", std::string(basis)});
        EXPECT_EQ(draft.state(path), mLRate ? FieldState::refused : FieldState::read)
            << path << " " << unit << basis;
      }
}

TEST(CaseDraft, everyOfferedUnitIsRead) {
  for (const CaseEntry& entry : caseEntries()) {
    const FieldShape shape = shapeOf(entry.path);
    if (shape != FieldShape::quantity && shape != FieldShape::parts) continue;
    for (const std::string_view unit : unitChoices(entry.path)) {
      CaseDraft draft;
      enter(draft, entry.path, {"5", std::string(unit), "", ""});
      EXPECT_EQ(draft.state(entry.path), FieldState::read) << entry.path << " " << unit;
    }
  }
}

TEST(CaseDraft, theLowEndFollowsTheUnitOfTheHighEnd) {
  CaseDraft draft;
  enterReference(draft, "240", "300 mg/m2/day");
  ASSERT_EQ(draft.state(path::low), FieldState::read);
  EXPECT_EQ(draft.text(path::low), "240 mg/m2/day");
  enter(draft, path::high, {"300", "mg", "", "/m2/dose"});
  EXPECT_EQ(draft.toCase().reference.low->perTime, PerTime::dose);
}

TEST(CaseDraft, whileTheHighEndIsChangedTheLowEndIsNotRead) {
  CaseDraft draft;
  enterReference(draft, "240", "300 mg/m2/day");
  draft.set(path::high, {"300", "", "", ""});
  EXPECT_EQ(draft.state(path::low), FieldState::pending);
  EXPECT_EQ(draft.pendingPath(), path::high);
  EXPECT_EQ(draft.toCase().reference, Reference{});
}

TEST(CaseDraft, aContradictionIsToldAtItsField) {
  CaseDraft draft;
  enterReference(draft, "400", "300 mg/m2/day");
  EXPECT_EQ(draft.state(path::high), FieldState::read);
  ASSERT_EQ(draft.state(path::low), FieldState::refused);
  EXPECT_EQ(draft.refusal(path::low)->code, RefusalCode::lowAboveHigh);
  EXPECT_EQ(draft.pendingPath(), path::low);
  EXPECT_FALSE(draft.toCase().reference.low);
  enter(draft, path::high, {"500", "mg", "", "/m2/day"});
  EXPECT_EQ(draft.state(path::low), FieldState::read);
}

TEST(CaseDraft, twoContradictionsAreBothTold) {
  CaseDraft draft;
  enterReference(draft, "400", "300 mg/m2/day");
  enter(draft, path::stockKind, "solid");
  enter(draft, path::strength, "25 mg/mL");
  EXPECT_EQ(draft.state(path::low), FieldState::refused);
  EXPECT_EQ(draft.refusal(path::strength)->code, RefusalCode::strengthShape);
}

TEST(CaseDraft, theUnitSystemNeverRelabelsATypedNumber) {
  CaseDraft draft;
  draft.offer(UnitSystem::metric);
  EXPECT_EQ(draft.boxes(path::weight).unit, "kg");
  EXPECT_EQ(draft.boxes(path::height).unit, "cm");
  draft.set(path::weight, "37", "kg");
  draft.offer(UnitSystem::household);
  EXPECT_EQ(draft.boxes(path::weight).unit, "kg");
  EXPECT_EQ(draft.boxes(path::height).unit, "ft in");
}

TEST(CaseDraft, anOfferedUnitIsNoEntry) {
  CaseDraft draft;
  draft.offer(UnitSystem::metric);
  EXPECT_TRUE(draft.isEmpty());
  EXPECT_TRUE(draft.entries().empty());
}

TEST(CaseDraft, clearEmptiesEveryFieldAndOffersTheSystemAgain) {
  CaseDraft draft;
  draft.offer(UnitSystem::household);
  for (const CaseEntry& entry : caseEntries()) draft.set(entry.path, "1", "kg");
  draft.clear();
  for (const CaseEntry& entry : caseEntries()) {
    EXPECT_TRUE(draft.boxes(entry.path).isEmpty()) << entry.path;
    EXPECT_EQ(draft.state(entry.path), FieldState::empty) << entry.path;
  }
  EXPECT_EQ(draft.boxes(path::weight).unit, "lb oz");
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

TEST(CaseDraft, anOpenedFileStandsSortedInTheBoxes) {
  CaseDraft draft;
  draft.open(file);
  EXPECT_EQ(draft.boxes(path::low).text, "240");
  EXPECT_EQ(draft.boxes(path::dose).secondUnit, "/dose");
  EXPECT_EQ(draft.boxes(path::weight).unit, "lb oz");
}

TEST(CaseDraft, aChangedFieldOfAFileIsSavedAsTyped) {
  CaseDraft draft;
  draft.open(file);
  enter(draft, path::dose, {"90", "mg", "", "/dose"});
  EXPECT_EQ(draft.text(path::dose), "90 mg/dose");
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
