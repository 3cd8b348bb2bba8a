#include "ui/shell/case_document.h"

#include <QFile>
#include <QFileInfo>

#include "core/record/case_file.h"
#include "core/record/text_file.h"

namespace wardchalk::ui {

std::filesystem::path nativePath(const QString& file) {
  return QFileInfo(file).absoluteFilePath().toStdU16String();
}

QString CaseDocument::name() const { return QFileInfo(file_).fileName(); }

std::optional<Refusal> CaseDocument::open(const QString& file) {
  const Result<std::string> text = readTextFile(nativePath(file));
  if (!text) return text.refusal();
  const Result<CaseFile> read = readCaseFile(*text);
  if (!read) return read.refusal();
  editor_.open(read->entries);
  file_ = file;
  return std::nullopt;
}

void CaseDocument::openEntries(const std::vector<WrittenEntry>& entries) {
  editor_.open(entries);
  file_.clear();
}

void CaseDocument::openExample() {
  QFile resource(QStringLiteral(":/cases/plover.json"));
  if (!resource.open(QIODevice::ReadOnly)) return;
  const Result<CaseFile> read = readCaseFile(resource.readAll().toStdString());
  Q_ASSERT(read);
  openEntries(read->entries);
}

std::optional<Refusal> CaseDocument::save(const QString& file) {
  editor_.finishAll();
  if (const auto path = editor_.draft().refusedPath()) return editor_.draft().refusal(*path);
  if (auto refusal = writeTextFile(nativePath(file), writeCaseFile(editor_.draft().entries())))
    return refusal;
  file_ = file;
  editor_.markSaved();
  return std::nullopt;
}

void CaseDocument::clear() {
  editor_.clear();
  file_.clear();
}

}  // namespace wardchalk::ui
