#pragma once

#include <QFont>
#include <QFontMetricsF>
#include <QString>

#include "ui/working/drawing.h"

namespace wardchalk::ui {

/// What a piece of text is for; its size follows.
enum class FontRole : std::uint8_t {
  disc,      ///< the step's number
  question,  ///< "What is the safe dose?"
  aside,     ///< what is looked for, the reason
  number,    ///< numbers and units of a chain
  result,    ///< what a chain comes to
  power,     ///< the power of a formula, set high
  big,       ///< the two sides of a comparison
  words,     ///< a side that is no number: a schedule, an age, a route
  badge,     ///< "true", "false"
  tag,       ///< where a number comes from
  letter,    ///< the letter of a struck pair
  figure,    ///< figures of a scale
  mark,      ///< named marks on a number line
  body,      ///< sentences
  finding,   ///< findings and the lines under the amount
  flag,      ///< the words on the flag
  amount,    ///< what to measure: the largest on the screen
  dose,      ///< the dose in it, never smaller than half of that
};

/// How wide a step may be and how large its letters are.
struct Metrics {
  double width = 900;     ///< of the whole card, 1/96 inch
  double scale = 1;       ///< 1 is 100 %
  QString family;         ///< empty: the program's own font
  double chainScale = 1;  ///< below 1 when a chain would not fit otherwise
  bool forBoard = false;  ///< a measuring shows what it begins with, since no card stands above it

  [[nodiscard]] Type type(FontRole role) const;
  /// A length of the 4 px grid, scaled.
  [[nodiscard]] double px(double length) const { return length * scale; }
};

/// The font of a type: unhinted, so that it is as wide on paper as on screen.
[[nodiscard]] QFont fontOf(const Type& type, const QString& family);

}  // namespace wardchalk::ui
