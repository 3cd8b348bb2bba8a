#pragma once

#include <QAccessible>

class QLineEdit;

namespace wardchalk::ui::detail {

/// The text of a line as assistive technology reads and writes it. Qt's own (6.4) answers each letter with a
/// run of attributes that holds none, and a screen reader that goes by runs then leaves the last letter of
/// the line out: 103 is read as 10.
class LineText : public QAccessibleTextInterface, public QAccessibleEditableTextInterface {
 public:
  explicit LineText(QLineEdit& line) : line_(line) {}

  void selection(int place, int* start, int* end) const override;
  int selectionCount() const override;
  void addSelection(int start, int end) override;
  void removeSelection(int place) override;
  void setSelection(int place, int start, int end) override;

  int cursorPosition() const override;
  void setCursorPosition(int position) override;

  QString text(int start, int end) const override;
  int characterCount() const override;
  // After the last letter there is none: Qt's own answer there reaches no client.
  QString textBeforeOffset(int offset, QAccessible::TextBoundaryType by, int* start, int* end) const override;
  QString textAfterOffset(int offset, QAccessible::TextBoundaryType by, int* start, int* end) const override;
  QString textAtOffset(int offset, QAccessible::TextBoundaryType by, int* start, int* end) const override;

  QRect characterRect(int offset) const override;
  int offsetAtPoint(const QPoint& point) const override;
  void scrollToSubstring(int start, int end) override;
  /// None, over the whole text.
  QString attributes(int offset, int* start, int* end) const override;

  void deleteText(int start, int end) override;
  void insertText(int offset, const QString& text) override;
  void replaceText(int start, int end, const QString& text) override;

 private:
  [[nodiscard]] QString shown() const;
  /// What a client calls the place of the caret is its offset.
  [[nodiscard]] int placeOf(int offset) const;

  QLineEdit& line_;
};

}  // namespace wardchalk::ui::detail
