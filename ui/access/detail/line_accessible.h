#pragma once

#include <QAccessibleWidget>

#include "ui/access/detail/line_text.h"

class QSpinBox;

namespace wardchalk::ui::detail {

/// A line of text.
class LineAccessible : public QAccessibleWidget, public LineText {
 public:
  explicit LineAccessible(QLineEdit* line);

  QString text(QAccessible::Text kind) const override;
  using LineText::text;
  void setText(QAccessible::Text kind, const QString& text) override;
  QAccessible::State state() const override;
  void* interface_cast(QAccessible::InterfaceType type) override;

 private:
  [[nodiscard]] QLineEdit& line() const;
};

/// A box with a whole number, which is read as the text that it shows and as a value.
class NumberAccessible : public QAccessibleWidget, public LineText, public QAccessibleValueInterface {
 public:
  explicit NumberAccessible(QSpinBox* box);

  QString text(QAccessible::Text kind) const override;
  using LineText::text;
  QAccessible::State state() const override;
  void* interface_cast(QAccessible::InterfaceType type) override;

  QVariant currentValue() const override;
  void setCurrentValue(const QVariant& value) override;
  QVariant maximumValue() const override;
  QVariant minimumValue() const override;
  QVariant minimumStepSize() const override;

 private:
  [[nodiscard]] QSpinBox& box() const;
};

}  // namespace wardchalk::ui::detail
