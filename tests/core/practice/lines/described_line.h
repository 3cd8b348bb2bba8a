#pragma once

#include <array>
#include <string>
#include <string_view>

#include "core/practice/lines/student_line.h"
#include "core/words/unit_words.h"

namespace wardchalk::test {

/// Units as in files, with the child's gram told from medicine's.
inline std::string describe(const Units& units) {
  std::string text = unitsText(units, Spelling::filed);
  for (const Unit unit : {Unit::bodyG})
    for (const UnitProduct* pile : {&units.over, &units.under})
      for (const Unit one : *pile)
        if (one == unit) return text + " (of the child)";
  return text;
}

/// "84 mg": the exact value in lowest terms with what is left; "~" where it is cut, "?" where the units
/// cannot be told, "bare" and "partly" as units are written.
inline std::string describe(const LineSide& side) {
  std::string text = side.exact ? "" : "~";
  text += side.exact ? side.value.rationalText() : side.product.exact.rationalText();
  const std::string units = describe(side.unitsOpen ? side.product.left : side.units);
  if (!units.empty()) text += " " + units;
  if (side.unitsOpen) text += " ?";
  if (side.written == UnitsWritten::none) text += " bare";
  if (side.written == UnitsWritten::partly) text += " partly";
  return text;
}

inline std::string describe(const LineLink& link) {
  constexpr std::array<std::string_view, 6> signs = {"=", "≈", "≤", "≥", "<", ">"};
  constexpr std::array<std::string_view, 5> meets = {"", " converted", " per left out", " bare",
                                                     " units differ"};
  constexpr std::array<std::string_view, 4> truths = {"", " rounded", " cut", " wrong"};
  std::string text(signs[static_cast<std::size_t>(link.relation)]);
  text.append(meets[static_cast<std::size_t>(link.units)]);
  return text.append(truths[static_cast<std::size_t>(link.truth)]);
}

/// "√(…) | = rounded | 7/10 m2": sides and links in turn; of a fault its code and the place it points at.
inline std::string describe(const ReadLine& read, std::string_view text) {
  if (const auto* fault = std::get_if<LineFault>(&read)) {
    std::string described(idOf(fault->code));
    described.append(" [").append(text.substr(fault->at.begin, fault->at.end - fault->at.begin)).append("]");
    if (!fault->instead.empty()) described.append(" ").append(fault->instead);
    return described;
  }
  const auto& line = std::get<StudentLine>(read);
  std::string described = line.label.empty() ? "" : line.label + ": ";
  for (std::size_t i = 0; i < line.sides.size(); ++i) {
    if (i > 0) described.append(" | ").append(describe(line.links[i - 1])).append(" | ");
    described.append(describe(line.sides[i]));
  }
  return described;
}

inline std::string describe(const LineRemark& remark, std::string_view text) {
  std::string described(infoOf(remark.code).id);
  described.append(" [").append(text.substr(remark.at.begin, remark.at.end - remark.at.begin)).append("] ");
  return described.append(remark.instead).append(remark.onBareNumber ? " bare" : "");
}

}  // namespace wardchalk::test
