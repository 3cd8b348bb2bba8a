#include "core/practice/sessions/class_view.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/number/ascii.h"
#include "core/practice/marking/hints.h"
#include "core/practice/problem/topic.h"
#include "core/practice/sessions/lesson_words.h"
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

std::optional<Refusal> otherHeader(const std::vector<std::string>& cells) {
  if (cells == resultColumns()) return std::nullopt;
  return refusalOf(RefusalCode::noResults, cells.empty() ? "" : cells.front());
}

/// The rows of a table of results below its header, or what is wrong with it.
Result<Rows> rowsOf(std::string_view table) {
  Rows rows;
  std::optional<Refusal> refusal;
  CsvReader reader([&](CsvRow row) {
    if (refusal) return;
    if (row.refusal)
      refusal = row.refusal;
    else if (row.number == 1)
      refusal = otherHeader(row.cells);
    else if (row.cells.size() != resultColumns().size())
      refusal = Refusal{RefusalCode::cellsMissing,
                        std::to_string(row.cells.size()),
                        std::to_string(resultColumns().size()),
                        {}};
    else
      rows.push_back(std::move(row.cells));
  });
  reader.take(table);
  reader.end();
  if (!refusal && rows.empty()) refusal = refusalOf(RefusalCode::noResults, {});
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

struct LineWord {
  std::string_view id;
  PhraseId word;
};
const std::array lineWords = {LineWord{"weight", PhraseId::class_lineWeight},
                              LineWord{"height", PhraseId::class_lineHeight},
                              LineWord{"bsa", PhraseId::class_lineBsa},
                              LineWord{"limit-day", PhraseId::class_lineLimitDay},
                              LineWord{"limit-dose", PhraseId::class_lineLimitDose},
                              LineWord{"low-day", PhraseId::class_lineLowDay},
                              LineWord{"low-dose", PhraseId::class_lineLowDose},
                              LineWord{"volume", PhraseId::class_lineVolume},
                              LineWord{"verdict", PhraseId::class_lineVerdict},
                              LineWord{"strength", PhraseId::class_lineStrength},
                              LineWord{"give", PhraseId::class_lineGive},
                              LineWord{"device", PhraseId::class_lineDevice},
                              LineWord{"rate", PhraseId::class_lineRate},
                              LineWord{"drops", PhraseId::class_lineDrops}};

/// What a line is called; its id where a table of another version asks for something else.
std::string lineWord(const std::string& id) {
  const auto known = std::ranges::find(lineWords, id, &LineWord::id);
  return known == lineWords.end() ? id : say(known->word);
}

std::string topicName(const std::string& id) {
  const auto topic = topicWithId(id);
  return topic ? topicWord(*topic) : id;
}

/// The number as text; empty for none, so that nothing is said of it.
std::string someOf(int count) { return count == 0 ? std::string() : std::to_string(count); }

std::string mistakesText(const std::map<MistakeId, int>& mistakes) {
  std::string text;
  for (const auto& [mistake, count] : mostFirst(mistakes))
    text += "    " +
            say(PhraseId::class_mistake, {{"n", std::to_string(count)},
                                          {"number", std::string(idOf(mistake))},
                                          {"name", mistakeName(mistake)}}) +
            "\n";
  return text;
}

/// Where the marker asks which mistake it was, the line is wrong all the same.
std::string lineText(const ClassLine& line) {
  const std::string right = std::to_string(marked(line, "right"));
  return say(PhraseId::class_line, {{"n", std::to_string(line.problem)},
                                    {"topic", topicName(line.topic)},
                                    {"line", lineWord(line.line)},
                                    {"right", right},
                                    {"seats", std::to_string(seatsOf(line))},
                                    {"wrong", someOf(marked(line, "wrong") + marked(line, "unsure"))},
                                    {"unread", someOf(marked(line, "unread"))},
                                    {"blank", someOf(marked(line, "blank"))},
                                    {"skipped", someOf(marked(line, "skipped"))}}) +
         "\n" + mistakesText(line.mistakes);
}

/// So that a teacher sees who is missing. Seats without a code stand as nothing and are not told.
std::string seatsText(const std::set<std::string>& seats) {
  std::string list;
  for (const std::string& seat : seats)
    if (!seat.empty()) list.append(list.empty() ? "" : ", ").append(seat);
  return list.empty() ? list : say(PhraseId::class_seats, {{"seats", list}}) + "\n";
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
      return refusalOf(RefusalCode::seatTwice, row->seat);
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
    text += seatsText(sheet.seats);
    for (const ClassLine& line : sheet.lines) text += lineText(line);
    const bool none = sheet.mistakes.empty();
    text += say(none ? PhraseId::class_noMistakes : PhraseId::class_mistakes) + "\n";
    text += mistakesText(sheet.mistakes) + "\n";
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
