#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/case_file.h"
#include "core/record/case_table.h"
#include "core/record/csv.h"

namespace wardchalk {

/// Longest line of a batch, in bytes.
inline constexpr std::size_t longestBatchLine = std::size_t{1} << 20U;

/// How cases stand in a file of many: one JSON object a line, or a table.
enum class StreamKind : std::uint8_t { jsonLines, table };

/// One case as it came, not yet read.
struct StreamedCase {
  long number = 0;   ///< of the line, counted from 1; of a table the row that a spreadsheet shows
  std::string text;  ///< a JSON line without its line end
  std::vector<std::string> cells;  ///< of a table's row
  std::optional<Refusal> refusal;  ///< the line or row could not even be taken in
};

/// Cuts a file of many cases, as it comes, into its cases, in memory that does not grow with it.
class CaseStream {
 public:
  using Take = std::function<void(StreamedCase)>;

  CaseStream(StreamKind kind, Take take);

  void take(std::string_view piece);
  void end();

  /// Why nothing of a table can be read: its header.
  [[nodiscard]] const std::optional<Refusal>& refusal() const { return refusal_; }
  /// The columns of a table; null before its header came, and for lines.
  [[nodiscard]] const CaseTable* table() const { return table_ ? &*table_ : nullptr; }

  /// Reads a case that this stream handed out. May be called from several threads at once.
  [[nodiscard]] Result<CaseFile> read(const StreamedCase& one) const;

 private:
  void takeLines(std::string_view piece);
  void addToLine(std::string_view part);
  void finishLine();
  void takeRow(CsvRow row);

  StreamKind kind_;
  Take take_;
  std::optional<Refusal> refusal_;
  std::optional<CaseTable> table_;
  CsvReader csv_;
  std::string line_;
  bool tooLong_ = false;
  long lines_ = 0;
};

}  // namespace wardchalk
