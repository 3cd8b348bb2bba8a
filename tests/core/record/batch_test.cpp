#include "core/record/batch.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "core/record/case_summary.h"
#include "tests/support/table_rows.h"

namespace wardchalk::batch_test {
namespace {

const std::string header =
    "child.age,child.height,child.weight,order.medicine,order.dose,order.route,order.schedule,reference.high,"
    "reference.schedule,reference.limit_only,stock.kind,stock.strength\r\n";

std::string rowWith(const std::string& weight, const std::string& dose) {
  return "4 year,103 cm," + weight + ",Plover," + dose +
         ",oral,every 12 h,120 mg/m2/dose,every 12 h,,liquid,25 mg/1 mL\r\n";
}

struct Outcome {
  std::string text;
  BatchCount count;
  std::optional<Refusal> refusal;
};

Outcome worked(const std::string& text, const BatchForm& form, std::size_t piece = 4096) {
  Outcome outcome;
  Batch batch(exactRules(), form, [&](std::string_view answer) { outcome.text.append(answer); });
  for (std::size_t at = 0; at < text.size(); at += piece)
    batch.take(std::string_view(text).substr(at, piece));
  batch.end();
  outcome.count = batch.count();
  outcome.refusal = batch.refusal();
  return outcome;
}

/// The cell of a column, by the names in the first row.
std::string cell(const std::vector<CsvRow>& rows, std::size_t row, std::string_view column) {
  const auto& names = rows.front().cells;
  const auto at = std::find(names.begin(), names.end(), column) - names.begin();
  return rows.at(row).cells.at(static_cast<std::size_t>(at));
}

TEST(BatchTable, answersBesideEachRow) {
  const Outcome outcome =
      worked(header + rowWith("17.2 kg", "80 mg") + rowWith("17.2 kg", "95 mg"), {StreamKind::table});
  const auto rows = test::tableRows(outcome.text);
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(cell(rows, 1, "order.dose"), "80 mg");
  EXPECT_EQ(cell(rows, 1, "verdict"), "safe");
  EXPECT_EQ(cell(rows, 1, "bsa"), "0.70 m2");
  EXPECT_EQ(cell(rows, 1, "weight_kg"), "17.2");
  EXPECT_EQ(cell(rows, 1, "limit_day"), "168 mg");
  EXPECT_EQ(cell(rows, 1, "give"), "3.2 mL (80 mg)");
  EXPECT_EQ(cell(rows, 1, "error"), "");
  EXPECT_EQ(cell(rows, 2, "verdict"), "unsafe");
  EXPECT_EQ(cell(rows, 2, "findings"), "over-single over-daily source-not-stated");
  EXPECT_EQ(cell(rows, 2, "give"), "");
}

TEST(BatchTable, anAmountOnAskIsNotTold) {
  const auto rows = test::tableRows(worked(header + rowWith("17.2 kg", "60 mg"), {StreamKind::table}).text);
  EXPECT_EQ(cell(rows, 1, "verdict"), "ask");
  EXPECT_EQ(cell(rows, 1, "give"), "ask first");
}

TEST(BatchTable, takesColumnsInAnyOrderAndSpreadsheetsCapitals) {
  const std::string text =
      "order.as_needed,reference.high,child.weight,order.max_doses_per_day,order.dose,order.schedule\r\n"
      "TRUE,15 mg/kg/dose,12 kg,4,150 mg,every 4 to 6 h\r\n";
  const auto rows = test::tableRows(worked(text, {StreamKind::table}).text);
  EXPECT_EQ(cell(rows, 1, "order.as_needed"), "TRUE");
  EXPECT_EQ(cell(rows, 1, "error"), "");
  EXPECT_EQ(cell(rows, 1, "limit_dose"), "180 mg");
}

TEST(BatchTable, aBadRowNeverStopsTheRest) {
  const std::string good = rowWith("17.2 kg", "80 mg");
  const std::string text = header + good + rowWith("\"17,2 kg\"", "80 mg") + "a,b\r\n" + "\r\n" + "x\"y\r\n" +
                           "\xFF\r\n" + rowWith("17.2 kg", "=80 mg") + good;
  const Outcome outcome = worked(text, {StreamKind::table});
  const auto rows = test::tableRows(outcome.text);
  ASSERT_EQ(rows.size(), 9U);
  EXPECT_EQ(outcome.count.worked, 2);
  EXPECT_EQ(outcome.count.refused, 6);
  EXPECT_EQ(cell(rows, 1, "verdict"), "safe");
  EXPECT_TRUE(cell(rows, 2, "error").starts_with("child.weight: 17,2 has a comma"));
  EXPECT_EQ(cell(rows, 3, "error"),
            "The row has 2 cells; the header has 12. Check the commas and quotation marks.");
  EXPECT_EQ(cell(rows, 4, "error"), "Nothing is written here.");
  EXPECT_TRUE(cell(rows, 5, "error").starts_with("A quotation mark"));
  EXPECT_TRUE(cell(rows, 6, "error").starts_with("The row is not written in UTF-8"));
  EXPECT_EQ(cell(rows, 7, "order.dose"), "'=80 mg");
  EXPECT_TRUE(cell(rows, 7, "error").starts_with("order.dose: "));
  EXPECT_EQ(cell(rows, 8, "verdict"), "safe");
  for (const CsvRow& row : rows) EXPECT_EQ(row.cells.size(), 12 + summaryColumns.size());
}

struct BadHeader {
  std::string text;
  RefusalCode code;
};

TEST(BatchTable, refusesAHeaderItCannotRead) {
  for (const BadHeader& bad :
       {BadHeader{"", RefusalCode::headerMissing}, BadHeader{"\r\n1\r\n", RefusalCode::headerMissing},
        BadHeader{",,\r\n", RefusalCode::headerMissing},
        BadHeader{"child.age;child.weight\r\n", RefusalCode::separatorWrong},
        BadHeader{"child.age\tchild.weight\r\n", RefusalCode::separatorWrong},
        BadHeader{"child.age,child.name\r\n", RefusalCode::keyUnknown},
        BadHeader{"child.age,\r\n", RefusalCode::keyUnknown},
        BadHeader{"child.age,child.age\r\n", RefusalCode::keyDuplicate},
        BadHeader{"\xFF\r\n", RefusalCode::rowNotUtf8}}) {
    const Outcome outcome = worked(bad.text, {StreamKind::table});
    ASSERT_TRUE(outcome.refusal) << bad.text;
    EXPECT_EQ(outcome.refusal->code, bad.code) << bad.text;
    EXPECT_EQ(outcome.text, "");
  }
}

TEST(BatchTable, aTableOfNoRowsIsAHeader) {
  const auto rows = test::tableRows(worked(header, {StreamKind::table}).text);
  ASSERT_EQ(rows.size(), 1U);
  EXPECT_EQ(rows.front().cells.size(), 12 + summaryColumns.size());
}

TEST(BatchLines, answerTooLongAndBlankLinesInTheirPlace) {
  const std::string text =
      "\n" + std::string(longestBatchLine + 1, 'x') + "\n{\"format\":\"wardchalk.case\",\"version\":1}\r\n{";
  const Outcome outcome = worked(text, {StreamKind::jsonLines, WorksheetExtent::brief});
  std::vector<nlohmann::json> answers;
  for (std::size_t at = 0; at < outcome.text.size();) {
    const std::size_t end = outcome.text.find('\n', at);
    answers.push_back(nlohmann::json::parse(outcome.text.substr(at, end - at)));
    at = end + 1;
  }
  ASSERT_EQ(answers.size(), 4U);
  EXPECT_EQ(answers[0].at("code"), "empty");
  EXPECT_EQ(answers[1].at("code"), "row-too-long");
  EXPECT_EQ(answers[1].at("line"), 2);
  EXPECT_EQ(answers[2].at("verdict"), "undecided");
  EXPECT_EQ(answers[3].at("code"), "not-json");
  EXPECT_EQ(outcome.count.refused, 3);
}

/// Rows of which every seventh is bad, so that answers differ in length and fate.
std::string manyRows(int count) {
  std::string text = header;
  for (int i = 0; i < count; ++i)
    text += i % 7 == 3 ? "bad\r\n"
                       : rowWith(std::to_string(10 + i % 20) + " kg", std::to_string(20 + i % 150) + " mg");
  return text;
}

TEST(BatchJobs, changeNothingInATable) {
  const std::string text = manyRows(3000);
  const Outcome one = worked(text, {StreamKind::table});
  EXPECT_EQ(one.count.worked + one.count.refused, 3000);
  for (const int jobs : {2, 4, 16})
    for (const std::size_t piece : {std::size_t{777}, text.size()}) {
      const Outcome other = worked(text, {StreamKind::table, WorksheetExtent::whole, jobs}, piece);
      EXPECT_EQ(other.text, one.text) << jobs;
      EXPECT_EQ(other.count.refused, one.count.refused);
    }
}

TEST(BatchJobs, changeNothingInLines) {
  std::string text;
  for (int i = 0; i < 1000; ++i)
    text += i % 5 == 2 ? "nothing\n"
                       : "{\"format\":\"wardchalk.case\",\"version\":1,\"child\":{\"weight\":\"" +
                             std::to_string(i + 1) + " g\"},\"order\":{\"dose\":\"1 mg/kg\"}}\n";
  const Outcome one = worked(text, {});
  const Outcome four = worked(text, {StreamKind::jsonLines, WorksheetExtent::whole, 4});
  EXPECT_EQ(one.text, four.text);
}

TEST(OrderedWork, keepsTheOrderAndFewPiecesAtOnce) {
  std::vector<int> taken;
  std::atomic<int> under = 0;
  std::atomic<int> most = 0;
  {
    OrderedWork<int, int> work(
        4,
        [&](int piece) {
          const int now = ++under;
          for (int seen = most; now > seen && !most.compare_exchange_weak(seen, now);) continue;
          if (piece % 9 == 0) std::this_thread::yield();
          --under;
          return piece * 2;
        },
        [&](int outcome) { taken.push_back(outcome); });
    for (int i = 0; i < 5000; ++i) {
      work.add(i);
      EXPECT_GE(taken.size() + 16, static_cast<std::size_t>(i));  // no more than four for each thread wait
    }
    work.finish();
  }
  ASSERT_EQ(taken.size(), 5000U);
  for (int i = 0; i < 5000; ++i) EXPECT_EQ(taken[static_cast<std::size_t>(i)], i * 2);
  EXPECT_LE(most, 4);
}

TEST(OrderedWork, handsOnAFailureToWhoWaits) {
  for (const int jobs : {1, 3}) {
    OrderedWork<int, int> work(
        jobs, [](int piece) { return piece == 7 ? throw std::runtime_error("seven") : piece; }, [](int) {});
    const auto run = [&] {
      for (int i = 0; i < 100; ++i) work.add(i);
      work.finish();
    };
    EXPECT_THROW(run(), std::runtime_error) << jobs;
  }
}

}  // namespace
}  // namespace wardchalk::batch_test
