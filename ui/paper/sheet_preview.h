#pragma once

#include <QDialog>

#include "ui/paper/paper_format.h"
#include "ui/paper/sheet_content.h"

class QScrollArea;

namespace wardchalk::ui {

class SheetPages;

/// The pages of a sheet as they will be printed, under one another. Arrow keys and Page Down scroll them.
class SheetPreview : public QDialog {
  Q_OBJECT

 public:
  SheetPreview(SheetContent content, PaperSize paper, QWidget* parent);

  [[nodiscard]] const SheetContent& content() const { return content_; }
  [[nodiscard]] int pageCount() const;

 Q_SIGNALS:
  void paperChosen(PaperSize size);
  void printWanted();
  void pdfWanted();

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* buildRow(PaperSize paper);
  void setPaper(PaperSize size);
  void setZoom(double zoom);

  SheetContent content_;
  SheetPages* pages_;
  QScrollArea* scroll_;
};

}  // namespace wardchalk::ui
