#pragma once

#include <memory>

#include "core/number/refusal.h"
#include "ui/paper/paper_format.h"
#include "ui/paper/sheet_layout.h"

class QIODevice;
class QPainter;
class QPagedPaintDevice;
class QPdfWriter;

namespace wardchalk::ui {

/// Paints one page in 1/96 inch from the corner of the paper; the painter is scaled for its device.
void paintPage(QPainter& painter, const SheetPage& page);

/// Paints every page on a printer or into a PDF whose pages are set to the whole paper. False if that fails.
[[nodiscard]] bool paintSheet(QPagedPaintDevice& device, const SheetLayout& sheet);

/// Begins to paint sheets on a device in their own measure; false if that fails.
[[nodiscard]] bool beginSheets(QPainter& painter, QPagedPaintDevice& device);
/// Paints every page of one more sheet; `first` is the first of all. False if a page cannot be begun.
[[nodiscard]] bool paintSheets(QPainter& painter, QPagedPaintDevice& device, const SheetLayout& sheet,
                               bool first);

/// A writer of PDF on this paper with this title.
[[nodiscard]] std::unique_ptr<QPdfWriter> pdfWriter(QIODevice& out, PaperSize size, const QString& title,
                                                    const QString& creator);

/// Writes pages as a PDF of real text with its fonts, whole or not at all.
[[nodiscard]] Result<Done> writePdf(const QString& file, const SheetLayout& sheet, PaperSize size,
                                    const QString& title, const QString& creator);

/// Writes the sheet as a PDF.
[[nodiscard]] Result<Done> writePdf(const QString& file, const SheetContent& content, PaperSize size);

/// Puts a file with these bytes there, as writeFile of the core does.
[[nodiscard]] Result<Done> writeBytes(const QString& file, const QByteArray& bytes);

}  // namespace wardchalk::ui
