#pragma once

#include <algorithm>
#include <string_view>
#include <vector>

#include "core/record/csv.h"

namespace wardchalk::test {

/// The rows of a table that comes in pieces of this size; by default all at once.
inline std::vector<CsvRow> tableRows(std::string_view text, std::size_t piece = std::string_view::npos) {
  std::vector<CsvRow> rows;
  CsvReader reader([&](CsvRow row) { rows.push_back(std::move(row)); });
  for (std::size_t at = 0; at < text.size(); at += std::min(piece, text.size()))
    reader.take(text.substr(at, piece));
  reader.end();
  return rows;
}

}  // namespace wardchalk::test
