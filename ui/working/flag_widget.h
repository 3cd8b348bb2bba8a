#pragma once

#include "core/check/worksheet.h"
#include "ui/working/drawing.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

/// The verdict: a sign, its words, one sentence, and the checks that were not made. Word and shape carry the
/// meaning; colour comes last. The shapes follow ISO 3864 and ISO 7010 practice.
/// Its origin is the entry that the deciding finding, or the first need, points at.
class FlagWidget : public SpokenWidget {
  Q_OBJECT

 public:
  explicit FlagWidget(QWidget* parent);

  void show(const Worksheet& sheet);
  using QWidget::show;

  [[nodiscard]] VerdictKind verdict() const { return verdict_; }
  [[nodiscard]] const Drawing& drawing() const { return drawing_; }

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  VerdictKind verdict_ = VerdictKind::undecided;
  QString title_;
  QString reason_;
  QString notMade_;
  Drawing drawing_;
  QRectF sign_;
};

}  // namespace wardchalk::ui
