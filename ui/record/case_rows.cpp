#include "ui/record/case_rows.h"

#include <QFileInfo>
#include <algorithm>
#include <utility>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/record/case_summary.h"
#include "core/record/text_file.h"
#include "core/words/sentences.h"
#include "ui/theme/native_path.h"

namespace wardchalk::ui {

namespace {

constexpr std::size_t pieceSize = std::size_t{1} << 16U;
constexpr std::size_t handedOnAtOnce = 500;

std::string needWords(const Worksheet& sheet) {
  std::string words;
  for (const Need& need : sheet.needs) words.append(words.empty() ? "" : "; ").append(sentence(need));
  return words;
}

/// What stands under the title of a table, also when the row cannot be read: so that it is found again.
std::string writtenTitle(const CaseRow& row) {
  const CaseTable* table = row.source->isTable ? row.source->stream->table() : nullptr;
  if (!table) return {};
  const std::vector<std::string> header = table->header();
  const auto place =
      static_cast<std::size_t>(std::find(header.begin(), header.end(), path::title) - header.begin());
  return place < std::min(header.size(), row.given.cells.size()) ? row.given.cells[place] : std::string();
}

CaseRow workedRow(std::shared_ptr<const CaseSource> source, StreamedCase given, const HouseRules& rules) {
  CaseRow row{std::move(source), std::move(given), {}, {}, {}, {}, {}, {}};
  const Result<CaseFile> read = readRow(row);
  if (!read) {
    row.title = writtenTitle(row);
    row.reason = placedSentence(read.refusal());
    return row;
  }
  const Worksheet sheet = workOut(read->inputs, rules);
  row.verdict = sheet.verdict;
  row.title = read->inputs.title;
  row.words = verdictTitle(sheet);
  row.reason = verdictReason(sheet);
  row.needs = needWords(sheet);
  row.notMade = checksNotMade(sheet);
  return row;
}

/// Gathers rows and hands on some at a time.
class Gatherer {
 public:
  Gatherer(const HouseRules& rules, LongWork::Handle& work,
           const std::function<void(std::vector<CaseRow>)>& take)
      : rules_(rules), work_(work), take_(take) {}

  void add(const std::shared_ptr<const CaseSource>& source, StreamedCase given) {
    rows_.push_back(workedRow(source, std::move(given), rules_));
    if (rows_.size() >= handedOnAtOnce) handOn();
  }
  void refuse(const std::shared_ptr<const CaseSource>& source, const Refusal& refusal) {
    StreamedCase none;
    none.refusal = refusal;
    add(source, std::move(none));
  }
  void handOn() {
    if (rows_.empty()) return;
    work_.post([take = take_, rows = std::exchange(rows_, {})]() mutable { take(std::move(rows)); });
  }

