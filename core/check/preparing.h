#pragma once

#include "core/check/worksheet.h"

namespace wardchalk {

/// The worksheet without the amount, the flow and the steps that come to them.
[[nodiscard]] Worksheet withoutPreparation(Worksheet sheet);

}  // namespace wardchalk
