#include "ui/shell/file_dialogs.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSettings>

namespace wardchalk::ui {

namespace {

/// "json" of "Case files (*.json)"
QString endingOf(const QString& filter) {
  static const QRegularExpression pattern(QStringLiteral("\\*\\.(\\w+)"));
  return pattern.match(filter).captured(1);
}

void setUpSaving(QFileDialog& dialog, const FileQuestion& question) {
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setFileMode(QFileDialog::AnyFile);
  dialog.setDefaultSuffix(endingOf(question.filter));
  dialog.setOption(QFileDialog::DontConfirmOverwrite, question.kind == FileQuestion::saveAskedLater);
  const QFileInfo suggested(question.suggested);
  if (suggested.isAbsolute()) dialog.setDirectory(suggested.absolutePath());
  dialog.selectFile(suggested.fileName());
}

}  // namespace

/// Qt opens its settings file anew for each dialog and writes the folder and the last names into it. There is
/// no way to forbid that, but the folder of such files may be named: one in which no file can be.
void keepFoldersUnwritten() {
#if defined(Q_OS_UNIX) && !defined(Q_OS_DARWIN)
  QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, QStringLiteral("/dev/null"));
#endif
}

QStringList askForFiles(QWidget* parent, const FileQuestion& question) {
  keepFoldersUnwritten();
  QFileDialog dialog(parent, question.title, {}, question.filter);
#if defined(Q_OS_UNIX) && !defined(Q_OS_DARWIN)
  dialog.setOption(QFileDialog::DontUseNativeDialog);  // a desktop's own keeps lists of what was opened
#endif
  switch (question.kind) {
    case FileQuestion::open:
      dialog.setFileMode(QFileDialog::ExistingFile);
      break;
    case FileQuestion::openSeveral:
      dialog.setFileMode(QFileDialog::ExistingFiles);
      break;
    case FileQuestion::save:
    case FileQuestion::saveAskedLater:
      setUpSaving(dialog, question);
      break;
  }
  return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles() : QStringList();
}

}  // namespace wardchalk::ui
