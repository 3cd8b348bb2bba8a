#include "core/record/case_stream.h"

#include <utility>

namespace wardchalk {

CaseStream::CaseStream(StreamKind kind, Take take)
    : kind_(kind), take_(std::move(take)), csv_([this](CsvRow row) { takeRow(std::move(row)); }) {}

void CaseStream::take(std::string_view piece) {
  if (kind_ == StreamKind::table)
    csv_.take(piece);
  else
    takeLines(piece);
}

/// A last line without a line end counts as a line; a table without a header is none.
void CaseStream::end() {
  if (kind_ == StreamKind::jsonLines) {
    if (!line_.empty() || tooLong_) finishLine();
    return;
  }
  csv_.end();
  if (!table_ && !refusal_) refusal_ = Refusal{RefusalCode::headerMissing, {}, {}, {}};
}

void CaseStream::takeLines(std::string_view piece) {
  while (!piece.empty()) {
    const std::size_t end = piece.find('\n');
    addToLine(piece.substr(0, end));
    if (end == std::string_view::npos) return;
    finishLine();
    piece.remove_prefix(end + 1);
  }
}

/// A line that is too long is dropped as it comes, so that memory stays the same whatever is fed in.
void CaseStream::addToLine(std::string_view part) {
  tooLong_ = tooLong_ || line_.size() + part.size() > longestBatchLine;
  if (tooLong_)
    line_.clear();
  else
    line_.append(part);
}

void CaseStream::finishLine() {
  StreamedCase one;
  one.number = ++lines_;
  if (std::exchange(tooLong_, false)) one.refusal = Refusal{RefusalCode::rowTooLong, {}, "1 MiB", {}};
  if (line_.ends_with('\r')) line_.pop_back();
  one.text = std::exchange(line_, {});
  take_(std::move(one));
}

void CaseStream::takeRow(CsvRow row) {
  if (refusal_) return;
  if (table_) return take_({row.number, {}, std::move(row.cells), std::move(row.refusal)});
  Result<CaseTable> table = CaseTable::fromHeader(row);
  if (table)
    table_ = *std::move(table);
  else
    refusal_ = table.refusal();
}

Result<CaseFile> CaseStream::read(const StreamedCase& one) const {
  if (one.refusal) return *one.refusal;
  if (kind_ == StreamKind::table) return table_->read({one.number, one.cells, {}});
  if (one.text.empty()) return Refusal{RefusalCode::empty, {}, {}, {}};
  return readCaseFile(one.text);
}

}  // namespace wardchalk
