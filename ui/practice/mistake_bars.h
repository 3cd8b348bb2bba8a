#pragma once

#include <vector>

#include "core/practice/sessions/session_tally.h"
#include "ui/working/drawing.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

/// The mistakes of a session as bars, the most frequent first: each with its words and how many lines it was
/// in.
class MistakeBars : public SpokenWidget {
  Q_OBJECT

 public:
  explicit MistakeBars(QWidget* parent);

  void show(const std::vector<MistakeTally>& mistakes);
  using QWidget::show;
  [[nodiscard]] const Drawing& drawing() const { return drawing_; }

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  std::vector<MistakeTally> mistakes_;
  Drawing drawing_;
};

}  // namespace wardchalk::ui
