#include "ui/form/case_editor.h"

#include <QUndoCommand>

#include "ui/form/field_table.h"

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

void CaseEditor::finish(const QString& path) {
  if (draft_.state(path.toStdString()) != FieldState::pending) return;
  draft_.commit(path.toStdString());
  ++typing_;
  Q_EMIT changed();
}

void CaseEditor::finishAll() {
  for (const FieldSpec& spec : fieldTable())
    finish(QString::fromUtf8(spec.path.data(), static_cast<qsizetype>(spec.path.size())));
}

void CaseEditor::open(const std::vector<WrittenEntry>& entries) {
  draft_.open(entries);
  undoStack_.clear();
  ++typing_;
  Q_EMIT changed();
}

void CaseEditor::clear() {
  draft_.clear();
  undoStack_.clear();
  ++typing_;
  Q_EMIT changed();
}

Shelved CaseEditor::take() {
  Shelved taken{draft_, isModified()};
  clear();
  return taken;
}

void CaseEditor::restore(Shelved shelved) {
  draft_ = std::move(shelved.draft);
  undoStack_.clear();
  if (shelved.modified) undoStack_.resetClean();
  ++typing_;
  Q_EMIT changed();
}

void CaseEditor::offer(UnitSystem system) {
  draft_.offer(system);
  Q_EMIT changed();
}

}  // namespace wardchalk::ui
