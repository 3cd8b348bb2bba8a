#include "ui/practice/worked_picture.h"

#include <QPainter>
#include <utility>

#include "ui/practice/practice_look.h"
#include "ui/working/paint_drawing.h"

namespace wardchalk::ui {

WorkedPicture::WorkedPicture(StepView view, const QString& spoken, QWidget* parent)
    : SpokenWidget(parent), view_(std::move(view)) {
  setFocusPolicy(Qt::NoFocus);  // the line's own field tells it
  followWidth();
  setSpoken(spoken);
}

void WorkedPicture::setZoom(double zoom) {
  setScale(zoom);
  updateGeometry();
}

double WorkedPicture::layOutAt(int width) {
  layout_ = layOutBody(view_, metricsAt(width));
  return layout_.size.height();
}

void WorkedPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintDrawing(painter, layout_.drawing, practicePalette(practiceScheme()), {});
}

}  // namespace wardchalk::ui
