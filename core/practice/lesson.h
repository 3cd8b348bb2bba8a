#pragma once

#include <cstdint>

#include "core/practice/set_file.h"

namespace wardchalk {

/// The topic of the set's problem at this place, from 0; places beyond the set go on in the same way.
[[nodiscard]] Topic topicInSet(const PracticeSet& set, int place);

/// The set's problem at this place as a student practises it. Where it asks whether the order may be given
/// and there is something to measure, it asks for the amount as well whatever the verdict, so that being
/// asked for it tells nothing. `topic` is that of the place, or another one for a problem that was not in the
/// set.
[[nodiscard]] Problem lessonProblem(const PracticeSet& set, Topic topic, std::uint64_t seed);
[[nodiscard]] Problem lessonProblem(const PracticeSet& set, int place);

}  // namespace wardchalk
