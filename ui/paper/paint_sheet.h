#pragma once

#include "ui/paper/paper_format.h"
#include "ui/paper/sheet_layout.h"

class QPainter;
class QPagedPaintDevice;

namespace wardchalk::ui {

/// Paints one page in 1/96 inch from the corner of the paper; the painter is scaled for its device.
void paintPage(QPainter& painter, const SheetPage& page);

/// Paints every page on a printer or into a PDF whose pages are set to the whole paper. False if that fails.
[[nodiscard]] bool paintSheet(QPagedPaintDevice& device, const SheetLayout& sheet);

/// Writes pages as a PDF of real text with its fonts. False if the file cannot be written.
[[nodiscard]] bool writePdf(const QString& file, const SheetLayout& sheet, PaperSize size, const QString& title,
                            const QString& creator);

/// Writes the sheet as a PDF. False if the file cannot be written.
[[nodiscard]] bool writePdf(const QString& file, const SheetContent& content, PaperSize size);

}  // namespace wardchalk::ui
