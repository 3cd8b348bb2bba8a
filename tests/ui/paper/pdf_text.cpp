#include "tests/ui/paper/pdf_text.h"

#include <QProcess>
#include <QRegularExpression>

namespace wardchalk::ui::test {

namespace {

QString outputOf(const QString& program, const QStringList& arguments) {
  QProcess reader;
  reader.start(program, arguments);
  if (!reader.waitForFinished() || reader.exitCode() != 0)
    qFatal("%s cannot read %s", qPrintable(program), qPrintable(arguments.join(u' ')));
  return QString::fromUtf8(reader.readAllStandardOutput());
}

}  // namespace

QStringList pagesOfPdf(const QString& file) {
  const QStringList arguments{QStringLiteral("-raw"), QStringLiteral("-enc"), QStringLiteral("UTF-8"), file,
                              QStringLiteral("-")};
  QStringList pages = outputOf(QStringLiteral("pdftotext"), arguments).split(u'\f');
  pages.removeLast();  // what stands after the last page's end
  return pages;
}

std::vector<PdfWord> wordsOfPdf(const QString& file) {
  const QString told =
      outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), file, QStringLiteral("-")});
  static const QRegularExpression element(QStringLiteral(
      "<page width=\"([0-9.]+)\" height=\"([0-9.]+)\">"
      "|<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" yMax=\"([0-9.]+)\">([^<]*)<"));
  std::vector<PdfWord> words;
  QSizeF page;
  for (auto found = element.globalMatch(told); found.hasNext();) {
    const QRegularExpressionMatch match = found.next();
    const auto number = [&](int group) { return match.captured(group).toDouble(); };
    if (match.hasCaptured(3))
      words.push_back(
          {match.captured(7), {QPointF(number(3), number(4)), QPointF(number(5), number(6))}, page});
    else
      page = {number(1), number(2)};
  }
  return words;
}

QString pdfInfo(const QString& file) { return outputOf(QStringLiteral("pdfinfo"), {file}); }

QString unspaced(QString text) {
  static const QRegularExpression space(QStringLiteral("[\\s\\x{00a0}]+"));
  return text.remove(space);
}

QString unsafeWriting(const QString& text) {
  static const QRegularExpression unsafe(
      QStringLiteral(
          "(?<![0-9.])[0-9,]+\\.[0-9]*0[\\s\\x{00a0}]+(?:mg|mcg|mL|g|units|mmol|mEq|h|min|tablets?)\\b"
          "|(?<![0-9])\\.[0-9]"
          "|[0-9](?:mg|mcg|mL|g|kg|units|mmol|mEq)\\b"
          "|(?<![0-9.,-])[0-9]{4,}(?:\\.[0-9]+)?[\\s\\x{00a0}]+(?:mg|mcg|mL|g|units)\\b"
          "|µ|\\bIU\\b|\\b[0-9]+[\\s\\x{00a0}]*U\\b|\\bcc\\b|\\bQO?D\\b|/d\\b"),
      QRegularExpression::UseUnicodePropertiesOption);
  return unsafe.match(text).captured();
}

}  // namespace wardchalk::ui::test
