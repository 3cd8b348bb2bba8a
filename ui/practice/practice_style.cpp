#include "ui/practice/practice_style.h"

#include <QApplication>
#include <QPainter>
#include <QPointer>
#include <QStyleOption>
#include <QWidget>

#include "ui/practice/practice_look.h"

namespace wardchalk::ui {

namespace {

/// From a box to the edge of what is pressed, where the ring of the keyboard runs.
constexpr int boxInset = 4;
/// Beside what Qt leaves already, so that a button's words stand 12 px from its edge.
constexpr int moreBesideWords = 16;
constexpr int besideBox = 8;
constexpr double boxShare = 1.05;  // of the height of letters
constexpr double usualEdge = 1.5;
constexpr double pressedEdge = 3;
constexpr double edgeCorner = 3;

bool isOff(const QStyleOption* option) { return !option->state.testFlag(QStyle::State_Enabled); }

QPen edgePen(const QStyleOption* option, double width = usualEdge) {
  const ControlColours colours = controlColours(practiceScheme());
  return {isOff(option) ? colours.offEdge : colours.edge, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

QRectF within(const QRect& rect, double width) {
  return QRectF(rect).adjusted(width / 2, width / 2, -width / 2, -width / 2);
}

void paintFrame(const QStyleOption* option, QPainter& painter, const QBrush& fill, double width = usualEdge) {
  painter.setPen(edgePen(option, width));
  painter.setBrush(fill);
  painter.drawRoundedRect(within(option->rect, width), edgeCorner, edgeCorner);
}

/// Filled where it is chosen, with the tick in it.
void paintCheckBox(const QStyleOption* option, QPainter& painter, const BoardPalette& inks) {
  const bool on = option->state.testFlag(QStyle::State_On);
  const QColor fill = isOff(option) ? controlColours(practiceScheme()).offText : inks[Ink::disc];
  paintFrame(option, painter, on ? fill : inks[Ink::card]);
  if (!on) return;
  const QRectF in(option->rect);
  painter.setPen(QPen(inks[Ink::onDisc], in.width() * 0.12, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(QPolygonF({{in.left() + in.width() * 0.24, in.top() + in.height() * 0.52},
                                  {in.left() + in.width() * 0.43, in.top() + in.height() * 0.71},
                                  {in.left() + in.width() * 0.77, in.top() + in.height() * 0.31}}));
}

void paintRadioButton(const QStyleOption* option, QPainter& painter, const BoardPalette& inks) {
  painter.setPen(edgePen(option));
  painter.setBrush(inks[Ink::card]);
  painter.drawEllipse(within(option->rect, usualEdge));
  if (!option->state.testFlag(QStyle::State_On)) return;
  painter.setPen(Qt::NoPen);
  painter.setBrush(isOff(option) ? controlColours(practiceScheme()).offText : inks[Ink::disc]);
  const double inset = option->rect.width() * 0.25;
  painter.drawEllipse(QRectF(option->rect).adjusted(inset, inset, -inset, -inset));
}

/// A pressed one has a thick edge, which is seen in high contrast as well; one that is off has no ground.
void paintButton(const QStyleOption* option, QPainter& painter, const BoardPalette& inks) {
  const bool down = option->state.testFlag(QStyle::State_Sunken);
  const bool under = option->state.testFlag(QStyle::State_MouseOver) && !isOff(option);
  paintFrame(option, painter, isOff(option) ? QBrush(Qt::NoBrush) : QBrush(inks[Ink::card]),
             down    ? pressedEdge
             : under ? 2 * usualEdge - 1
                     : usualEdge);
}

bool paintOwn(QStyle::PrimitiveElement element, const QStyleOption* option, QPainter& painter) {
  const BoardPalette& inks = practicePalette(practiceScheme());
  switch (element) {
    case QStyle::PE_IndicatorCheckBox:
      paintCheckBox(option, painter, inks);
      return true;
    case QStyle::PE_IndicatorRadioButton:
      paintRadioButton(option, painter, inks);
      return true;
    case QStyle::PE_PanelButtonCommand:
      paintButton(option, painter, inks);
      return true;
    case QStyle::PE_FrameLineEdit:
    case QStyle::PE_Frame:
      paintFrame(option, painter, Qt::NoBrush);
      return true;
    case QStyle::PE_FrameFocusRect:  // the ring round the whole says it
      return true;
    default:
      return false;
  }
}

int boxSide(const QStyleOption* option, const QWidget* widget) {
  const int high = widget   ? widget->fontMetrics().height()
                   : option ? option->fontMetrics.height()
                            : QFontMetrics(QApplication::font()).height();
  return qRound(high * boxShare);
}

}  // namespace

PracticeStyle::PracticeStyle() : QProxyStyle(QStringLiteral("fusion")) {}

void PracticeStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                  const QWidget* widget) const {
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  const bool done = paintOwn(element, option, *painter);
  painter->restore();
  if (!done) QProxyStyle::drawPrimitive(element, option, painter, widget);
}

void PracticeStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                                const QWidget* widget) const {
  const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
  if (!button || (element != CE_CheckBox && element != CE_RadioButton))
    return QProxyStyle::drawControl(element, option, painter, widget);
  QStyleOptionButton inner = *button;
  inner.rect.adjust(boxInset, 0, -boxInset, 0);
  QProxyStyle::drawControl(element, &inner, painter, widget);
}

void PracticeStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                       QPainter* painter, const QWidget* widget) const {
  QProxyStyle::drawComplexControl(control, option, painter, widget);
  if (control != CC_SpinBox) return;
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  paintFrame(option, *painter, Qt::NoBrush);
  painter->restore();
}

QSize PracticeStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                      const QWidget* widget) const {
  const QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
  if (type == CT_PushButton) return size + QSize(moreBesideWords, 0);
  if (type == CT_CheckBox || type == CT_RadioButton) return size + QSize(2 * boxInset, 2 * boxInset);
  return size;
}

/// What is typed stands off from the edge of its field.
QRect PracticeStyle::subElementRect(SubElement element, const QStyleOption* option,
                                    const QWidget* widget) const {
  const QRect rect = QProxyStyle::subElementRect(element, option, widget);
  return element == SE_LineEditContents ? rect.adjusted(5, 0, -5, 0) : rect;
}

int PracticeStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  switch (metric) {
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
      return boxSide(option, widget);
    case PM_CheckBoxLabelSpacing:
    case PM_RadioButtonLabelSpacing:
      return besideBox;
    default:
      return QProxyStyle::pixelMetric(metric, option, widget);
  }
}

QStyle* practiceStyle() {
  static QPointer<QStyle> style;
  if (!style) {
    style = new PracticeStyle;
    style->setParent(qApp);  // outlives every window
  }
  return style;
}

}  // namespace wardchalk::ui
