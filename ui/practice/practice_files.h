#pragma once

#include <QString>

#include "ui/paper/paper_format.h"

class QWidget;

namespace wardchalk::ui {

/// What practice asks the desktop for: names of files and the answer to a question. A file is read or written
/// only after it was chosen here.
class PracticeFiles {
 public:
  virtual ~PracticeFiles() = default;

  /// The set file to open, or to save to; empty when none was chosen.
  [[nodiscard]] virtual QString setToOpen(QWidget* parent) = 0;
  [[nodiscard]] virtual QString setToSave(QWidget* parent) = 0;
  [[nodiscard]] virtual QString tableToSave(QWidget* parent) = 0;
  [[nodiscard]] virtual QString pdfToSave(QWidget* parent, const QString& suggested) = 0;
  /// Whether what would be lost may go.
  [[nodiscard]] virtual bool mayLose(QWidget* parent, const QString& question) = 0;
  virtual void tell(QWidget* parent, const QString& title, const QString& text) = 0;
  [[nodiscard]] virtual PaperSize paper() const = 0;
  virtual void setPaper(PaperSize size) = 0;
};

}  // namespace wardchalk::ui
