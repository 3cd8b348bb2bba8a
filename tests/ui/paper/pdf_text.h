#pragma once

#include <QRectF>
#include <QString>
#include <QStringList>
#include <vector>

namespace wardchalk::ui::test {

/// What pdftotext reads on each page, in the order in which it was drawn. Ends the program when it cannot be
/// run.
[[nodiscard]] QStringList pagesOfPdf(const QString& file);

/// What pdfinfo tells of the file outside its pages.
[[nodiscard]] QString pdfInfo(const QString& file);

/// Where a word stands on its page, in points from the upper left corner.
struct PdfWord {
  QString text;
  QRectF rect;
  QSizeF page;
};
[[nodiscard]] std::vector<PdfWord> wordsOfPdf(const QString& file);

/// Without any space, so that it does not matter where lines were broken.
[[nodiscard]] QString unspaced(QString text);

/// The first spelling in a text that has been misread (T01 to T07), or nothing: a zero after the point of a
/// dose, a point without a zero before it, a number hard against its unit, thousands without a comma, a
/// forbidden sign.
[[nodiscard]] QString unsafeWriting(const QString& text);

}  // namespace wardchalk::ui::test
