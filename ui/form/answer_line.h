#pragma once

#include <QStringList>
#include <QWidget>

class QHBoxLayout;
class QPushButton;

namespace wardchalk::ui {

class QuietLine;

/// Why an entry is refused, or what is asked about it, in the place of the lines that say how entries were
/// understood, with the safe form as a button or two buttons that answer the question.
class AnswerLine : public QWidget {
  Q_OBJECT

 public:
  explicit AnswerLine(QWidget* parent);

  /// `writes`: what each button would write; the first is for Alt+Enter where it is the only one.
  void say(const QString& text, const QStringList& writes);
  [[nodiscard]] QString said() const;
  [[nodiscard]] const QStringList& writes() const { return writes_; }
  [[nodiscard]] QList<QPushButton*> buttons() const { return buttons_; }

 Q_SIGNALS:
  void chosen(const QString& line);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void showButtons();

  QuietLine* text_;
  QHBoxLayout* row_;
  QStringList writes_;
  QList<QPushButton*> buttons_;
};

}  // namespace wardchalk::ui
