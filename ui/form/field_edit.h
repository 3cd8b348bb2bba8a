#pragma once

#include <QList>
#include <QWidget>

#include "ui/form/field_table.h"

class QAbstractButton;
class QBoxLayout;
class QLabel;

namespace wardchalk::ui {

class AnswerLine;
class EntryLine;
class QuietLine;

/// One field of the form: its label, its line of text, and below how it was understood. It shows what the
/// draft holds and tells what is typed; it reads and judges nothing.
class FieldEdit : public QWidget {
  Q_OBJECT

 public:
  explicit FieldEdit(const FieldSpec& spec, QWidget* parent = nullptr);

  [[nodiscard]] const FieldSpec& spec() const { return spec_; }
  [[nodiscard]] QString path() const;

  /// What stands in the line; the id of a word that was chosen, "true" of a tick.
  [[nodiscard]] QString entry() const;
  /// Shows this entry; tells nobody.
  void setEntry(const std::string& entry);
  void setBareUnit(const QString& unit);
  /// With its mnemonic, as the table has it.
  void setLabel(const QString& label);
  /// A line that only tells what it holds: it was taken from a list.
  void setLocked(bool locked);

  /// How it was understood, or a hint.
  void sayQuietly(const QString& text);
  /// Why it is refused; `writes`: what each button would write.
  void refuse(const QString& why, const QStringList& writes);
  [[nodiscard]] bool isRefused() const;
  /// What is said of the field now, quietly or not.
  [[nodiscard]] QString line() const;
  /// Stands below the row of the field while it is refused.
  [[nodiscard]] AnswerLine* answer() const { return answer_; }
  /// In a row where another field is refused, the line below gives way.
  void giveWay(bool away);

  /// Whether a number of the working that came from this field is pointed at.
  void setLit(bool lit);
  /// Whether Enter stops here on its way. A tick is no stop: the next key would be meant for a line.
  [[nodiscard]] bool isStop() const { return flag_ == nullptr; }
  [[nodiscard]] QWidget* stop() const;
  void focusFirst();
  /// Tab goes on as Enter does, since the entry that was just read filled the next line as well.
  void keepTab() { keepsTab_ = true; }
  /// Takes what an input method still composes.
  void endComposing();

 Q_SIGNALS:
  void edited(const QString& path, const QString& entry);  ///< something else stands here
  void touched(const QString& path);                       ///< something else is about to stand here
  void finished(const QString& path);                      ///< read it
  void next(const QString& path);
  void previous(const QString& path);
  void undoWanted();
  void redoWanted();
  void pointedAt(const QString& path);  ///< the keyboard came here, or the mouse rests here; "" when it left

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void buildLine(QBoxLayout* column);
  void buildFlag(QBoxLayout* column);
  void writtenTo();
  void write(const QString& entry);
  void openChoices();
  [[nodiscard]] QString shownOf(const QString& entry) const;
  [[nodiscard]] QString entryOf(const QString& shown) const;
  [[nodiscard]] bool keepsLine() const;
  bool pressedEnter(Qt::KeyboardModifiers with);
  bool pressedTab();
  void left(Qt::FocusReason reason);
  void describe();

  const FieldSpec& spec_;
  QLabel* label_ = nullptr;
  EntryLine* text_ = nullptr;
  QAbstractButton* flag_ = nullptr;
  QuietLine* quiet_ = nullptr;
  AnswerLine* answer_ = nullptr;
  bool lit_ = false;
  bool keepsTab_ = false;
};

}  // namespace wardchalk::ui
