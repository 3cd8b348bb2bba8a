#include "core/record/csv.h"

#include <gtest/gtest.h>

#include "core/record/unicode_text.h"
#include "tests/core/test_names.h"
#include "tests/support/table_rows.h"

namespace wardchalk::csv_test {
namespace {

/// Rows in one line: cells between bars, refusals by their ids.
std::string shown(const std::vector<CsvRow>& rows) {
  std::string text;
  for (const CsvRow& row : rows) {
    text.append(text.empty() ? "" : " / ");
    if (row.refusal) text.append("!").append(idOf(row.refusal->code));
    for (std::size_t i = 0; i < row.cells.size(); ++i) text.append(i == 0 ? "" : "|").append(row.cells[i]);
  }
  return text;
}

struct Table {
  const char* name;
  std::string text;
  const char* rows;
};

class ReadsTable : public testing::TestWithParam<Table> {};

/// The same rows come out whatever the pieces are in which the text goes in.
TEST_P(ReadsTable, alikeInPiecesOfEverySize) {
  for (const std::size_t piece :
       {std::size_t{1}, std::size_t{2}, std::size_t{3}, std::size_t{5}, std::size_t{1000}})
    EXPECT_EQ(shown(test::tableRows(GetParam().text, piece)), GetParam().rows) << piece;
}

INSTANTIATE_TEST_SUITE_P(Rfc4180, ReadsTable,
                         testing::Values(Table{"line ends of CRLF", "a,b\r\nc,d\r\n", "a|b / c|d"},
                                         Table{"line ends of LF", "a,b\nc,d\n", "a|b / c|d"},
                                         Table{"the last line without an end", "a,b\r\nc,d", "a|b / c|d"},
                                         Table{"quoted cells", "\"a\",\"b,c\"\r\n", "a|b,c"},
                                         Table{"doubled quotes", "\"a \"\"b\"\"\",c\r\n", "a \"b\"|c"},
                                         Table{"a line break within quotes", "\"a\r\nb\",c\r\nd,e\r\n",
                                               "a\r\nb|c / d|e"},
                                         Table{"empty cells", ",\r\n\"\",\"\"\r\n", "| / |"},
                                         Table{"blanks belong to the cell", " a , b \r\n", " a | b "},
                                         Table{"a byte order mark", "\xEF\xBB\xBF\"a\",b\r\n", "a|b"},
                                         Table{"half a byte order mark", "\xEF\xBB", "!row-not-utf-8"},
                                         Table{"nothing at all", "", ""},
                                         Table{"a blank line between", "a\r\n\r\nb\r\n", "a /  / b"},
                                         Table{"blank lines of LF", "a\n\n\nb\n", "a /  /  / b"}),
                         test::NameOfRow());

INSTANTIATE_TEST_SUITE_P(
    Refused, ReadsTable,
    testing::Values(Table{"a quote within a bare cell", "a,b\"c,d\r\ne,f,g\r\n", "!row-quotes / e|f|g"},
                    Table{"text behind a closing quote", "\"a\"b,c\r\nd,e\r\n", "!row-quotes / d|e"},
                    Table{"a blank behind a closing quote", "\"a\" ,c\r\nd,e\r\n", "!row-quotes / d|e"},
                    Table{"a quote that is never closed", "a,b\r\n\"c,d\r\n", "a|b / !row-quotes"},
                    Table{"a broken last line", "a\r\nb\"", "a / !row-quotes"},
                    Table{"a byte that is not UTF-8", "a,b\r\nc,\xFF\r\nd,e\r\n",
                          "a|b / !row-not-utf-8 / d|e"},
                    Table{"an overlong letter", "\xC0\xAF\r\nb\r\n", "!row-not-utf-8 / b"},
                    Table{"half a surrogate", "\xED\xA0\x80\r\nb\r\n", "!row-not-utf-8 / b"},
                    Table{"UTF-16",
                          std::string("\xFF\xFE"
                                      "a\0,\0b\0\r\0\n\0",
                                      12),
                          "!row-not-utf-8 / !row-not-utf-8 / !row-not-utf-8"}),
    test::NameOfRow());

TEST(CsvReader, numbersRowsAsASpreadsheetDoes) {
  const auto rows = test::tableRows("a\r\n\"b\r\nc\"\r\n\r\nd\"\r\ne\r\n", 4);
  ASSERT_EQ(rows.size(), 5U);
  for (std::size_t i = 0; i < rows.size(); ++i) EXPECT_EQ(rows[i].number, static_cast<long>(i) + 1);
}

TEST(CsvReader, refusesARowThatIsTooLongAndGoesOn) {
  const std::string letters(largestCsvRow + 1, 'x');
  for (const std::string& row : {letters, "\"" + letters + "\"", std::string(5000, ',')}) {
    const auto rows = test::tableRows("a\r\n" + row + "\r\nb\r\n", 70'000);
    EXPECT_EQ(shown(rows), "a / !row-too-long / b");
  }
  EXPECT_EQ(test::tableRows(std::string(largestCsvRow, 'x'), 70'000).front().cells.size(), 1U);
  EXPECT_EQ(test::tableRows(std::string(mostCsvCells - 1, ',')).front().cells.size(), mostCsvCells);
  EXPECT_EQ(shown(test::tableRows(std::string(mostCsvCells, ','))), "!row-too-long");
}

struct Cell {
  const char* name;
  std::string cell;
  std::string written;
};

class WritesCell : public testing::TestWithParam<Cell> {};

TEST_P(WritesCell, asASpreadsheetMayOpenIt) {
  std::string out;
  appendCsvRow(out, {GetParam().cell, "z"});
  EXPECT_EQ(out, GetParam().written + ",z\r\n");
}

INSTANTIATE_TEST_SUITE_P(
    Cells, WritesCell,
    testing::Values(
        Cell{"plain", "17.2 kg", "17.2 kg"}, Cell{"empty", "", ""}, Cell{"with a comma", "a, b", "\"a, b\""},
        Cell{"with quotes", "a \"b\"", "\"a \"\"b\"\"\""}, Cell{"with a line break", "a\nb", "\"a\nb\""},
        Cell{"with blanks around", " a ", "\" a \""}, Cell{"an equals sign", "=1+2", "\"'=1+2\""},
        Cell{"a plus", "+1", "\"'+1\""}, Cell{"a minus", "-1", "\"'-1\""},
        Cell{"an at sign", "@SUM(A1)", "\"'@SUM(A1)\""}, Cell{"a tab", "\t=1", "\"'\t=1\""},
        Cell{"a carriage return", "\r=1", "\"'\r=1\""}, Cell{"a formula behind blanks", "  =1", "\"'  =1\""},
        Cell{"a wide equals sign", "＝1", "\"'＝1\""},
        Cell{"a formula that would leave its cell", "=\"a\",b", "\"'=\"\"a\"\",b\""},
        Cell{"a sign inside", "a=b", "a=b"}),
    test::NameOfRow());

TEST(FoldedText, knowsNoCapitalsAndNoAccents) {
  EXPECT_EQ(folded("Grèbe"), "grebe");
  EXPECT_EQ(folded("GRE\xCC\x80"
                   "BE"),
            "grebe");  // the accent as a character of its own
  EXPECT_EQ(folded("Straße"), "strasse");
  EXPECT_EQ(folded("ＷＲＥＮ"), "wren");
  EXPECT_EQ(folded("Ørn"), "ørn");
  EXPECT_EQ(folded("a\xFF"), "a\xFF");
}

}  // namespace
}  // namespace wardchalk::csv_test
