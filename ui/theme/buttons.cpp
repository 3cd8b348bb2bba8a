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

}  // namespace

QPushButton* plainButton(const QString& text, const char* name, QWidget* parent, int height) {
  auto* button = new EdgedButton(text, parent);
  button->setObjectName(QLatin1String(name));
  button->setMinimumHeight(height);
  button->setAutoDefault(false);
  return button;
}

void pressByEnter(QAbstractButton* button) {
  for (const auto key : {Qt::Key_Return, Qt::Key_Enter}) {
    auto* shortcut = new QShortcut(key, button);
    shortcut->setContext(Qt::WidgetShortcut);
    QObject::connect(shortcut, &QShortcut::activated, button, [button] { button->click(); });
  }
}

QPushButton* roomyButton(const QString& text, const char* name, QWidget* parent, int height) {
  constexpr int beside = 12;  // px at each side
  auto* button = plainButton(text, name, parent, height);
  button->setMinimumWidth(button->sizeHint().width() + 2 * beside);
  return button;
}

}  // namespace wardchalk::ui
