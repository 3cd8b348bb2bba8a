#pragma once

#include "core/check/worksheet.h"
#include "ui/working/drawing.h"
#include "ui/working/spoken_widget.h"

namespace wardchalk::ui {

/// The verdict: a sign, its words, one sentence, and the checks that were not made. Word and shape carry the
/// meaning; colour comes last. The shapes follow ISO 3864 and ISO 7010 practice.
class FlagWidget : public SpokenWidget {
  Q_OBJECT

 public:
  explicit FlagWidget(QWidget* parent);

  void show(const Worksheet& sheet);
  using QWidget::show;

  [[nodiscard]] VerdictKind verdict() const { return verdict_; }
  [[nodiscard]] const Drawing& drawing() const { return drawing_; }

 Q_SIGNALS:
  /// A click or Enter: the entry that the deciding finding, or the first need, points at.
  void originActivated(const QString& path);

 protected:
  double layOutAt(int width) override;
  void paintEvent(QPaintEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  VerdictKind verdict_ = VerdictKind::undecided;
  QString title_;
  QString reason_;
  QString notMade_;
  QString field_;
  Drawing drawing_;
  QRectF sign_;
};

}  // namespace wardchalk::ui
