#include "ui/working/drawing.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace wardchalk::ui {

namespace {

template <typename T>
void append(std::vector<T>& to, std::vector<T>& from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

template <typename Change>
void changeStages(Drawing& drawing, Change change) {
  for (Run& run : drawing.runs) run.stage = change(run.stage);
  for (Bar& bar : drawing.bars) bar.stage = change(bar.stage);
  for (Area& area : drawing.areas) area.stage = change(area.stage);
  for (Stroke& stroke : drawing.strokes) stroke.stage = change(stroke.stage);
  for (HitArea& hit : drawing.hits) hit.stage = change(hit.stage);
}

}  // namespace

void Drawing::moveBy(QPointF by) {
  for (Run& run : runs) {
    run.at += by;
    run.rect.translate(by);
  }
  for (Bar& bar : bars) {
    bar.from += by;
    bar.to += by;
  }
  for (Area& area : areas) area.outline.translate(by);
  for (Stroke& stroke : strokes) {
    stroke.from += by;
    stroke.to += by;
  }
  for (HitArea& hit : hits) hit.rect.translate(by);
}

void Drawing::add(Drawing other, QPointF by) {
  other.moveBy(by);
  append(runs, other.runs);
  append(bars, other.bars);
  append(areas, other.areas);
  append(strokes, other.strokes);
  append(hits, other.hits);
}

void Drawing::setStage(int stage) {
  changeStages(*this, [stage](int) { return stage; });
}

void Drawing::delayBy(int stages) {
  changeStages(*this, [stages](int stage) { return stage + stages; });
}

void Drawing::notBefore(int stage) {
  changeStages(*this, [stage](int before) { return std::max(before, stage); });
}

QPolygonF corners(const QRectF& rect) {
  return QPolygonF({rect.topLeft(), rect.topRight(), rect.bottomRight(), rect.bottomLeft()});
}

double onScale(const Number& value) {
  const QString text = QString::fromStdString(value.rationalText());
  const qsizetype slash = text.indexOf(QLatin1Char('/'));
  if (slash < 0) return text.toDouble();
  return text.left(slash).toDouble() / text.mid(slash + 1).toDouble();
}

}  // namespace wardchalk::ui
