#include "tests/opinion/other_program.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <stdexcept>

namespace wardchalk::test {

std::vector<std::string> answerOf(const std::string& command, const std::string& input) {
  const std::string test = testing::UnitTest::GetInstance()->current_test_info()->name();
  const std::string base = testing::TempDir() + "opinion_" + test;
  std::ofstream(base + ".in") << input;
  const std::string line = command + " < '" + base + ".in' > '" + base + ".out'";
  const int status = std::system(line.c_str());
  std::ifstream answer(base + ".out");
  if (status == -1 || !answer) throw std::runtime_error("cannot run " + command);
  std::vector<std::string> lines;
  for (std::string text; std::getline(answer, text);) lines.push_back(text);
  return lines;
}

}  // namespace wardchalk::test
