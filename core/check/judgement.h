#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/check/worksheet.h"

namespace wardchalk {

/// Whether a limit may be called safe on this worksheet: not where the reference does not serve the child,
/// nor where the figures cannot be used.
[[nodiscard]] bool callsAnythingSafe(const Worksheet& sheet);

/// What is told beneath the verdict: all findings but the deciding one and, where `questionsStand` as ticks
/// of their own, the questions. While a size cannot be used, no dose is called too little for it: that would
/// name a dose to reach for.
[[nodiscard]] std::vector<const Finding*> findingsBeside(const Worksheet& sheet, bool questionsStand);

/// The doubt about the child's size that leads; none where nothing that counts is worked out by a doubted
/// size.
[[nodiscard]] const Finding* sizeDoubt(const Worksheet& sheet);

/// Whether a comparison of a worksheet held; no value where it was not made.
using Holds = std::function<std::optional<bool>(CheckId)>;

/// The verdict of a worksheet whose comparisons came out as `holds` says: by the figures that somebody else
/// came to. The findings that no figure of his can change stay as they are.
[[nodiscard]] VerdictKind verdictWhere(const Worksheet& sheet, const Holds& holds);

}  // namespace wardchalk
