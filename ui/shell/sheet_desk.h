#pragma once

#include <QObject>
#include <QStringList>

#include "core/check/shown.h"
#include "ui/paper/sheet_content.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/settings.h"

namespace wardchalk::ui {

class SheetPreview;

/// Now, by this program; no second check.
[[nodiscard]] SheetMade madeNow();

/// Where what may be seen of a worksheet becomes a sheet of paper. `made` says when, and what was recorded of
/// a second check.
class SheetDesk : public QObject {
  Q_OBJECT

 public:
  SheetDesk(QWidget* window, Settings& settings, Dialogs& dialogs);

  /// Prints on a printer that is chosen first.
  void print(const Shown& shown, const SheetMade& made);
  /// Shows the pages in a window of their own, from which they can be printed or saved.
  void preview(const Shown& shown, const SheetMade& made);
  void savePdf(const Shown& shown, const SheetMade& made);

 private:
  void print(const SheetContent& content);
  void savePdf(const SheetContent& content);

  QWidget* window_;
  Settings& settings_;
  Dialogs& dialogs_;
};

}  // namespace wardchalk::ui
