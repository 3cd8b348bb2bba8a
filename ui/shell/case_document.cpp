#include "ui/shell/case_document.h"

#include <QFile>
#include <QFileInfo>

#include "core/record/case_file.h"
#include "ui/form/field_table.h"

namespace wardchalk::ui {

QString CaseDocument::name() const { return QFileInfo(file_).fileName(); }

Result<Done> CaseDocument::open(const QString& file) {
  const Result<std::string> text = readTextFile(nativePath(file));
  if (!text) return text.refusal();
  const Result<CaseFile> read = readCaseFile(*text);
  if (!read) return read.refusal();
  editor_.open(read->entries);
  file_ = file;
  known_ = KnownFile::of(*text);
  return Done{};
}

void CaseDocument::openEntries(const std::vector<WrittenEntry>& entries) {
  editor_.open(entries);
  forgetFile();
}

void CaseDocument::openExample() {
  QFile resource(QStringLiteral(":/cases/plover.json"));
  if (!resource.open(QIODevice::ReadOnly)) return;
  const Result<CaseFile> read = readCaseFile(resource.readAll().toStdString());
  Q_ASSERT(read);
  openEntries(read->entries);
}

void CaseDocument::forgetFile() {
  file_.clear();
  known_ = KnownFile::nothing();
}

Result<Done> CaseDocument::save(const QString& file, const KnownFile& believed) {
  editor_.finishAll();
  if (const auto path = firstRefused(editor_.draft())) return *editor_.draft().refusal(*path);
  std::string text = writeCaseFile(editor_.draft().entries());
  if (auto written = writeTextFile(nativePath(file), text, believed); !written) return written;
  file_ = file;
  known_ = KnownFile::of(std::move(text));
  editor_.markSaved();
  return Done{};
}

void CaseDocument::clear() {
  editor_.clear();
  forgetFile();
}

}  // namespace wardchalk::ui
