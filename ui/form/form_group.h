#pragma once

#include <QList>
#include <QWidget>

#include "ui/form/field_table.h"

class QHBoxLayout;
class QVBoxLayout;
class QToolButton;

namespace wardchalk::ui {

class FieldEdit;

/// One paper of the form: a heading, its fields in rows of twelve columns, and a button that unfolds the
/// rarer ones.
class FormGroup : public QWidget {
  Q_OBJECT

 public:
  explicit FormGroup(FieldGroup group, QWidget* parent = nullptr);

  /// In the order of the table, whenever it comes.
  void addField(FieldEdit* field);
  /// A control that belongs to the whole group, at the right of its heading; without a label if it says
  /// itself what it is.
  void addToHeading(QWidget* label, QWidget* control);

  [[nodiscard]] FieldGroup group() const { return group_; }
  [[nodiscard]] bool isUnfolded() const { return unfolded_; }
  void setUnfolded(bool unfolded);
  [[nodiscard]] QToolButton* moreButton() const { return more_; }
  [[nodiscard]] const QList<FieldEdit*>& fields() const { return fields_; }

  /// Puts the fields that are to be in view into rows.
  void arrange(const QList<FieldEdit*>& inView);

 Q_SIGNALS:
  void foldingChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void nameButton();
  void clearRows();
  QHBoxLayout* addRow();
  void fillUp(QHBoxLayout* row, int columns);

  FieldGroup group_;
  QHBoxLayout* heading_;
  QToolButton* more_;
  QVBoxLayout* rows_;
  QWidget* headingControl_ = nullptr;
  QList<FieldEdit*> fields_;
  QList<std::pair<FieldEdit*, int>> arranged_;  // with the columns each took
  bool unfolded_ = false;
};

}  // namespace wardchalk::ui
