#pragma once

#include "ui/theme/questions.h"

class QPrinter;

namespace wardchalk::ui {

/// What a person answers when entries would be lost.
enum class Unsaved : std::uint8_t { save, discard, keep };

/// What a person answers when something else stands where the case is to be saved than was believed.
enum class Overwrite : std::uint8_t { keepMine, openTheirs, saveElsewhere, stop };

/// The questions of the ward's window.
class Dialogs : public Questions {
 public:
  /// Whether a printer was chosen; it is set up then.
  [[nodiscard]] virtual bool choosePrinter(QWidget* parent, QPrinter& printer) = 0;
  [[nodiscard]] virtual Unsaved unsaved(QWidget* parent, const QString& question) = 0;
  /// `theirs`: whether there is something to open.
  [[nodiscard]] virtual Overwrite overwrite(QWidget* parent, const QString& question, bool theirs) = 0;
};

/// The desktop's own dialogs.
class DesktopDialogs : public Dialogs {
 public:
  [[nodiscard]] QStringList files(QWidget* parent, const FileQuestion& question) override;
  [[nodiscard]] bool goesOn(QWidget* parent, const GoOnQuestion& question) override;
  void tell(QWidget* parent, const QString& title, const QString& text) override;
  [[nodiscard]] bool choosePrinter(QWidget* parent, QPrinter& printer) override;
  [[nodiscard]] Unsaved unsaved(QWidget* parent, const QString& question) override;
  [[nodiscard]] Overwrite overwrite(QWidget* parent, const QString& question, bool theirs) override;
};

}  // namespace wardchalk::ui
