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
  [[nodiscard]] double ascent() const;
  [[nodiscard]] double descent() const;
  [[nodiscard]] double capHeight() const;
  [[nodiscard]] double xHeight() const;

 private:
  struct Known;
  static Known& knownOf(const Type& type, const QString& family);

  Known& known_;
};

}  // namespace wardchalk::ui
