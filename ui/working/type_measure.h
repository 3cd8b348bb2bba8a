#pragma once

#include <QFont>
#include <QString>

#include "ui/working/drawing.h"

namespace wardchalk::ui {

/// What the letters of a type measure, in 1/96 inch. Widths are remembered, since the same words are laid out
/// again at every key. For the thread of the windows alone.
class TypeMeasure {
 public:
  /// An empty family is the program's own.
  TypeMeasure(const Type& type, const QString& family);

  [[nodiscard]] const QFont& font() const;
  [[nodiscard]] double width(const QString& text) const;
  /// Writes one piece of one writing with its base line there. On a screen the letters of one that comes
  /// again are set once and then only put down: setting them takes most of the time of a painted word.
  void write(QPainter& painter, const QPointF& at, const QString& piece) const;
  [[nodiscard]] double ascent() const;
  [[nodiscard]] double descent() const;
  [[nodiscard]] double capHeight() const;
  [[nodiscard]] double xHeight() const;

 private:
  struct Known;
  struct SetPiece;
  /// None at the first time: most of the words of a start are painted once.
  [[nodiscard]] const SetPiece* setPiece(const QString& piece) const;
  static Known& knownOf(const Type& type, const QString& family);

  Known& known_;
};

}  // namespace wardchalk::ui
