#include "ui/working/finding_row.h"

#include <QPainter>

#include "core/words/sentences.h"
#include "ui/theme/text.h"
#include "ui/working/box.h"
#include "ui/working/paint_drawing.h"
#include "ui/working/type_measure.h"
#include "ui/working/verdict_sign.h"

namespace wardchalk::ui {

FindingRow::FindingRow(QWidget* parent) : SpokenWidget(parent) {}

void FindingRow::show(const Finding& finding) {
  severity_ = finding.severity;
  text_ = held(sentence(finding));
  setOrigin(fromCore(finding.field));
  setObjectName(QStringLiteral("finding_") + fromCore(idOf(finding.code)));
  setSpoken(loosed(text_));
  forget();
}

double FindingRow::layOutAt(int width) {
  const Metrics metrics = metricsAt(width);
  const double side = metrics.px(16);
  const double left = metrics.px(14) + side + metrics.px(8);
  const double air = metrics.px(3);
  Box said = paragraph(text_, FontRole::finding, Ink::text, metrics, width - left - metrics.px(12));
  const TypeMeasure font(metrics.type(FontRole::finding), {});
  const double height = said.height();
  const double base = air + said.above;
  sign_ = {metrics.px(14), base - font.capHeight() / 2 - side / 2, side, side};
  drawing_ = Drawing();
  drawing_.add(std::move(said.drawing), {left, base});
  return height + 2 * air;
}

void FindingRow::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  if (const auto verdict = verdictOf(severity_)) {
    const bool grave = severity_ == Severity::unsafe || severity_ == Severity::notCovered;
    paintVerdictSign(painter, *verdict, sign_,
                     {palette()[Ink::board], palette()[grave ? Ink::fails : Ink::text]});
  } else {
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette()[Ink::quiet]);
    painter.drawEllipse(sign_.center(), sign_.width() * 0.17, sign_.width() * 0.17);
  }
  paintDrawing(painter, drawing_, palette(), {});
  paintFocusRing(painter, palette()[Ink::focus]);
}

}  // namespace wardchalk::ui
