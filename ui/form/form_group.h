#pragma once

#include <QList>
#include <QWidget>

#include "ui/form/field_table.h"

class QLabel;
class QToolButton;

namespace wardchalk::ui {

class ColumnGrid;
class FieldEdit;
class FlowLayout;

/// One paper of the form: a heading, its fields in rows of twelve columns, and a button that unfolds the
/// rarer ones. Below a row with a refused field stands why, over the whole width, in the place of the lines
/// that say how its entries were understood: no field is moved or widened for it.
class FormGroup : public QWidget {
  Q_OBJECT

 public:
  explicit FormGroup(FieldGroup group, QWidget* parent = nullptr);

  /// In the order of the table, whenever it comes.
  void addField(FieldEdit* field);
  /// What belongs to the whole group, at the right of its heading.
  void addToHeading(QWidget* control);

  [[nodiscard]] FieldGroup group() const { return group_; }
  [[nodiscard]] bool isUnfolded() const { return unfolded_; }
  void setUnfolded(bool unfolded);
  [[nodiscard]] QToolButton* moreButton() const { return more_; }
  [[nodiscard]] const QList<FieldEdit*>& fields() const { return fields_; }

  /// Where Tab stops, as the eye goes: heading, then row by row the fields and what answers a refusal of the
  /// row.
  [[nodiscard]] QList<QWidget*> stops() const;

  /// Puts the fields that are to be in view into rows.
  void arrange(const QList<FieldEdit*>& inView);

 Q_SIGNALS:
  void foldingChanged();
  void opened();  ///< by a person, who goes on in the first field that came into view

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  enum class PerRow : std::uint8_t { asInTable, two, one };

  [[nodiscard]] int spanOf(const FieldEdit& field) const;
  void followWidth();
  void inkTitle();
  void nameButton();
  int addAnswers(const QList<FieldEdit*>& row, int at);

  FieldGroup group_;
  QLabel* title_ = nullptr;
  FlowLayout* heading_;
  QToolButton* more_;
  ColumnGrid* rows_;
  QList<FieldEdit*> fields_;
  QList<QWidget*> controls_;  // of the heading, from the left
  QList<QList<FieldEdit*>> shownRows_;
  QList<std::pair<FieldEdit*, bool>> arranged_;  // and whether each was refused
  PerRow perRow_ = PerRow::asInTable;
  PerRow arrangedPerRow_ = PerRow::asInTable;
  bool unfolded_ = false;
};

}  // namespace wardchalk::ui
