#include "core/practice/lines/understood.h"

#include <array>

#include "core/practice/lines/chain_builder.h"

namespace wardchalk {

namespace {

std::string_view signOf(LineRelation relation) {
  constexpr std::array<std::string_view, 6> signs = {"=", "≈", "≤", "≥", "<", ">"};
  return signs[static_cast<std::size_t>(relation)];
}

std::string textOf(const StudentLine& line) {
  std::string text;
  for (std::size_t i = 0; i < line.sides.size(); ++i) {
    if (i > 0) text.append(" ").append(signOf(line.links[i - 1].relation)).append(" ");
    text.append(lineText(line.sides[i].chain));
  }
  return text;
}

}  // namespace

std::string understoodText(const StudentWorking& working) {
  std::string text;
  for (const StudentLine& line : working.lines) text.append(text.empty() ? "" : "\n").append(textOf(line));
  return text;
}

}  // namespace wardchalk
