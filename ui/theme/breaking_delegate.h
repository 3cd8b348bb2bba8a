#pragma once

#include <QStyledItemDelegate>

#include "ui/theme/text.h"

namespace wardchalk::ui {

/// Draws the items of a table or list as usual, but breaks a word that no line holds, so that all of it is
/// seen. What is copied or read out stays as it is written.
class BreakingDelegate : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  [[nodiscard]] QString displayText(const QVariant& value, const QLocale& locale) const override {
    return breakable(QStyledItemDelegate::displayText(value, locale));
  }
};

}  // namespace wardchalk::ui
