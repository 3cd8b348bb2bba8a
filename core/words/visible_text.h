#pragma once

#include <string>
#include <string_view>

namespace wardchalk {

/// A text as it may be sent to a terminal, which obeys some characters instead of showing them. Those
/// (control characters, marks of the writing direction, line separators, what cannot be seen or is no
/// character) are written by number, "\u{1B}", and bytes that are not UTF-8 as "\x{FF}". Line ends and tabs
/// stay, and so does an isolate (FSI … PDI) that is closed in its own line: our sentences put one around each
/// name.
[[nodiscard]] std::string visibleText(std::string_view text);

/// The same for what must stay in one line: a line end and a tab come out by number too.
[[nodiscard]] std::string visibleLine(std::string_view text);

}  // namespace wardchalk
