#include "ui/paper/paper_format.h"

#include <algorithm>

namespace wardchalk::ui {

namespace {

/// 10 mm: more than any office printer leaves white, and little enough for the usual case to fit one page.
constexpr double edge = 10 / 25.4 * 96;
constexpr double pointsPerUnit = 72.0 / 96;

}  // namespace

std::optional<PaperSize> paperSizeNamed(const QString& name) {
  if (name == QLatin1String("a4")) return PaperSize::a4;
  if (name == QLatin1String("letter")) return PaperSize::letter;
  return std::nullopt;
}

QString nameOf(PaperSize size) {
  return size == PaperSize::a4 ? QStringLiteral("a4") : QStringLiteral("letter");
}

QPageSize pageSizeOf(PaperSize size) {
  return QPageSize(size == PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter);
}

PaperFormat paperFormat(const QPageSize& size, const QMarginsF& leastMargins) {
  const QSizeF points = size.size(QPageSize::Point);
  const auto wide = [](double margin) { return std::max(edge, margin / pointsPerUnit); };
  return {points / pointsPerUnit,
          {wide(leastMargins.left()), wide(leastMargins.top()), wide(leastMargins.right()),
           wide(leastMargins.bottom())}};
}

}  // namespace wardchalk::ui
