#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "core/practice/problem/problem.h"

namespace wardchalk::test {

/// The first set was at hand while the marker was mended; the fresh and the blind one were written later,
/// each by another author.
enum class LineSet : std::uint8_t { first, fresh, blind };

/// A line of one of the frozen sets, with what its author says of it.
struct FrozenLine {
  std::string id;
  std::string problem;
  std::string line;  ///< the id of the line that is asked for
  std::string text;
  std::map<std::string, std::string> earlier;  ///< what the student wrote on lines before
  std::string manner;                          ///< of a right line: how it is written; of a mistake: its form
  std::string remark;                          ///< that a right line is to carry; empty if none
  std::string mistake;            ///< that was made: a number, or "new:" and a name; empty if it is right
  std::vector<std::string> also;  ///< other fair names of it
  bool disputed = false;          ///< the texts are silent or at odds
};

/// The problems by their ids. Throws where a file cannot be read.
[[nodiscard]] std::map<std::string, Problem> frozenProblems(LineSet set);
[[nodiscard]] std::vector<FrozenLine> frozenRightLines(LineSet set);
[[nodiscard]] std::vector<FrozenLine> frozenMistakes(LineSet set);

}  // namespace wardchalk::test
