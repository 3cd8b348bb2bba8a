#pragma once

#include <QWidget>

class QGridLayout;

namespace wardchalk::ui {

class QuietLine;

/// One house rule: what it is called, its box, and an example worked by it. The example stands beside the box
/// where the width allows, else beneath both. The boxes of all rows stand in line.
class RuleRow : public QWidget {
  Q_OBJECT

 public:
  /// `box` becomes the row's own.
  RuleRow(const QString& label, QWidget* box, QWidget* parent);

  [[nodiscard]] QWidget* box() const { return box_; }
  [[nodiscard]] QuietLine* example() const { return example_; }

  /// The width at which the example has room beside the box.
  [[nodiscard]] static int usualWidth(const QFontMetrics& letters);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void follow();

  QWidget* box_;
  QuietLine* example_;
  QGridLayout* grid_;
};

}  // namespace wardchalk::ui
