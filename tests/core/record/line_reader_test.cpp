#include "core/record/line_reader.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "core/record/case_stream.h"
#include "tests/core/test_names.h"

namespace wardchalk::line_reader_test {
namespace {

namespace fs = std::filesystem;

/// The lines of a file that holds this text, in brackets; of one that is refused its code.
std::string linesOf(const std::string& text) {
  const fs::path path = fs::path(testing::TempDir()) / "wardchalk_lines.txt";
  std::ofstream(path, std::ios::binary) << text;
  InputFile file = *InputFile::open(path);
  LineReader reader(file);
  std::string lines;
  while (const auto line = reader.next()) {
    if (*line && (*line)->size() > 20)
      lines += "[" + std::to_string((*line)->size()) + "]";
    else
      lines += "[" + (*line ? **line : std::string(idOf(line->refusal().code))) + "]";
  }
  EXPECT_FALSE(reader.next());
  EXPECT_FALSE(reader.brokeOff());
  fs::remove(path);
  return lines;
}

struct Row {
  const char* name;
  std::string text;
  const char* lines;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class Lines : public testing::TestWithParam<Row> {};

TEST_P(Lines, endWithLfOrCrLfOrTheFile) { EXPECT_EQ(linesOf(GetParam().text), GetParam().lines); }

constexpr std::size_t piece = std::size_t{1} << 16U;

INSTANTIATE_TEST_SUITE_P(
    Table, Lines,
    testing::Values(Row{"nothing", "", ""}, Row{"one without an end", "one", "[one]"},
                    Row{"one", "one\n", "[one]"}, Row{"an empty one", "\n", "[]"},
                    Row{"two empty ones", "\n\n", "[][]"}, Row{"crlf", "one\r\ntwo\r\n", "[one][two]"},
                    Row{"one cr of two", "one\r\r\n", "[one\r]"}, Row{"cr inside", "o\rne\n", "[o\rne]"},
                    Row{"cr at the end of the file", "one\r", "[one]"},
                    Row{"a last one without an end", "one\ntwo", "[one][two]"},
                    Row{"ends with a piece", std::string(piece - 1, 'x') + "\ntwo", "[65535][two]"},
                    Row{"its end begins a piece", std::string(piece, 'x') + "\ntwo", "[65536][two]"},
                    Row{"cr and lf in two pieces", std::string(piece - 1, 'x') + "\r\ntwo", "[65535][two]"},
                    Row{"over several pieces", std::string(3 * piece + 5, 'x') + "\ntwo\n", "[196613][two]"},
                    Row{"as long as may be", std::string(longestBatchLine, 'x') + "\ntwo", "[1048576][two]"},
                    Row{"too long", std::string(longestBatchLine + 1, 'x') + "\ntwo", "[row-too-long][two]"},
                    Row{"far too long", "one\n" + std::string(3 * longestBatchLine, 'x') + "\ntwo",
                        "[one][row-too-long][two]"},
                    Row{"too long without an end", std::string(longestBatchLine + 1, 'x'), "[row-too-long]"}),
    test::NameOfRow());

TEST(LineReader, saysWhyAFileBreaksOff) {
  InputFile file = *InputFile::open("/proc/self/mem");  // its first page cannot be read
  LineReader reader(file);
  EXPECT_FALSE(reader.next());
  ASSERT_TRUE(reader.brokeOff());
  EXPECT_EQ(idOf(reader.brokeOff()->code), "file-unreadable");
}

}  // namespace
}  // namespace wardchalk::line_reader_test
