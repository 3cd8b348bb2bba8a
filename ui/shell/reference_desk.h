#pragma once

#include <QObject>
#include <QPointer>
#include <functional>

#include "core/record/reference_list.h"
#include "core/rules/house_rules.h"
#include "ui/form/case_editor.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/settings.h"

namespace wardchalk::ui {

class ReferencePicker;

/// Where the reference of the form comes from a ward's own list. Which file the list is in is remembered;
/// nothing else is.
class ReferenceDesk : public QObject {
  Q_OBJECT

 public:
  /// `rules` are those in force, also after they have been changed.
  ReferenceDesk(QWidget* window, CaseEditor& editor, const HouseRules& rules, Settings& settings,
                Dialogs& dialogs);

  /// Opens the picker for the child and the medicine of the form.
  void choose();

 private:
  void readList(const QString& file);
  void openList();
  void importTable();
  void keepImport(const ReferenceImport& import, const QString& table);
  void showList();
  void tellUnread(const QString& file, const Refusal& refusal);
  void tell(const QString& title, const QString& file, const Refusal& refusal);
  void fill(const std::vector<WrittenEntry>& entries);

  QWidget* window_;
  CaseEditor& editor_;
  const HouseRules& rules_;
  Settings& settings_;
  Dialogs& dialogs_;
  ReferenceList list_;
  QString file_;  // of the list that is shown
  QPointer<ReferencePicker> picker_;
};

}  // namespace wardchalk::ui
