#include "core/practice/marking/line_mark.h"

#include <algorithm>

namespace wardchalk {

bool LineMark::has(MistakeId mistake) const { return std::ranges::find(mistakes, mistake) != mistakes.end(); }
bool LineMark::has(LineNote note) const { return std::ranges::find(notes, note) != notes.end(); }

}  // namespace wardchalk
