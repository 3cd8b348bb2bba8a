#pragma once

#include <QString>
#include <QStringList>
#include <QTemporaryDir>
#include <functional>
#include <memory>

#include "ui/shell/main_window.h"
#include "ui/shell/rules_desk.h"

namespace wardchalk::ui {

/// Answers the window's questions as a test has set them, and remembers what was told.
class ScriptedDialogs : public Dialogs {
 public:
  QString open;
  QString save;
  std::function<void()> whileChoosing;  ///< what somebody else does while the name to save under is chosen
  QString pdf;
  std::function<void(QPrinter&)> setUpPrinter;  ///< none: no printer is chosen
  Unsaved answer = Unsaved::keep;
  Overwrite overwriting = Overwrite::stop;
  QString rules;
  std::function<void()> whileAsked;  ///< what somebody else does while such a question stands
  QStringList overwrites;            ///< the questions about files that were not as they had been
  int asked = 0;
  QString lastAsked;
  QStringList told;
  QString suggested;          ///< the name offered for a case that has none
  QList<QStringList> chosen;  ///< answers to questions for files, one after the other
  QStringList questions;      ///< their titles
  bool goingOn = false;       ///< the answer to questions about going on
  QList<GoOnQuestion> goOns;

  [[nodiscard]] bool choosePrinter(QWidget*, QPrinter& printer) override {
    if (setUpPrinter) setUpPrinter(printer);
    return static_cast<bool>(setUpPrinter);
  }
  [[nodiscard]] QStringList files(QWidget*, const FileQuestion& question) override {
    if (question.filter.startsWith(QStringLiteral("Case files")) && question.kind == FileQuestion::open)
      return {open};
    if (question.kind == FileQuestion::saveAskedLater) {
      suggested = question.suggested;
      if (whileChoosing) whileChoosing();
      return {save};
    }
    if (question.filter.startsWith(QStringLiteral("PDF"))) return {pdf};
    if (question.filter.startsWith(QStringLiteral("House rules"))) return {rules};
    questions << question.title;
    return chosen.isEmpty() ? QStringList() : chosen.takeFirst();
  }
  [[nodiscard]] Unsaved unsaved(QWidget*, const QString& question) override {
    ++asked;
    lastAsked = question;
    return answer;
  }
  [[nodiscard]] Overwrite overwrite(QWidget*, const QString& question, bool) override {
    overwrites << question;
    if (whileAsked) whileAsked();
    return overwriting;
  }
  [[nodiscard]] bool goesOn(QWidget*, const GoOnQuestion& question) override {
    goOns << question;
    return goingOn;
  }
  void tell(QWidget*, const QString&, const QString& text) override { told << text; }
};

/// Waits until the keys go to this window itself. QTest::qWaitForWindowActive is content when they go to the
/// window that a dialog belongs to, or to a dialog of the window.
[[nodiscard]] bool hasKeyboard(const QWidget* window);

/// A nurse at the window, with nothing but a keyboard.
class Nurse {
 public:
  /// With what a run before left in the settings file.
  explicit Nurse(const QByteArray& settings = {});

  [[nodiscard]] MainWindow& window() { return *window_; }
  [[nodiscard]] ScriptedDialogs& dialogs() { return dialogs_; }
  [[nodiscard]] RulesDesk& rules() { return *window_->findChild<RulesDesk*>(); }
  [[nodiscard]] const Worksheet& sheet() const { return window_->worksheet(); }
  [[nodiscard]] QString folder() const { return folder_.path(); }
  [[nodiscard]] QString settingsFile() const { return folder_.filePath(QStringLiteral("settings.ini")); }

  void type(const QString& text);
  void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
  void enter() { press(Qt::Key_Return); }
  /// Types each text into the next field, an empty one passes a field over.
  void fill(const QStringList& fields);
  /// Walks with Enter until the field has the keyboard.
  bool walkTo(const QString& path);
  [[nodiscard]] QString focused() const;
  [[nodiscard]] QString line(const QString& path) const;
  /// Goes back to the main window, which hears the keys from then on; false when it does not. Where no window
  /// manager runs, nothing else gives it the keyboard back when a dialog has closed.
  [[nodiscard]] bool goBack();
  /// Ends the program, and with it the window; what its settings then hold.
  [[nodiscard]] QByteArray settingsLeft();

 private:
  QTemporaryDir folder_;
  std::unique_ptr<Settings> settings_;
  ScriptedDialogs dialogs_;
  std::unique_ptr<MainWindow> window_;
};

}  // namespace wardchalk::ui
