#include "ui/access/detail/line_text.h"

#include <QLineEdit>
#include <algorithm>

namespace wardchalk::ui::detail {

namespace {

/// By which AT-SPI names the caret in place of an offset (as Qt's own lines have it).
constexpr int atCaret = -2;

}  // namespace

/// What is not to be seen is not read out either.
QString LineText::shown() const { return line_.echoMode() == QLineEdit::Normal ? line_.text() : QString(); }

int LineText::placeOf(int offset) const { return offset == atCaret ? cursorPosition() : offset; }

void LineText::selection(int place, int* start, int* end) const {
  const bool any = place == 0 && line_.hasSelectedText();
  *start = any ? line_.selectionStart() : 0;
  *end = any ? *start + static_cast<int>(line_.selectedText().size()) : 0;
}

int LineText::selectionCount() const { return line_.hasSelectedText() ? 1 : 0; }

void LineText::addSelection(int start, int end) { setSelection(0, start, end); }

void LineText::removeSelection(int place) {
  if (place == 0) line_.deselect();
}

void LineText::setSelection(int place, int start, int end) {
  if (place == 0) line_.setSelection(start, end - start);
}

int LineText::cursorPosition() const { return line_.cursorPosition(); }

void LineText::setCursorPosition(int position) { line_.setCursorPosition(position); }

QString LineText::text(int start, int end) const {
  const QString all = shown();
  const int count = static_cast<int>(all.size());
  const int from = std::clamp(start, 0, count);
  return all.mid(from, (end < 0 ? count : std::clamp(end, from, count)) - from);
}

int LineText::characterCount() const { return static_cast<int>(shown().size()); }

QString LineText::textBeforeOffset(int offset, QAccessible::TextBoundaryType by, int* start, int* end) const {
  return QAccessibleTextInterface::textBeforeOffset(placeOf(offset), by, start, end);
}

QString LineText::textAfterOffset(int offset, QAccessible::TextBoundaryType by, int* start, int* end) const {
  return QAccessibleTextInterface::textAfterOffset(placeOf(offset), by, start, end);
}

QString LineText::textAtOffset(int offset, QAccessible::TextBoundaryType by, int* start, int* end) const {
  const int at = placeOf(offset);
  const bool byPart = by != QAccessible::LineBoundary && by != QAccessible::NoBoundary;
  if (at < characterCount() || !byPart) return QAccessibleTextInterface::textAtOffset(at, by, start, end);
  *start = *end = characterCount();
  return {};
}

/// The caret's place is known, and letters lie beside it by their widths, however the line is scrolled.
QRect LineText::characterRect(int offset) const {
  const QString all = shown();
  if (offset < 0 || offset >= all.size()) return {};
  const QFontMetrics letters = line_.fontMetrics();
  const QRect caret = line_.inputMethodQuery(Qt::ImCursorRectangle).toRect();
  const int left = caret.center().x() + letters.horizontalAdvance(all.left(offset)) -
                   letters.horizontalAdvance(all.left(line_.cursorPosition()));
  const QPoint corner = line_.mapToGlobal(QPoint(left, caret.top()));
  return {corner, QSize(letters.horizontalAdvance(all.mid(offset, 1)), caret.height())};
}

int LineText::offsetAtPoint(const QPoint& point) const {
  return line_.cursorPositionAt(line_.mapFromGlobal(point));
}

void LineText::scrollToSubstring(int start, int end) {
  line_.setCursorPosition(end);
  line_.setCursorPosition(start);
}

QString LineText::attributes(int, int* start, int* end) const {
  *start = 0;
  *end = characterCount();
  return {};
}

void LineText::deleteText(int start, int end) { replaceText(start, end, {}); }

void LineText::insertText(int offset, const QString& text) { replaceText(offset, offset, text); }

/// What only tells what it holds is not written to; Qt's own lines are, from here.
void LineText::replaceText(int start, int end, const QString& text) {
  if (line_.isReadOnly()) return;
  const QString all = line_.text();
  const int count = static_cast<int>(all.size());
  const int from = std::clamp(start, 0, count);
  const int to = end < 0 ? count : std::clamp(end, from, count);
  line_.setText(all.left(from) + text + all.mid(to));
}

}  // namespace wardchalk::ui::detail
