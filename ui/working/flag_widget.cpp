#include "ui/working/flag_widget.h"

#include <QPainter>
#include <QStringList>
#include <algorithm>

#include "core/words/sentences.h"
#include "ui/theme/text.h"
#include "ui/working/box.h"
#include "ui/working/paint_drawing.h"
#include "ui/working/verdict_sign.h"

namespace wardchalk::ui {

namespace {

/// From this width, at 100 %, what was not checked stands beside the verdict and not below it.
constexpr double wideFlag = 760;
constexpr double ringInside = 3;

QString fieldOf(const Worksheet& sheet) {
  if (sheet.deciding) return fromCore(sheet.findings[*sheet.deciding].field);
  return sheet.needs.empty() ? QString() : fromCore(sheet.needs.front().path);
}

/// Whether an entry that cannot be read withholds the verdict. While one is still being typed, no key leads
/// anywhere else.
bool waitsForAField(const Worksheet& sheet) {
  const Finding* finding = sheet.finding(FindingCode::finishTyping);
  return finding && finding->argument<ArgumentWord>("reason");
}

/// Every letter on the flag is in the flag's ink.
BoardPalette paletteOf(const FlagColours& colours) {
  std::array<QRgb, inkCount> all;
  all.fill(colours.ink.rgb());
  return BoardPalette(all);
}

}  // namespace

FlagWidget::FlagWidget(QWidget* parent) : SpokenWidget(parent) { setObjectName(QStringLiteral("flag")); }

void FlagWidget::show(const Worksheet& sheet) {
  const QString title = held(verdictTitle(sheet));
  QString reason = held(belowTitle(sheet));
  if (waitsForAField(sheet)) reason += u' ' + tr("F5 goes there.");
  const QString notMade = held(checksNotMade(sheet));
  setOrigin(fieldOf(sheet));
  if (title == title_ && reason == reason_ && notMade == notMade_ && verdict_ == sheet.verdict) return;
  verdict_ = sheet.verdict;
  title_ = title;
  reason_ = reason;
  notMade_ = notMade;
  QStringList lines;
  for (const QString& line : {title, reason, notMade})
    if (!line.isEmpty()) lines << line;
  setSpoken(lines.join(QStringLiteral(". "))
                .replace(QStringLiteral(".. "), QStringLiteral(". "))
                .replace(QChar::Nbsp, u' '));
  forget();
}

double FlagWidget::layOutAt(int width) {
  const Metrics metrics = metricsAt(width);
  const double pad = metrics.px(14);
  const double side = metrics.px(46);
  const double left = 2 * pad + side;
  const double room = width - left - pad;
  const bool beside = width >= metrics.px(wideFlag) && !notMade_.isEmpty();
  const double aside = beside ? room * 0.34 : room;
  const double main = beside ? room - aside - metrics.px(20) : room;
  std::vector<Box> lines;
  lines.push_back(paragraph(title_, FontRole::flag, Ink::text, metrics, main));
  if (!reason_.isEmpty()) lines.push_back(paragraph(reason_, FontRole::body, Ink::text, metrics, main));
  Box notMade = notMade_.isEmpty() ? Box() : paragraph(notMade_, FontRole::tag, Ink::text, metrics, aside);
  if (!beside && !notMade_.isEmpty()) lines.push_back(std::move(notMade));
  Box said = column(std::move(lines), metrics.px(3));

  const double inner = std::max({side, said.height(), beside ? notMade.height() : 0});
  const double air = metrics.px(9);
  drawing_ = Drawing();
  sign_ = {pad, air + (inner - side) / 2, side, side};
  drawing_.add(std::move(said.drawing), {left, air + (inner - said.height()) / 2 + said.above});
  if (beside)
    drawing_.add(std::move(notMade.drawing),
                 {width - pad - aside, air + (inner - notMade.height()) / 2 + notMade.above});
  return inner + 2 * air;
}

void FlagWidget::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const FlagColours colours = flagColours(verdict_, scheme());
  painter.fillRect(rect(), colours.fill);
  if (verdict_ == VerdictKind::undecided) paintDashedOutline(painter, rect(), colours.ink);
  paintVerdictSign(painter, verdict_, sign_, colours);
  paintDrawing(painter, drawing_, paletteOf(colours), {});
  if (verdict_ == VerdictKind::undecided) return paintFocusRing(painter, palette()[Ink::focus]);
  // the fill is seen on both sides of it: white at the edge of a green flag is lost on a white ground
  paintFocusRing(painter, colours.ink, metricsAt(width()).px(ringInside));
}

}  // namespace wardchalk::ui
