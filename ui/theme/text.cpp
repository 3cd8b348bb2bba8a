#include "ui/theme/text.h"

#include <QChar>

namespace wardchalk::ui {

QString fromCore(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString held(std::string_view text) {
  QString whole = fromCore(text);
  for (qsizetype i = 1; i + 1 < whole.size(); ++i) {
    if (whole[i] != u' ') continue;
    const QChar before = whole[i - 1];
    if (before.isDigit() || before == u'≈' || before == u'≤' || before == u'≥' || before == u'<' ||
        before == u'>')
      whole[i] = QChar(QChar::Nbsp);
  }
  return whole;
}

QString loosed(QString text) { return text.replace(QChar::Nbsp, u' '); }

}  // namespace wardchalk::ui
