#include "ui/practice/mistake_bars.h"

#include <QPainter>
#include <algorithm>

#include "core/practice/marking/hints.h"
#include "ui/practice/line_words.h"
#include "ui/practice/practice_look.h"
#include "ui/theme/text.h"
#include "ui/working/box.h"
#include "ui/working/paint_drawing.h"

namespace wardchalk::ui {

namespace {

/// More are named in the table that can be saved.
constexpr std::size_t mostBars = 8;
constexpr double wordShare = 0.5;  // of the width, for the words before the bars
constexpr double barHeight = 16;
constexpr double barEdge = 1.5;
constexpr double figureRoom = 96;  // for "12 lines" behind the longest bar
constexpr double rowGap = 8;

QString linesOf(const MistakeTally& one) {
  return counted(one.lines, MistakeBars::tr("1 line"), MistakeBars::tr("%1 lines"));
}

}  // namespace

MistakeBars::MistakeBars(QWidget* parent) : SpokenWidget(parent, QAccessible::Chart) {
  setObjectName(QStringLiteral("mistake-bars"));
  followWidth();
}

void MistakeBars::show(const std::vector<MistakeTally>& mistakes) {
  mistakes_ = mistakes;
  if (mistakes_.size() > mostBars) mistakes_.resize(mostBars);
  QStringList told;
  for (const MistakeTally& one : mistakes_)
    told << tr("%1: %2").arg(fromCore(mistakeName(one.mistake)), linesOf(one));
  setSpoken(told.join(QStringLiteral(". ")));
  forget();
  updateGeometry();
}

double MistakeBars::layOutAt(int width) {
  drawing_ = {};
  const Metrics metrics = metricsAt(width);
  int most = 1;
  for (const MistakeTally& one : mistakes_) most = std::max(most, one.lines);
  const double words = width * wordShare;
  const double left = words + metrics.px(12);
  const double room = width - left - metrics.px(figureRoom);
  double y = metrics.px(4);
  for (const MistakeTally& one : mistakes_) {
    const QString name = capital(fromCore(mistakeName(one.mistake)));
    Box said = paragraph(name, FontRole::body, Ink::text, metrics, words);
    Box figure = textBox(linesOf(one), FontRole::badge, Ink::text, metrics);
    const double high = std::max(said.height(), metrics.px(barHeight));
    const double middle = y + high / 2;
    const double wide = room * one.lines / most;
    const QRectF bar(left, middle - metrics.px(barHeight) / 2, wide, metrics.px(barHeight));
    drawing_.areas.push_back({corners(bar), 3, Area::Fill::solid, Ink::disc, barEdge, Ink::line, 0});
    drawing_.add(std::move(said.drawing), {0, y + said.above});
    drawing_.add(std::move(figure.drawing),
                 {left + wide + metrics.px(8), middle + figure.above - figure.height() / 2});
    y += high + metrics.px(rowGap);
  }
  return y;
}

void MistakeBars::paintEvent(QPaintEvent*) {
  const BoardPalette& inks = practicePalette(practiceScheme());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintDrawing(painter, drawing_, inks, {});
  paintFocusRing(painter, inks[Ink::focus]);
}

}  // namespace wardchalk::ui
