#pragma once

#include <QHash>
#include <QPointer>
#include <QScrollArea>
#include <functional>

#include "core/check/worksheet.h"
#include "core/rules/house_rules.h"
#include "ui/form/case_editor.h"
#include "ui/form/field_table.h"

class QLabel;
class QToolButton;

namespace wardchalk::ui {

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

  /// Follows what was worked out from the entries: the fields that it waits for come into view, folded or
  /// not, and under the ends of the reference stands what they come to for this child. It moves no keyboard
  /// focus.
  void follow(const Worksheet& sheet);
  /// Nothing is worked out: the form is empty.
  void followNothing();
  /// To the first field that cannot be read; false where there is none.
  bool focusRefused();

  /// Shows what a bare number is in: in the empty lines, and beside the heading.
  void showBareUnits();
  /// Whether the reference may come from a list just now.
  void offerList(bool offered);
  [[nodiscard]] bool isUnfolded() const;
  void setUnfolded(bool unfolded);

  /// Whether it stands in a column with the working, as high as its fields need, and scrolls with it.
  void standInColumn(bool inColumn);
  [[nodiscard]] int heightForWidth(int width) const override;
  /// Does what takes the form to another place in its window. No field is read for it, and the keyboard stays
  /// where it is.
  void keepingKeyboard(const std::function<void()>& move);

 Q_SIGNALS:
  void heightChanged();  ///< other fields are in view, or a line below one has more to say
  void pointedAt(const QString& path);
  void listWanted();  ///< the reference is to come from a list

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void build();
  void fitWidth();
  void keepSurface();
  FieldEdit* addField(const FieldSpec& spec);
  [[nodiscard]] FormGroup* groupOf(const FieldSpec& spec) const;
  void addUnitNote(FormGroup* group);
  void addListButton(FormGroup* group);
  void addEmptyButton(FormGroup* group);
  void orderTabs();
  void refresh();
  void arrange();
  void arrangeOnceReleased();
  void showEntries();
  [[nodiscard]] bool isInView(const FieldSpec& spec) const;
  [[nodiscard]] QList<FieldEdit*> inView() const;
  void sayLine(FieldEdit& field, const Case& inputs, bool last);
  void sayRefusal(FieldEdit& field);
  [[nodiscard]] QString readLine(const FieldEdit& field, const Case& inputs) const;
  void setWanted(const QStringList& paths);
  void step(const QString& path, int by);
  void filledBesides(const QString& path, const QStringList& others);
  void openedGroup(const FormGroup& group);
  void pointed(const QString& path);

  CaseEditor& editor_;
  const HouseRules& rules_;
  QWidget* page_;
  QList<FormGroup*> groups_;
  QHash<QString, FieldEdit*> fields_;  // those that were in view once
  QLabel* unitNote_ = nullptr;
  QToolButton* listButton_ = nullptr;
  QToolButton* emptyButton_ = nullptr;  // in view while a list's entry is to be left
  bool inColumn_ = false;
  QList<QPointer<QWidget>> stops_;  // in the order of Tab
  QStringList wanted_;
  QHash<QString, QString> found_;  // what an end of the reference comes to for this child
  bool pressed_ = false;           // a button of the mouse is down
  bool arrangeWaits_ = false;
  QString last_;
  /// A field whose entry filled others as well, while the keyboard is still in it.
  struct JustFilled {
    QString by;
    QStringList others;
  };
  JustFilled justFilled_;
};

}  // namespace wardchalk::ui
