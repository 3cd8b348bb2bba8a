#pragma once

#include <optional>

#include "core/practice/marking/line_mark.h"
#include "ui/theme/plain_label.h"

namespace wardchalk::ui {

/// How a line is marked: a sign and a word. A tick in a square for right, three dots in a ring for not yet, a
/// question mark in a lozenge where more than one mistake fits; no colour says it alone, and none is red.
class MarkBadge : public PlainLabel {
  Q_OBJECT

 public:
  explicit MarkBadge(QWidget* parent);
  void show(std::optional<Mark> mark, const QString& word);
  using QWidget::show;

 protected:
  void paintEvent(QPaintEvent* event) override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 private:
  std::optional<Mark> mark_;
};

}  // namespace wardchalk::ui
