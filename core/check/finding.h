#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <variant>
#include <vector>

#include "core/check/argument.h"
#include "core/check/check.h"
#include "core/number/static_text.h"

namespace wardchalk {

/// How much a finding weighs: the verdict it forces; a note forces none.
enum class Severity : std::uint8_t { undecided, unsafe, notCovered, ask, note };

/// Everything there is to tell; the list is in finding_codes.def.
enum class FindingCode : std::uint8_t {
#define WARDCHALK_FINDING(name, id, severity) name,
#include "core/check/finding_codes.def"
#undef WARDCHALK_FINDING
};

inline constexpr std::array findingIds = {
#define WARDCHALK_FINDING(name, id, severity) std::string_view(id),
#include "core/check/finding_codes.def"
#undef WARDCHALK_FINDING
};

inline constexpr std::array findingSeverities = {
#define WARDCHALK_FINDING(name, id, severity) Severity::severity,
#include "core/check/finding_codes.def"
#undef WARDCHALK_FINDING
};

[[nodiscard]] constexpr std::string_view idOf(FindingCode code) {
  return findingIds[static_cast<std::size_t>(code)];
}

/// The severity a finding has unless the place that makes it says otherwise.
[[nodiscard]] constexpr Severity usualSeverity(FindingCode code) {
  return findingSeverities[static_cast<std::size_t>(code)];
}

[[nodiscard]] constexpr std::string_view idOf(Severity severity) {
  constexpr std::array<std::string_view, 5> ids = {"undecided", "unsafe", "not-covered", "ask", "note"};
  return ids[static_cast<std::size_t>(severity)];
}

/// Whether a finding doubts the child's size, so that nothing that was worked out by it is certain.
[[nodiscard]] constexpr bool doubtsSize(FindingCode code) {
  switch (code) {
    case FindingCode::sizeImplausible:
    case FindingCode::weightUnlikelyForHeight:
    case FindingCode::weightUnlikely:
    case FindingCode::heightUnlikely:
    case FindingCode::weightOld:
    case FindingCode::bsaDiffers:
      return true;
    default:
      return false;  // about the order, the reference or the stock
  }
}

/// Something to tell the user: a code with what its sentence needs, the check it came from and the field to
/// look at.
struct Finding {
  FindingCode code;
  Severity severity;
  std::optional<CheckId> check;
  StaticText field;  ///< path of the entry to look at; may be empty
  std::vector<Argument> arguments;

  /// The argument of this name, if there is one and it is a T.
  template <typename T>
  [[nodiscard]] const T* argument(std::string_view name) const {
    for (const Argument& argument : arguments)
      if (argument.name == name) return std::get_if<T>(&argument.value);
    return nullptr;
  }
};

}  // namespace wardchalk
