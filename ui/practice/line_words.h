#pragma once

#include <QString>

#include "core/practice/problem/problem.h"

namespace wardchalk::ui {

// Small words that several pages of practice need.

/// The question of a line with the unit that it asks for: "What is the body surface area (BSA)?  (in m²)".
[[nodiscard]] QString questionWithUnit(const Ask& ask, const Problem& problem);

/// The text as it begins a line.
[[nodiscard]] QString capital(QString text);

/// `one` for a single thing, otherwise `many` with the number in place of %1: no sentence says "line(s)".
[[nodiscard]] QString counted(int count, const QString& one, const QString& many);

}  // namespace wardchalk::ui
