#pragma once

#include <QWidget>
#include <cstdint>

class QGridLayout;
class QLabel;

namespace wardchalk::ui {

class QuietLine;

/// One house rule: what it is called, its box, and an example worked by it. The example stands beside the box
/// where the width allows, else beneath both; where not even label and box have room side by side, all three
/// stand one beneath the other. The boxes of all rows stand in line.
class RuleRow : public QWidget {
  Q_OBJECT

 public:
  /// `box` becomes the row's own.
  RuleRow(const QString& label, QWidget* box, QWidget* parent);

  [[nodiscard]] QWidget* box() const { return box_; }
  [[nodiscard]] QuietLine* example() const { return example_; }

  /// The width at which the example has room beside the box.
  [[nodiscard]] static int usualWidth(const QFontMetrics& letters);

  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  enum class Place : std::uint8_t { none, beside, beneath, stacked };
  void follow();

  Place place_ = Place::none;
  QLabel* name_;
  QWidget* box_;
  QuietLine* example_;
  QGridLayout* grid_;
};

}  // namespace wardchalk::ui
