#include "ui/paper/pdf_book.h"

#include "ui/paper/paint_sheet.h"

namespace wardchalk::ui {

PdfBook::PdfBook(const QString& file, PaperSize size) : file_(file), size_(size) {}

/// The painter lets go of the writer, and the writer of what it writes to.
PdfBook::~PdfBook() {
  painter_.reset();
  writer_.reset();
}

bool PdfBook::add(const SheetContent& content) {
  const bool first = !painter_;
  if (first) {
    if (!out_.open(QIODevice::WriteOnly)) return false;
    writer_ = pdfWriter(out_, size_, content.title, content.program);
    painter_ = std::make_unique<QPainter>();
    if (!beginSheets(*painter_, *writer_)) return false;
  }
  return paintSheets(*painter_, *writer_, layOutSheet(content, paperFormat(size_)), first);
}

Result<Done> PdfBook::finish() {
  if (!painter_ || !painter_->end()) return Refusal{RefusalCode::fileUnwritable, file_.toStdString(), {}, {}};
  painter_.reset();
  writer_.reset();
  return writeBytes(file_, out_.data());
}

}  // namespace wardchalk::ui
