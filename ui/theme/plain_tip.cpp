#include "ui/theme/plain_tip.h"

#include <QModelIndex>
#include <QTextDocument>

namespace wardchalk::ui {

namespace {

constexpr qsizetype mostInLine = 90;  // letters
constexpr QLatin1String before("<p style='white-space:pre'>");
constexpr QLatin1String after("</p>");

/// Broken at a blank where there is one in the line, and anywhere else.
QString inLines(const QString& text) {
  QString lines = text;
  qsizetype begin = 0;
  while (lines.size() - begin > mostInLine) {
    const qsizetype ended = lines.indexOf(u'\n', begin);
    if (ended >= 0 && ended - begin <= mostInLine) {
      begin = ended + 1;
      continue;
    }
    const qsizetype blank = lines.lastIndexOf(u' ', begin + mostInLine);
    if (blank > begin) {
      lines[blank] = u'\n';
      begin = blank + 1;
      continue;
    }
    qsizetype cut = begin + mostInLine;
    if (lines[cut].isLowSurrogate()) --cut;
    lines.insert(cut, u'\n');
    begin = cut + 1;
  }
  return lines;
}

}  // namespace

QString plainTip(const QString& text) {
  const QString lines = inLines(text);
  if (!Qt::mightBeRichText(lines)) return lines;
  return before + lines.toHtmlEscaped() + after;
}

QString textOfTip(const QString& tip) {
  if (!tip.startsWith(before) || !tip.endsWith(after)) return tip;
  QString text = tip.mid(before.size(), tip.size() - before.size() - after.size());
  text.replace(QLatin1String("&lt;"), QLatin1String("<"));
  text.replace(QLatin1String("&gt;"), QLatin1String(">"));
  text.replace(QLatin1String("&quot;"), QLatin1String("\""));
  return text.replace(QLatin1String("&amp;"), QLatin1String("&"));
}

QString textOfTip(const QModelIndex& row) { return textOfTip(row.data(Qt::ToolTipRole).toString()); }

}  // namespace wardchalk::ui
