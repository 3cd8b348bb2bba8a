#pragma once

#include <QList>
#include <QWidget>

#include "core/record/field_text.h"
#include "core/words/phrasebook.h"
#include "ui/form/field_table.h"
#include "ui/form/quiet_line.h"

class QAbstractButton;
class QBoxLayout;
class QLabel;
class QLineEdit;

namespace wardchalk::ui {

class ChoiceBox;

/// One field of the form: its label, the boxes of its kind, and the quiet line below. It shows what the draft
/// holds and tells what is typed; it reads and judges nothing.
class FieldEdit : public QWidget {
  Q_OBJECT

 public:
  explicit FieldEdit(const FieldSpec& spec, QWidget* parent = nullptr);

  [[nodiscard]] const FieldSpec& spec() const { return spec_; }
  [[nodiscard]] QString path() const;

  [[nodiscard]] Boxes boxes() const;
  /// Shows these boxes; tells nobody.
  void setBoxes(const Boxes& boxes);

  void say(const QString& text, QuietLine::Tone tone);
  [[nodiscard]] QString line() const;
  /// Columns the field takes, of twelve; a narrow one takes half the row while it must say why it is refused.
  [[nodiscard]] int columns() const;
  /// Whether a number of the working that came from this field is pointed at.
  void setLit(bool lit);

  /// The boxes in view that take the keyboard, in order.
  [[nodiscard]] QList<QWidget*> stops() const;
  void focusFirst();

 Q_SIGNALS:
  void edited(const QString& path, const wardchalk::Boxes& boxes);  ///< something was typed or walked to
  void finished(const QString& path);  ///< read it: a choice, Enter, or the field was left
  void next(const QString& path);
  void previous(const QString& path);
  void pointedAt(const QString& path);  ///< the keyboard came here, or the mouse rests here; "" when it left

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void buildBoxes(QBoxLayout* row);
  void buildSecond(QBoxLayout* row);
  void buildSecondUnit(QBoxLayout* row);
  void buildChoice(QBoxLayout* row);
  void buildFlag(QBoxLayout* row);
  [[nodiscard]] QLineEdit* makeLine(const char* role);
  [[nodiscard]] ChoiceBox* makeChoice(const char* role);
  void nameBoxes();
  void showSecond();
  void tell();
  void finishChoice();
  bool pressedEnter(QWidget* at, bool back);
  [[nodiscard]] QWidget* nextUnfilled(QWidget* at) const;
  [[nodiscard]] bool keepsFocus() const;
  [[nodiscard]] bool keepsLine() const;

  const FieldSpec& spec_;
  QLabel* label_ = nullptr;
  QLineEdit* text_ = nullptr;
  ChoiceBox* choice_ = nullptr;
  QAbstractButton* flag_ = nullptr;
  ChoiceBox* unit_ = nullptr;
  QLabel* between_ = nullptr;
  QLineEdit* second_ = nullptr;
  ChoiceBox* secondUnit_ = nullptr;
  QuietLine* line_ = nullptr;
  bool lit_ = false;
};

}  // namespace wardchalk::ui
