#pragma once

#include <QObject>
#include <QPointer>
#include <memory>

#include "core/rules/house_rules.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/settings.h"

namespace wardchalk::ui {

class Actions;
class CasesWindow;
class MainWindow;
class PdfBook;

/// Where several cases are opened, stepped through, printed and written.
class CasesDesk : public QObject {
  Q_OBJECT

 public:
  /// `rules` are those in force, also after they have been changed.
  CasesDesk(MainWindow& window, const HouseRules& rules, Settings& settings, Dialogs& dialogs);
  ~CasesDesk() override;

  void bind(Actions& actions);
  /// Opens the window of several cases, or brings it back.
  void show();

 private:
  void step(int by);
  void openRow(int at);
  void chooseFiles();
  void saveTable();
  void saveSheets();
  void printNext(std::size_t at);
  void endPrinting();
  void tellUnsaved(const Refusal& refusal);
  void tell(const QString& title, const QString& text);

  MainWindow& window_;
  const HouseRules& rules_;
  Settings& settings_;
  Dialogs& dialogs_;
  QPointer<CasesWindow> cases_;
  std::unique_ptr<PdfBook> pdf_;  // while sheets are written
  QString pdfFile_;
  QStringList leftOut_;  // where the cases stand that could not be read
};

}  // namespace wardchalk::ui
