#include "core/record/case_file.h"

#include <gtest/gtest.h>

#include "tests/core/test_names.h"

namespace wardchalk::case_file_test {
namespace {

struct Row {
  const char* name;
  std::string json;
  const char* fate;  ///< "code at path of what was typed", or "read"
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.json.substr(0, 100); }

class CaseFileRead : public testing::TestWithParam<Row> {};

TEST_P(CaseFileRead, isReadWholeOrRefusedWithItsPath) {
  const Result<Case> read = readCase(GetParam().json);
  const std::string fate = read ? "read"
                                : std::string(idOf(read.refusal().code)) + " at " + read.refusal().path +
                                      " of " + read.refusal().typed;
  EXPECT_EQ(fate, GetParam().fate);
}

/// A file with this version, and nothing else.
std::string ofVersion(const std::string& version) {
  return R"({"format":"wardchalk.case","version":)" + version + "}";
}

INSTANTIATE_TEST_SUITE_P(
    Heads, CaseFileRead,
    testing::Values(Row{"an empty case", ofVersion("1"), "read"},
                    Row{"no JSON", "{", "not-json at  of byte 2"}, Row{"a list", "[]", "type-wrong at  of "},
                    Row{"a text", R"("case")", "type-wrong at  of "},
                    Row{"no format", R"({"version":1})", "key-missing at format of format"},
                    Row{"a format that is no text", R"({"format":1,"version":1})",
                        "format-wrong at format of 1"},
                    Row{"another format", R"({"format":"wardchalk.rules","version":1})",
                        "format-wrong at format of wardchalk.rules"},
                    Row{"no version", R"({"format":"wardchalk.case"})", "key-missing at version of version"},
                    Row{"a version in quotation marks", ofVersion(R"("1")"), "type-wrong at version of 1"},
                    Row{"no version by null", ofVersion("null"), "type-wrong at version of "},
                    Row{"a version that is not whole", ofVersion("1.5"), "version-wrong at version of 1.5"},
                    Row{"an exponent", ofVersion("1e0"), "version-wrong at version of 1e0"},
                    Row{"version 0", ofVersion("0"), "version-wrong at version of 0"},
                    Row{"a version below nothing", ofVersion("-1"), "version-wrong at version of -1"},
                    Row{"far below nothing", ofVersion("-99999999999999999999"),
                        "version-wrong at version of -99999999999999999999"},
                    Row{"the next version", ofVersion("2"), "version-newer at version of 2"},
                    Row{"far above any", ofVersion("99999999999999999999"),
                        "version-newer at version of 99999999999999999999"}),
    test::NameOfRow());

/// A file of this version with these members.
std::string with(const std::string& members) {
  return R"({"format":"wardchalk.case","version":1,)" + members + "}";
}

INSTANTIATE_TEST_SUITE_P(
    Entries, CaseFileRead,
    testing::Values(
        Row{"one of each kind",
            with(R"("title":"a","order":{"dose":"80 mg","as_needed":true,"max_doses_per_day":4})"), "read"},
        Row{"a room that is none", with(R"("patient":{})"), "key-unknown at patient of patient"},
        Row{"a room that is a number", with(R"("child":5)"), "type-wrong at child of "},
        Row{"a room that is a list", with(R"("child":[])"), "type-wrong at child of "},
        Row{"an entry that is none", with(R"("child":{"name":"a"})"),
            "key-unknown at child.name of child.name"},
        Row{"an entry outside its room", with(R"("weight":"17 kg")"), "key-unknown at weight of weight"},
        Row{"a dose as a number", with(R"("order":{"dose":80})"), "type-wrong at order.dose of "},
        Row{"a dose by null", with(R"("order":{"dose":null})"), "type-wrong at order.dose of "},
        Row{"a flag in quotation marks", with(R"("order":{"as_needed":"true"})"),
            "type-wrong at order.as_needed of "},
        Row{"a count in quotation marks", with(R"("order":{"max_doses_per_day":"4"})"),
            "type-wrong at order.max_doses_per_day of "},
        Row{"a title as an object", with(R"("title":{})"), "type-wrong at title of "},
        Row{"a dose that cannot be read", with(R"("order":{"dose":"1,5 mg"})"), "comma at order.dose of 1,5"},
        Row{"a band that is backwards", with(R"("reference":{"weight_from":"20 kg","weight_up_to":"10 kg"})"),
            "band-backwards at reference.weight_up_to of "}),
    test::NameOfRow());

TEST(CaseFileWritten, isReadAgainAndLeavesOutWhatIsEmpty) {
  const std::vector<WrittenEntry> entries = {{"order.dose", "80 mg"},
                                             {"title", "Plover"},
                                             {"child.weight", "17 kg"},
                                             {"child.height", ""},
                                             {"order.as_needed", "true"}};
  const std::string json = writeCaseFile(entries);
  EXPECT_EQ(json.find("height"), std::string::npos) << json;
  const Result<CaseFile> read = readCaseFile(json);
  ASSERT_TRUE(read) << json;
  EXPECT_EQ(read->entries.size(), 4U);
  EXPECT_EQ(read->inputs.title, "Plover");
  EXPECT_TRUE(read->inputs.order.asNeeded);
  const Result<CaseFile> empty = readCaseFile(writeCaseFile({}));
  EXPECT_TRUE(empty && empty->entries.empty());
}

}  // namespace
}  // namespace wardchalk::case_file_test
