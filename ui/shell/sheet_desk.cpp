#include "ui/shell/sheet_desk.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QPrinter>

#include "core/words/sentences.h"
#include "ui/paper/paint_sheet.h"
#include "ui/paper/sheet_preview.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

SheetMade madeNow() {
  // year first: the one order of figures that no country reads otherwise
  return {QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")),
          QCoreApplication::applicationVersion(),
          {}};
}

SheetDesk::SheetDesk(QWidget* window, Settings& settings, Dialogs& dialogs)
    : QObject(window), window_(window), settings_(settings), dialogs_(dialogs) {}

void SheetDesk::print(const Shown& shown, const SheetMade& made) { print(sheetContent(shown, made)); }

void SheetDesk::savePdf(const Shown& shown, const SheetMade& made) { savePdf(sheetContent(shown, made)); }

void SheetDesk::preview(const Shown& shown, const SheetMade& made) {
  auto* preview = new SheetPreview(sheetContent(shown, made), settings_.paper(), window_);
  connect(preview, &SheetPreview::paperChosen, this, [this](PaperSize size) { settings_.setPaper(size); });
  connect(preview, &SheetPreview::printWanted, this, [this, preview] { print(preview->content()); });
  connect(preview, &SheetPreview::pdfWanted, this, [this, preview] { savePdf(preview->content()); });
  preview->open();
}

void SheetDesk::print(const SheetContent& content) {
  QPrinter printer(QPrinter::HighResolution);
  printer.setPageSize(pageSizeOf(settings_.paper()));
  printer.setDocName(content.title);  // no name of a medicine in the printer's list of jobs
  if (!dialogs_.choosePrinter(window_, printer)) return;
  printer.setFullPage(true);
  const QPageLayout page = printer.pageLayout();
  QPageSize size = page.pageSize();
  if (page.orientation() == QPageLayout::Landscape)
    size = QPageSize(size.size(QPageSize::Point).transposed(), QPageSize::Point);
  const PaperFormat format = paperFormat(size, page.minimumMargins());
  if (paintSheet(printer, layOutSheet(content, format))) return;
  dialogs_.tell(window_, tr("The sheet was not printed"), tr("The printer did not take it."));
}

void SheetDesk::savePdf(const SheetContent& content) {
  const QString file = dialogs_.file(
      window_, {FileQuestion::save, tr("Save the sheet as PDF"), tr("PDF (*.pdf)"), tr("worksheet.pdf")});
  if (file.isEmpty()) return;
  if (const auto written = writePdf(file, content, settings_.paper()); !written)
    dialogs_.tell(window_, tr("The sheet was not saved"), refusedFile(file, written.refusal()));
}

}  // namespace wardchalk::ui
