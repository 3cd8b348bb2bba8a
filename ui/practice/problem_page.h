#pragma once

#include <QElapsedTimer>
#include <QPointer>
#include <QWidget>
#include <vector>

#include "core/practice/sessions/session.h"
#include "ui/practice/line_row.h"

class QBoxLayout;
class QLabel;
class QPushButton;
class QScrollArea;

namespace wardchalk::ui {

class TimeLeft;

/// One problem: its papers beside the lines that are asked for. It shows a session and hands it what is
/// written.
class ProblemPage : public QWidget {
  Q_OBJECT

 public:
  explicit ProblemPage(QWidget* parent);
  ~ProblemPage() override;

  /// Shows the current problem of this session, which must outlive being shown.
  void show(PracticeSession& session, double zoom);
  using QWidget::show;
  /// What is shown from now on is a teacher's sheet for this seat, or one's own practice without one. The
  /// time of its set begins.
  void begin(const PracticeSet& set, const std::string& seat);
  /// Everything is handed in: no time runs any more.
  void end();
  /// Shows nothing any more.
  void leave();

  /// Hands what is written, and the time it took, to the session.
  void keep();

  [[nodiscard]] const std::vector<LineRow*>& rows() const { return rows_; }

 Q_SIGNALS:
  /// The problem is done with: handed in, left aside or, in a test, passed on from.
  void onwards();
  void back();
  void oneMoreWanted();
  /// In a test, from any problem: the review of everything.
  void reviewWanted();

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void buildHead(QBoxLayout* column);
  void buildSides(QBoxLayout* column);
  void buildFoot(QBoxLayout* column);
  void bindKeys();
  void fillPapers();
  void fillLines();
  void fillHead();
  void tellTimeIsUp();
  void fillFoot();
  LineRow* addRow(std::size_t line);
  void read(LineRow* row);
  [[nodiscard]] LineFeedback feedbackOf(const LineRow& row) const;
  void showFeedback(LineRow* pointAt);
  void orderStops();
  void sayOf(const LineRow& row, const QString& said);
  void sayProblem();
  void uncover();
  [[nodiscard]] static QString goOnWords();
  [[nodiscard]] bool isLast(const LineRow* row) const;
  void check(LineRow* row);
  void climb(LineRow* row);
  void build(LineRow* row);
  void goOn();
  void skip();
  void focusNext(const LineRow* row);
  /// From now on the keyboard is at this line.
  void comeTo(LineRow* row);
  enum class End : std::uint8_t { top, bottom };
  void reveal(LineRow* row, End end);
  void bringIntoView();
  void turnPage(int direction);
  void arrange();
  [[nodiscard]] QString keyWords() const;
  [[nodiscard]] LineRow* rowWithKeyboard() const;
  [[nodiscard]] int linesNotRight() const;

  PracticeSession* session_ = nullptr;
  std::string seat_;
  double zoom_ = 1;
  std::vector<LineRow*> rows_;
  LineRow* last_ = nullptr;     ///< the line that had the keyboard last
  QPointer<LineRow> revealed_;  ///< what is to stay in view while rows find their places
  End revealedEnd_ = End::top;
  bool warned_ = false;  ///< it was said that lines are not right yet
  QElapsedTimer clock_;

  QLabel* progress_ = nullptr;
  TimeLeft* time_ = nullptr;
  QLabel* about_ = nullptr;
  QScrollArea* paperScroll_ = nullptr;
  QWidget* papers_ = nullptr;
  QScrollArea* lineScroll_ = nullptr;
  QBoxLayout* sheet_ = nullptr;  ///< what is scrolled with the lines
  QWidget* lines_ = nullptr;
  QLabel* foot_ = nullptr;
  QPushButton* back_ = nullptr;
  QPushButton* skip_ = nullptr;
  QPushButton* more_ = nullptr;
  QPushButton* review_ = nullptr;
  QPushButton* on_ = nullptr;
};

}  // namespace wardchalk::ui
