#pragma once

#include <string>

#include "core/number/static_text.h"
#include "core/working/step_id.h"

namespace wardchalk {

/// Where a number in a working comes from: a field of the case, an earlier step, a constant or a house rule.
/// A view can lead the eye from the number to its paper and back.
struct Origin {
  enum class Kind : std::uint8_t { none, field, step, constant, rule };
  Kind kind = Kind::none;
  StaticText name;

  [[nodiscard]] static Origin field(StaticText path) { return {Kind::field, path}; }
  [[nodiscard]] static Origin step(StepId id) {
    return {Kind::step, stepTexts[static_cast<std::size_t>(id)]};
  }
  [[nodiscard]] static Origin constant(StaticText name) { return {Kind::constant, name}; }
  [[nodiscard]] static Origin rule(StaticText key) { return {Kind::rule, key}; }

  /// As written in worksheet files: "reference.high", "step:bsa", "constant:mg-per-g", "rule:pounds".
  [[nodiscard]] std::string text() const;

  friend bool operator==(const Origin&, const Origin&) = default;
};

}  // namespace wardchalk
