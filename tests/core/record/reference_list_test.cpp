#include "core/record/reference_list.h"

#include <gtest/gtest.h>

#include <functional>
#include <nlohmann/json.hpp>

#include "core/record/text_file.h"
#include "tests/core/test_names.h"

namespace wardchalk::reference_list_test {
namespace {

using Json = nlohmann::ordered_json;

Json goodEntry() {
  return Json::parse(R"({"medicine": "Plover", "indication": "fever", "route": "oral", "age_from": "2 year",
    "age_below": "12 year", "low": "80 mg/m2/dose", "high": "120 mg/m2/dose", "schedule": "every 12 h",
    "source": {"title": "Ward list", "edition": "3rd edition", "date": "2026-01-15", "page": "4"},
    "checked_by": "A. W.", "checked_on": "2026-02-01", "review_by": "2028-02-01"})");
}

std::string listWith(const Json& entry) {
  return Json{{"format", "wardchalk.reference-list"}, {"version", 1}, {"entries", Json::array({entry})}}
      .dump();
}

std::string demo(const std::string& name) {
  const Result<std::string> text =
      readTextFile(std::string(WARDCHALK_SOURCE_DIR) + "/resources/demo/" + name);
  return text ? *text : std::string();
}

TEST(ReferenceListFile, readsAnEntryWhole) {
  const Result<ReferenceList> list = readReferenceList(listWith(goodEntry()));
  ASSERT_TRUE(list) << list.refusal().path;
  const ListEntry& entry = list->entries.at(0);
  EXPECT_EQ(entry.medicine, "Plover");
  EXPECT_EQ(entry.source.edition, "3rd edition");
  EXPECT_EQ(entry.reviewBy, (Date{2028, 2, 1}));
  EXPECT_EQ(entry.reference.route, Route::oral);
  EXPECT_TRUE(entry.reference.high && entry.reference.age.from && entry.reference.age.below);
  EXPECT_EQ(entry.figures.size(), 6U);
}

Json entryWithMostDoses() {
  Json entry = goodEntry();
  entry["also_called"] = "Grey plover; Brand";
  entry["max_doses_per_day"] = 4;
  return entry;
}

TEST(ReferenceListFile, readsOtherNamesAndTheMostDoses) {
  const Result<ReferenceList> list = readReferenceList(listWith(entryWithMostDoses()));
  ASSERT_TRUE(list) << list.refusal().path;
  const ListEntry& entry = list->entries.at(0);
  EXPECT_EQ(entry.reference.medicine, "Plover");
  EXPECT_EQ(entry.reference.alsoCalled, (std::vector<std::string>{"Grey plover", "Brand"}));
  EXPECT_EQ(entry.reference.maxDosesPerDay, 4);
}

TEST(ReferenceListTable, readsOtherNamesAndTheMostDoses) {
  const Result<ReferenceImport> import = importReferenceList(
      "medicine,also_called,route,high,max_doses_per_day,source.title,source.edition,checked_by,checked_on,"
      "review_by\n"
      "Plover,Grey plover; Brand,oral,84 mg/dose,4,Ward list,3rd,A. W.,2026-02-01,2028-02-01\n"
      "Plover,,oral,84 mg/dose,4.5,Ward list,3rd,A. W.,2026-02-01,2028-02-01\n");
  ASSERT_TRUE(import);
  ASSERT_EQ(import->list.entries.size(), 1U);
  EXPECT_EQ(import->list.entries[0].reference.alsoCalled, (std::vector<std::string>{"Grey plover", "Brand"}));
  EXPECT_EQ(import->list.entries[0].reference.maxDosesPerDay, 4);
  ASSERT_EQ(import->refused.size(), 1U);
  EXPECT_EQ(import->refused[0].refusal.path, "max_doses_per_day");
}

TEST(ReferenceListFile, isWrittenAsItWasRead) {
  const Result<ReferenceList> list = readReferenceList(listWith(entryWithMostDoses()));
  ASSERT_TRUE(list);
  const Result<ReferenceList> again = readReferenceList(writeReferenceList(*list));
  ASSERT_TRUE(again) << again.refusal().path;
  EXPECT_EQ(*again, *list);
}

struct BadEntry {
  const char* name;
  std::function<void(Json&)> spoil;
  RefusalCode code;
  const char* path;
};

class RefusesEntry : public testing::TestWithParam<BadEntry> {};

TEST_P(RefusesEntry, withItsPath) {
  Json entry = goodEntry();
  GetParam().spoil(entry);
  const Result<ReferenceList> list = readReferenceList(listWith(entry));
  ASSERT_FALSE(list);
  EXPECT_EQ(idOf(list.refusal().code), idOf(GetParam().code));
  EXPECT_EQ(list.refusal().path, GetParam().path);
}

using C = RefusalCode;

// clang-format off
INSTANTIATE_TEST_SUITE_P(Keys, RefusesEntry, testing::Values(
    BadEntry{"no medicine", [](Json& e) { e.erase("medicine"); }, C::keyMissing, "entries[0].medicine"},
    BadEntry{"an empty medicine", [](Json& e) { e["medicine"] = ""; }, C::empty, "entries[0].medicine"},
    BadEntry{"no route", [](Json& e) { e.erase("route"); }, C::keyMissing, "entries[0].route"},
    BadEntry{"no high end", [](Json& e) { e.erase("high"); }, C::keyMissing, "entries[0].high"},
    BadEntry{"no source", [](Json& e) { e.erase("source"); }, C::keyMissing, "entries[0].source.title"},
    BadEntry{"neither edition nor date", [](Json& e) { e["source"].erase("edition"); e["source"].erase("date"); }, C::keyMissing, "entries[0].source.date"},
    BadEntry{"nobody checked it", [](Json& e) { e.erase("checked_by"); }, C::keyMissing, "entries[0].checked_by"},
    BadEntry{"no day of checking", [](Json& e) { e.erase("checked_on"); }, C::keyMissing, "entries[0].checked_on"},
    BadEntry{"no day of review", [](Json& e) { e.erase("review_by"); }, C::keyMissing, "entries[0].review_by"},
    BadEntry{"an unknown key", [](Json& e) { e["colour"] = "red"; }, C::keyUnknown, "entries[0].colour"},
    BadEntry{"an unknown part of the source", [](Json& e) { e["source"]["author"] = "A."; }, C::keyUnknown, "entries[0].source.author"},
    BadEntry{"a source in one text", [](Json& e) { e["source"] = "Ward list"; }, C::keyUnknown, "entries[0].source"},
    BadEntry{"a column's name in a file", [](Json& e) { e["source.title"] = "Ward list"; }, C::keyUnknown, "entries[0].source.title"},
    BadEntry{"keys of a case", [](Json& e) { e["child"] = Json{{"weight", "12 kg"}}; }, C::keyUnknown, "entries[0].child"}),
    test::NameOfRow());
INSTANTIATE_TEST_SUITE_P(Values, RefusesEntry, testing::Values(
    BadEntry{"a day that is not there", [](Json& e) { e["review_by"] = "2027-02-29"; }, C::dateUnknown, "entries[0].review_by"},
    BadEntry{"a day in another order", [](Json& e) { e["checked_on"] = "01.02.2026"; }, C::dateShape, "entries[0].checked_on"},
    BadEntry{"a date of the source that is no day", [](Json& e) { e["source"]["date"] = "2026"; }, C::dateShape, "entries[0].source.date"},
    BadEntry{"review before the checking", [](Json& e) { e["review_by"] = "2026-01-31"; }, C::datesBackwards, "entries[0].review_by"},
    BadEntry{"a second check that is not required", [](Json& e) { e["second_check"] = "optional"; }, C::wordUnknown, "entries[0].second_check"},
    BadEntry{"a second check without a word", [](Json& e) { e["second_check"] = ""; }, C::empty, "entries[0].second_check"},
    BadEntry{"a second check as a flag", [](Json& e) { e["second_check"] = true; }, C::typeWrong, "entries[0].second_check"},
    BadEntry{"a number without quotes", [](Json& e) { e["high"] = 120; }, C::typeWrong, "entries[0].high"},
    BadEntry{"a count in quotes", [](Json& e) { e["max_doses_per_day"] = "4"; }, C::typeWrong, "entries[0].max_doses_per_day"},
    BadEntry{"a count that is none", [](Json& e) { e["max_doses_per_day"] = 25; }, C::countNotWhole, "entries[0].max_doses_per_day"},
    BadEntry{"a count with a point", [](Json& e) { e["max_doses_per_day"] = 4.5; }, C::countNotWhole, "entries[0].max_doses_per_day"},
    BadEntry{"other names in a list", [](Json& e) { e["also_called"] = Json::array({"Brand"}); }, C::typeWrong, "entries[0].also_called"},
    BadEntry{"an unseen character in another name", [](Json& e) { e["also_called"] = "Brand\u202E"; }, C::unseenCharacter, "entries[0].also_called"},
    BadEntry{"a flag in quotes", [](Json& e) { e["limit_only"] = "true"; }, C::typeWrong, "entries[0].limit_only"},
    BadEntry{"a decimal comma", [](Json& e) { e["high"] = "120,5 mg/m2/dose"; }, C::comma, "entries[0].high"},
    BadEntry{"a dose without its time", [](Json& e) { e["high"] = "120 mg/m2"; e.erase("low"); }, C::perMissing, "entries[0].high"},
    BadEntry{"an unsafe schedule", [](Json& e) { e["schedule"] = "QD"; }, C::scheduleLookAlike, "entries[0].schedule"},
    BadEntry{"a low end above the high one", [](Json& e) { e["low"] = "130 mg/m2/dose"; }, C::lowAboveHigh, "entries[0].low"},
    BadEntry{"a band that ends before it begins", [](Json& e) { e["age_below"] = "1 year"; }, C::bandBackwards, "entries[0].age_below"},
    BadEntry{"a low end with only a limit", [](Json& e) { e["limit_only"] = true; }, C::lowWithLimitOnly, "entries[0].limit_only"},
    BadEntry{"a medicine that is too long", [](Json& e) { e["medicine"] = std::string(101, 'x'); }, C::tooLong, "entries[0].medicine"},
    BadEntry{"a control character", [](Json& e) { e["checked_by"] = "A\x1B[2J"; }, C::unseenCharacter, "entries[0].checked_by"}),
    test::NameOfRow());
// clang-format on

struct BadFile {
  const char* name;
  std::string text;
  RefusalCode code;
};

class RefusesList : public testing::TestWithParam<BadFile> {};

TEST_P(RefusesList, whole) {
  const Result<ReferenceList> list = readReferenceList(GetParam().text);
  ASSERT_FALSE(list);
  EXPECT_EQ(idOf(list.refusal().code), idOf(GetParam().code));
}

const std::string opened = R"({"format":"wardchalk.reference-list","version":1,"entries":)";

INSTANTIATE_TEST_SUITE_P(
    Files, RefusesList,
    testing::Values(
        BadFile{"nothing", "", C::notJson}, BadFile{"half a file", opened + "[", C::notJson},
        BadFile{"a case", R"({"format":"wardchalk.case","version":1})", C::formatWrong},
        BadFile{"a newer version", R"({"format":"wardchalk.reference-list","version":2})", C::versionNewer},
        BadFile{"no entries", R"({"format":"wardchalk.reference-list","version":1})", C::keyMissing},
        BadFile{"entries that are no list", opened + "{}}", C::typeWrong},
        BadFile{"an entry that is no object", opened + "[3]}", C::typeWrong},
        BadFile{"entries twice", opened + R"([],"entries":[]})", C::keyDuplicate},
        BadFile{"another key", opened + R"([],"ward":"3"})", C::keyUnknown},
        BadFile{"a title that is no text", opened + R"([],"title":3})", C::typeWrong},
        BadFile{"deep nesting", opened + std::string(5000, '['), C::tooDeep},
        BadFile{"not UTF-8", opened + "[\"\xFF\"]}", C::notUtf8}),
    test::NameOfRow());

TEST(ReferenceImport, theTableOfTheDemoIsItsList) {
  const Result<ReferenceImport> import = importReferenceList(demo("reference_list.csv"));
  const Result<ReferenceList> list = readReferenceList(demo("reference_list.json"));
  ASSERT_TRUE(import && list);
  EXPECT_TRUE(import->refused.empty());
  EXPECT_GE(list->entries.size(), 16U);
  EXPECT_EQ(import->list, *list);
}

TEST(ReferenceImport, reportsEveryRowThatIsRefused) {
  const std::string header =
      "review_by,medicine,route,high,schedule,source.title,source.edition,checked_by,checked_on,limit_"
      "only\r\n";
  const std::string rest = ",every 12 h,Ward list,3rd,A. W.,2026-02-01,";
  const std::string text =
      header + "2028-02-01,Wren,oral,20 mg/kg/dose" + rest + "TRUE\r\n" +  // row 2
      "2028-02-30,Wren,oral,20 mg/kg/dose" + rest + "\r\n" + "2028-02-01,Wren,by the mouth,20 mg/kg/dose" +
      rest + "\r\n" + "2028-02-01,Wren,oral,\"20,5 mg/kg/dose\"" + rest + "\r\n" +
      "2028-02-01,,oral,20 mg/kg/dose" + rest + "\r\n" + "2028-02-01,Wren,oral\r\n" +  // row 7
      "\r\n" + "2028-02-01,Wr\"en,oral,20 mg/kg/dose" + rest + "\r\n" +
      "2028-02-01,Dunlin,rectal,15 mg/kg/dose" + rest + "\r\n";
  const Result<ReferenceImport> import = importReferenceList(text);
  ASSERT_TRUE(import);
  ASSERT_EQ(import->list.entries.size(), 2U);
  EXPECT_TRUE(import->list.entries[0].reference.limitOnly);
  EXPECT_EQ(import->list.entries[1].medicine, "Dunlin");
  struct Expected {
    long row;
    const char* column;
    RefusalCode code;
  };
  const std::vector<Expected> expected = {{3, "review_by", C::dateUnknown},
                                          {4, "route", C::wordUnknown},
                                          {5, "high", C::comma},
                                          {6, "medicine", C::keyMissing},
                                          {7, "", C::cellsMissing},
                                          {8, "", C::empty},
                                          {9, "", C::rowQuotes}};
  ASSERT_EQ(import->refused.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(import->refused[i].row, expected[i].row);
    EXPECT_EQ(import->refused[i].refusal.path, expected[i].column);
    EXPECT_EQ(idOf(import->refused[i].refusal.code), idOf(expected[i].code)) << i;
  }
}

TEST(ReferenceImport, refusesATableWhoseHeaderCannotBeRead) {
  EXPECT_EQ(importReferenceList("").refusal().code, C::headerMissing);
  EXPECT_EQ(importReferenceList("medicine;route\r\n").refusal().code, C::separatorWrong);
  EXPECT_EQ(importReferenceList("medicine,colour\r\n").refusal().code, C::keyUnknown);
  EXPECT_EQ(importReferenceList("medicine,source\r\n").refusal().code, C::keyUnknown);
  EXPECT_EQ(importReferenceList("medicine,medicine\r\n").refusal().code, C::keyDuplicate);
}

TEST(SecondCheck, isKeptAsTheWardSaysIt) {
  Json entry = goodEntry();
  EXPECT_FALSE(readReferenceList(listWith(entry))->entries.front().secondCheckRequired);
  entry["second_check"] = "required";
  const Result<ReferenceList> list = readReferenceList(listWith(entry));
  ASSERT_TRUE(list);
  EXPECT_TRUE(list->entries.front().secondCheckRequired);
  EXPECT_EQ(*readReferenceList(writeReferenceList(*list)), *list);
}

}  // namespace
}  // namespace wardchalk::reference_list_test
