#pragma once

#include <QObject>
#include <QPointer>

#include "ui/shell/settings.h"
#include "ui/theme/questions.h"

namespace wardchalk::ui {

class PracticeWindow;

/// Opens the place to practise beside the ward's window. The two share the size of letters and the paper, and
/// nothing else: no case is reached from there, and no problem from here (H33).
class PracticeDesk : public QObject {
  Q_OBJECT

 public:
  PracticeDesk(QObject* parent, Settings& settings, Questions& questions);
  ~PracticeDesk() override;

  /// Opens the window, or brings the open one to the front.
  void open();
  [[nodiscard]] PracticeWindow* window() const;
  /// Gives its letters the program's size.
  void followTextSize(int percent);
  /// Puts its sheets on this paper.
  void followPaper(PaperSize size);

 Q_SIGNALS:
  void textSizeChosen(int percent);  ///< by a key in the window of practice
  void paperChosen();                ///< there; it is kept already

 private:
  Settings& settings_;
  Questions& questions_;
  QPointer<PracticeWindow> window_;
};

/// Writes the questions or the key of a set file as a PDF. What went wrong, or nothing.
[[nodiscard]] QString writePracticeSheet(const QString& setFile, const QString& pdf, bool withKey,
                                         PaperSize paper);

}  // namespace wardchalk::ui
