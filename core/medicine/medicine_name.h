#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/medicine/medicine.h"

namespace wardchalk {

/// A medicine's name for comparing; two names are the same where these are. What does not count: capitals,
/// blanks around the name and how many stand between its words, characters that are ignored where they are
/// not supported, and accents on Latin, Greek and Cyrillic letters. What counts: the marks of other writings,
/// which are letters there, and compatible forms such as ² beside 2. Empty where the text names nothing, or
/// is no UTF-8.
[[nodiscard]] std::string medicineKey(std::string_view name);

/// Whether both name a medicine, and the same one.
[[nodiscard]] bool isSameMedicine(std::string_view one, std::string_view other);

/// Whether the text names anything: one of blanks alone does not.
[[nodiscard]] bool namesMedicine(std::string_view text);

/// The names of a text that parts them by semicolons, without the blanks around them. A part that names
/// nothing is none.
[[nodiscard]] std::vector<std::string> medicineNames(std::string_view text);

/// The name that the reference's medicine is told by: its own, else the first that it is also called. Empty
/// where the reference does not say what it is for.
[[nodiscard]] std::string_view medicineOf(const Reference& reference);

/// Whether the reference is for a medicine of this name: its own, or one that it is also called.
[[nodiscard]] bool isFor(const Reference& reference, std::string_view medicine);

}  // namespace wardchalk
