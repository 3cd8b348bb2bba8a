#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/number/refusal.h"
#include "core/practice/marking/mistake.h"

namespace wardchalk {

/// How one line of a sheet went in a class.
struct ClassLine {
  int problem = 0;  ///< counted from 1
  std::string topic;
  std::string line;                   ///< id of what was asked
  std::map<std::string, int> marks;   ///< how many seats got which mark
  std::map<MistakeId, int> mistakes;  ///< how many seats made which mistake
};

/// The tables of results of one sheet, put together.
struct ClassSheet {
  std::string set;  ///< mark of the set
  std::string mode;
  std::set<std::string> seats;
  std::vector<ClassLine> lines;       ///< in their order on the sheet
  std::map<MistakeId, int> mistakes;  ///< in how many lines of how many seats, together
};

/// Tables of results, joined. Sheets stand in the order in which they were met.
class ClassView {
 public:
  /// Takes a table as `sessionTable` writes it, whole or not at all. Refuses what is no such table, and a
  /// seat that has the same sheet twice: one of them may be another's.
  Result<Done> add(std::string_view table);

  [[nodiscard]] const std::vector<ClassSheet>& sheets() const { return sheets_; }

 private:
  std::vector<ClassSheet> sheets_;
};

/// The view for a person: for each sheet its lines with how many seats had them right, and its
/// mistakes with their names, the most frequent first.
[[nodiscard]] std::string classText(const ClassView& view);

/// The same as a table of RFC 4180, a row for each line: set, mode, problem, topic, line, seats, right,
/// wrong, unsure, unread, blank, skipped, mistakes ("E20:3 E31:1").
[[nodiscard]] std::string classTable(const ClassView& view);

}  // namespace wardchalk
