#pragma once

#include <gtest/gtest.h>

#include <string>

#include "core/record/case_entry.h"
#include "tests/core/test_names.h"

namespace wardchalk::test {

/// An entry that is refused: where it was typed, what, why, what to write instead of the whole of it (empty
/// where that is not certain), and what is told besides.
struct RefusedEntry {
  const char* name;
  const char* path;
  std::string text;
  RefusalCode code;
  std::string suggestion = "";
  std::string hint = "";
};

class RefusesEntry : public ::testing::TestWithParam<RefusedEntry> {};

/// The refusal is the expected one, quotes what was typed and nothing else, and leaves the case as it was.
inline void expectRefused(const RefusedEntry& row) {
  Case inputs;
  const auto refusal = setEntry(inputs, row.path, row.text).refusalIfAny();
  ASSERT_TRUE(refusal) << row.path << ": " << row.text;
  EXPECT_EQ(idOf(refusal->code), idOf(row.code)) << row.path << ": " << row.text;
  EXPECT_EQ(refusal->suggestion, row.suggestion) << row.path << ": " << row.text;
  EXPECT_EQ(refusal->hint, row.hint) << row.path << ": " << row.text;
  EXPECT_EQ(refusal->path, row.path);
  EXPECT_NE(row.text.find(refusal->typed), std::string::npos) << refusal->typed;
  EXPECT_LE(refusal->typed.size(), 60U);
  EXPECT_EQ(inputs, Case{});
}

}  // namespace wardchalk::test
