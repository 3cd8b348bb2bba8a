#pragma once

#include <string>

#include "core/practice/marking/marking.h"

namespace wardchalk::test {

/// A mark in a line: "right", "wrong E20", "unsure E24 E26", "right E46 carried-on".
[[nodiscard]] inline std::string told(const LineMark& mark) {
  std::string text(idOf(mark.mark));
  for (const MistakeId mistake : mark.mistakes) text += " " + std::string(idOf(mistake));
  for (const LineNote note : mark.notes) text += " " + std::string(idOf(note));
  if (mark.fault) text += " " + std::string(idOf(mark.fault->code));
  return text;
}

}  // namespace wardchalk::test
