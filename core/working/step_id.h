#pragma once

#include <array>
#include <cstdint>
#include <string_view>
#include <utility>

#include "core/number/static_text.h"

namespace wardchalk {

/// The steps that a working can have; the list with stable ids is in step_ids.def.
enum class StepId : std::uint8_t {
#define WARDCHALK_STEP(name, id) name,
#include "core/working/step_ids.def"
#undef WARDCHALK_STEP
};

inline constexpr std::array stepIds = {
#define WARDCHALK_STEP(name, id) std::string_view(id),
#include "core/working/step_ids.def"
#undef WARDCHALK_STEP
};

/// The same, as text that can be kept.
inline constexpr auto stepTexts = [] {
  std::array<StaticText, stepIds.size()> texts;
  []<std::size_t... i>(auto& into, std::index_sequence<i...>) { ((into[i] = StaticText(stepIds[i])), ...); }
  (texts, std::make_index_sequence<stepIds.size()>());
  return texts;
}();

/// The stable id that stands in files: "limit-dose".
[[nodiscard]] constexpr std::string_view idOf(StepId id) { return stepIds[static_cast<std::size_t>(id)]; }

/// Whether the step shows what is to be given or how it runs: it is for the eye only when the amount is.
[[nodiscard]] constexpr bool tellsAmount(StepId id) {
  return id == StepId::give || id == StepId::device || id == StepId::rate || id == StepId::drops ||
         id == StepId::backCheck;
}

}  // namespace wardchalk
