// Printed tables of body surface area. Those that our formulas can hold are run; the rest is listed with why
// not.
#include <gtest/gtest.h>

#include <iostream>
#include <set>

#include "core/check/work_out.h"
#include "tests/support/case_text.h"
#include "tests/support/csv.h"
#include "tests/support/figures.h"

namespace wardchalk::test::bsa_tables_test {

namespace {

const std::vector<Row>& table() {
  static const std::vector<Row> rows = readCsv(sourceFile("tests/evidence/bsa_tables.csv"));
  return rows;
}

const std::vector<Row>& cases() {
  static const std::vector<Row> rows = readCsv(sourceFile("tests/evidence/bsa_table_cases.csv"));
  return rows;
}

const Row& entryOf(const std::string& id) {
  for (const Row& row : table())
    if (row.at("id") == id) return row;
  throw std::runtime_error("no table entry " + id);
}

std::set<std::string> idsIn(std::string_view list) {
  std::set<std::string> ids;
  for (const Row& row : cases())
    if (row.at("list") == list) ids.insert(row.at("id"));
  return ids;
}

}  // namespace

TEST(BsaTables, thatOurFormulasHoldComeOutAsPrinted) {
  for (const Row& run : cases()) {
    if (run.at("list") != "worksheet") continue;
    const Row& entry = entryOf(run.at("id"));
    SCOPED_TRACE(run.at("id") + ": " + entry.at("bsa_m2") + " m2, " + entry.at("source") + " " +
                 run.at("reason"));
    const Worksheet sheet = workOut(caseOf(run.at("case")), rulesOf(run.at("rules")));
    for (const std::string& expectation : partsOf(run.at("expect"))) EXPECT_EQ(unmet(sheet, expectation), "");
  }
  EXPECT_EQ(idsIn("worksheet"), (std::set<std::string>{"MO-01", "NM-01"}));
}

TEST(BsaTables, standEachInExactlyOneListWithWhy) {
  std::map<std::string, std::set<std::string>> listsOf;
  for (const Row& run : cases()) {
    listsOf[run.at("id")].insert(run.at("list"));
    EXPECT_TRUE(run.at("list") == "worksheet" || !run.at("reason").empty()) << run.at("id");
  }
  for (const Row& entry : table()) {
    EXPECT_EQ(listsOf[entry.at("id")].size(), 1U) << entry.at("id");
    EXPECT_FALSE(entry.at("source").empty()) << entry.at("id");
  }
  EXPECT_EQ(table().size(), 69U);
  EXPECT_EQ(listsOf.size(), table().size());
}

TEST(BsaTables, leaveOutWhatIsMarkedDoubtful) {
  std::set<std::string> doubtful;
  for (const Row& entry : table())
    if (entry.at("notes").find("doubtful") != std::string::npos) doubtful.insert(entry.at("id"));
  EXPECT_EQ(idsIn("doubtful"), doubtful);
  std::cout << idsIn("other-method").size() << " entries are of another method, " << doubtful.size()
            << " doubtful, " << idsIn("not-a-child").size() << " no single child\n";
}

}  // namespace wardchalk::test::bsa_tables_test
