#pragma once

#include <QString>
#include <QStringList>
#include <cstdint>

class QPrinter;
class QWidget;

namespace wardchalk::ui {

/// What a person answers when entries would be lost.
enum class Unsaved : std::uint8_t { save, discard, keep };

/// A question for files: to be read, several at once, or to be written.
struct FileQuestion {
  enum Kind : std::uint8_t { open, openSeveral, save };
  Kind kind;
  QString title;
  QString filter;
  QString suggested;  ///< the name to save under
};

/// A question about going on. The careful answer is the one that is offered, and it holds when the question
/// is closed without an answer.
struct GoOnQuestion {
  QString title;
  QString text;
  QString careful;
  QString goOn;
};

/// What a person answers when something else stands where the case is to be saved than was believed.
enum class Overwrite : std::uint8_t { keepMine, openTheirs, saveElsewhere, stop };

/// The questions that the window asks in dialogs; a test answers them itself.
class Dialogs {
 public:
  virtual ~Dialogs() = default;

  /// The file to open; empty when none was chosen.
  [[nodiscard]] virtual QString fileToOpen(QWidget* parent) = 0;
  /// The file to save to; empty when none was chosen. Whether one that is there may be overwritten is not
  /// asked.
  [[nodiscard]] virtual QString fileToSave(QWidget* parent, const QString& suggested) = 0;
  /// The PDF to write a sheet to; empty when none was chosen.
  [[nodiscard]] virtual QString pdfToSave(QWidget* parent, const QString& suggested) = 0;
  /// Whether a printer was chosen; it is set up then.
  [[nodiscard]] virtual bool choosePrinter(QWidget* parent, QPrinter& printer) = 0;
  /// The files of the answer; none when none was chosen.
  [[nodiscard]] virtual QStringList files(QWidget* parent, const FileQuestion& question) = 0;
  /// The one file of the answer; empty when none was chosen.
  [[nodiscard]] QString file(QWidget* parent, const FileQuestion& question) {
    return files(parent, question).value(0);
  }
  [[nodiscard]] virtual Unsaved unsaved(QWidget* parent, const QString& question) = 0;
  /// `theirs`: whether there is something to open.
  [[nodiscard]] virtual Overwrite overwrite(QWidget* parent, const QString& question, bool theirs) = 0;
  /// The house rules to open, or the file to save them to; empty when none was chosen.
  [[nodiscard]] virtual QString rulesToOpen(QWidget* parent) = 0;
  [[nodiscard]] virtual QString rulesToSave(QWidget* parent, const QString& suggested) = 0;
  /// Whether it is to go on all the same.
  [[nodiscard]] virtual bool goesOn(QWidget* parent, const GoOnQuestion& question) = 0;
  virtual void tell(QWidget* parent, const QString& title, const QString& text) = 0;
};

/// The desktop's own dialogs.
class DesktopDialogs : public Dialogs {
 public:
  [[nodiscard]] QString fileToOpen(QWidget* parent) override;
  [[nodiscard]] QString fileToSave(QWidget* parent, const QString& suggested) override;
  [[nodiscard]] QString pdfToSave(QWidget* parent, const QString& suggested) override;
  [[nodiscard]] bool choosePrinter(QWidget* parent, QPrinter& printer) override;
  [[nodiscard]] QStringList files(QWidget* parent, const FileQuestion& question) override;
  [[nodiscard]] Unsaved unsaved(QWidget* parent, const QString& question) override;
  [[nodiscard]] Overwrite overwrite(QWidget* parent, const QString& question, bool theirs) override;
  [[nodiscard]] QString rulesToOpen(QWidget* parent) override;
  [[nodiscard]] QString rulesToSave(QWidget* parent, const QString& suggested) override;
  [[nodiscard]] bool goesOn(QWidget* parent, const GoOnQuestion& question) override;
  void tell(QWidget* parent, const QString& title, const QString& text) override;
};

}  // namespace wardchalk::ui
