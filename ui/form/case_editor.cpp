#include "ui/form/case_editor.h"

#include <QUndoCommand>
#include <algorithm>

#include "core/record/case_entry.h"
#include "core/record/reference_choice.h"
#include "ui/form/field_table.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

/// One change of one field.
class CaseEditor::Edit : public QUndoCommand {
 public:
  Edit(CaseEditor& editor, QString path, std::string before, std::string after, int typing)
      : editor_(editor),
        path_(std::move(path)),
        before_(std::move(before)),
        after_(std::move(after)),
        typing_(typing) {
    setText(nameOf(fieldSpec(path_.toStdString())));
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
  CaseEditor& editor_;
  QString path_;
  std::string before_;
  std::string after_;
  int typing_;
  bool done_ = false;
};

/// Several lines changed at once: a room was filled from a list, or what was read was written. Each is read,
/// and left as it stands.
class CaseEditor::Lines : public QUndoCommand {
 public:
  enum class State : std::uint8_t { toDo, done };

  Lines(CaseEditor& editor, const QString& name, FieldLines before, FieldLines after, State state)
      : QUndoCommand(name),
        editor_(editor),
        before_(std::move(before)),
        after_(std::move(after)),
        state_(state) {}

  void undo() override { editor_.putAll(before_); }
  void redo() override {
    if (std::exchange(state_, State::toDo) == State::toDo) editor_.putAll(after_);
  }

 private:
  CaseEditor& editor_;
  FieldLines before_;
  FieldLines after_;
  State state_;
};

CaseEditor::CaseEditor(QObject* parent) : QObject(parent), undoStack_(this) {}

void CaseEditor::edit(const QString& path, const QString& line) {
  const std::string& before = draft_.line(path.toStdString());
  if (before == line.toStdString()) return;
  if (isKept(path)) {
    Q_EMIT changed();  // whoever shows the draft takes back what was written over it
    return;
  }
  undoStack_.push(new Edit(*this, path, before, line.toStdString(), typing_));
}

bool CaseEditor::isKept(const QString& path) const {
  return isKeptByList(path.toStdString(), draft_.toCase().reference);
}

void CaseEditor::touch(const QString& path) {
  if (isKept(path)) return;
  draft_.touch(path.toStdString());
  Q_EMIT changed();
}

void CaseEditor::put(const QString& path, const std::string& line) {
  draft_.set(path.toStdString(), line);
  Q_EMIT changed();
}

/// What Undo brings back is read, and not written anew until somebody edits it.
void CaseEditor::putBack(const QString& path, const std::string& line) {
  draft_.set(path.toStdString(), line);
  draft_.commitAsItStands(path.toStdString());
  ++typing_;
  Q_EMIT changed();
  Q_EMIT takenBack(path);
}

void CaseEditor::putAll(const FieldLines& fields) {
  for (const auto& [path, line] : fields) draft_.set(path, line);
  for (const auto& [path, line] : fields) draft_.commitAsItStands(path);
  ++typing_;
  Q_EMIT changed();
}

CaseEditor::FieldLines CaseEditor::linesNow() const {
  FieldLines lines;
  for (const CaseEntry& entry : caseEntries()) lines.emplace_back(entry.path, draft_.line(entry.path));
  return lines;
}

void CaseEditor::fill(const QString& name, std::string_view room, const std::vector<WrittenEntry>& entries) {
  CaseDraft filled;
  filled.open(entries);
  FieldLines before;
  FieldLines after;
  for (const CaseEntry& entry : caseEntries()) {
    if (!entry.path.starts_with(room)) continue;
    before.emplace_back(entry.path, draft_.line(entry.path));
    after.emplace_back(entry.path, filled.line(entry.path));
  }
  undoStack_.push(new Lines(*this, name, std::move(before), std::move(after), Lines::State::toDo));
}

void CaseEditor::emptyReference() {
  constexpr std::string_view room = "reference.";
  const FieldLines lines = linesNow();
  if (std::ranges::any_of(lines,
                          [](const auto& one) { return one.first.starts_with(room) && !one.second.empty(); }))
    fill(tr("emptied reference", "what Undo takes back"), room, {});
}

void CaseEditor::finish(const QString& path) {
  if (draft_.state(path.toStdString()) != FieldState::pending) return;
  const FieldLines before = linesNow();
  const QString typed = QString::fromStdString(draft_.line(path.toStdString()));
  draft_.commit(path.toStdString());
  ++typing_;
  FieldLines was;
  FieldLines is;
  QStringList others;
  for (const auto& [one, line] : before) {
    if (draft_.line(one) == line) continue;
    was.emplace_back(one, line);
    is.emplace_back(one, draft_.line(one));
    if (fromCore(one) != path) others << fromCore(one);
  }
  if (!is.empty())
    undoStack_.push(new Lines(*this, nameOf(fieldSpec(path.toStdString())), std::move(was), std::move(is),
                              Lines::State::done));
  Q_EMIT wasRead(path, typed);
  if (!others.isEmpty()) Q_EMIT filledBesides(path, others);
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

void CaseEditor::offer(const BareUnits& units) {
  draft_.offer(units);
  Q_EMIT changed();
}

}  // namespace wardchalk::ui
