#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/number/refusal.h"

namespace wardchalk {

/// Largest row of a table, in bytes, and most cells in one.
inline constexpr std::size_t largestCsvRow = std::size_t{1} << 20U;
inline constexpr std::size_t mostCsvCells = 1000;

/// One row of a table: its cells, or why they cannot be told apart.
struct CsvRow {
  long number = 0;  ///< counted from 1, the header's: the number that a spreadsheet shows beside it
  std::vector<std::string> cells;
  std::optional<Refusal> refusal;

  /// Whether nothing is written in any cell.
  [[nodiscard]] bool isBlank() const;
};

/// Reads a table of RFC 4180 as it comes, in pieces of any size and in memory that does not grow with it.
/// Line ends may be LF or CRLF, a byte order mark of UTF-8 may lead. A quotation mark out of place, a row
/// that is too long or one that is not UTF-8 is handed on as a refused row, and reading goes on with the next
/// line.
class CsvReader {
 public:
  using Take = std::function<void(CsvRow)>;

  explicit CsvReader(Take take);
  ~CsvReader();
  CsvReader(const CsvReader&) = delete;
  CsvReader& operator=(const CsvReader&) = delete;

  void take(std::string_view piece);
  /// A last row without a line end counts as a row.
  void end();

 private:
  class Parser;
  std::unique_ptr<Parser> parser_;
};

/// Adds one row and its line end (CRLF). A cell that a spreadsheet would take for a formula gets an
/// apostrophe before it.
void appendCsvRow(std::string& out, const std::vector<std::string>& cells);

}  // namespace wardchalk
