#pragma once

#include <QMimeData>
#include <cstdint>
#include <memory>
#include <vector>

#include "core/check/shown.h"

namespace wardchalk::ui {

/// What a working is taken along as.
enum class CopyAs : std::uint8_t { text, mathMl, latex, picture, svg };

/// The whole working for the clipboard. Where its source is text, programs that know no better find that.
[[nodiscard]] std::unique_ptr<QMimeData> workingAs(CopyAs as, const Shown& shown);

/// One step of it, by its place from 0.
[[nodiscard]] std::unique_ptr<QMimeData> stepAs(CopyAs as, std::size_t step, const Shown& shown);

}  // namespace wardchalk::ui
