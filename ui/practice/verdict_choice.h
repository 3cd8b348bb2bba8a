#pragma once

#include <QWidget>

class QButtonGroup;
class QKeyEvent;

namespace wardchalk::ui {

/// A choice of the four words for a verdict, none of them chosen to begin with. Arrow keys walk, Space
/// chooses, and the first letters of the words (S, A, U, N) choose at once. Where the keyboard was brought
/// here by the end of another line, a Space does nothing until it was moved: it may have been typed for that.
class VerdictChoice : public QWidget {
  Q_OBJECT

 public:
  explicit VerdictChoice(QWidget* parent);

  /// The word as a student's line has it: "does not fit"; empty where none is chosen.
  [[nodiscard]] QString text() const;
  void setText(const QString& text);
  void setReadOnly(bool readOnly);

 Q_SIGNALS:
  void chosen();
  void entered();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] bool isTooEarly(const QKeyEvent& key) const;

  QButtonGroup* group_;
  bool meant_ = true;  ///< the keyboard came by a key or the mouse, or was moved since
};

}  // namespace wardchalk::ui
