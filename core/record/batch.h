#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "core/number/refusal.h"
#include "core/record/worksheet_file.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// Longest line of a batch, in bytes.
inline constexpr std::size_t longestBatchLine = std::size_t{1} << 20U;

/// How the lines of a batch went.
struct BatchCount {
  long worked = 0;
  long refused = 0;
};

/// Works a stream of cases, one a line, into worksheets, one a line, in order and in constant memory. A line that cannot
/// be read gives one line that says where and why, and the run goes on. Line ends may be LF or CRLF.
class Batch {
 public:
  Batch(const HouseRules& rules, WorksheetExtent extent) : rules_(rules), extent_(extent) {}

  /// Appends the answer to one line of input (without its line end) and a line break.
  void answer(std::string_view line, std::string& out);
  /// Appends the answer to a line that was too long to be taken in.
  void answerTooLong(std::string& out);

  [[nodiscard]] const BatchCount& count() const { return count_; }

 private:
  void refuse(const Refusal& refusal, std::string& out);

  const HouseRules& rules_;
  WorksheetExtent extent_;
  BatchCount count_;
  long line_ = 0;
};

}  // namespace wardchalk
