#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <iostream>
#include <string>
#include <vector>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"
#include "core/rules/house_rules.h"
#include "tests/support/case_text.h"
#include "tests/support/csv.h"

namespace wardchalk::test {

namespace {

std::vector<Row> right() { return readCsv(sourceFile("tests/orders/right_orders.csv")); }
std::vector<Row> wrong() { return readCsv(sourceFile("tests/orders/wrong_orders.csv")); }

/// Rows that are judged otherwise than their author says, each with the reason.
std::vector<Row> known() { return readCsv(sourceFile("tests/orders/judged_otherwise.csv")); }

Case caseIn(const Row& row) {
  std::vector<WrittenEntry> entries;
  for (const CaseEntry& entry : caseEntries()) {
    const auto cell = row.find(entry.path);
    if (cell != row.end() && !cell->second.empty())
      entries.push_back({std::string(entry.path), cell->second});
  }
  return caseOf(entries);
}

std::string judged(const Worksheet& sheet) {
  return std::string(idOf(sheet.verdict)) + ": " + std::string(sheet.because());
}

/// What a known row is judged as by these rules; empty where the row is not known.
std::string knownAs(const std::string& id, std::string_view rules) {
  for (const Row& row : known())
    if (row.at("id") == id && (row.at("rules") == rules || row.at("rules") == "both"))
      return row.at("verdict") + ": " + row.at("because");
  return {};
}

struct Rules {
  std::string_view name;
  HouseRules rules;
  std::size_t asksAtMost;  ///< of 300 right orders
};
std::vector<Rules> bothRules() { return {{"exact", exactRules(), 9}, {"classroom", classroomRules(), 1}}; }

/// A doubt about the child's size, as what leads.
bool isOfSize(std::string_view because) {
  constexpr std::array<std::string_view, 6> doubts = {"size-implausible", "weight-unlikely-for-height",
                                                      "weight-unlikely",  "height-unlikely",
                                                      "weight-old",       "bsa-differs"};
  return std::find(doubts.begin(), doubts.end(), because) != doubts.end();
}

}  // namespace

TEST(RightOrders, areSafeButThoseThatAreKnown) {
  for (const Rules& one : bothRules()) {
    std::size_t asked = 0;
    for (const Row& row : right()) {
      const Worksheet sheet = workOut(caseIn(row), one.rules);
      const std::string wanted = knownAs(row.at("id"), one.name);
      const std::string found = judged(sheet);
      EXPECT_EQ(found, wanted.empty() ? "safe: " : wanted) << row.at("id") << " " << one.name;
      if (sheet.verdict == VerdictKind::ask) ++asked;
    }
    EXPECT_LE(asked, one.asksAtMost) << one.name;
    std::cout << "  " << one.name << ": " << asked << " of 300 right orders are asked about\n";
  }
}

TEST(WrongOrders, noneIsSafeButWhereNothingCanBeSeen) {
  for (const Rules& one : bothRules())
    for (const Row& row : wrong()) {
      if (row.at("expect_not") != "safe") continue;
      const Worksheet sheet = workOut(caseIn(row), one.rules);
      EXPECT_NE(sheet.verdict, VerdictKind::safe) << row.at("id") << " " << one.name;
    }
}

TEST(WrongOrders, areJudgedAsTheirAuthorSays) {
  for (const Row& row : wrong()) {
    const Worksheet sheet = workOut(caseIn(row), exactRules());
    const std::string wanted = knownAs(row.at("id"), "exact");
    if (wanted.empty())
      EXPECT_EQ(std::string(idOf(sheet.verdict)), row.at("expect")) << row.at("id") << " " << judged(sheet);
    else
      EXPECT_EQ(judged(sheet), wanted) << row.at("id");
  }
}

/// A child whose size was misread is weighed again before anybody thinks of another dose: the doubt leads, or
/// nothing is judged, or the order is refused and the doubt is named beside it.
TEST(WrongOrders, ofSizeAreLedBySize) {
  std::size_t led = 0;
  std::size_t all = 0;
  for (const Row& row : wrong()) {
    if (row.at("lead") != "size") continue;
    ++all;
    const Worksheet sheet = workOut(caseIn(row), exactRules());
    const bool named = std::any_of(sheet.findings.begin(), sheet.findings.end(),
                                   [](const Finding& finding) { return isOfSize(idOf(finding.code)); });
    const bool refused = sheet.verdict == VerdictKind::unsafe || sheet.verdict == VerdictKind::notCovered;
    const bool leads = isOfSize(sheet.because()) || (refused && named);
    if (leads) ++led;
    EXPECT_TRUE(leads || !knownAs(row.at("id"), "lead").empty()) << row.at("id") << " " << judged(sheet);
  }
  std::cout << "  size leads in " << led << " of " << all << "\n";
}

}  // namespace wardchalk::test