 private:
  const HouseRules& rules_;
  LongWork::Handle& work_;
  const std::function<void(std::vector<CaseRow>)>& take_;
  std::vector<CaseRow> rows_;
};

bool hasEnding(const QString& file, std::initializer_list<const char*> endings) {
  return std::any_of(endings.begin(), endings.end(), [&](const char* ending) {
    return file.endsWith(QLatin1String(ending), Qt::CaseInsensitive);
  });
}

/// A case of its own, of whatever layout its JSON is.
void readOne(const QString& file, Gatherer& rows) {
  auto source = std::make_shared<CaseSource>();
  source->name = QFileInfo(file).fileName();
  source->stream = std::make_shared<CaseStream>(StreamKind::jsonLines, [](const StreamedCase&) {});
  const Result<std::string> text = readTextFile(nativePath(file));
  if (!text) return rows.refuse(source, text.refusal());
  rows.add(source, {1, *text, {}, {}});
}

void readMany(const QString& file, StreamKind kind, Gatherer& rows, LongWork::Handle& work, qint64 before,
              qint64 all) {
  auto source = std::make_shared<CaseSource>();
  source->name = QFileInfo(file).fileName();
  source->isTable = kind == StreamKind::table;
  // What the stream hands its cases to lives as long as it is fed, which is here.
  source->stream = std::make_shared<CaseStream>(
      kind, [&rows, &source](StreamedCase given) { rows.add(source, std::move(given)); });
  Result<InputFile> opened = InputFile::open(nativePath(file));
  if (!opened) return rows.refuse(source, opened.refusal());
  InputFile input = *std::move(opened);
  std::vector<char> piece(pieceSize);
  qint64 fed = 0;
  while (!work.isCancelled() && !source->stream->refusal()) {
    const Result<std::size_t> read = input.read(piece);
    if (!read) return rows.refuse(source, read.refusal());
    if (*read == 0) break;
    source->stream->take({piece.data(), *read});
    fed += static_cast<qint64>(*read);
    work.tellProgress(before + fed, all);
  }
  if (work.isCancelled()) return;
  source->stream->end();
  if (source->stream->refusal()) rows.refuse(source, *source->stream->refusal());
}

/// The columns that any row has, in the order of the papers.
std::vector<std::string> columnsOf(const std::vector<CaseRow>& rows) {
  std::vector<bool> had(caseEntries().size());
  const auto note = [&](std::string_view path) {
    had[static_cast<std::size_t>(findEntry(path) - caseEntries().data())] = true;
  };
  const CaseSource* last = nullptr;
  for (const CaseRow& row : rows) {
    const bool table = row.source->isTable && row.source->stream->table();
    if (table && row.source.get() != std::exchange(last, row.source.get()))
      for (const std::string& path : row.source->stream->table()->header()) note(path);
    if (table) continue;
    if (const Result<CaseFile> read = readRow(row))
      for (const WrittenEntry& entry : read->entries) note(entry.path);
  }
  std::vector<std::string> columns;
  for (std::size_t i = 0; i < had.size(); ++i)
    if (had[i]) columns.emplace_back(caseEntries()[i].path);
  return columns;
}

/// What was written under each column; of a row that cannot be read what stood in its cells.
std::vector<std::string> cellsOf(const CaseRow& row, const Result<CaseFile>& read,
                                 const std::vector<std::string>& columns) {
  std::vector<WrittenEntry> entries;
  if (read) {
    entries = read->entries;
  } else if (row.source->isTable && row.source->stream->table()) {
    const std::vector<std::string> header = row.source->stream->table()->header();
    for (std::size_t i = 0; i < std::min(header.size(), row.given.cells.size()); ++i)
      entries.push_back({header[i], row.given.cells[i]});
  }
  std::vector<std::string> cells;
  for (const std::string& column : columns) {
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [&](const WrittenEntry& entry) { return entry.path == column; });
    cells.push_back(found == entries.end() ? std::string() : found->text);
  }
  return cells;
}

std::string lineOf(const CaseRow& row, const std::vector<std::string>& columns, const HouseRules& rules) {
  const Result<CaseFile> read = readRow(row);
  std::vector<std::string> cells = cellsOf(row, read, columns);
  const std::vector<std::string> summary =
      read ? summaryOf(workOut(read->inputs, rules)) : summaryOf(read.refusal());
  cells.insert(cells.end(), summary.begin(), summary.end());
  std::string line;
  appendCsvRow(line, cells);
  return line;
}

}  // namespace

Result<CaseFile> readRow(const CaseRow& row) {
  if (row.given.refusal) return *row.given.refusal;
  return row.source->stream->read(row.given);
}

void readCases(const QStringList& files, const HouseRules& rules, LongWork::Handle& work,
               const std::function<void(std::vector<CaseRow>)>& take) {
  qint64 all = 0;
  qint64 before = 0;
  for (const QString& file : files) all += QFileInfo(file).size();
  Gatherer rows(rules, work, take);
  for (const QString& file : files) {
    if (work.isCancelled()) break;
    if (hasEnding(file, {".csv"}))
      readMany(file, StreamKind::table, rows, work, before, all);
    else if (hasEnding(file, {".jsonl", ".ndjson"}))
      readMany(file, StreamKind::jsonLines, rows, work, before, all);
    else
      readOne(file, rows);
    before += QFileInfo(file).size();
    work.tellProgress(before, all);
  }
  rows.handOn();
}

Result<Done> writeCaseRows(const QString& file, const std::vector<CaseRow>& rows, const HouseRules& rules,
                           LongWork::Handle& work) {
  const std::vector<std::string> columns = columnsOf(rows);
  std::vector<std::string> header = columns;
  header.insert(header.end(), summaryColumns.begin(), summaryColumns.end());
  std::string text;
  appendCsvRow(text, header);
  for (std::size_t i = 0; i < rows.size() && !work.isCancelled(); ++i) {
    text += lineOf(rows[i], columns, rules);
    work.tellProgress(static_cast<qint64>(i + 1), static_cast<qint64>(rows.size()));
  }
  if (work.isCancelled()) return Done{};
  return writeFile(nativePath(file), text);
}

}  // namespace wardchalk::ui
