#include "ui/theme/buttons.h"

#include <QApplication>
#include <QPainter>
#include <QShortcut>
#include <QStyle>

#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

namespace {

/// The style "fusion" shades a button's edge from the window: in a dark one it goes, and a button looks like
/// a word. Other styles, and a window with a style of its own, have their own edges.
class EdgedButton : public QPushButton {
 public:
  using QPushButton::QPushButton;

 protected:
  void paintEvent(QPaintEvent* event) override {
    QPushButton::paintEvent(event);
    if (style() != QApplication::style() || style()->name() != QLatin1String("fusion")) return;
    const BoardPalette& inks = boardPalette(schemeFor(palette()));
    const double wide = isDefault() ? 2 : 1;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(inks[isDefault() ? Ink::text : Ink::quiet], wide));
    if (!isEnabled()) painter.setOpacity(0.5);
    const double in = wide / 2;
    painter.drawRoundedRect(QRectF(rect()).adjusted(in, 1 + in, -in, -in), 3, 3);
  }
};

/// With room beside its text, whatever that comes to say.
class RoomyButton : public EdgedButton {
 public:
  using EdgedButton::EdgedButton;

  [[nodiscard]] QSize sizeHint() const override {
    constexpr int beside = 12;  // px at each side
    return EdgedButton::sizeHint() + QSize(2 * beside, 0);
  }
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }
};

QPushButton* prepared(QPushButton* button, const char* name, int height) {
  button->setObjectName(QLatin1String(name));
  button->setMinimumHeight(height);
  button->setAutoDefault(false);
  return button;
}

}  // namespace

QPushButton* plainButton(const QString& text, const char* name, QWidget* parent, int height) {
  return prepared(new EdgedButton(text, parent), name, height);
}

void pressByEnter(QAbstractButton* button) {
  for (const auto key : {Qt::Key_Return, Qt::Key_Enter}) {
    auto* shortcut = new QShortcut(key, button);
    shortcut->setContext(Qt::WidgetShortcut);
    QObject::connect(shortcut, &QShortcut::activated, button, [button] { button->click(); });
  }
}

QPushButton* roomyButton(const QString& text, const char* name, QWidget* parent, int height) {
  return prepared(new RoomyButton(text, parent), name, height);
}

}  // namespace wardchalk::ui
