#pragma once

#include <string>
#include <vector>

#include "core/record/case_entry.h"
#include "core/record/case_file.h"
#include "core/record/csv.h"

namespace wardchalk {

/// A table of cases: a header of key paths in any order, one case a row. An empty cell is an entry that is
/// not there.
class CaseTable {
 public:
  /// The columns that a header names. Refuses it for a key that no case has, one that stands twice, another
  /// mark than the comma.
  [[nodiscard]] static Result<CaseTable> fromHeader(const CsvRow& header);

  /// The case in a row, with the text of its entries; or why not, with the path of the column.
  [[nodiscard]] Result<CaseFile> read(const CsvRow& row) const;

  /// The header as it stood.
  [[nodiscard]] std::vector<std::string> header() const;
  [[nodiscard]] std::size_t columnCount() const { return columns_.size(); }

 private:
  std::vector<const CaseEntry*> columns_;
};

/// Why the cells of a row do not fit under a header of `columns`; empty when they do.
[[nodiscard]] std::optional<Refusal> misfitOf(const CsvRow& row, std::size_t columns);

/// Why no header can be read from this row, whatever its keys; empty when it can.
[[nodiscard]] std::optional<Refusal> faultOfHeader(const CsvRow& header);

/// The cell as an entry has it. Spreadsheets write what is true or false in capitals: that is one word and no
/// figure.
[[nodiscard]] std::string entryText(EntryKind kind, const std::string& cell);

}  // namespace wardchalk
