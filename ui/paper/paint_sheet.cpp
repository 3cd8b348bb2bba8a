#include "ui/paper/paint_sheet.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

#include "core/record/text_file.h"
#include "ui/paper/paper_palette.h"
#include "ui/theme/native_path.h"
#include "ui/working/paint_drawing.h"
#include "ui/working/verdict_sign.h"

namespace wardchalk::ui {

namespace {

/// Fine enough that letters and strokes are set as they were laid out.
constexpr int pdfResolution = 1200;
constexpr double unitsPerInch = 96;

}  // namespace

void paintPage(QPainter& painter, const SheetPage& page) {
  const BoardPalette& palette = paperPalette();
  paintDrawing(painter, page.drawing, palette, {});
  for (const PlacedSign& sign : page.signs)
    paintVerdictSign(
        painter, sign.verdict, sign.rect,
        {palette[sign.onBlack ? Ink::disc : Ink::card], palette[sign.onBlack ? Ink::onDisc : Ink::text]});
}

bool beginSheets(QPainter& painter, QPagedPaintDevice& device) {
  if (!painter.begin(&device)) return false;
  painter.scale(device.logicalDpiX() / unitsPerInch, device.logicalDpiY() / unitsPerInch);
  return true;
}

bool paintSheets(QPainter& painter, QPagedPaintDevice& device, const SheetLayout& sheet, bool first) {
  for (const SheetPage& page : sheet.pages) {
    if (!first && !device.newPage()) return false;
    first = false;
    paintPage(painter, page);
  }
  return true;
}

bool paintSheet(QPagedPaintDevice& device, const SheetLayout& sheet) {
  QPainter painter;
  return beginSheets(painter, device) && paintSheets(painter, device, sheet, true) && painter.end();
}

std::unique_ptr<QPdfWriter> pdfWriter(QIODevice& out, PaperSize size, const QString& title,
                                      const QString& creator) {
  auto writer = std::make_unique<QPdfWriter>(&out);
  writer->setResolution(pdfResolution);
  writer->setPageLayout({pageSizeOf(size), QPageLayout::Portrait, QMarginsF()});
  writer->setTitle(title);
  writer->setCreator(creator);
  return writer;
}

Result<Done> writePdf(const QString& file, const SheetLayout& sheet, PaperSize size, const QString& title,
                      const QString& creator) {
  QBuffer out;
  out.open(QIODevice::WriteOnly);
  std::unique_ptr<QPdfWriter> writer = pdfWriter(out, size, title, creator);
  if (!paintSheet(*writer, sheet)) return Refusal{RefusalCode::fileUnwritable, file.toStdString(), {}, {}};
  writer.reset();
  return writeBytes(file, out.data());
}

Result<Done> writePdf(const QString& file, const SheetContent& content, PaperSize size) {
  return writePdf(file, layOutSheet(content, paperFormat(size)), size, content.title, content.program);
}

Result<Done> writeBytes(const QString& file, const QByteArray& bytes) {
  return writeFile(nativePath(file), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

}  // namespace wardchalk::ui
