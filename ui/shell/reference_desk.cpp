#include "ui/shell/reference_desk.h"

#include <QDate>
#include <QFileInfo>

#include "core/medicine/paths.h"
#include "core/record/text_file.h"
#include "ui/record/import_report.h"
#include "ui/record/reference_picker.h"
#include "ui/shell/case_document.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr std::string_view room = "reference.";

Date today() {
  const QDate date = QDate::currentDate();
  return {date.year(), date.month(), date.day()};
}

}  // namespace

ReferenceDesk::ReferenceDesk(QWidget* window, CaseEditor& editor, const HouseRules& rules, Settings& settings,
                             Dialogs& dialogs)
    : QObject(window),
      window_(window),
      editor_(editor),
      rules_(rules),
      settings_(settings),
      dialogs_(dialogs) {}

void ReferenceDesk::choose() {
  editor_.finishAll();
  const Case inputs = editor_.draft().toCase();
  delete picker_;
  picker_ = new ReferencePicker(inputs.child, inputs.order, rules_, today(), window_);
  picker_->setAttribute(Qt::WA_DeleteOnClose);
  connect(picker_, &ReferencePicker::taken, this, &ReferenceDesk::fill);
  connect(picker_, &ReferencePicker::listWanted, this, &ReferenceDesk::openList);
  connect(picker_, &ReferencePicker::importWanted, this, &ReferenceDesk::importTable);
  if (!settings_.referenceList().isEmpty()) readList(settings_.referenceList());
  showList();
  picker_->search(QString::fromStdString(inputs.order.medicine));
  picker_->open();
}

/// The file is read anew each time, so that a list that was corrected meanwhile is the one that is used.
void ReferenceDesk::readList(const QString& file) {
  list_ = {};
  file_.clear();
  const Result<std::string> text = readTextFile(nativePath(file));
  if (!text) return tellUnread(file, text.refusal());
  Result<ReferenceList> list = readReferenceList(*text);
  if (!list) return tellUnread(file, list.refusal());
  list_ = *std::move(list);
  file_ = file;
  settings_.setReferenceList(QFileInfo(file).absoluteFilePath());
}

/// A remembered list is forgotten then, or the same would be told each time.
void ReferenceDesk::tellUnread(const QString& file, const Refusal& refusal) {
  if (file == settings_.referenceList()) settings_.setReferenceList({});
  tell(tr("The list was not opened"), file, refusal);
}

void ReferenceDesk::showList() {
  if (picker_) picker_->setList(list_, file_.isEmpty() ? QString() : QFileInfo(file_).fileName());
}

void ReferenceDesk::openList() {
  const QString file = dialogs_.file(
      picker_, {FileQuestion::open, tr("Open the ward's list"), tr("Reference lists (*.json)"), {}});
  if (file.isEmpty()) return;
  readList(file);
  showList();
}

void ReferenceDesk::importTable() {
  const QString file =
      dialogs_.file(picker_, {FileQuestion::open, tr("Make a list from a table"), tr("Tables (*.csv)"), {}});
  if (file.isEmpty()) return;
  const Result<std::string> text = readTextFile(nativePath(file));
  if (!text) return tell(tr("The table was not read"), file, text.refusal());
  const Result<ReferenceImport> import = importReferenceList(*text);
  if (!import) return tell(tr("The table was not read"), file, import.refusal());
  auto* report = new ImportReport(*import, today(), picker_);
  report->setAttribute(Qt::WA_DeleteOnClose);
  connect(report, &QDialog::accepted, this, [this, kept = *import, file] { keepImport(kept, file); });
  report->open();
}

void ReferenceDesk::keepImport(const ReferenceImport& import, const QString& table) {
  const QString file = dialogs_.file(picker_, {FileQuestion::save, tr("Save the list"),
                                               tr("Reference lists (*.json)"), tr("reference_list.json")});
  if (file.isEmpty()) return;
  Result<Done> written = checkNotInput(nativePath(file), nativePath(table));
  if (written) written = writeTextFile(nativePath(file), writeReferenceList(import.list));
  if (!written) return tell(tr("The list was not saved"), file, written.refusal());
  readList(file);
  showList();
}

void ReferenceDesk::tell(const QString& title, const QString& file, const Refusal& refusal) {
  dialogs_.tell(picker_ ? picker_.data() : window_, title, refusedFile(file, refusal));
}

void ReferenceDesk::fill(const std::vector<WrittenEntry>& entries) {
  editor_.fill(tr("reference from the list", "what Undo takes back"), room, entries);
}

}  // namespace wardchalk::ui
