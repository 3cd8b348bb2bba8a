#pragma once

#include <QTimer>

#include "core/practice/sessions/line_reading.h"
#include "ui/theme/plain_label.h"

namespace wardchalk::ui {

/// How a line is read, below it, before anything is marked. What can be read stands there at once; why a line
/// cannot be read waits until nobody types, since a line half written never can. Its room is always kept, so
/// that nothing moves while somebody types.
class ReadingLine : public PlainLabel {
  Q_OBJECT

 public:
  explicit ReadingLine(QWidget* parent);

  void show(const LineReading& reading);
  using QWidget::show;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }  // while it is empty too
  [[nodiscard]] int heightForWidth(int width) const override;

  /// What is shown, or will be once nobody types.
  [[nodiscard]] const QString& told() const { return told_; }

 private:
  QString told_;
  QTimer wait_;
};

/// "Read as: 400 mg/5 mL = 80 mg/mL", "Cannot be read yet: …"; empty for nothing.
[[nodiscard]] QString readingWords(const LineReading& reading);

}  // namespace wardchalk::ui
