#pragma once

#include <QString>
#include <vector>

#include "ui/working/box.h"

namespace wardchalk::ui::detail {

/// A stretch of words in one type.
struct Words {
  QString text;
  Type type;
};

/// Stretches set one after another, broken between words into lines no wider than `width`; a word that is
/// wider still is broken between letters. Nothing is cut off and no letter is set smaller. Lines after the
/// first begin at `hang`.
[[nodiscard]] Box flowed(const std::vector<Words>& stretches, const Metrics& metrics, double width,
                         double hang = 0, Ink ink = Ink::text);
[[nodiscard]] Box flowed(const QString& text, FontRole role, const Metrics& metrics, double width,
                         Ink ink = Ink::text);

/// The type of a role, bold or not whatever is usual for it.
[[nodiscard]] Type typeOf(FontRole role, bool bold, const Metrics& metrics);

}  // namespace wardchalk::ui::detail
