#pragma once

#include <string>
#include <vector>

#include "core/record/reference_list.h"

namespace wardchalk {

/// What whoever keeps a list should look at before it is used, a sentence each: ages or sizes between two
/// entries of a medicine that neither covers, two entries that hold for the same child, an entry whose review
/// is past. Found by asking for children at and between the edges of the bands, as the checks of a case judge
/// them.
[[nodiscard]] std::vector<std::string> listReview(const ReferenceList& list, const Date& today);

/// "Plover, oral": a medicine, what it is for and its route, as a list names them.
[[nodiscard]] std::string groupName(const std::string& medicine, const std::string& indication, Route route);

}  // namespace wardchalk
