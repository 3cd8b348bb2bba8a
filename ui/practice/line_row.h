#pragma once

#include <QWidget>
#include <cstdint>

#include "core/practice/sessions/line_reading.h"
#include "ui/practice/line_feedback.h"

class QBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace wardchalk::ui {

class MarkBadge;
class ReadingLine;
class VerdictChoice;

/// What may be done with a line beside writing it; what may not is not there.
struct LineOffer {
  bool checking = true;
  bool hints = true;
  bool builder = true;
};

/// One line of a problem: its question, a field to write the working in or four words to choose from, how it
/// is read, its mark, and what is said of it. It knows nothing of sessions; what it shows is handed to it.
class LineRow : public QWidget {
  Q_OBJECT

 public:
  LineRow(std::size_t line, const Problem& problem, const LineOffer& offer, QWidget* parent);

  [[nodiscard]] std::size_t line() const { return line_; }
  [[nodiscard]] QString text() const;
  void setText(const QString& text);
  /// Puts the text there with the caret at its end, as if it had been typed.
  void write(const QString& text);

  /// Shows how the line is read.
  void showReading(const LineReading& reading);
  /// Shows what is said of the line; `pointAtFault` marks the place that it is about.
  void show(const LineFeedback& feedback, bool pointAtFault);
  using QWidget::show;
  /// What was said beside a mark that is taken back: help with mending the line stays.
  enum class Said : std::uint8_t { stays, goes };
  /// Takes back the mark of a text that is being changed. Its room is kept, so that nothing moves.
  void takeBackMark(Said said);
  void setReadOnly(bool readOnly);
  /// Whether the keyboard is or was last at this line: there help is offered before anything is checked.
  void setCurrent(bool current);

  [[nodiscard]] bool hasHints() const { return hints_; }
  [[nodiscard]] bool canBeBuilt() const { return build_ != nullptr; }
  /// What takes the keyboard when one comes to this line.
  [[nodiscard]] QWidget* field() const;

 Q_SIGNALS:
  void edited();
  void checkWanted();
  void hintWanted();
  void buildWanted();

 private:
  void buildQuestion(QBoxLayout* column, const Problem& problem);
  void buildField(QBoxLayout* row);
  void buildButtons(QBoxLayout* row, const Problem& problem, const LineOffer& offer);
  void buildReading(QBoxLayout* column);
  void buildHow(QBoxLayout* column);
  void buildFeedback(QBoxLayout* column);
  void showRungs(const std::vector<ShownRung>& rungs);
  void offerHint();
  void point(const LineFeedback& feedback);

  std::size_t line_;
  Ask ask_;
  bool hints_;
  bool current_ = false;
  bool looked_ = false;  ///< it has a mark
  QLabel* question_ = nullptr;
  QLineEdit* edit_ = nullptr;
  VerdictChoice* verdict_ = nullptr;
  QPushButton* check_ = nullptr;
  QPushButton* build_ = nullptr;
  QPushButton* nothing_ = nullptr;
  QPushButton* hint_ = nullptr;
  ReadingLine* reading_ = nullptr;
  QLabel* how_ = nullptr;
  MarkBadge* badge_ = nullptr;
  QLabel* said_ = nullptr;
  QWidget* rungs_ = nullptr;
};

}  // namespace wardchalk::ui
