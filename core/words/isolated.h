#pragma once

#include <string>
#include <string_view>

namespace wardchalk {

// A right-to-left name in a sentence of ours would draw the figures after it into its own order: "25 mg in 1
// mL" would read backwards. Between U+2068 and U+2069 a text is set by itself (Unicode Standard Annex 9,
// isolates), and what stands around it keeps its order.

/// The text with what runs from the right isolated: the whole of it where it begins so and most of its
/// letters do, else each stretch of such letters, so that figures of a text in two writings stand as well.
/// Any other text is given back as it is: a working in Latin letters has no mark in it that nobody sees.
[[nodiscard]] std::string isolated(std::string_view text);
/// The same, put at the end of `whole`.
void appendIsolated(std::string& whole, std::string_view text);

/// The lines that one text was broken into, in order. An isolate that a break cut in two is closed at the end
/// of its line and opened again on the next: each line is set by itself.
class IsolatesOfLines {
 public:
  [[nodiscard]] std::string next(std::string_view line);

 private:
  int open_ = 0;
};

/// Whether the text has such marks.
[[nodiscard]] bool hasIsolates(std::string_view text);

/// The text without those marks: what goes into a field of a case or a file, or is spoken.
[[nodiscard]] std::string withoutIsolates(std::string_view text);

}  // namespace wardchalk
