#pragma once

#include <string>
#include <vector>

namespace wardchalk::test {

/// Runs a command line of another program with `input` as its standard input and gives the lines it answers.
/// Throws std::runtime_error when it cannot be run.
[[nodiscard]] std::vector<std::string> answerOf(const std::string& command, const std::string& input);

}  // namespace wardchalk::test
