#pragma once

#include <array>

#include "tests/marking/new_mistakes.h"

namespace wardchalk::test {

/// Of the fresh set, by the words of its author. What is not here the marker has no number for: there any
/// name is a wrong one.
inline constexpr std::array freshMistakes = {NewMistake{"new:age taken for weight", "E102"},
                                             NewMistake{"new:both ends added", "E103"},
                                             NewMistake{"new:middle of the range", "E104"},
                                             NewMistake{"new:size over reference", "E105"},
                                             NewMistake{"new:subtracted the factor", "E106"},
                                             NewMistake{"new:did not divide", "E107"},
                                             NewMistake{"new:divided height by weight", "E108"},
                                             NewMistake{"new:root over the bottom only", "E109"},
                                             NewMistake{"new:dose times volume", "E110"},
                                             NewMistake{"new:label volume copied", "E111"},
                                             NewMistake{"new:subtracted", "E112"},
                                             NewMistake{"new:milligrams counted as pieces", "E113"},
                                             NewMistake{"new:concentration for the volume", "E114"},
                                             NewMistake{"new:vial content copied", "E32"},
                                             NewMistake{"new:added the ounces as pounds", "E70"},
                                             NewMistake{"new:all the drops", "E87"},
                                             NewMistake{"new:amount given as the rate", "E78"},
                                             NewMistake{"new:another giving set", "E86"},
                                             NewMistake{"new:bag volume copied", "E95"},
                                             NewMistake{"new:called a wrong schedule", "E100"},
                                             NewMistake{"new:called not covered", "E97"},
                                             NewMistake{"new:called too low", "E100"},
                                             NewMistake{"new:day multiplied by the doses", "E66"},
                                             NewMistake{"new:divided by the size", "E61"},
                                             NewMistake{"new:drop factor upside down", "E88"},
                                             NewMistake{"new:dropped the inches", "E73"},
                                             NewMistake{"new:dropped the ounces", "E69"},
                                             NewMistake{"new:drops for the hourly rate", "E82"},
                                             NewMistake{"new:hourly rate given as drops", "E85"},
                                             NewMistake{"new:inch factor of pounds", "E75"},
                                             NewMistake{"new:inch factor on pounds", "E75"},
                                             NewMistake{"new:inches as tenths of a foot", "E72"},
                                             NewMistake{"new:label strength for the greatest", "E94"},
                                             NewMistake{"new:minutes as hundredths of an hour", "E80"},
                                             NewMistake{"new:multiplied by the doses", "E67"},
                                             NewMistake{"new:nought lost in the constant", "E76"},
                                             NewMistake{"new:order over the volume", "E91"},
                                             NewMistake{"new:overlooked the concentration", "E98"},
                                             NewMistake{"new:overlooked the running time", "E98"},
                                             NewMistake{"new:overlooked the schedule", "E99"},
                                             NewMistake{"new:pounds factor on grams", "E03"},
                                             NewMistake{"new:powder volume alone", "E92"},
                                             NewMistake{"new:powder volume taken away", "E93"},
                                             NewMistake{"new:rate of the drug alone", "E84"},
                                             NewMistake{"new:reference copied", "E55"},
                                             NewMistake{"new:sixty used twice", "E79"},
                                             NewMistake{"new:sixty where none belongs", "E79"},
                                             NewMistake{"new:squared surface", "E36"},
                                             NewMistake{"new:strength upside down", "E31"},
                                             NewMistake{"new:ten inches to the foot", "E74"},
                                             NewMistake{"new:took the order for the limit", "E63"},
                                             NewMistake{"new:twelve ounces to the pound", "E71"},
                                             NewMistake{"new:volume given as the rate", "E81"},
                                             NewMistake{"new:whole day for one dose", "E65"}};

}  // namespace wardchalk::test
