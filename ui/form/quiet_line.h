#pragma once

#include "ui/theme/plain_label.h"

namespace wardchalk::ui {

/// Letters of what is said quietly, as a share of the form's.
inline constexpr double quietShare = 0.9;

/// The line under a field: a hint, what was read, or why it was refused. A refusal has a bar before it, so
/// that it is told from the rest without colour.
class QuietLine : public PlainLabel {
  Q_OBJECT

 public:
  enum class Tone : std::uint8_t { quiet, refused };

  explicit QuietLine(QWidget* parent = nullptr);
  void say(const QString& text, Tone tone);
  [[nodiscard]] const QString& said() const { return said_; }
  [[nodiscard]] Tone tone() const { return tone_; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void applyInk();

  QString said_;
  Tone tone_ = Tone::quiet;
};

}  // namespace wardchalk::ui
