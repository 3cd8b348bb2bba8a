#pragma once

#include <QHash>
#include <QScrollArea>

#include "core/rules/house_rules.h"
#include "ui/form/case_editor.h"
#include "ui/form/field_table.h"

class QToolButton;

namespace wardchalk::ui {

class ChoiceBox;
class FieldEdit;
class FormGroup;

/// The form, in the order of the papers on the desk. It shows the editor's draft and hands every key to it.
class Form : public QScrollArea {
  Q_OBJECT

 public:
  Form(CaseEditor& editor, const HouseRules& rules, QWidget* parent = nullptr);

  /// The field of an entry, in view or not; null where there is none.
  [[nodiscard]] FieldEdit* field(const QString& path);
  /// Brings the field into view, unfolds its group if need be, and gives it the keyboard.
  void focusField(const QString& path);
  /// The first field, with the heading above it in view.
  void focusTop();
  /// Gives the keyboard to the field that had it last, or to the first.
  void focusLast();
  /// Marks the field that a number of the working came from; no path marks none.
  void light(const QString& path);

  /// Brings the fields that the worksheet waits for into view, folded or not. It moves no keyboard focus.
  void setWanted(const QStringList& paths);

  void showUnitSystem(UnitSystem system);
  /// Whether the reference may come from a list just now.
  void offerList(bool offered);
  [[nodiscard]] bool isUnfolded() const;
  void setUnfolded(bool unfolded);

 Q_SIGNALS:
  void pointedAt(const QString& path);
  void unitSystemChosen(wardchalk::UnitSystem system);
  void listWanted();  ///< the reference is to come from a list

 private:
  void build();
  FieldEdit* addField(const FieldSpec& spec);
  [[nodiscard]] FormGroup* groupOf(const FieldSpec& spec) const;
  void addUnitSystem(FormGroup* group);
  void addListButton(FormGroup* group);
  void orderTabs();
  void refresh();
  void arrange();
  [[nodiscard]] bool isInView(const FieldSpec& spec) const;
  [[nodiscard]] QList<FieldEdit*> inView() const;
  void sayLine(FieldEdit& field, const Case& inputs, bool last);
  void step(const QString& path, int by);
  void pointed(const QString& path);

  CaseEditor& editor_;
  const HouseRules& rules_;
  QWidget* page_;
  QList<FormGroup*> groups_;
  QHash<QString, FieldEdit*> fields_;  // those that were in view once
  ChoiceBox* unitSystem_ = nullptr;
  QToolButton* listButton_ = nullptr;
  bool tabsInOrder_ = false;
  QStringList wanted_;
  QString last_;
};

}  // namespace wardchalk::ui
