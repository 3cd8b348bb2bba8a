#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "core/record/text_file.h"

namespace wardchalk::test {

/// The first line in which two texts differ, for a message that can be read.
inline std::string firstDifference(const std::string& expected, const std::string& actual) {
  std::istringstream a(expected), b(actual);
  std::string left, right;
  for (int line = 1;; ++line) {
    const bool more = static_cast<bool>(std::getline(a, left));
    const bool moreToo = static_cast<bool>(std::getline(b, right));
    if (!more && !moreToo) return "no difference";
    if (left != right || more != moreToo)
      return "line " + std::to_string(line) + "\n  expected: " + left + "\n  actual:   " + right;
  }
}

/// Holds a text against the file that was reviewed. To write it anew on purpose: WARDCHALK_UPDATE_GOLDEN=1;
/// the run then fails, so that no build passes by rewriting what it was to be held against.
inline void compareWithFile(const std::filesystem::path& file, const std::string& actual) {
  if (std::getenv("WARDCHALK_UPDATE_GOLDEN") != nullptr) {
    std::ofstream(file, std::ios::binary) << actual;
    FAIL() << "written anew: " << file << "; review it";
  }
  const Result<std::string> expected = readTextFile(file);
  EXPECT_EQ(expected ? *expected : std::string(), actual)
      << file << " differs in " << firstDifference(expected ? *expected : std::string(), actual);
}

/// JSON with one member a line, so that a difference can be reviewed.
inline std::string oneMemberALine(const std::string& json) {
  std::string out;
  bool inText = false;
  for (std::size_t i = 0; i < json.size(); ++i) {
    const char c = json[i];
    if (c == '"' && json[i - 1] != '\\') inText = !inText;
    out.push_back(c);
    if (!inText && (c == ',' || c == '[') && json[i + 1] == '{')
      out.push_back('\n');
    else if (!inText && c == ',' && json[i + 1] == '"' && json.compare(i + 1, 6, "\"check") == 0)
      out.push_back('\n');
  }
  return out + "\n";
}

}  // namespace wardchalk::test
