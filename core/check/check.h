#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/unit/quantity.h"
#include "core/working/stated.h"
#include "core/working/step_id.h"

namespace wardchalk {

/// Every comparison that can be made of an order against its reference; the list is in check_ids.def.
enum class CheckId : std::uint8_t {
#define WARDCHALK_CHECK(name, id, step) name,
#include "core/check/check_ids.def"
#undef WARDCHALK_CHECK
};

inline constexpr std::array checkIds = {
#define WARDCHALK_CHECK(name, id, step) std::string_view(id),
#include "core/check/check_ids.def"
#undef WARDCHALK_CHECK
};

inline constexpr std::array checkSteps = {
#define WARDCHALK_CHECK(name, id, step) StepId::step,
#include "core/check/check_ids.def"
#undef WARDCHALK_CHECK
};

inline constexpr std::size_t checkCount = checkIds.size();

[[nodiscard]] constexpr std::string_view idOf(CheckId id) { return checkIds[static_cast<std::size_t>(id)]; }
/// The step in which the check's comparison is written.
[[nodiscard]] constexpr StepId stepOf(CheckId id) { return checkSteps[static_cast<std::size_t>(id)]; }

/// Whether the check holds the dose, or a rate, against an upper limit. How fast it may run in limits an
/// order that is a rate; of a dose it limits the time alone.
[[nodiscard]] constexpr bool isUpperLimit(CheckId id, bool ofRate = false) {
  switch (id) {
    case CheckId::infusionRate:
      return ofRate;
    case CheckId::single:
    case CheckId::daily:
    case CheckId::period:
    case CheckId::maxSingle:
    case CheckId::maxDaily:
    case CheckId::rate:
      return true;
    default:
      return false;  // the others are no upper limit on the dose
  }
}

/// A check that was not made is never counted as passed.
enum class CheckStatus : std::uint8_t { within, outside, notChecked, doesNotApply };

/// Why a check was not made or does not apply; the list is in why_not.def.
enum class WhyNot : std::uint8_t {
#define WARDCHALK_WHY(name, id) name,
#include "core/check/why_not.def"
#undef WARDCHALK_WHY
};

inline constexpr std::array whyNotIds = {
#define WARDCHALK_WHY(name, id) std::string_view(id),
#include "core/check/why_not.def"
#undef WARDCHALK_WHY
};

[[nodiscard]] constexpr std::string_view idOf(WhyNot why) { return whyNotIds[static_cast<std::size_t>(why)]; }
[[nodiscard]] constexpr std::string_view idOf(CheckStatus status) {
  constexpr std::array<std::string_view, 4> ids = {"within", "outside", "not-checked", "does-not-apply"};
  return ids[static_cast<std::size_t>(status)];
}

/// One comparison, made or not.
struct Check {
  CheckId id;
  CheckStatus status = CheckStatus::notChecked;
  std::optional<WhyNot>
      why;       ///< set when the check was not made, and where there is more to say when it does not apply
  Stated value;  ///< what it compared; nothing where there was nothing
  Stated limit;
  std::optional<Number> ratio;  ///< value ÷ limit, where both are amounts

  [[nodiscard]] bool isMade() const {
    return status == CheckStatus::within || status == CheckStatus::outside;
  }
};

}  // namespace wardchalk
