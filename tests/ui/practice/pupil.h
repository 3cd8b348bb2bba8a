#pragma once

#include <QStringList>
#include <QTemporaryDir>
#include <memory>

#include "ui/practice/practice_window.h"

class QAbstractButton;
class QLineEdit;

namespace wardchalk::ui {

class LineRow;

/// Answers what practice asks as a test has set it.
class ScriptedQuestions : public Questions {
 public:
  QString open, save, table, pdf;
  bool may = false;
  int asked = 0;
  QStringList told;

  [[nodiscard]] QStringList files(QWidget*, const FileQuestion& question) override {
    if (question.kind == FileQuestion::open) return {open};
    if (question.filter.contains(QStringLiteral("csv"))) return {table};
    return {question.filter.contains(QStringLiteral("pdf")) ? pdf : save};
  }
  [[nodiscard]] bool goesOn(QWidget*, const GoOnQuestion&) override {
    ++asked;
    return may;
  }
  void tell(QWidget*, const QString&, const QString& text) override { told << text; }
};

/// A student at the window of practice, with nothing but a keyboard.
class Pupil {
 public:
  explicit Pupil(int zoom = 100);

  [[nodiscard]] PracticeWindow& window() { return *window_; }
  [[nodiscard]] ScriptedQuestions& files() { return files_; }
  [[nodiscard]] const PracticeSession& session() const { return *window_->session(); }
  [[nodiscard]] QString inFolder(const QString& name) const { return folder_.filePath(name); }

  void type(const QString& text);
  void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
  void enter() { press(Qt::Key_Return); }
  /// Presses Tab until the widget of this name has the keyboard; false when it never gets it.
  bool walkTo(const QString& name);
  /// Walks to the button and presses it.
  bool push(const QString& name);
  [[nodiscard]] QString focused() const;

  /// Chooses these topics by their ids, from the page where practice begins.
  bool choose(const QStringList& topics);
  /// Begins with these topics, so many problems and this set; learning unless `test`.
  bool begin(const QStringList& topics, int count, int seed, bool test = false);

  [[nodiscard]] LineRow* row(std::size_t line);
  /// Writes the text into the line, with the keyboard.
  void write(std::size_t line, const QString& text);
  [[nodiscard]] QString right(std::size_t line) const;
  [[nodiscard]] QString wrong(std::size_t line) const;
  /// What stands beneath the line.
  [[nodiscard]] QString said(std::size_t line);
  [[nodiscard]] QString rungs(std::size_t line);
  [[nodiscard]] bool isOn(const char* page) const;

 private:
  QTemporaryDir folder_;
  ScriptedQuestions files_;
  std::unique_ptr<PracticeWindow> window_;
};

}  // namespace wardchalk::ui
