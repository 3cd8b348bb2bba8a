#pragma once

#include <string>

#include "core/check/worksheet.h"

namespace wardchalk {

/// How much of a worksheet is written. `brief` leaves out the steps, the words and the rules.
enum class WorksheetExtent : std::uint8_t { whole, brief };

/// Appends the worksheet as one JSON object on one line, without a line break. The sentences are English.
void writeWorksheet(std::string& out, const Worksheet& sheet, WorksheetExtent extent);

}  // namespace wardchalk
