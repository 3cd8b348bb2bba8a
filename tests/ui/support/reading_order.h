#pragma once

#include <QScrollArea>
#include <QWidget>
#include <cstdint>

// Whether Tab comes to the stops of a page in the order in which the eye meets them.

namespace wardchalk::ui::test {

/// How a page is read: row by row, or one column after the other where it is set in columns.
enum class Flow : std::uint8_t { rows, columns };

/// Where a stop lies for the eye: rows from the top, each from the left.
inline bool comesAfter(const QRect& one, const QRect& other, Flow flow) {
  if (one.top() > other.bottom()) return true;
  if (flow == Flow::columns && one.left() > other.right()) return true;
  if (one.bottom() < other.top()) return false;
  return one.left() > other.left();
}

inline QRect placeOf(const QWidget* widget) {
  return {widget->mapTo(widget->window(), QPoint(0, 0)), widget->size()};
}

/// The same for who looks at both: what can be scrolled out of view lies where its area does.
inline QRect placeBeside(const QWidget* widget, const QWidget* other) {
  for (const QWidget* one = widget; one; one = one->parentWidget())
    if (qobject_cast<const QScrollArea*>(one) && !one->isAncestorOf(other)) return placeOf(one);
  return placeOf(widget);
}

/// The stops of Tab within a part of a window, in their order.
inline QList<QWidget*> stopsIn(const QWidget& part) {
  QList<QWidget*> stops;
  QWidget* first = part.window();
  for (QWidget* one = first->nextInFocusChain(); one != first; one = one->nextInFocusChain())
    if (part.isAncestorOf(one) && one->isVisible() && one->isEnabled() &&
        (one->focusPolicy() & Qt::TabFocus) && !one->focusProxy())
      stops << one;
  return stops;
}

/// The first stop that the eye meets before the one that Tab comes to before it; empty when there is none.
[[nodiscard]] inline QString orderFault(const QWidget& part, Flow flow = Flow::rows) {
  const QList<QWidget*> stops = stopsIn(part);
  if (stops.size() < 2) return QStringLiteral("there are no stops");
  for (qsizetype i = 1; i < stops.size(); ++i)
    if (!comesAfter(placeBeside(stops[i], stops[i - 1]), placeBeside(stops[i - 1], stops[i]), flow))
      return stops[i - 1]->objectName() + QStringLiteral(" before ") + stops[i]->objectName();
  return {};
}

}  // namespace wardchalk::ui::test
