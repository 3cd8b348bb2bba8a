#pragma once

#include <QWidget>

class QButtonGroup;

namespace wardchalk::ui {

/// A choice of the four words for a verdict, none of them chosen to begin with. Arrow keys walk, Space
/// chooses, and the first letters of the words (S, A, U, D) choose at once.
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
  QButtonGroup* group_;
};

}  // namespace wardchalk::ui
