#include "ui/working/detail/spoken_accessible.h"

#include <QAccessibleWidget>
#include <algorithm>

#include "ui/working/spoken_widget.h"

namespace wardchalk::ui::detail {

namespace {

/// The text of a SpokenWidget as name and as text, without a cursor or a selection.
class SpokenAccessible : public QAccessibleWidget, public QAccessibleTextInterface {
 public:
  explicit SpokenAccessible(SpokenWidget* widget) : QAccessibleWidget(widget, widget->role()) {}

  QString text(QAccessible::Text kind) const override {
    return kind == QAccessible::Name ? spoken() : QAccessibleWidget::text(kind);
  }

  QAccessible::State state() const override {
    QAccessible::State state = QAccessibleWidget::state();
    state.readOnly = true;
    state.selectableText = false;
    return state;
  }

  void* interface_cast(QAccessible::InterfaceType type) override {
    if (type == QAccessible::TextInterface) return static_cast<QAccessibleTextInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
  }

  void selection(int, int* start, int* end) const override { *start = *end = 0; }
  int selectionCount() const override { return 0; }
  void addSelection(int, int) override {}
  void removeSelection(int) override {}
  void setSelection(int, int, int) override {}
  int cursorPosition() const override { return 0; }
  void setCursorPosition(int) override {}

  QString text(int start, int end) const override {
    const int count = characterCount();
    const int from = std::clamp(start, 0, count);
    const int to = end < 0 ? count : std::clamp(end, from, count);
    return spoken().mid(from, to - from);
  }
  int characterCount() const override { return static_cast<int>(spoken().size()); }
  QRect characterRect(int) const override { return rect(); }
  int offsetAtPoint(const QPoint&) const override { return 0; }
  void scrollToSubstring(int, int) override {}

  QString attributes(int, int* start, int* end) const override {
    *start = 0;
    *end = characterCount();
    return {};
  }

 private:
  const QString& spoken() const { return static_cast<SpokenWidget*>(widget())->spoken(); }
};

QAccessibleInterface* makeSpoken(const QString&, QObject* object) {
  if (auto* widget = qobject_cast<SpokenWidget*>(object)) return new SpokenAccessible(widget);
  return nullptr;
}

}  // namespace

void installSpokenAccessible() {
  static const bool installed = [] {
    QAccessible::installFactory(makeSpoken);
    return true;
  }();
  Q_UNUSED(installed)
}

}  // namespace wardchalk::ui::detail
