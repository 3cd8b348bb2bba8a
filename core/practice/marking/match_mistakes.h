#pragma once

#include <span>
#include <vector>

#include "core/practice/marking/right_values.h"
#include "core/practice/marking/wrong_values.h"

namespace wardchalk {

/// The mistakes that explain this number, each once, in the order of their numbers. Two that lie within 3 %
/// of each other are both named where one of them fits: then a student is asked, and nothing is asserted.
/// `closely`: only values that agree within what accepted conversions differ by, whatever the digits written,
/// and none beside them; for an answer that may as well be the right one rounded too far.
[[nodiscard]] std::vector<MistakeId> matchMistakes(const TypedNumber& typed,
                                                   std::span<const WrongValue> wrong, bool closely = false);

/// The same in the lists one after the other: a later one is looked at where nothing of those before it fits,
/// or where what was written has digits enough to tell, and they are those of the later one. A figure that a
/// later list has to the last digit is named beside one that an earlier list only comes near to: nothing
/// written tells the two apart.
[[nodiscard]] std::vector<MistakeId> matchTiers(const TypedNumber& typed, const WrongValues& wrong,
                                                bool closely);

/// The mistakes but this one that come to the value to its last digit, of the first list that has any.
[[nodiscard]] std::vector<MistakeId> matchFigure(const Number& value, const WrongValues& wrong,
                                                 MistakeId but);

/// The mistakes that a working itself comes to: it is known to all its digits, so that what lies nearest is
/// meant. Several only where they come to the same.
[[nodiscard]] std::vector<MistakeId> matchWorked(const Number& worked, const WrongValues& wrong);

/// Two different mistakes that explain it together, where exactly one pair does, the earlier first; else
/// empty.
[[nodiscard]] std::vector<MistakeId> matchPair(const TypedNumber& typed, const Number& right,
                                               std::span<const WrongValue> wrong);

/// How near two signatures may lie and still be told apart.
[[nodiscard]] const Number& collisionShare();

}  // namespace wardchalk
