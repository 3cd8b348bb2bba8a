// What readers of files keep of a long text in a refusal ends with a whole letter, in whatever file it stood.

#include <gtest/gtest.h>

#include "core/record/case_table.h"
#include "core/record/csv.h"
#include "core/record/reference_list.h"
#include "core/record/rules_file.h"
#include "tests/core/test_names.h"

namespace wardchalk::long_text_test {
namespace {

const std::string start(57, 'x');
const std::string longText = start + "שָ and an emoji 💊";  // the vowel and its letter share bytes 57 to 60

std::string headOf(std::string_view format) {
  return std::string(R"({"format":")").append(format) + R"(","version":1,)";
}

std::string quoted(const std::string& text) { return '"' + text + '"'; }

struct LongText {
  const char* name;
  Refusal (*read)();
};

template <typename T>
Refusal refusalIn(const Result<T>& result) {
  return result ? Refusal{RefusalCode::empty, "nothing was refused", {}, {}} : result.refusal();
}

Refusal refusalOfHeader(const std::string& header) {
  std::optional<Refusal> refusal;
  CsvReader reader([&](const CsvRow& row) {
    const Result<CaseTable> table = CaseTable::fromHeader(row);
    if (!table) refusal = table.refusal();
  });
  reader.take(header);
  reader.end();
  return refusal.value_or(Refusal{RefusalCode::empty, "nothing was refused", {}, {}});
}

class LongTextInAFile : public testing::TestWithParam<LongText> {};

TEST_P(LongTextInAFile, isCutBetweenTwoLetters) {
  const Refusal refusal = GetParam().read();
  EXPECT_EQ(refusal.typed, start) << idOf(refusal.code) << " at " << refusal.path;
}

INSTANTIATE_TEST_SUITE_P(
    Files, LongTextInAFile,
    testing::Values(
        LongText{"a value of house rules",
                 [] {
                   return refusalIn(
                       readRules(headOf("wardchalk.house-rules") + "\"pounds\":" + quoted(longText) + "}"));
                 }},
        LongText{
            "a key of house rules",
            [] { return refusalIn(readRules(headOf("wardchalk.house-rules") + quoted(longText) + ":1}")); }},
        LongText{"a format", [] { return refusalIn(readRules(headOf(longText) + "\"agreed_on\":\"\"}")); }},
        LongText{"a key of a reference list",
                 [] {
                   return refusalIn(
                       readReferenceList(headOf("wardchalk.reference-list") + quoted(longText) + ":1}"));
                 }},
        LongText{"a key of an entry of a list",
                 [] {
                   return refusalIn(readReferenceList(headOf("wardchalk.reference-list") + "\"entries\":[{" +
                                                      quoted(longText) + ":\"1\"}]}"));
                 }},
        LongText{"a key with a point in an entry of a list",
                 [] {
                   return refusalIn(readReferenceList(headOf("wardchalk.reference-list") + "\"entries\":[{" +
                                                      quoted(longText + ".") + ":\"1\"}]}"));
                 }},
        LongText{"a column of a list",
                 [] { return refusalIn(importReferenceList(longText + ",route\r\n")); }},
        LongText{"a column of a table of cases", [] { return refusalOfHeader(longText + ",route\r\n"); }},
        LongText{"a column that stands twice",
                 [] { return refusalOfHeader(longText + "," + longText + "\r\n"); }}),
    test::NameOfRow());

}  // namespace
}  // namespace wardchalk::long_text_test
