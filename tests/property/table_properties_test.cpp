// What holds of tables and lists whatever is written in them: nothing is altered, and damage is refused and
// never crashes.
#include <algorithm>

#include "core/record/batch.h"
#include "core/record/reference_list.h"
#include "core/record/text_file.h"
#include "core/record/unicode_text.h"
#include "tests/property/for_all.h"
#include "tests/support/table_rows.h"

namespace wardchalk::test::table_properties_test {

namespace {

std::string demo(const std::string& name) {
  const Result<std::string> text =
      readTextFile(std::string(WARDCHALK_SOURCE_DIR) + "/resources/demo/" + name);
  return text ? *text : std::string();
}

std::string randomCell(Choices& choices) {
  std::string cell;
  for (std::uint32_t length = choices.below(6); length > 0; --length)
    cell += choices.of({"a", " ", ",", "\"", "\r\n", "\n", "é", "7", ";", "x=", "'"});
  return cell;
}

/// Bytes changed, taken away, put in or doubled here and there.
std::string damaged(std::string text, Choices& choices) {
  for (std::uint32_t times = choices.below(6) + 1; times > 0; --times) {
    const std::size_t at =
        (static_cast<std::size_t>(choices.below(840)) * 841 + choices.below(840)) % text.size();
    const std::string_view piece = choices.of({"\"", ",", "\n", "\xFF", "[", "{", "}", ":", "=", "-1", "null",
                                               "\\u0000", "9999999999", "\xEF\xBB\xBF"});
    if (choices.onceIn(3))
      text.erase(at, choices.below(9) + 1);
    else if (choices.onceIn(3))
      text.insert(at, text.substr(at, choices.below(200)));
    else
      text.replace(at, choices.below(3), piece);
  }
  return text;
}

bool sameRows(const std::vector<CsvRow>& a, const std::vector<CsvRow>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const CsvRow& one, const CsvRow& other) {
    return one.cells == other.cells && one.refusal == other.refusal && one.number == other.number;
  });
}

std::string worked(std::string_view text, int jobs) {
  std::string out;
  Batch batch(exactRules(), {StreamKind::table, WorksheetExtent::whole, jobs},
              [&](std::string_view part) { out += part; });
  batch.take(text);
  batch.end();
  return out;
}

}  // namespace

TEST(TableProperties, whatIsWrittenIsReadAgain) {
  forAll(3000, [](Choices& choices) -> std::string {
    std::vector<std::vector<std::string>> rows(choices.below(5) + 1);
    std::string text;
    for (auto& row : rows) {
      for (std::uint32_t cells = choices.below(5) + 2; cells > 0; --cells)
        row.push_back("c" + randomCell(choices));
      appendCsvRow(text, row);
    }
    const auto read = tableRows(text, choices.below(30) + 1);
    if (read.size() != rows.size()) return "another number of rows: " + text;
    for (std::size_t i = 0; i < rows.size(); ++i)
      if (read[i].cells != rows[i]) return "other cells: " + text;
    return {};
  });
}

TEST(TableProperties, noWrittenCellBeginsAFormula) {
  forAll(2000, [](Choices& choices) -> std::string {
    const std::string cell = std::string(choices.of({"", " ", "  "})) +
                             std::string(choices.of({"=", "+", "-", "@", "\t", "\r", "\n", "＝", "－"})) +
                             randomCell(choices);
    std::string text;
    appendCsvRow(text, {cell, cell});
    for (const CsvRow& row : tableRows(text, 1000))
      for (const std::string& read : row.cells)
        if (read != "'" + cell) return "not defused: " + text;
    return {};
  });
}

TEST(TableProperties, damagedTablesAreReadAlikeInEveryPiece) {
  const std::string table = demo("reference_list.csv");
  forAll(1000, [&](Choices& choices) -> std::string {
    const std::string text = damaged(table, choices);
    if (!sameRows(tableRows(text, text.size()), tableRows(text, choices.below(50) + 1)))
      return "the rows hang on the pieces: " + text;
    const Result<ReferenceImport> import = importReferenceList(text);
    if (!import) return {};
    const std::string list = writeReferenceList(import->list);
    const Result<ReferenceList> again = readReferenceList(list);
    return again && *again == import->list ? "" : "an entry that its own file does not hold: " + list;
  });
}

TEST(TableProperties, damagedListsAreReadWholeOrRefused) {
  const std::string file = demo("reference_list.json");
  forAll(3000, [&](Choices& choices) -> std::string {
    const Result<ReferenceList> list = readReferenceList(damaged(file, choices));
    if (!list) return {};
    const Result<ReferenceList> again = readReferenceList(writeReferenceList(*list));
    return again && *again == *list ? "" : "a list that its own file does not hold";
  });
}

TEST(TableProperties, everyRowHasItsAnswerWhateverTheDamage) {
  const std::string table = demo("class_set.csv");
  forAll(500, [&](Choices& choices) -> std::string {
    const std::string text = damaged(table, choices);
    const std::string answer = worked(text, 1);
    if (!isUtf8(answer)) return "an answer that is not UTF-8: " + answer;
    if (answer != worked(text, 3)) return "jobs change the answer: " + text;
    const auto answers = tableRows(answer, answer.size() + 1);
    const auto rows = tableRows(text, text.size());
    if (!answer.empty() && answers.size() != rows.size()) return "rows and answers differ in number: " + text;
    for (const CsvRow& row : answers)
      if (row.refusal || row.cells.size() != answers.front().cells.size())
        return "an answer that is no row: " + answer;
    return {};
  });
}

}  // namespace wardchalk::test::table_properties_test
