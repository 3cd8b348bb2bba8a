#include "core/record/case_table.h"

#include <algorithm>

namespace wardchalk {

std::optional<Refusal> faultOfHeader(const CsvRow& header) {
  if (header.refusal) return header.refusal;
  if (header.isBlank()) return Refusal{RefusalCode::headerMissing, {}, {}, {}};
  if (header.cells.size() == 1 && header.cells.front().find_first_of(";\t") != std::string::npos)
    return Refusal{RefusalCode::separatorWrong, {}, {}, {}};
  for (auto cell = header.cells.begin(); cell != header.cells.end(); ++cell)
    if (std::find(header.cells.begin(), cell, *cell) != cell)
      return Refusal{RefusalCode::keyDuplicate, shortened(*cell), {}, shortened(*cell)};
  return std::nullopt;
}

std::optional<Refusal> misfitOf(const CsvRow& row, std::size_t columns) {
  if (row.refusal) return row.refusal;
  if (row.isBlank()) return Refusal{RefusalCode::empty, {}, {}, {}};
  if (row.cells.size() != columns)
    return Refusal{RefusalCode::cellsMissing, std::to_string(row.cells.size()), std::to_string(columns), {}};
  return std::nullopt;
}

std::string entryText(EntryKind kind, const std::string& cell) {
  if (kind == EntryKind::flag && cell == "TRUE") return "true";
  if (kind == EntryKind::flag && cell == "FALSE") return "false";
  return cell;
}

Result<CaseTable> CaseTable::fromHeader(const CsvRow& header) {
  if (auto fault = faultOfHeader(header)) return *fault;
  CaseTable table;
  for (const std::string& key : header.cells) {
    const CaseEntry* entry = findEntry(key);
    if (!entry) return Refusal{RefusalCode::keyUnknown, shortened(key), {}, shortened(key)};
    table.columns_.push_back(entry);
  }
  return table;
}

std::vector<std::string> CaseTable::header() const {
  std::vector<std::string> keys;
  for (const CaseEntry* column : columns_) keys.emplace_back(column->path);
  return keys;
}

Result<CaseFile> CaseTable::read(const CsvRow& row) const {
  if (auto misfit = misfitOf(row, columns_.size())) return *misfit;
  CaseFile file;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    if (row.cells[i].empty()) continue;
    const CaseEntry& column = *columns_[i];
    const std::string text = entryText(column.kind, row.cells[i]);
    const Result<std::vector<WrittenEntry>> entries = fillFrom(file.inputs, column.path, text, file.entries);
    if (!entries) return entries.refusal();
    for (const WrittenEntry& one : *entries) file.entries.push_back(one);
  }
  if (auto refusal = contradictionIn(file.inputs)) return *refusal;
  return file;
}

}  // namespace wardchalk
