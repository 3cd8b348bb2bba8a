#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <cstdint>
#include <vector>

#include "core/number/number.h"
#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

/// Size of letters in 1/96 inch; the family is the reader's own.
struct Type {
  int pixels = 13;
  bool bold = false;
  friend bool operator==(const Type&, const Type&) = default;
};

/// A word or number, set in one go and never broken.
struct Run {
  QString text;
  QPointF at;   ///< left end of its baseline
  QRectF rect;  ///< what its letters may cover
  Type type;
  Ink ink = Ink::text;
  int stage = 0;
};

/// A straight line: the bar of a fraction, an axis, a mark of a syringe.
struct Bar {
  enum class Kind : std::uint8_t { fraction, root, rule };
  Kind kind = Kind::rule;
  QPointF from;
  QPointF to;
  double width = 1;
  Ink ink = Ink::line;
  int stage = 0;
};

/// Filled or outlined ground under other things; `hatched` is filled with slanting lines.
struct Area {
  enum class Fill : std::uint8_t { none, solid, hatched };
  QPolygonF outline;  ///< a rectangle has its four corners, with `radius`
  double radius = 0;
  Fill fill = Fill::solid;
  Ink ink = Ink::card;
  double edgeWidth = 0;
  Ink edge = Ink::line;
  int stage = 0;
};

/// A hand-drawn line through a struck unit. Pairs are told apart by pattern and letter, not by colour alone.
struct Stroke {
  QPointF from;
  QPointF to;
  int pattern = 0;  ///< 0 solid, 1 dashed, 2 dotted, 3 double
  QString letter;
  double width = 1.6;
  int stage = 0;
};

inline constexpr int strokePatterns = 4;

/// Where a number stands and where it came from.
struct HitArea {
  QRectF rect;
  QString origin;  ///< as in worksheet files: "reference.high", "step:bsa"
  QString text;    ///< the number with its units, as printed
  int stage = 0;
  bool isNumber = false;  ///< false for the word under a number, which the keyboard passes over
  int factor = -1;        ///< which factor of its chain the number belongs to, from 0; -1: none
};

/// Everything that is painted of a step, in 1/96 inch.
struct Drawing {
  std::vector<Run> runs;
  std::vector<Bar> bars;
  std::vector<Area> areas;
  std::vector<Stroke> strokes;
  std::vector<HitArea> hits;

  void moveBy(QPointF by);
  /// Takes over everything of `other`, moved.
  void add(Drawing other, QPointF by = {});
  void setStage(int stage);
  /// Everything appears so many stages later.
  void delayBy(int stages);
  /// Nothing appears before `stage`.
  void notBefore(int stage);
};

[[nodiscard]] QPolygonF corners(const QRectF& rect);

/// A number as a position on a drawn scale. For drawing alone: nothing is compared or printed by it.
[[nodiscard]] double onScale(const Number& value);

}  // namespace wardchalk::ui
