#include "core/practice/lines/changing_words.h"

#include <algorithm>
#include <array>

namespace wardchalk {

namespace {

/// In the order of the alphabet, to be looked up.
constexpr auto changing = std::to_array<std::string_view>(
    {"above",    "almost", "avoid",  "below",   "between",  "cannot",  "cant",    "discard", "doesnt",
     "dont",     "either", "except", "fewer",   "greater",  "hardly",  "hold",    "if",      "instead",
     "isnt",     "less",   "maybe",  "might",   "more",     "nearly",  "neither", "never",   "no",
     "none",     "nor",    "not",    "nothing", "omit",     "or",      "outside", "perhaps", "possibly",
     "probably", "rather", "refuse", "should",  "skip",     "stop",    "under",   "unless",  "unsafe",
     "unsure",   "versus", "vs",     "waste",   "withhold", "without", "wont",    "wrong"});
static_assert(std::ranges::is_sorted(changing));

}  // namespace

bool changesMeaning(std::string_view word) { return std::ranges::binary_search(changing, word); }

}  // namespace wardchalk
