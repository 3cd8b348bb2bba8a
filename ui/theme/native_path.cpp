#include "ui/theme/native_path.h"

#include <QFile>
#include <QFileInfo>

namespace wardchalk::ui {

/// In the bytes that the system knows the name by; not every name is text.
std::filesystem::path nativePath(const QString& file) {
  if (file.isEmpty()) return {};
#ifdef Q_OS_WIN
  return QFileInfo(file).absoluteFilePath().toStdU16String();
#else
  return QFile::encodeName(QFileInfo(file).absoluteFilePath()).toStdString();
#endif
}

}  // namespace wardchalk::ui
