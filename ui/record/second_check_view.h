#pragma once

#include <QWidget>

#include "core/record/second_check.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace wardchalk::ui {

class FlowLayout;

/// Two people's entries, figures and verdicts side by side. What is not the same stands first in its part and
/// is marked by a sign and a word.
class SecondCheckView : public QWidget {
  Q_OBJECT

 public:
  explicit SecondCheckView(QWidget* parent = nullptr);

  /// `alone`: the second person had entered everything before this was seen. To record it then takes a tick
  /// that says so. `differenceStays`: whoever leaves this leaves a difference, which is recorded.
  void show(const SecondCheck& check, bool alone, bool differenceStays);
  using QWidget::show;
  /// Takes everything of the two out of the view.
  void empty();
  /// What the comparison came to, and what to do.
  [[nodiscard]] QString said() const;
  /// Size of letters in percent.

 Q_SIGNALS:
  void firstCorrects();
  void secondCorrects();
  void finished();
  void left();

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Row {
    QString what;
    QString first;
    QString second;
    Agreement agreement;
  };
  [[nodiscard]] Row rowOf(const EntryCompared& entry) const;
  [[nodiscard]] Row rowOf(const OutcomeCompared& outcome) const;
  void addPart(const QString& heading, QList<Row> rows);
  void addRow(const Row& row);
  void airRows();
  QWidget* buildPage();
  void buildButtons(FlowLayout* row);

  QLabel* summary_;
  QLabel* todo_;
  QTableWidget* table_;
  QCheckBox* alone_;
  QPushButton* finish_ = nullptr;
  QPushButton* leave_ = nullptr;
};

}  // namespace wardchalk::ui
