#pragma once

#include <QPaintDevice>
#include <QPaintEngine>
#include <QString>
#include <QStringList>
#include <memory>
#include <vector>

class QWidget;

namespace wardchalk::ui::test {

/// Takes in every text that is painted on it, and where: so that a test reads a window, the board or a page
/// as an eye does, from left to right, whatever widget or run the letters came from. Letters need no font for
/// that.
class PaintedText : public QPaintDevice {
 public:
  explicit PaintedText(QSize size);
  ~PaintedText() override;

  /// What stands on each line, in the order in which it is seen from left to right; a piece that was set from
  /// the right has its last letter first. No-break spaces are plain ones.
  [[nodiscard]] QStringList lines() const;

  [[nodiscard]] QPaintEngine* paintEngine() const override;

 protected:
  [[nodiscard]] int metric(PaintDeviceMetric metric) const override;

 private:
  class Engine;
  QSize size_;
  std::unique_ptr<Engine> engine_;
};

/// The lines of a widget as it is shown now.
[[nodiscard]] QStringList paintedLines(QWidget& widget);

}  // namespace wardchalk::ui::test
