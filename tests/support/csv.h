#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace wardchalk::test {

/// One row of a table: its cells by the column's name.
using Row = std::map<std::string, std::string, std::less<>>;

/// The rows of a CSV file with a header line (RFC 4180), after any lines that begin with #: those state its
/// source. Throws std::runtime_error when it cannot be read or a row has not as many cells as the header: a
/// test cannot run on half a table.
[[nodiscard]] std::vector<Row> readCsv(const std::filesystem::path& path);

/// The rows with this text in the column.
[[nodiscard]] std::vector<Row> rowsWith(const std::vector<Row>& rows, std::string_view column,
                                        std::string_view text);
/// The row with this id. Throws std::runtime_error when there is none.
[[nodiscard]] const Row& rowOf(const std::vector<Row>& rows, std::string_view id);

/// A file of the repository, by its path from the root.
[[nodiscard]] std::filesystem::path sourceFile(std::string_view path);

/// The parts of a list such as "a; b; c"; none of an empty text.
[[nodiscard]] std::vector<std::string> partsOf(std::string_view list);

}  // namespace wardchalk::test
