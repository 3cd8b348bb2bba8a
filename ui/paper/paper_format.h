#pragma once

#include <QMarginsF>
#include <QPageSize>
#include <QRectF>
#include <QString>
#include <cstdint>
#include <optional>

namespace wardchalk::ui {

/// The two sizes that sheets are made in by themselves; a printer may bring any other.
enum class PaperSize : std::uint8_t { a4, letter };

/// "a4" or "letter"; nothing for another word.
[[nodiscard]] std::optional<PaperSize> paperSizeNamed(const QString& name);
[[nodiscard]] QString nameOf(PaperSize size);
[[nodiscard]] QPageSize pageSizeOf(PaperSize size);

/// A page in 1/96 inch and the edge that stays free.
struct PaperFormat {
  QSizeF size;
  QMarginsF margins;
  [[nodiscard]] QRectF content() const { return QRectF(QPointF(), size).marginsRemoved(margins); }
};

/// The page with our own edge, or the printer's where that is wider.
[[nodiscard]] PaperFormat paperFormat(const QPageSize& size, const QMarginsF& leastMargins = {});
[[nodiscard]] inline PaperFormat paperFormat(PaperSize size) { return paperFormat(pageSizeOf(size)); }

}  // namespace wardchalk::ui
