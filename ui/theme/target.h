#pragma once

namespace wardchalk::ui {

/// The least height of anything to press, in pixels at the usual letters: a gloved finger finds it.
/// More than the 24 pixels of WCAG 2.2, criterion 2.5.8.
inline constexpr int leastTarget = 32;

}  // namespace wardchalk::ui
