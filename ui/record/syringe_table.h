#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/number/refusal.h"
#include "core/rules/house_rules.h"

class QGridLayout;
class QLineEdit;
class QPushButton;

namespace wardchalk::ui {

class ChoiceBox;
class QuietLine;

/// The ward's syringes, one in a row: what each holds, how far apart its marks stand, and what it is for.
class SyringeTable : public QWidget {
  Q_OBJECT

 public:
  explicit SyringeTable(QWidget* parent = nullptr);

  void show(const std::vector<Syringe>& syringes);
  using QWidget::show;
  /// The syringes as they stand, rising within each kind; nothing while a row cannot be read.
  [[nodiscard]] std::optional<std::vector<Syringe>> syringes() const;
  /// Why they cannot be read; empty when they can.
  [[nodiscard]] QString whyRefused() const;
  /// To the first box that cannot be read.
  void focusRefused();

 Q_SIGNALS:
  void changed();

 private:
  struct Row {
    QLineEdit* holds;
    QLineEdit* marks;
    ChoiceBox* kind;
    QPushButton* remove;
  };
  void addRow(const Syringe* syringe);
  void removeRow(const QLineEdit* holds);
  void nameRows();
  void read();
  [[nodiscard]] Result<Syringe> readRow(const Row& row) const;
  void place();

  QGridLayout* grid_;
  QPushButton* add_;
  QuietLine* line_;
  std::vector<Row> rows_;
};

}  // namespace wardchalk::ui
