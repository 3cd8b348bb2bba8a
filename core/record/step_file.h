#pragma once

#include "core/check/worksheet.h"
#include "core/record/json_writer.h"

namespace wardchalk {

/// Writes the member "steps" of a worksheet: every step with its factors, cancellations, origins, values and
/// words.
void writeSteps(JsonWriter& writer, const Worksheet& sheet);

}  // namespace wardchalk
