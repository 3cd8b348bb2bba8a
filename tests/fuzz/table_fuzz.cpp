// Any bytes as a table (CSV), of cases and of a reference list: its rows do not hang on the pieces it comes
// in, each row of cases has its answer, and a list that is made of it is one that can be read.
#include <algorithm>
#include <string>
#include <vector>

#include "core/record/batch.h"
#include "core/record/reference_list.h"
#include "core/record/unicode_text.h"
#include "core/words/sentences.h"
#include "tests/fuzz/demand.h"
#include "tests/support/table_rows.h"

namespace wardchalk::fuzz {

namespace {

using test::tableRows;

bool sameRow(const CsvRow& a, const CsvRow& b) {
  return a.number == b.number && a.cells == b.cells && a.refusal == b.refusal;
}

void readInPieces(std::string_view text, const std::vector<CsvRow>& rows) {
  const std::vector<CsvRow> pieces = tableRows(text, 7);
  demand(std::ranges::equal(rows, pieces, sameRow), "rows do not hang on the pieces");
  for (const CsvRow& row : rows)
    demand(!row.refusal || !sentence(*row.refusal).empty(), "a refused row has a sentence");
}

void workAsCases(std::string_view text, std::size_t rows) {
  std::string out;
  Batch batch(exactRules(), {StreamKind::table, WorksheetExtent::whole, 1},
              [&](std::string_view part) { out += part; });
  batch.take(text);
  batch.end();
  demand(isUtf8(out), "what is answered is UTF-8");
  if (batch.refusal()) return demand(!sentence(*batch.refusal()).empty(), "a refused header has a sentence");
  const std::vector<CsvRow> answers = tableRows(out);
  demand(out.empty() || answers.size() == rows, "every row has its answer");
  for (const CsvRow& row : answers)
    demand(!row.refusal && row.cells.size() == answers.front().cells.size(), "an answer is a row");
}

void readAsList(std::string_view text) {
  const Result<ReferenceImport> read = importReferenceList(text);
  if (!read) return demand(!placedSentence(read.refusal()).empty(), "a refused table has a sentence");
  for (const RefusedRow& row : read->refused)
    demand(!placedSentence(row.refusal).empty(), "a refused row has a sentence");
  if (read->list.entries.empty()) return;
  const Result<ReferenceList> again = readReferenceList(writeReferenceList(read->list));
  demand(again && *again == read->list, "the list that was made is one that is read");
}

}  // namespace

void run(std::string_view text) {
  const std::vector<CsvRow> rows = tableRows(text);
  readInPieces(text, rows);
  workAsCases(text, rows.size());
  readAsList(text);
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  wardchalk::fuzz::run(wardchalk::fuzz::textOf(data, size));
  return 0;
}
