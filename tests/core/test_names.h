#pragma once

#include <gtest/gtest.h>

#include <cctype>
#include <string>
#include <string_view>

namespace wardchalk::test {

/// Turns a row's words into a name that GoogleTest accepts: letters and digits, each word begun with a
/// capital.
inline std::string testName(std::string_view words) {
  std::string name;
  bool begin = true;
  for (const char c : words) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte >= 0x80 || std::isalnum(byte) == 0) {
      begin = true;
      continue;
    }
    name.push_back(begin ? static_cast<char>(std::toupper(byte)) : c);
    begin = false;
  }
  return name;
}

/// For INSTANTIATE_TEST_SUITE_P over rows that have a `name`.
struct NameOfRow {
  template <typename Row>
  std::string operator()(const ::testing::TestParamInfo<Row>& info) const {
    return testName(info.param.name);
  }
};

}  // namespace wardchalk::test
