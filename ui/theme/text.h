#pragma once

#include <QString>
#include <string_view>

namespace wardchalk::ui {

/// UTF-8 of the core as text of the screen.
[[nodiscard]] QString fromCore(std::string_view text);

/// The same, with a number and the word after it held together by a no-break space, so that "84 mg" never
/// breaks.
[[nodiscard]] QString held(std::string_view text);

/// A held text with plain spaces again: what is spoken, searched or copied.
[[nodiscard]] QString loosed(QString text);

}  // namespace wardchalk::ui
