#include "tests/support/csv.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace wardchalk::test {

namespace {

/// The cells of one record; moves `at` past its line end.
std::vector<std::string> readRecord(const std::string& text, std::size_t& at) {
  std::vector<std::string> cells(1);
  bool quoted = false;
  for (; at < text.size(); ++at) {
    const char c = text[at];
    if (c == '"' && quoted && at + 1 < text.size() && text[at + 1] == '"') {
      cells.back().push_back(c);
      ++at;
    } else if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      cells.emplace_back();
    } else if (c == '\n' && !quoted) {
      ++at;
      break;
    } else {
      cells.back().push_back(c);
    }
  }
  return cells;
}

}  // namespace

std::vector<Row> readCsv(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) throw std::runtime_error("cannot open " + path.string());
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  std::size_t at = 0;
  while (text.compare(at, 1, "#") == 0) at = std::min(text.find('\n', at), text.size() - 1) + 1;
  const std::vector<std::string> header = readRecord(text, at);
  std::vector<Row> rows;
  while (at < text.size()) {
    const std::vector<std::string> cells = readRecord(text, at);
    if (cells.size() != header.size()) throw std::runtime_error(path.string() + ": odd row " + cells.front());
    Row row;
    for (std::size_t i = 0; i < cells.size(); ++i) row[header[i]] = cells[i];
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<Row> rowsWith(const std::vector<Row>& rows, std::string_view column, std::string_view text) {
  std::vector<Row> some;
  for (const Row& row : rows)
    if (row.find(column)->second == text) some.push_back(row);
  return some;
}

const Row& rowOf(const std::vector<Row>& rows, std::string_view id) {
  for (const Row& row : rows)
    if (row.at("id") == id) return row;
  throw std::runtime_error("no row " + std::string(id));
}

std::filesystem::path sourceFile(std::string_view path) {
  return std::filesystem::path(WARDCHALK_SOURCE_DIR) / path;
}

std::vector<std::string> partsOf(std::string_view list) {
  std::vector<std::string> parts;
  while (!list.empty()) {
    const std::size_t end = std::min(list.find("; "), list.size());
    parts.emplace_back(list.substr(0, end));
    list.remove_prefix(std::min(end + 2, list.size()));
  }
  return parts;
}

}  // namespace wardchalk::test
