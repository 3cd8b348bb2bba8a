#include "core/practice/sessions/class_view.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/number/ascii.h"
#include "core/practice/marking/hints.h"
#include "core/practice/sessions/session_tally.h"
#include "core/record/csv.h"
#include "core/words/phrasebook.h"

namespace wardchalk {

namespace {

constexpr std::array<std::string_view, 6> markColumns = {"right",  "wrong", "unsure",
                                                         "unread", "blank", "skipped"};

std::size_t columnOf(std::string_view name) {
  const auto& columns = resultColumns();
  return static_cast<std::size_t>(std::ranges::find(columns, name) - columns.begin());
}

using Rows = std::vector<std::vector<std::string>>;

/// The rows of a table of results below its header, or what is wrong with it.
Result<Rows> rowsOf(std::string_view table) {
  Rows rows;
  std::optional<Refusal> refusal;
  CsvReader reader([&](CsvRow row) {
    if (refusal) return;
    if (row.refusal)
      refusal = row.refusal;
    else if (row.number == 1 ? row.cells != resultColumns() : row.cells.size() != resultColumns().size())
      refusal = refusalOf(row.number == 1 ? RefusalCode::headerMissing : RefusalCode::cellsMissing,
                          row.cells.empty() ? "" : row.cells.front());
    else if (row.number > 1)
      rows.push_back(std::move(row.cells));
  });
  reader.take(table);
  reader.end();
  if (!refusal && rows.empty()) refusal = refusalOf(RefusalCode::headerMissing, {});
  if (refusal) return *std::move(refusal);
  return rows;
}

/// A whole number of at most six digits; none if the cell is no such number.
std::optional<int> countIn(const std::string& cell) {
  if (cell.empty() || cell.size() > 6 || !std::ranges::all_of(cell, [](char c) { return isDigit(c); }))
    return std::nullopt;
  int count = 0;
  std::from_chars(cell.data(), cell.data() + cell.size(), count);
  return count;
}

Result<std::vector<MistakeId>> mistakesIn(std::string_view cell) {
  std::vector<MistakeId> mistakes;
  while (!cell.empty()) {
    const std::size_t end = std::min(cell.find(' '), cell.size());
    const auto mistake = mistakeWithId(cell.substr(0, end));
    if (!mistake) return refusalOf(RefusalCode::wordUnknown, cell.substr(0, end));
    mistakes.push_back(*mistake);
    cell.remove_prefix(std::min(end + 1, cell.size()));
  }
  return mistakes;
}

struct ResultRow {
  std::string set, mode, seat, topic, line, mark;
  int problem = 0;
  std::vector<MistakeId> mistakes;
};

Result<ResultRow> readRow(const std::vector<std::string>& cells) {
  const auto cell = [&](std::string_view name) -> const std::string& { return cells[columnOf(name)]; };
  const auto problem = countIn(cell("problem"));
  if (!problem) return refusalOf(RefusalCode::valueOutOfRange, cell("problem"));
  if (std::ranges::find(markColumns, cell("mark")) == markColumns.end())
    return refusalOf(RefusalCode::wordUnknown, cell("mark"));
  auto mistakes = mistakesIn(cell("mistakes"));
  if (!mistakes) return mistakes.refusal();
  return ResultRow{cell("set"),  cell("mode"), cell("seat"), cell("topic"),
                   cell("line"), cell("mark"), *problem,     *std::move(mistakes)};
}

ClassSheet& sheetFor(std::vector<ClassSheet>& sheets, const ResultRow& row) {
  const auto known = std::ranges::find_if(
      sheets, [&](const ClassSheet& sheet) { return sheet.set == row.set && sheet.mode == row.mode; });
  if (known != sheets.end()) return *known;
  ClassSheet& sheet = sheets.emplace_back();
  sheet.set = row.set;
  sheet.mode = row.mode;
  return sheet;
}

ClassLine& lineFor(ClassSheet& sheet, const ResultRow& row) {
  const auto known = std::ranges::find_if(sheet.lines, [&](const ClassLine& line) {
    return line.problem == row.problem && line.line == row.line;
  });
  if (known != sheet.lines.end()) return *known;
  // in the order of problems; within one as the rows come
  const auto after = std::ranges::upper_bound(sheet.lines, row.problem, {}, &ClassLine::problem);
  return *sheet.lines.insert(after, ClassLine{row.problem, row.topic, row.line, {}, {}});
}

void count(std::vector<ClassSheet>& sheets, const ResultRow& row) {
  ClassSheet& sheet = sheetFor(sheets, row);
  sheet.seats.insert(row.seat);
  ClassLine& line = lineFor(sheet, row);
  ++line.marks[row.mark];
  for (const MistakeId mistake : row.mistakes) {
    ++line.mistakes[mistake];
    ++sheet.mistakes[mistake];
  }
}

int marked(const ClassLine& line, std::string_view mark) {
  const auto found = line.marks.find(std::string(mark));
  return found == line.marks.end() ? 0 : found->second;
}

int seatsOf(const ClassLine& line) {
  int seats = 0;
  for (const auto& [mark, count] : line.marks) seats += count;
  return seats;
}

std::vector<std::pair<MistakeId, int>> mostFirst(const std::map<MistakeId, int>& mistakes) {
  std::vector<std::pair<MistakeId, int>> list(mistakes.begin(), mistakes.end());
  std::ranges::stable_sort(list, [](const auto& a, const auto& b) { return a.second > b.second; });
  return list;
}

/// A count that is only told where it is one.
std::string someOf(int count) { return count > 0 ? std::to_string(count) : std::string(); }

std::string lineText(const ClassLine& line) {
  std::string text = say(PhraseId::class_line, {{"n", std::to_string(line.problem)},
                                                {"topic", line.topic},
                                                {"line", line.line},
                                                {"right", std::to_string(marked(line, "right"))},
                                                {"seats", std::to_string(seatsOf(line))},
                                                {"blank", someOf(marked(line, "blank"))}});
  for (const auto& [mistake, count] : mostFirst(line.mistakes))
    text += "\n    " + say(PhraseId::class_mistake, {{"n", std::to_string(count)},
                                                     {"number", std::string(idOf(mistake))},
                                                     {"name", mistakeName(mistake)}});
  return text + "\n";
}

}  // namespace

Result<Done> ClassView::add(std::string_view table) {
  const auto rows = rowsOf(table);
  if (!rows) return rows.refusal();
  std::vector<ResultRow> read;
  for (const auto& cells : *rows) {
    auto row = readRow(cells);
    if (!row) return row.refusal();
    const auto sheet = std::ranges::find_if(
        sheets_, [&](const ClassSheet& known) { return known.set == row->set && known.mode == row->mode; });
    if (sheet != sheets_.end() && sheet->seats.contains(row->seat))
      return refusalOf(RefusalCode::keyDuplicate, row->seat);
    read.push_back(*std::move(row));
  }
  for (const ResultRow& row : read) count(sheets_, row);
  return Done{};
}

std::string classText(const ClassView& view) {
  std::string text;
  for (const ClassSheet& sheet : view.sheets()) {
    const int seats = static_cast<int>(sheet.seats.size());
    text += say(PhraseId::class_sheet,
                {{"set", sheet.set}, {"mode", sheet.mode}, {"n", std::to_string(seats)}}, seats) +
            "\n";
    for (const ClassLine& line : sheet.lines) text += lineText(line);
    text += say(PhraseId::class_mistakes) + "\n";
    for (const auto& [mistake, count] : mostFirst(sheet.mistakes))
      text += "    " +
              say(PhraseId::class_mistake, {{"n", std::to_string(count)},
                                            {"number", std::string(idOf(mistake))},
                                            {"name", mistakeName(mistake)}}) +
              "\n";
    text += "\n";
  }
  return text;
}

std::string classTable(const ClassView& view) {
  std::string table;
  std::vector<std::string> header = {"set", "mode", "problem", "topic", "line", "seats"};
  header.insert(header.end(), markColumns.begin(), markColumns.end());
  header.emplace_back("mistakes");
  appendCsvRow(table, header);
  for (const ClassSheet& sheet : view.sheets())
    for (const ClassLine& line : sheet.lines) {
      std::vector<std::string> cells = {sheet.set,  sheet.mode, std::to_string(line.problem),
                                        line.topic, line.line,  std::to_string(seatsOf(line))};
      for (const std::string_view mark : markColumns) cells.push_back(std::to_string(marked(line, mark)));
      std::string mistakes;
      for (const auto& [mistake, count] : mostFirst(line.mistakes))
        mistakes.append(mistakes.empty() ? "" : " ")
            .append(idOf(mistake))
            .append(":")
            .append(std::to_string(count));
      cells.push_back(std::move(mistakes));
      appendCsvRow(table, cells);
    }
  return table;
}

}  // namespace wardchalk
