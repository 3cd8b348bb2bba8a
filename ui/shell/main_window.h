#pragma once

#include <QMainWindow>
#include <QPointer>
#include <optional>

#include "core/check/shown.h"
#include "core/session/case_session.h"
#include "ui/form/case_editor.h"
#include "ui/shell/case_document.h"
#include "ui/shell/case_voice.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/own_clipboard.h"
#include "ui/shell/settings.h"

class QStackedWidget;
class QVBoxLayout;

namespace wardchalk::ui {

struct SheetMade;
class Actions;
class Board;
class CautionBar;
class CopyDesk;
class CasesDesk;
class Form;
class IdleDesk;
class RulesDesk;
class SecondCheckDesk;
class SettingsDesk;
class ReferenceDesk;
class PracticeDesk;
class SheetDesk;
class Sides;
class WorkingPane;

/// The window: the form at the left, flag, amount and working at the right, the caution below. It hands what
/// is typed to the core and the worksheet to the pane, and calculates nothing.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  MainWindow(HouseRules rules, Settings& settings, Dialogs& dialogs, QWidget* parent = nullptr);
  ~MainWindow() override;

  /// Opens a case file, or says why not and leaves the open case as it is.
  bool openFile(const QString& file);

  /// The case of one row of several takes the place of what stands in the form. False when that was not let
  /// go.
  bool openRow(const std::vector<WrittenEntry>& entries);

  /// Shows the working on a board that fills a screen; one that is open already gives way to it.
  void showBoard();

  [[nodiscard]] CaseEditor& editor() { return editor_; }
  /// What the pane shows.
  [[nodiscard]] const Worksheet& worksheet() const { return sheet_; }

 protected:
  bool event(QEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void buildCentre();
  QWidget* buildSides();
  void buildDesks(QStackedWidget* pages, QVBoxLayout* notices);
  void bindFileActions();
  void bindSheetActions();
  void bindWardActions();
  void bindEditActions();
  void bindViewActions();
  void bindHelpActions();
  void bindCheckActions();
  void bindSettings();
  void connectSides();

  void workAgain();
  void followCase();
  void followDesks();
  void followSecondCheck();
  void useRules();
  void hideOther();
  void nameWindow();
  bool mayLeave(const QString& question);
  bool mayForget(const QString& question);
  void newChild();
  void openChosen();
  bool save();
  bool saveAs();
  bool saveTo(const QString& file, KnownFile believed);
  void showExample();
  void makeSheet(void (SheetDesk::*make)(const Shown&, const SheetMade&));
  void showWhatMayBeSeen();
  void useTextSize(int percent);
  void setUnitSystem(UnitSystem system);
  void sayAgain();
  void goToWorking();
  void goToOtherSide();
  void goToOrigin(const QString& path);
  void tellRefusal(const QString& title, const QString& file, const Refusal& refusal);

  UnitSystem unitsChosen_ = UnitSystem::none;  // the user's own, which ends with the child
  HouseRules rules_;
  Settings& settings_;
  Dialogs& dialogs_;
  CaseEditor editor_;
  CaseSession session_;
  CaseDocument document_;
  CaseVoice voice_{*this};
  OwnClipboard clipboard_;
  Worksheet sheet_;
  Shown shown_{Worksheet{}};
  Actions* actions_;
  Sides* sides_ = nullptr;
  Form* form_ = nullptr;
  WorkingPane* pane_ = nullptr;
  QPointer<Board> board_;
  SheetDesk* desk_;
  ReferenceDesk* references_;
  CasesDesk* cases_;
  CopyDesk* copies_ = nullptr;
  PracticeDesk* practice_;
  CautionBar* caution_ = nullptr;
  RulesDesk* rulesDesk_ = nullptr;
  SecondCheckDesk* second_ = nullptr;
  IdleDesk* idle_ = nullptr;
  SettingsDesk* settingsDesk_ = nullptr;
};

}  // namespace wardchalk::ui
