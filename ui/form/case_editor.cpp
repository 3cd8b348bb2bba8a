#include "ui/form/case_editor.h"

#include <QUndoCommand>
#include <algorithm>

#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "ui/form/field_table.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

/// One change of one field.
class CaseEditor::Edit : public QUndoCommand {
 public:
  Edit(CaseEditor& editor, QString path, Boxes before, Boxes after, int typing)
      : editor_(editor),
        path_(std::move(path)),
        before_(std::move(before)),
        after_(std::move(after)),
        typing_(typing) {
    setText(tr("%1", "what Undo takes back").arg(nameOf(fieldSpec(path_.toStdString()))));
  }

  void undo() override { editor_.putBack(path_, before_); }

  void redo() override {
    if (done_)
      editor_.putBack(path_, after_);
    else
      editor_.put(path_, after_);
    done_ = true;
  }

  [[nodiscard]] int id() const override { return 1; }

  bool mergeWith(const QUndoCommand* later) override {
    const auto* edit = static_cast<const Edit*>(later);
    if (edit->path_ != path_ || edit->typing_ != typing_) return false;
    after_ = edit->after_;
    setObsolete(after_ == before_);
    return true;
  }

 private:
  static QString tr(const char* text, const char* comment) { return CaseEditor::tr(text, comment); }

  CaseEditor& editor_;
  QString path_;
  Boxes before_;
  Boxes after_;
  int typing_;
  bool done_ = false;
};

/// All fields of a room changed at once.
class CaseEditor::Filling : public QUndoCommand {
 public:
  Filling(CaseEditor& editor, const QString& name, std::vector<FieldBoxes> before,
          std::vector<FieldBoxes> after)
      : QUndoCommand(name), editor_(editor), before_(std::move(before)), after_(std::move(after)) {}

  void undo() override { editor_.putAll(before_); }
  void redo() override { editor_.putAll(after_); }

 private:
  CaseEditor& editor_;
  std::vector<FieldBoxes> before_;
  std::vector<FieldBoxes> after_;
};

CaseEditor::CaseEditor(QObject* parent) : QObject(parent), undoStack_(this) {}

void CaseEditor::edit(const QString& path, const Boxes& boxes) {
  const Boxes& before = draft_.boxes(path.toStdString());
  if (before == boxes) return;
  undoStack_.push(new Edit(*this, path, before, boxes, typing_));
}

void CaseEditor::put(const QString& path, const Boxes& boxes) {
  draft_.set(path.toStdString(), boxes);
  Q_EMIT changed();
}

void CaseEditor::putBack(const QString& path, const Boxes& boxes) {
  draft_.set(path.toStdString(), boxes);
  draft_.commit(path.toStdString());
  ++typing_;
  Q_EMIT changed();
  Q_EMIT takenBack(path);
}

void CaseEditor::fill(const QString& name, std::string_view room, const std::vector<WrittenEntry>& entries) {
  const auto textOf = [&](std::string_view path) {
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [&](const WrittenEntry& entry) { return entry.path == path; });
    return found == entries.end() ? std::string_view() : std::string_view(found->text);
  };
  const Boxes high = boxesOf(path::high, textOf(path::high));
  std::vector<FieldBoxes> before;
  std::vector<FieldBoxes> after;
  for (const CaseEntry& entry : caseEntries()) {
    if (!entry.path.starts_with(room)) continue;
    const std::string_view text = textOf(entry.path);
    before.emplace_back(entry.path, draft_.boxes(entry.path));
    after.emplace_back(entry.path, text.empty() ? Boxes{} : boxesOf(entry.path, text, high));
  }
  undoStack_.push(new Filling(*this, name, std::move(before), std::move(after)));
}

void CaseEditor::putAll(const std::vector<FieldBoxes>& fields) {
  for (const auto& [path, boxes] : fields) draft_.set(path, boxes);
  for (const auto& [path, boxes] : fields) draft_.commit(path);
  ++typing_;
  Q_EMIT changed();
}

void CaseEditor::finish(const QString& path) {
  if (draft_.state(path.toStdString()) != FieldState::pending) return;
  draft_.commit(path.toStdString());
  ++typing_;
  Q_EMIT changed();
}

void CaseEditor::finishAll() {
  for (const FieldSpec& spec : fieldTable()) finish(fromCore(spec.path));
}

void CaseEditor::open(const std::vector<WrittenEntry>& entries) {
  draft_.open(entries);
  forgetSteps();
  ++typing_;
  Q_EMIT changed();
}

void CaseEditor::clear() {
  draft_.clear();
  forgetSteps();
  ++typing_;
  Q_EMIT changed();
}

/// An empty stack that was marked as changed stays so when it is cleared.
void CaseEditor::forgetSteps() {
  undoStack_.clear();
  undoStack_.setClean();
}

void CaseEditor::restore(Shelved shelved) {
  draft_ = std::move(shelved.draft);
  forgetSteps();
  if (shelved.modified) undoStack_.resetClean();
  ++typing_;
  Q_EMIT changed();
}

void CaseEditor::offer(UnitSystem system) {
  draft_.offer(system);
  Q_EMIT changed();
}

}  // namespace wardchalk::ui
