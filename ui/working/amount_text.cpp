#include "ui/working/amount_text.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>

#include "ui/working/box.h"
#include "ui/working/paint_drawing.h"
#include "ui/working/text.h"

namespace wardchalk::ui {

namespace {

/// From this width, at 100 %, the lines stand beside the amount and not below it.
constexpr double wideAmount = 760;

/// Short lines that belong together, on one line as far as they fit.
QString joined(const QString& first, const QString& second) {
  if (first.isEmpty() || second.isEmpty()) return first + second;
  return first + QStringLiteral(" · ") + second;
}

Box linesBox(const QStringList& lines, const Metrics& metrics, double width) {
  std::vector<Box> boxes;
  for (const QString& line : lines)
    boxes.push_back(
        paragraph(line, FontRole::finding, boxes.empty() ? Ink::text : Ink::quiet, metrics, width));
  return column(std::move(boxes), metrics.px(2));
}

}  // namespace

AmountText::AmountText(QWidget* parent) : SpokenWidget(parent) { setObjectName(QStringLiteral("amount")); }

void AmountText::show(const Content& content) {
  const AmountWords& words = content.words;
  showsAmount_ = !words.measure.empty() && content.before.isEmpty();
  sentence_ = showsAmount_ ? QString() : content.before.isEmpty() ? held(words.none) : content.before;
  done_ = showsAmount_ ? content.done : QString();
  measure_ = showsAmount_ ? held(words.measure) : QString();
  dose_ = showsAmount_ ? held(words.dose) : QString();
  details_.clear();
  if (showsAmount_)
    for (const QString& line :
         {held(words.label), held(words.device), joined(held(words.when), held(words.rounding))})
      if (!line.isEmpty()) details_ << line;
  QStringList said{sentence_, done_, measure_ + u' ' + dose_};
  said << details_;
  said.removeIf([](const QString& line) { return line.trimmed().isEmpty(); });
  QString text = said.join(QStringLiteral(". ")).replace(QChar::Nbsp, u' ');
  setSpoken(text.replace(QStringLiteral(".. "), QStringLiteral(". ")));
  forget();
}

double AmountText::layOutAt(int width) {
  const Metrics metrics = metricsAt(width);
  const double pad = metrics.px(14);
  const double air = metrics.px(9);
  const double room = width - 2 * pad;
  drawing_ = Drawing();
  if (!showsAmount_) {
    Box said = paragraph(sentence_, FontRole::body, Ink::text, metrics, room);
    const double height = said.height();
    drawing_.add(std::move(said.drawing), {pad, air + said.above});
    return height + 2 * air;
  }
  std::vector<Box> parts;
  parts.push_back(paragraph(measure_, FontRole::amount, Ink::text, metrics, room));
  parts.push_back(paragraph(dose_, FontRole::dose, Ink::text, metrics, room));
  const double gap = metrics.px(14);
  const double natural = parts[0].width + gap + parts[1].width;
  Box headline = wrapped(std::move(parts), gap, metrics.px(2), room);
  if (!done_.isEmpty())
    headline = column({paragraph(done_, FontRole::finding, Ink::quiet, metrics, room), std::move(headline)},
                      metrics.px(4));
  const double aside = room - natural - metrics.px(24);
  const bool beside = width >= metrics.px(wideAmount) && aside >= metrics.px(230) && done_.isEmpty();
  Box details = linesBox(details_, metrics, beside ? aside : room);
  if (!beside) {
    Box all = column({std::move(headline), std::move(details)}, metrics.px(4));
    const double height = all.height();
    drawing_.add(std::move(all.drawing), {pad, air + all.above});
    return height + 2 * air;
  }
  const double inner = std::max(headline.height(), details.height());
  drawing_.add(std::move(headline.drawing), {pad, air + (inner - headline.height()) / 2 + headline.above});
  drawing_.add(std::move(details.drawing),
               {width - pad - details.width, air + (inner - details.height()) / 2 + details.above});
  return inner + 2 * air;
}

void AmountText::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette()[Ink::card]);
  paintDrawing(painter, drawing_, palette(), {});
  paintFocusRing(painter, palette()[Ink::focus]);
}

}  // namespace wardchalk::ui
