#include "ui/theme/text.h"

#include <QChar>
#include <algorithm>

#include "core/words/isolated.h"
#include "core/words/sentences.h"

namespace wardchalk::ui {

namespace {

constexpr QChar placeToBreak(0x200B);  // Unicode: zero width space

}  // namespace

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

QString outside(std::string_view text) { return fromCore(isolated(text)); }

QString outside(const QString& text) { return outside(text.toStdString()); }

QString refusedFile(const QString& file, const Refusal& refusal) {
  return outside(file) + u'\n' + fromCore(placedSentence(refusal));
}

QStringList withWholeIsolates(const QStringList& lines) {
  const auto hasMark = [](const QString& line) { return line.contains(QChar(0x2068)); };
  if (std::none_of(lines.begin(), lines.end(), hasMark)) return lines;
  IsolatesOfLines isolates;
  QStringList whole;
  for (const QString& line : lines) whole << fromCore(isolates.next(line.toStdString()));
  return whole;
}

QStringList piecesByWriting(const QString& text) {
  constexpr char16_t firstOfIndia = 0x0900;  // the writings before it are in every font that we know of
  const auto isEastern = [](QChar one) {
    return one.unicode() >= firstOfIndia && one.script() > QChar::Script_Latin;
  };
  if (text.contains(QChar(0x2068)) || std::none_of(text.begin(), text.end(), isEastern)) return {text};
  QStringList pieces;
  qsizetype begin = 0;
  for (qsizetype i = 1; i < text.size(); ++i) {
    const bool plain = text[i].unicode() < firstOfIndia;
    if (!plain || !isEastern(text[i - 1])) continue;
    pieces << text.mid(begin, i - begin);
    begin = i;
  }
  return pieces << text.mid(begin);
}

QString breakable(QString text) {
  constexpr qsizetype longestWord = 24;
  qsizetype letters = 0;
  for (qsizetype i = 0; i < text.size(); ++i) {
    letters = text[i].isSpace() ? 0 : letters + 1;
    if (letters <= longestWord || text[i].isLowSurrogate() || text[i].isMark()) continue;
    text.insert(i, placeToBreak);
    letters = 0;
  }
  return text;
}

QString shortened(const QString& text, qsizetype most) {
  if (text.size() <= most) return text;
  qsizetype head = most / 2;
  qsizetype tail = text.size() - (most - head - 1);
  if (text[head].isLowSurrogate()) --head;
  if (text[tail].isLowSurrogate()) ++tail;
  return text.left(head) + u'…' + text.mid(tail);
}

QString loosed(QString text) {
  text.replace(QChar::Nbsp, u' ').remove(placeToBreak);
  return text.remove(QChar(0x2068)).remove(QChar(0x2069));
}

}  // namespace wardchalk::ui
