#pragma once

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <memory>

#include "core/number/refusal.h"
#include "ui/paper/paper_format.h"
#include "ui/paper/sheet_content.h"

namespace wardchalk::ui {

/// One PDF of many sheets, each beginning on a page of its own. The file is there only once it is finished; a
/// book that is given up leaves none.
class PdfBook {
 public:
  PdfBook(const QString& file, PaperSize size);
  ~PdfBook();
  PdfBook(const PdfBook&) = delete;
  PdfBook& operator=(const PdfBook&) = delete;

  /// False when it cannot be painted.
  [[nodiscard]] bool add(const SheetContent& content);
  [[nodiscard]] bool isEmpty() const { return !painter_; }
  /// Writes it.
  [[nodiscard]] Result<Done> finish();

 private:
  QString file_;
  QBuffer out_;
  PaperSize size_;
  std::unique_ptr<QPdfWriter> writer_;
  std::unique_ptr<QPainter> painter_;
};

}  // namespace wardchalk::ui
