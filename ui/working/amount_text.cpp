#include "ui/working/amount_text.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>

#include "ui/theme/text.h"
#include "ui/working/box.h"
#include "ui/working/paint_drawing.h"

namespace wardchalk::ui {

namespace {

/// Space left and right, and above and below, at 100 %.
constexpr double sideAir = 14;
constexpr double air = 9;
constexpr double besideAmount = 40;

/// Short lines that belong together, on one line as far as they fit.
QString joined(const QString& first, const QString& second) {
  if (first.isEmpty() || second.isEmpty()) return first + second;
  return first + QStringLiteral(" · ") + second;
}

Box linesBox(const QStringList& lines, const Metrics& metrics, double width) {
  std::vector<Box> boxes;
  for (const QString& line : lines)
    if (!line.isEmpty())
      boxes.push_back(
          paragraph(line, FontRole::finding, boxes.empty() ? Ink::text : Ink::quiet, metrics, width));
  return column(std::move(boxes), metrics.px(2));
}

}  // namespace

AmountText::AmountText(QWidget* parent) : SpokenWidget(parent) { setObjectName(QStringLiteral("amount")); }

void AmountText::show(const AmountWords& words) {
  showsAmount_ = !words.measure.empty();
  sentence_ = held(words.none);
  done_ = held(words.done);
  measure_ = held(words.measure);
  dose_ = held(words.dose);
  prepare_ = held(words.prepare);
  run_ = held(words.run);
  label_ = held(words.label);
  device_ = held(words.device);
  when_ = held(words.when);
  rounding_ = held(words.rounding);
  QStringList said{sentence_, done_};
  if (showsAmount_)
    said << measure_ + u' ' + dose_ << prepare_ << run_ << label_ << device_ << when_ << rounding_;
  said.removeIf([](const QString& line) { return line.trimmed().isEmpty(); });
  QString text = said.join(QStringLiteral(". ")).replace(QChar::Nbsp, u' ');
  setSpoken(text.replace(QStringLiteral(".. "), QStringLiteral(". ")));
  forget();
}

double AmountText::layOutAt(int width) {
  const Metrics metrics = metricsAt(width);
  drawing_ = Drawing();
  if (showsAmount_) return layOutAmount(metrics);
  Box said = paragraph(sentence_, FontRole::body, Ink::text, metrics, width - 2 * metrics.px(sideAir));
  const double height = said.height() + 2 * metrics.px(air);
  drawing_.add(std::move(said.drawing), {metrics.px(sideAir), metrics.px(air) + said.above});
  return height;
}

/// The amount in large type; its lines stand beside it where each fits there unbroken, else in two lines
/// below.
double AmountText::layOutAmount(const Metrics& metrics) {
  const double room = metrics.width - 2 * metrics.px(sideAir);
  std::vector<Box> parts;
  parts.push_back(paragraph(measure_, FontRole::amount, Ink::text, metrics, room));
  parts.push_back(paragraph(dose_, FontRole::dose, Ink::text, metrics, room));
  const double gap = metrics.px(14);
  const double aside = room - parts[0].width - gap - parts[1].width - metrics.px(24);
  Box headline = wrapped(std::move(parts), gap, metrics.px(2), room);
  if (!done_.isEmpty())
    headline = column({paragraph(done_, FontRole::finding, Ink::quiet, metrics, room), std::move(headline)},
                      metrics.px(4));
  if (!run_.isEmpty())
    headline = column({std::move(headline), paragraph(run_, FontRole::question, Ink::text, metrics, room)},
                      metrics.px(4));
  Box beside = linesBox({label_, device_, joined(when_, rounding_)}, metrics, 1e6);
  if (beside.width <= aside && done_.isEmpty() && prepare_.isEmpty() && run_.isEmpty())
    return putBeside(std::move(headline), std::move(beside), metrics);
  Box below = linesBox({prepare_, joined(when_, label_), joined(device_, rounding_)}, metrics, room);
  Box all = column({std::move(headline), std::move(below)}, metrics.px(4));
  const double height = all.height() + 2 * metrics.px(air);
  drawing_.add(std::move(all.drawing), {metrics.px(sideAir), metrics.px(air) + all.above});
  return height;
}

double AmountText::putBeside(Box headline, Box lines, const Metrics& metrics) {
  const double inner = std::max(headline.height(), lines.height());
  const auto top = [&](const Box& box) { return metrics.px(air) + (inner - box.height()) / 2 + box.above; };
  const QPointF first(metrics.px(sideAir), top(headline));
  // not at the far edge of a wide window: who reads the amount sees the label's line with it
  const double left = metrics.px(sideAir) + headline.width + metrics.px(besideAmount);
  const QPointF second(std::min(left, metrics.width - metrics.px(sideAir) - lines.width), top(lines));
  drawing_.add(std::move(headline.drawing), first);
  drawing_.add(std::move(lines.drawing), second);
  return inner + 2 * metrics.px(air);
}

void AmountText::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette()[Ink::card]);
  paintDrawing(painter, drawing_, palette(), {});
  paintFocusRing(painter, palette()[Ink::focus]);
}

}  // namespace wardchalk::ui
