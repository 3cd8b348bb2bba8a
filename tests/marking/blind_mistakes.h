#pragma once

#include <array>

#include "tests/marking/new_mistakes.h"

namespace wardchalk::test {

/// Of the blind set, by the words of its author. What is not here the marker has no number for: there any
/// name is a wrong one.
inline constexpr std::array blindMistakes = {NewMistake{"new:added the ounces as pounds", "E70"},
                                             NewMistake{"new:added the weight", "E62"},
                                             NewMistake{"new:copied the bag volume", "E95"},
                                             NewMistake{"new:copied the order", "E63"},
                                             NewMistake{"new:did not check concentration or time", "E98"},
                                             NewMistake{"new:did not compare the schedules", "E99"},
                                             NewMistake{"new:divided by 2.2 a second time", "E03"},
                                             NewMistake{"new:divided by 60 though it is per hour", "E79"},
                                             NewMistake{"new:divided by 60 twice", "E79"},
                                             NewMistake{"new:divided by the drop factor", "E88"},
                                             NewMistake{"new:divided by the surface", "E61"},
                                             NewMistake{"new:divided by the weight", "E61"},
                                             NewMistake{"new:feet and inches as a decimal", "E72"},
                                             NewMistake{"new:gave another reason than the key", "E100"},
                                             NewMistake{"new:gave mL per hour for drops", "E85"},
                                             NewMistake{"new:gave the whole day on the dose line", "E65"},
                                             NewMistake{"new:gave the whole vial", "E111"},
                                             NewMistake{"new:hours for minutes", "E49"},
                                             NewMistake{"new:left the constant out", "E107"},
                                             NewMistake{"new:left the inches out", "E73"},
                                             NewMistake{"new:left the ounces out", "E69"},
                                             NewMistake{"new:left the surface out", "E55"},
                                             NewMistake{"new:left the time out", "E87"},
                                             NewMistake{"new:left the weight out", "E55"},
                                             NewMistake{"new:minutes written as a decimal of an hour", "E80"},
                                             NewMistake{"new:multiplied by 60 though it is per hour", "E79"},
                                             NewMistake{"new:multiplied by the weight twice", "E36"},
                                             NewMistake{"new:multiplied the daily dose by the doses", "E66"},
                                             NewMistake{"new:ran the drug volume alone", "E84"},
                                             NewMistake{"new:said not covered", "E97"},
                                             NewMistake{"new:subtracted", "E112"},
                                             NewMistake{"new:subtracted 2.2", "E106"},
                                             NewMistake{"new:ten inches in a foot", "E74"},
                                             NewMistake{"new:times 2.2", "E75"},
                                             NewMistake{"new:took another set", "E86"},
                                             NewMistake{"new:took the displacement off the diluent", "E93"},
                                             NewMistake{"new:turned kilograms into pounds", "E60"},
                                             NewMistake{"new:used the age as the size", "E102"},
                                             NewMistake{"new:used the height as the size", "E58"},
                                             NewMistake{"new:used the label and not the maximum", "E94"},
                                             NewMistake{"new:used the order for the vial", "E91"}};

}  // namespace wardchalk::test
