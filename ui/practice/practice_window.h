#pragma once

#include <QWidget>
#include <memory>

#include "core/practice/sessions/session.h"
#include "ui/paper/paper_format.h"
#include "ui/theme/questions.h"

class QStackedWidget;

namespace wardchalk::ui {

class PlanPage;
class ProblemPage;
class ReviewPage;
class SetPage;
class ClassPage;
class SummaryPage;

/// The place to practise: a window of its own under a striped band. No case of the ward is reached from here
/// and no bedside sheet printed. What a student does is kept nowhere unless the results are saved.
class PracticeWindow : public QWidget {
  Q_OBJECT

 public:
  /// `firstSeed` draws the set that is proposed; `zoom` in percent. `questions` must outlive the window.
  PracticeWindow(Questions& questions, PaperSize paper, std::uint64_t firstSeed, int zoom,
                 QWidget* parent = nullptr);
  ~PracticeWindow() override;

  /// The session that is under way or was; none before the first.
  [[nodiscard]] const PracticeSession* session() const { return session_.get(); }
  /// Size of letters in percent of the desktop's.
  void setZoom(int percent);
  /// Of sheets for a class.
  void setPaper(PaperSize size);

 Q_SIGNALS:
  void paperChosen(PaperSize size);
  void textSizeChosen(int percent);  ///< by a key, for the whole program

 protected:
  void closeEvent(QCloseEvent* event) override;
  bool event(QEvent* event) override;

 private:
  void connectPages();
  void bindKeys();
  void applyScheme();
  [[nodiscard]] double zoom() const { return zoom_ / 100.0; }

  void openSet();
  void makeSet();
  void showSheet(const PracticeSet& set);
  /// With a seat it is a teacher's sheet, without one somebody's own practice.
  void begin(PracticeSet set, PracticeMode mode, std::string seat = {});
  void showPlan(const PracticeSet& set);
  void showProblem(std::size_t place);
  void showReview();
  void showSummary();
  void onwards();
  void back();
  void oneMore();
  void practise(Topic topic);
  void saveResults();
  [[nodiscard]] bool mayLeave();
  [[nodiscard]] bool isUnfinished() const;
  [[nodiscard]] bool isUnsaved() const;

  Questions& questions_;
  std::uint64_t nextSeed_;
  int zoom_;
  std::unique_ptr<PracticeSession> session_;
  std::string seat_;    ///< empty: no teacher's sheet
  bool saved_ = false;  ///< the results of the session
  QStackedWidget* pages_;
  PlanPage* plan_;
  ClassPage* sheet_;
  ProblemPage* problem_;
  ReviewPage* review_;
  SummaryPage* summary_;
  SetPage* set_;
};

/// Whether the widget is the place to practise or a dialog of it: it tells nothing of a ward's case.
[[nodiscard]] bool belongsToPractice(const QWidget* widget);

}  // namespace wardchalk::ui
