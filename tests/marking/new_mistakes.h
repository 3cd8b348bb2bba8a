#pragma once

#include <array>
#include <string_view>

namespace wardchalk::test {

/// The number that a mistake has got which the frozen set calls by a name of its own.
struct NewMistake {
  std::string_view name;
  std::string_view number;
};

inline constexpr std::array newMistakes = {NewMistake{"new:ask-when-not-covered", "E29"},
                                           NewMistake{"new:ask-when-safe", "E96"},
                                           NewMistake{"new:ask-when-unsafe", "E96"},
                                           NewMistake{"new:bag-upside-down", "E77"},
                                           NewMistake{"new:constant-360", "E76"},
                                           NewMistake{"new:day-divided-by-interval", "E22"},
                                           NewMistake{"new:day-times-doses", "E66"},
                                           NewMistake{"new:displacement-subtracted", "E93"},
                                           NewMistake{"new:divided-by-24", "E68"},
                                           NewMistake{"new:divided-by-displacement", "E92"},
                                           NewMistake{"new:divided-by-volume-only", "E90"},
                                           NewMistake{"new:dose-divided-again", "E21"},
                                           NewMistake{"new:dose-divided-by-weight", "E61"},
                                           NewMistake{"new:dose-in-pounds", "E59"},
                                           NewMistake{"new:dose-plus-weight", "E62"},
                                           NewMistake{"new:drop-factor-divided", "E88"},
                                           NewMistake{"new:drop-factor-in-rate", "E83"},
                                           NewMistake{"new:drops-as-rate", "E82"},
                                           NewMistake{"new:drug-volume-only", "E84"},
                                           NewMistake{"new:inches-as-tenths-of-a-foot", "E72"},
                                           NewMistake{"new:inches-left-out", "E73"},
                                           NewMistake{"new:infusion-limit-not-checked", "E98"},
                                           NewMistake{"new:infusion-volume-copied", "E95"},
                                           NewMistake{"new:kg-to-pounds", "E60"},
                                           NewMistake{"new:label-volume-misread", "E89"},
                                           NewMistake{"new:mL-per-hour-as-drops", "E85"},
                                           NewMistake{"new:mg-per-hour-as-mL", "E78"},
                                           NewMistake{"new:minutes-as-hours", "E49"},
                                           NewMistake{"new:minutes-as-hundredths-of-an-hour", "E80"},
                                           NewMistake{"new:not-fit-when-ask", "E97"},
                                           NewMistake{"new:not-fit-when-safe", "E97"},
                                           NewMistake{"new:not-fit-when-unsafe", "E97"},
                                           NewMistake{"new:order-as-limit", "E63"},
                                           NewMistake{"new:order-divided-by-weight", "E64"},
                                           NewMistake{"new:order-over-volume", "E91"},
                                           NewMistake{"new:other-drop-factor", "E86"},
                                           NewMistake{"new:ounces-as-hundredths", "E04"},
                                           NewMistake{"new:ounces-as-pounds", "E70"},
                                           NewMistake{"new:ounces-left-out", "E69"},
                                           NewMistake{"new:per-dose-times-doses", "E65"},
                                           NewMistake{"new:pounds-constant-on-grams", "E03"},
                                           NewMistake{"new:reference-times-weight", "E36"},
                                           NewMistake{"new:schedule-not-checked", "E99"},
                                           NewMistake{"new:sixty-too-many", "E79"},
                                           NewMistake{"new:stock-strength-for-maximum", "E94"},
                                           NewMistake{"new:strength-multiplied", "E33"},
                                           NewMistake{"new:strength-upside-down", "E31"},
                                           NewMistake{"new:syringe-filled", "E101"},
                                           NewMistake{"new:ten-inches-to-the-foot", "E74"},
                                           NewMistake{"new:time-left-out", "E87"},
                                           NewMistake{"new:times-for-divide", "E67"},
                                           NewMistake{"new:twelve-ounces-to-the-pound", "E71"},
                                           NewMistake{"new:unsafe-when-not-covered", "E29"},
                                           NewMistake{"new:volume-as-rate", "E81"},
                                           NewMistake{"new:weight-left-out", "E55"},
                                           NewMistake{"new:wrong-constant", "E75"},
                                           NewMistake{"new:wrong-reason", "E100"},
                                           NewMistake{"new:dose-on-day-line", "E21"}};

}  // namespace wardchalk::test
