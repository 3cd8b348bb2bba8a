#include "tests/entries/frozen_rows.h"

#include <array>
#include <stdexcept>

#include "core/medicine/paths.h"
#include "tests/support/csv.h"

namespace wardchalk::test {

namespace {

void appendUtf8(std::string& text, unsigned code) {
  if (code < 0x80) {
    text.push_back(static_cast<char>(code));
  } else if (code < 0x800) {
    text.push_back(static_cast<char>(0xC0 | (code >> 6)));
    text.push_back(static_cast<char>(0x80 | (code & 0x3F)));
  } else {
    text.push_back(static_cast<char>(0xE0 | (code >> 12)));
    text.push_back(static_cast<char>(0x80 | ((code >> 6) & 0x3F)));
    text.push_back(static_cast<char>(0x80 | (code & 0x3F)));
  }
}

/// Undoes \uXXXX, \n, \r and \t.
std::string unescaped(std::string_view cell) {
  std::string text;
  for (std::size_t at = 0; at < cell.size(); ++at) {
    if (cell[at] != '\\' || at + 1 == cell.size()) {
      text.push_back(cell[at]);
      continue;
    }
    const char kind = cell[++at];
    if (kind == 'u') {
      appendUtf8(text, static_cast<unsigned>(std::stoul(std::string(cell.substr(at + 1, 4)), nullptr, 16)));
      at += 4;
    } else {
      text.push_back(kind == 'n' ? '\n' : kind == 'r' ? '\r' : kind == 't' ? '\t' : kind);
    }
  }
  return text;
}

std::vector<std::string> partsBetween(std::string_view text, std::string_view mark) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at <= text.size();) {
    const std::size_t end = std::min(text.find(mark, at), text.size());
    parts.emplace_back(text.substr(at, end - at));
    at = end + mark.size();
  }
  return parts;
}

Beside besideIn(const std::string& part) {
  const std::size_t sign = part.find('=');
  if (sign == std::string::npos) throw std::runtime_error("no name=value: " + part);
  return {part.substr(0, sign), part.substr(sign + 1)};
}

/// "asks: kg or lb" behind what was typed; "per dose" behind it is "/dose".
void takeQuestion(FrozenRow& row) {
  const auto answers = partsBetween(row.means.substr(std::string_view("asks: ").size()), " or ");
  if (answers.size() != 2) throw std::runtime_error("two answers are wanted: " + row.means);
  row.isQuestion = true;
  row.means = answers[0];
  row.other = answers[1];
}

FrozenRow rowIn(const Row& cells, std::string_view meaning, std::string_view why) {
  FrozenRow row;
  row.field = cells.at("field");
  row.typed = unescaped(cells.at("typed"));
  row.why = cells.find(why)->second;
  const auto parts = partsBetween(cells.find(meaning)->second, " | ");
  row.means = parts.front();
  for (std::size_t i = 1; i < parts.size(); ++i) row.beside.push_back(besideIn(parts[i]));
  if (row.means.starts_with("asks: ")) takeQuestion(row);
  return row;
}

std::vector<FrozenRow> rowsOf(std::string_view file, std::string_view meaning, std::string_view why) {
  std::vector<FrozenRow> rows;
  for (const Row& cells : readCsv(sourceFile(file))) rows.push_back(rowIn(cells, meaning, why));
  return rows;
}

struct FieldPath {
  std::string_view field;
  std::string_view path;
};
constexpr std::array fieldPaths = {
    FieldPath{"age", path::age},
    FieldPath{"height", path::height},
    FieldPath{"weight", path::weight},
    FieldPath{"bsa", path::bsa},
    FieldPath{"dose", path::dose},
    FieldPath{"schedule", path::schedule},
    FieldPath{"as_needed", path::asNeeded},
    FieldPath{"route", path::route},
    FieldPath{"reference_low", path::low},
    FieldPath{"reference_high", path::high},
    FieldPath{"reference_schedule", path::referenceSchedule},
    FieldPath{"max_single", path::maxPerDose},
    FieldPath{"max_daily", path::maxPerDay},
    FieldPath{"strength", path::strength},
    FieldPath{"concentration_limit", path::maxConcentration},
    FieldPath{"volume", path::infusionVolume},
    FieldPath{"time", path::infusionOver},
    FieldPath{"infusion_rate", path::maxInfusionRate},
    FieldPath{"drop_factor", path::dropFactor},
    FieldPath{"line", ""},
};

}  // namespace

std::string FrozenRow::besideOf(std::string_view name) const {
  for (const Beside& one : beside)
    if (one.name == name) return one.value;
  return {};
}

std::vector<FrozenRow> frozenRead() { return rowsOf("tests/entries/read.csv", "means", "reason"); }
std::vector<FrozenRow> frozenRefused() { return rowsOf("tests/entries/refused.csv", "button", "why"); }

std::vector<FrozenRow> frozenArrivals(std::string_view result) {
  std::vector<FrozenRow> rows;
  for (Row cells : readCsv(sourceFile("tests/entries/arrivals.csv"))) {
    const std::string& way = cells.at("way");
    const bool whole =
        way == "paste" || way == "dictated" || way == "CSV cell" || way == "case file (text in JSON)";
    if (!whole || cells.at("result") != result || cells.at("text").find('{') != std::string::npos) continue;
    cells["typed"] = cells.at("text");
    rows.push_back(rowIn(cells, "means", "reason"));
    rows.back().inFile = way == "CSV cell" || way.starts_with("case file");
  }
  return rows;
}

std::vector<ArrivingRow> frozenArrivalsAtALine() {
  std::vector<ArrivingRow> rows;
  for (Row cells : readCsv(sourceFile("tests/entries/arrivals.csv"))) {
    const std::string way = cells.at("way");
    if (way == "CSV cell" || way.starts_with("case file") || cells.at("field") == "line") continue;
    cells["typed"] = cells.at("text");
    rows.push_back({way, unescaped(cells.at("text")), cells.at("result"), rowIn(cells, "means", "reason")});
  }
  return rows;
}

std::vector<std::string> knownOpen() {
  std::vector<std::string> names;
  for (const Row& cells : readCsv(sourceFile("tests/entries/known_open.csv")))
    names.push_back(cells.at("field") + ": " + unescaped(cells.at("typed")));
  return names;
}

std::string_view pathOf(std::string_view field) {
  for (const FieldPath& one : fieldPaths)
    if (one.field == field) return one.path;
  throw std::runtime_error("no such field: " + std::string(field));
}

}  // namespace wardchalk::test
