#include "core/record/reference_choice.h"

#include <gtest/gtest.h>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "core/record/text_file.h"

namespace wardchalk::reference_choice_test {
namespace {

const ReferenceList& demoList() {
  static const ReferenceList list = [] {
    const auto text = readTextFile(std::string(WARDCHALK_SOURCE_DIR) + "/resources/demo/reference_list.json");
    return *readReferenceList(*text);
  }();
  return list;
}

constexpr Date today{2026, 11, 25};

std::vector<std::string> foundBy(std::string_view part) {
  std::vector<std::string> names;
  for (const ListGroup& group : find(demoList(), part))
    names.push_back(group.medicine + " " + std::string(idOf(group.route)));
  return names;
}

Child childWith(std::initializer_list<std::pair<std::string_view, std::string_view>> entries) {
  Case inputs;
  for (const auto& [path, text] : entries) EXPECT_TRUE(setEntry(inputs, path, text)) << path;
  return inputs.child;
}

using Names = std::vector<std::string>;

TEST(FindReference, findsPartsOfNamesWithoutCapitalsOrAccents) {
  EXPECT_EQ(foundBy("plo"), (Names{"Plover oral", "Plover intravenous"}));
  EXPECT_EQ(foundBy("PLOVER iv"), Names{});
  EXPECT_EQ(foundBy("plover intra"), Names{"Plover intravenous"});
  EXPECT_EQ(foundBy("grebe"), Names{"Grèbe oral"});
  EXPECT_EQ(foundBy("GRÈB"), Names{"Grèbe oral"});
  EXPECT_EQ(foundBy("hedge"), Names{"Wren oral"});
  EXPECT_EQ(foundBy("no such bird"), Names{});
  EXPECT_EQ(foundBy("").size(), find(demoList(), "  ").size());
  EXPECT_EQ(foundBy("lin").front(), "Linnet intravenous") << "what begins with it comes before Dunlin";
}

TEST(FindReference, oneMedicineIsOneHoweverItIsWritten) {
  ReferenceList list = demoList();
  list.entries[1].medicine = "PLÓVER";
  EXPECT_EQ(find(list, "plover").front().entries.size(), 3U);
}

BandChoice choiceFor(std::string_view part, const Child& child) {
  return bandFor(demoList(), find(demoList(), part).at(0), child, exactRules());
}

std::string said(std::string_view part, const Child& child) {
  return sentence(choiceFor(part, child), demoList(), today);
}

struct AgeRow {
  const char* age;
  std::optional<std::size_t> entry;
};

/// The edges of the bands 1 month to below 2 years, 2 to below 12 years, from 12 years.
TEST(BandFor, takesTheOneBandThatCoversTheAge) {
  for (const AgeRow& row : {AgeRow{"3 week", std::nullopt}, AgeRow{"1 month", 0}, AgeRow{"23 month", 0},
                            AgeRow{"2 year", 1}, AgeRow{"1 year 11 month", 0}, AgeRow{"11 year", 1},
                            AgeRow{"11 year 11 month", 1}, AgeRow{"12 year", 2}, AgeRow{"17 year", 2}})
    EXPECT_EQ(choiceFor("plover oral", childWith({{path::age, row.age}})).chosen, row.entry) << row.age;
}

TEST(BandFor, saysWhichBandAndWhy) {
  EXPECT_EQ(said("plover oral", childWith({{path::age, "4 year"}})),
            "Plover, oral: the entry for 2 years and over, under 12 years covers this child (4 years).");
  EXPECT_EQ(said("plover oral", childWith({{path::age, "3 week"}})),
            "No entry covers this child (3 weeks). Nothing is filled in. Look in the full reference or ask "
            "the pharmacist.");
  EXPECT_EQ(said("plover oral", Child{}),
            "Which entry covers this child cannot be told yet: enter the age. Nothing is filled in.");
  EXPECT_EQ(said("grebe", childWith({{path::age, "7 year"}})),
            "2 entries cover this child: 1 year and over, up to 8 years; 6 years and over, under 18 years. "
            "Nothing is "
            "filled in, because the list does not say which one applies. Tell whoever keeps the list.");
  EXPECT_EQ(said("linnet", Child{}),
            "Linnet, intravenous: this is the only entry, and it is for every age and size.");
}

TEST(BandFor, saysOfEachEntryHowItFits) {
  const auto fits = [](const Child& child) {
    std::string text;
    for (const JudgedEntry& entry : choiceFor("plover oral", child).entries)
      text.append(text.empty() ? "" : "; ").append(fitWords(entry));
    return text;
  };
  EXPECT_EQ(fits(childWith({{path::age, "4 year"}})),
            "does not cover this child (4 years); covers this child (4 years); does not cover this child (4 "
            "years)");
  EXPECT_EQ(fits(Child{}),
            "cannot be told yet: enter the age; cannot be told yet: enter the age; cannot be told yet: enter "
            "the age");
}

TEST(BandFor, judgesWeightAndSurfaceByTheHouseRules) {
  EXPECT_EQ(choiceFor("wren", childWith({{path::weight, "19.9 kg"}})).chosen, 4U);
  EXPECT_EQ(choiceFor("wren", childWith({{path::weight, "20 kg"}})).chosen, 5U);
  EXPECT_EQ(choiceFor("wren", childWith({{path::weight, "44 lb"}})).chosen, 4U);  // 19.96 kg
  const ListGroup wren = find(demoList(), "wren").at(0);
  EXPECT_EQ(bandFor(demoList(), wren, childWith({{path::weight, "44 lb"}}), classroomRules()).chosen,
            5U);  // 20 kg
  EXPECT_EQ(choiceFor("siskin", childWith({{path::height, "103 cm"}, {path::weight, "17.2 kg"}})).chosen, 9U);
  EXPECT_EQ(choiceFor("siskin", childWith({{path::bsa, "0.49 m2"}})).chosen, 10U);
  EXPECT_FALSE(choiceFor("siskin", childWith({{path::weight, "17.2 kg"}})).chosen);
  EXPECT_EQ(said("siskin", childWith({{path::weight, "17.2 kg"}})),
            "Which entry covers this child cannot be told yet: enter the height. Nothing is filled in.");
}

TEST(BandFor, anAgeTooCoarseForAnEdgeIsAskedForMoreFinely) {
  const BandChoice choice = choiceFor("redshank", childWith({{path::age, "0 year"}}));
  EXPECT_FALSE(choice.chosen);
  EXPECT_EQ(choice.entries.at(0).fit, BandFit::unclear);
  EXPECT_EQ(fitWords(choice.entries.at(0)),
            "cannot be told yet: give the months too: the reference changes within this year of age");
}

/// The band that is taken is one that the case itself, once filled in, is judged to be covered by.
TEST(BandFor, agreesWithTheChecksOfTheCase) {
  for (const char* age :
       {"2 week", "5 month", "1 year", "3 year", "6 year", "11 year", "12 year", "16 year 11 month"})
    for (const ListGroup& group : find(demoList(), "")) {
      const Child child = childWith({{path::age, age}, {path::height, "103 cm"}, {path::weight, "20 kg"}});
      for (const JudgedEntry& judged : bandFor(demoList(), group, child, exactRules()).entries) {
        Case inputs;
        inputs.child = child;
        inputs.reference = demoList().entries[judged.entry].reference;
        const Worksheet sheet = workOut(inputs, exactRules());
        bool outside = false;
        for (const CheckId id : {CheckId::ageBand, CheckId::weightBand, CheckId::bsaBand})
          outside = outside || sheet.check(id).status == CheckStatus::outside;
        EXPECT_EQ(outside, judged.fit == BandFit::doesNotCover) << age << ' ' << group.medicine;
      }
    }
}

TEST(EntriesOf, fillEveryFigureAndTheSourceWithItsEditionAndDate) {
  Case inputs;
  for (const WrittenEntry& entry : entriesOf(demoList().entries[1], today))
    EXPECT_TRUE(setEntry(inputs, entry.path, entry.text)) << entry.path;
  EXPECT_EQ(
      inputs.reference.source,
      "Plover, oral: Invented ward list, 3rd edition, 2026-01-15, p. 4, for fever of the marsh; from the "
      "ward's list, checked by A. Warbler and B. Siskin, 2026-02-01");
  EXPECT_TRUE(isFromList(inputs.reference));
  EXPECT_EQ(inputs.reference.medicine, "Plover");
  inputs.reference.source.clear();
  EXPECT_EQ(inputs.reference, demoList().entries[1].reference);
}

TEST(EntriesOf, sayThatTheReviewIsPast) {
  const ListEntry& old = demoList().entries[14];
  EXPECT_TRUE(isPastReview(old, today));
  EXPECT_FALSE(isPastReview(old, old.reviewBy));
  EXPECT_TRUE(takenFrom(old, today).ends_with("; past its review date (2026-06-30) when it was taken"));
}

TEST(BandFor, saysThatTheReviewIsPast) {
  EXPECT_NE(said("goldcrest", childWith({{path::age, "4 year"}}))
                .find("this entry covers the child, but its review date is past (2026-06-30)."),
            std::string::npos);
}

Order orderOf(std::string_view medicine, std::optional<Route> route) {
  Order order;
  order.medicine = medicine;
  order.route = route;
  return order;
}

TEST(FirstToLookAt, isTheOrderedMedicineByTheOrderedRoute) {
  const std::vector<ListGroup> all = find(demoList(), "plov");
  EXPECT_EQ(firstToLookAt(all, "plov", orderOf("plover", Route::intravenous)), 1U);
  EXPECT_EQ(firstToLookAt(all, "plov", orderOf("Plover", Route::oral)), 0U);
  EXPECT_EQ(firstToLookAt(all, "plov", orderOf("", std::nullopt)), 0U);
  EXPECT_EQ(firstToLookAt(find(demoList(), ""), "", orderOf("", std::nullopt)), std::nullopt);
  EXPECT_EQ(firstToLookAt({}, "no such bird", orderOf("Plover", std::nullopt)), std::nullopt);
}

TEST(FirstToLookAt, anotherMedicineIsKnownAsAnother) {
  const ListGroup wren = find(demoList(), "wren").at(0);
  EXPECT_FALSE(isForOrdered(wren, orderOf("Plover", Route::oral)));
  EXPECT_TRUE(isForOrdered(wren, orderOf("WREN", Route::rectal)));
  EXPECT_TRUE(isForOrdered(wren, orderOf("", std::nullopt)));
  EXPECT_TRUE(isForOrdered(find(demoList(), "grebe").at(0), orderOf("grebe", std::nullopt)));
}

/// A list whose one entry has other names.
ReferenceList listWithOtherNames() {
  ReferenceList list = demoList();
  list.entries[0].reference.alsoCalled = {"Marsh salt", "Brand"};
  return list;
}

TEST(OtherNames, AreFoundAndAreForTheirOrder) {
  const ReferenceList list = listWithOtherNames();
  ASSERT_EQ(find(list, "brand").size(), 1U);
  EXPECT_EQ(find(list, "MARSH SALT oral").at(0).medicine, "Plover");
  const ListGroup group = find(list, "plover oral").at(0);
  EXPECT_EQ(group.alsoCalled, (Names{"Marsh salt", "Brand"}));
  EXPECT_TRUE(isForOrdered(group, orderOf("brand", std::nullopt)));
  EXPECT_FALSE(isForOrdered(group, orderOf("brand x", std::nullopt)));
  EXPECT_EQ(firstToLookAt(find(list, ""), "", orderOf("Brand", Route::oral)), 0U);
}

TEST(TakenEntry, SaysThatASecondCheckIsRequired) {
  ReferenceList list = demoList();
  const auto says = [&] {
    for (const WrittenEntry& entry : entriesOf(list.entries[0], today))
      if (entry.path == path::secondCheckRequired) return entry.text;
    return std::string();
  };
  EXPECT_EQ(says(), "");
  list.entries[0].secondCheckRequired = true;
  EXPECT_EQ(says(), "true");
}

TEST(KeptByList, AreTheMedicineItsNamesAndTheSource) {
  Reference reference;
  reference.source = takenFrom(demoList().entries[0], today);
  for (const CaseEntry& entry : caseEntries()) {
    const bool kept = entry.path == path::referenceMedicine || entry.path == path::alsoCalled ||
                      entry.path == path::source || entry.path == path::secondCheckRequired;
    EXPECT_EQ(isKeptByList(entry.path, reference), kept) << entry.path;
    EXPECT_FALSE(isKeptByList(entry.path, Reference{})) << entry.path;
  }
  reference.source = "Bench list, p. 4";
  EXPECT_FALSE(isKeptByList(path::referenceMedicine, reference));
}

/// Only the entry that bears the name may be taken for it.
TEST(OtherNames, AreThoseOfOneEntry) {
  const ReferenceList list = listWithOtherNames();
  const Order brand = orderOf("Brand", Route::oral);
  EXPECT_TRUE(mayBeTaken(list.entries[0], brand, today, {}));
  EXPECT_FALSE(mayBeTaken(list.entries[1], brand, today, {}));
  EXPECT_TRUE(mayBeTaken(list.entries[1], brand, today, {.pastReview = false, .otherMedicine = true}));
  EXPECT_TRUE(mayBeTaken(list.entries[1], orderOf(" ", Route::oral), today, {}));
}

/// What is taken against the ordered name is not covered, and what is taken for it is.
TEST(OtherNames, AreJudgedByTheCaseAsByTheList) {
  const ReferenceList list = listWithOtherNames();
  for (const char* ordered : {"Brand", "PL\u00D3VER", "Heron", "Plover2", "marsh  salt"})
    for (const std::size_t index : {0U, 1U}) {
      Case inputs;
      inputs.order = orderOf(ordered, Route::oral);
      for (const WrittenEntry& entry : entriesOf(list.entries[index], today))
        EXPECT_TRUE(setEntry(inputs, entry.path, entry.text)) << entry.path;
      inputs.reference.alsoCalled = list.entries[index].reference.alsoCalled;
      const Worksheet sheet = workOut(inputs, exactRules());
      EXPECT_EQ(sheet.check(CheckId::medicine).status == CheckStatus::within,
                isForOrdered(list.entries[index], inputs.order))
          << ordered << ' ' << index;
    }
}

TEST(OtherNames, CompatibleFormsAreOtherMedicines) {
  ReferenceList list = demoList();
  list.entries[1].medicine = "Plover\u00B2";
  list.entries[2].medicine = "Plover2";
  EXPECT_EQ(find(list, "plover oral").size(), 3U);
}

TEST(LimitWords, sayEveryMaximumAndEveryLimitOfAnInfusion) {
  Case inputs;
  for (const auto& [path, text] :
       {std::pair{path::maxPerDose, "200 mg"}, std::pair{path::maxPerDay, "400 mg/day"},
        std::pair{path::maxConcentration, "5 mg/1 mL"}, std::pair{path::minInfusionTime, "30 min"}})
    EXPECT_TRUE(setEntry(inputs, path, text)) << path;
  EXPECT_EQ(maximumWords(inputs.reference), "200 mg per dose; 400 mg per day");
  EXPECT_EQ(infusionWords(inputs.reference), "Infusion: maximum 5 mg in 1 mL; shortest time 30 min");
  EXPECT_EQ(maximumWords(Reference{}), "");
  EXPECT_EQ(infusionWords(Reference{}), "");
}

TEST(EntriesOf, aSourceThatWasTypedIsNoList) {
  Reference reference;
  reference.source = "the ward's list, p. 4";
  EXPECT_FALSE(isFromList(reference));
}

TEST(EntriesOf, theLongestSourceFitsACase) {
  ListEntry entry = demoList().entries[0];
  entry.source = {std::string(120, 't'), std::string(40, 'e'), Date{2026, 1, 15}, std::string(30, 'p')};
  entry.indication = std::string(100, 'i');
  entry.checkedBy = std::string(60, 'c');
  Case inputs;
  EXPECT_TRUE(setEntry(inputs, path::source, takenFrom(entry, Date{2999, 1, 1})));
}

}  // namespace
}  // namespace wardchalk::reference_choice_test
