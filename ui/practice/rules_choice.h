#pragma once

#include <QComboBox>

#include "core/rules/house_rules.h"

namespace wardchalk::ui {

/// A choice of the house rules that problems are worked by: the shipped sets, and those of an opened file
/// where they are neither.
class RulesChoice : public QComboBox {
  Q_OBJECT

 public:
  explicit RulesChoice(QWidget* parent);

  [[nodiscard]] HouseRules rules() const;
  void setRules(const HouseRules& rules);
  /// What the chosen set does with pounds and with rounding; rules of a file say that in the file.
  [[nodiscard]] QString words() const;

 protected:
  void wheelEvent(QWheelEvent* event) override;

 private:
  HouseRules own_;
};

/// What house rules do with pounds and with rounding, in a line; their name alone for those of a file.
[[nodiscard]] QString rulesInWords(const HouseRules& rules);

}  // namespace wardchalk::ui
