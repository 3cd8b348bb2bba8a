#pragma once

#include <string>

#include "core/check/worksheet.h"

namespace wardchalk {

/// How much of a worksheet is written. `brief` leaves out the steps, the words and the rules.
enum class WorksheetExtent : std::uint8_t { whole, brief };

/// Appends the worksheet as one JSON object on one line, without a line break. The sentences are English.
void writeWorksheet(std::string& out, const Worksheet& sheet, WorksheetExtent extent);

/// Writes worksheets in the same way that were all worked by the same rules: what stands in each of them is
/// made once.
class WorksheetWriter {
 public:
  WorksheetWriter(const HouseRules& rules, WorksheetExtent extent);

  /// `sheet` was worked by the rules given above.
  void write(std::string& out, const Worksheet& sheet) const;

 private:
  WorksheetExtent extent_;
  std::string rules_;  ///< as JSON; empty where they are left out
};

}  // namespace wardchalk
