#pragma once

#include <QDialog>

#include "ui/record/cases_model.h"
#include "ui/record/long_work.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;

namespace wardchalk::ui {

/// Several cases in a list, one a row: a ward's round, the set of a class. Each is opened into the form from
/// here; all are worked, printed and written at once, beside the window and with a way to stop. Nothing of
/// them is kept when it closes.
class CasesWindow : public QDialog {
  Q_OBJECT

 public:
  CasesWindow(const HouseRules& rules, QWidget* parent);
  ~CasesWindow() override;

  /// Reads these files anew; what was there goes.
  void read(const QStringList& files);
  void writeTable(const QString& file);
  /// Whether a table or sheets can be written there, found out before the work is done for it. A file that
  /// was read is never written over.
  [[nodiscard]] Result<Done> checkTarget(const QString& file) const;

  [[nodiscard]] const CasesModel& model() const { return *model_; }
  [[nodiscard]] bool isBusy() const { return work_->isRunning() || printing_; }
  [[nodiscard]] int currentRow() const;
  void select(int row);
  /// Says this in place of the counts, until there is something to count again.
  void say(const QString& text);
  /// Asks to open another row; does nothing at the end. Whoever opens it selects it.
  void step(int by);

  /// Work of another kind, done piece by piece in this window's own thread, shares its progress bar and its
  /// Cancel.
  void beginPrinting();
  /// False when it was cancelled.
  bool showPrinting(int done, int all);
  void endPrinting();

 Q_SIGNALS:
  void openWanted(int row);
  void filesWanted();
  void tableWanted();
  void sheetsWanted();
  void failed(const wardchalk::Refusal& refusal);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  QWidget* buildTop();
  QWidget* buildList();
  void fitToLetters();
  QWidget* buildBottom();
  void connectWork();
  void setBusy(bool busy);
  void showCounts();
  void showCurrent();
  void openCurrent();

  const HouseRules& rules_;
  QStringList files_;
  CasesModel* model_;
  LongWork* work_;
  bool printing_ = false;
  bool cancelled_ = false;
  QLabel* counts_ = nullptr;
  QTableView* view_ = nullptr;
  QLabel* detail_ = nullptr;
  QProgressBar* progress_ = nullptr;
  QPushButton* cancel_ = nullptr;
  QList<QPushButton*> idleButtons_;  // pressed only while nothing is running
};

}  // namespace wardchalk::ui
