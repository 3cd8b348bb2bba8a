#include <gtest/gtest.h>

#include <algorithm>

#include "core/record/case_entry.h"
#include "core/record/case_file.h"
#include "core/record/case_table.h"

// An entry of a file that speaks of several fields fills them all, and what is said twice is refused: one of
// the two would be lost.

namespace wardchalk::filled_by_test {
namespace {

std::string fileWith(std::string_view reference) {
  return R"({"format": "wardchalk.case", "version": 1, "reference": {)" + std::string(reference) + "}}";
}

TEST(FilledBy, aRangeFillsBothEnds) {
  const Result<CaseFile> file = readCaseFile(fileWith(R"("high": "20-40 mg/kg/day divided every 8 h")"));
  ASSERT_TRUE(file);
  const std::vector<WrittenEntry> expected = {{"reference.high", "40 mg/kg/day"},
                                              {"reference.low", "20 mg/kg/day"},
                                              {"reference.schedule", "every 8 h"}};
  std::vector<WrittenEntry> entries = file->entries;
  std::sort(entries.begin(), entries.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
  EXPECT_EQ(entries, expected);
  EXPECT_TRUE(file->inputs.reference.low);
  EXPECT_TRUE(file->inputs.reference.schedule);
}

TEST(FilledBy, whatIsWrittenForOneFieldStaysToTheLetter) {
  const Result<CaseFile> file = readCaseFile(fileWith(R"("high": "40 mg/kg per day")"));
  ASSERT_TRUE(file);
  EXPECT_EQ(file->entries, (std::vector<WrittenEntry>{{"reference.high", "40 mg/kg per day"}}));
}

TEST(FilledBy, whatIsSaidTwiceIsRefusedInEitherOrder) {
  for (const char* reference : {R"("high": "20-40 mg/kg/day", "low": "10 mg/kg/day")",
                                R"("low": "10 mg/kg/day", "high": "20-40 mg/kg/day")",
                                R"("low": "20-40 mg/kg/day", "high": "20-40 mg/kg/day")",
                                R"("high": "40 mg/kg/day divided q8h", "schedule": "every 6 h")"}) {
    const Result<CaseFile> file = readCaseFile(fileWith(reference));
    ASSERT_FALSE(file) << reference;
    EXPECT_EQ(idOf(file.refusal().code), "filled-twice") << reference;
  }
}

TEST(FilledBy, aRowOfATableIsReadAlike) {
  CsvRow header;
  header.cells = {"reference.high", "reference.low", "order.schedule", "order.as_needed"};
  const Result<CaseTable> table = CaseTable::fromHeader(header);
  ASSERT_TRUE(table);
  CsvRow row;
  row.cells = {"10-15mg/kg/dose", "", "q6h PRN", ""};
  const Result<CaseFile> read = table->read(row);
  ASSERT_TRUE(read);
  EXPECT_TRUE(read->inputs.reference.low);
  EXPECT_TRUE(read->inputs.order.asNeeded);
  row.cells = {"", "", "q6h PRN", "false"};
  EXPECT_FALSE(table->read(row));
}

}  // namespace
}  // namespace wardchalk::filled_by_test
