#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <string_view>
#include <utility>
#include <vector>

#include "core/record/case_draft.h"
#include "core/session/shelved.h"

namespace wardchalk::ui {

/// Everything that changes the draft goes through here: the form, undo, files, New child. Whoever shows the
/// draft listens.
class CaseEditor : public QObject {
  Q_OBJECT

 public:
  explicit CaseEditor(QObject* parent = nullptr);

  [[nodiscard]] const CaseDraft& draft() const { return draft_; }
  [[nodiscard]] QUndoStack& undoStack() { return undoStack_; }

  /// What now stands in the line of a field. Changes of one field are one step back until it is read. What
  /// the ward's list keeps in its entry stays as it is.
  void edit(const QString& path, const QString& line);
  /// The line is being changed, though it does not show it yet.
  void touch(const QString& path);
  /// These entries, as a file has them, take the place of everything under `room` ("reference."), in one step
  /// back that is called `name`. Every field of the room is read at once.
  void fill(const QString& name, std::string_view room, const std::vector<WrittenEntry>& entries);
  /// Empties the reference in one step back: who leaves a list's entry takes its figures out with it, so that
  /// none of them is left to judge another medicine.
  void emptyReference();
  /// Reads a field that is being changed. That its line is then written in the safe form, and what the entry
  /// fills besides, is a step of its own.
  void finish(const QString& path);
  /// Reads every field that is being changed.
  void finishAll();

  /// A file takes the place of everything; it cannot be undone.
  void open(const std::vector<WrittenEntry>& entries);
  /// Empties every field; it cannot be undone, so that nothing about a child stays.
  void clear();
  void offer(const BareUnits& units);

  /// What stands in the form, and whether it was changed.
  [[nodiscard]] Shelved shown() const { return {draft_, isModified()}; }
  /// Puts other entries into the form, whatever stands there now. What could be undone is forgotten.
  void restore(Shelved shelved);

  /// Whether something was entered or changed since the last file was opened or saved.
  [[nodiscard]] bool isModified() const { return !undoStack_.isClean(); }
  void markSaved() { undoStack_.setClean(); }

 Q_SIGNALS:
  /// What was typed into this field was read; before `changed`.
  void wasRead(const QString& path, const QString& typed);
  /// What was typed into this field filled these as well.
  void filledBesides(const QString& path, const QStringList& others);
  void changed();                       ///< any field may hold something else, or be read otherwise
  void takenBack(const QString& path);  ///< undo or redo changed this field

 private:
  class Edit;
  class Lines;
  /// What stands in the line of each of some fields.
  using FieldLines = std::vector<std::pair<std::string_view, std::string>>;
  [[nodiscard]] FieldLines linesNow() const;
  [[nodiscard]] bool isKept(const QString& path) const;
  void forgetSteps();
  void put(const QString& path, const std::string& line);
  void putBack(const QString& path, const std::string& line);
  void putAll(const FieldLines& fields);

  CaseDraft draft_;
  QUndoStack undoStack_;
  int typing_ = 0;  // grows with each field that is read, so that only edits in between become one
};

}  // namespace wardchalk::ui
