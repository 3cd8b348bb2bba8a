#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include "core/practice/marking/marking.h"
#include "tests/marking/frozen_lines.h"

namespace wardchalk::test {

/// How a line was judged, against what its author says of it.
enum class Judged : std::uint8_t {
  right,          ///< a right line, marked right
  remarkMissing,  ///< a right line, marked right without the remark that it should carry
  wrong,          ///< a right line, marked wrong or unsure
  unread,         ///< a right line that could not be read
  named,          ///< a mistake by its name, or another that is fair
  amongOthers,    ///< a mistake by its name, beside one that is not fair
  takenForRight,  ///< a mistake marked right
  misnamed,       ///< a mistake by the name of another
  notNamed,       ///< a mistake marked wrong without a name
};
inline constexpr std::size_t judgedWays = 9;

struct JudgedLine {
  const FrozenLine* line;
  Judged how;
  std::string marked;  ///< what the marker said, in short: "wrong E31"
};

using Counts = std::map<Judged, int>;

/// Marks frozen lines, each on what the student wrote before it.
class Scoring {
 public:
  explicit Scoring(LineSet set);

  [[nodiscard]] JudgedLine judge(const FrozenLine& line);

 private:
  std::map<std::string, Problem> problems_;
  std::map<std::string, std::unique_ptr<Marking>>
      markings_;  // what is accepted is worked out once for a problem
};

[[nodiscard]] std::string_view nameOf(Judged how);

}  // namespace wardchalk::test
