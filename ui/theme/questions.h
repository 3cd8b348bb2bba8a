#pragma once

#include <QString>
#include <QStringList>
#include <cstdint>

class QWidget;

namespace wardchalk::ui {

/// A question for files: to be read, several at once, or to be written. Before one that is there is
/// overwritten the dialog asks; not with `saveAskedLater`, where whoever wanted the name can say what stands
/// in it.
struct FileQuestion {
  enum Kind : std::uint8_t { open, openSeveral, save, saveAskedLater };
  Kind kind;
  QString title;
  QString filter;
  QString suggested;  ///< the name to save under
};

/// A question about going on. The careful answer is the one that is offered, and it holds when the question
/// is closed without an answer.
struct GoOnQuestion {
  QString title;
  QString text;
  QString careful;
  QString goOn;
};

/// What a window asks and tells in dialogs; a test answers itself.
class Questions {
 public:
  virtual ~Questions() = default;

  /// The files of the answer; none when none was chosen.
  [[nodiscard]] virtual QStringList files(QWidget* parent, const FileQuestion& question) = 0;
  /// The one file of the answer; empty when none was chosen.
  [[nodiscard]] QString file(QWidget* parent, const FileQuestion& question) {
    return files(parent, question).value(0);
  }
  /// Whether it is to go on all the same.
  [[nodiscard]] virtual bool goesOn(QWidget* parent, const GoOnQuestion& question) = 0;
  virtual void tell(QWidget* parent, const QString& title, const QString& text) = 0;
};

}  // namespace wardchalk::ui
