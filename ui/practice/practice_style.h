#pragma once

#include <QProxyStyle>

namespace wardchalk::ui {

/// Boxes, fields and buttons of practice: Qt's own, with edges that are seen in every scheme, boxes that grow
/// with the letters, and the ring of the keyboard alone to show what has it.
class PracticeStyle : public QProxyStyle {
  Q_OBJECT

 public:
  PracticeStyle();

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
  void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                   const QWidget* widget) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                          const QWidget* widget) const override;
  [[nodiscard]] QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                       const QWidget* widget) const override;
  [[nodiscard]] QRect subElementRect(SubElement element, const QStyleOption* option,
                                     const QWidget* widget) const override;
  [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option,
                                const QWidget* widget) const override;
};

/// The one style that all windows of practice share.
[[nodiscard]] QStyle* practiceStyle();

}  // namespace wardchalk::ui
