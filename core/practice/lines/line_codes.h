#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace wardchalk {

/// Why a student's line cannot be read; the list with stable ids is in line_faults.def.
enum class LineFaultCode : std::uint8_t {
#define WARDCHALK_LINE_FAULT(name, id) name,
#include "core/practice/lines/line_faults.def"
#undef WARDCHALK_LINE_FAULT
};

inline constexpr std::array lineFaultIds = {
#define WARDCHALK_LINE_FAULT(name, id) std::string_view(id),
#include "core/practice/lines/line_faults.def"
#undef WARDCHALK_LINE_FAULT
};

[[nodiscard]] constexpr std::string_view idOf(LineFaultCode code) {
  return lineFaultIds[static_cast<std::size_t>(code)];
}

/// What a student's line should be written like; the list is in line_remarks.def.
enum class LineRemarkCode : std::uint8_t {
#define WARDCHALK_LINE_REMARK(name, id, error) name,
#include "core/practice/lines/line_remarks.def"
#undef WARDCHALK_LINE_REMARK
};

/// A remark's stable id, and the number of the mistake it belongs to ("E44"), empty for mere spelling.
struct LineRemarkInfo {
  std::string_view id;
  std::string_view error;
};

inline constexpr std::array lineRemarkTable = {
#define WARDCHALK_LINE_REMARK(name, id, error) LineRemarkInfo{id, error},
#include "core/practice/lines/line_remarks.def"
#undef WARDCHALK_LINE_REMARK
};

[[nodiscard]] constexpr const LineRemarkInfo& infoOf(LineRemarkCode code) {
  return lineRemarkTable[static_cast<std::size_t>(code)];
}

}  // namespace wardchalk
