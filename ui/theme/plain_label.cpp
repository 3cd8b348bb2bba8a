#include "ui/theme/plain_label.h"

#include <QEvent>
#include <QPainter>
#include <QRegularExpression>
#include <QStyle>
#include <QTextLayout>
#include <cmath>

namespace wardchalk::ui {

namespace {

/// A longer word is broken rather than giving the label its width.
constexpr int longestWord = 24;  // letters

QTextOption broken(const QLabel& label) {
  QTextOption option(QStyle::visualAlignment(label.layoutDirection(), label.alignment()) &
                     Qt::AlignHorizontal_Mask);
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  return option;
}

}  // namespace

PlainLabel::PlainLabel(const QString& text, QWidget* parent) : QLabel(parent) {
  setTextFormat(Qt::PlainText);
  setText(text);
}

/// What stands beside the text: margins, the indent and the frame.
int PlainLabel::besideText() const {
  const QMargins around = contentsMargins();
  return around.left() + around.right() + 2 * margin() + qMax(0, indent());
}

int PlainLabel::narrowest() const { return longestWord * fontMetrics().averageCharWidth() + besideText(); }

/// Whether a word is wider than such a label. One that text can be selected from is drawn in another way,
/// which leaves no choice: it gets its words breakable.
bool PlainLabel::breaksWordsAt(int width) const {
  const bool drawsItself =
      textInteractionFlags() & (Qt::TextSelectableByKeyboard | Qt::TextSelectableByMouse);
  return wordWrap() && textFormat() == Qt::PlainText && !drawsItself &&
         QLabel::minimumSizeHint().width() > width;
}

/// As it is drawn: where the label leads to a box, an ampersand names a key.
QString PlainLabel::drawn() const {
  if (!buddy()) return text();
  static const QRegularExpression ampersand(QStringLiteral("&(.)"));
  return text().replace(ampersand, QStringLiteral("\\1"));
}

QSize PlainLabel::minimumSizeHint() const {
  const QSize usual = QLabel::minimumSizeHint();
  return breaksWordsAt(narrowest()) ? QSize(narrowest(), usual.height()) : usual;
}

QSize PlainLabel::sizeHint() const {
  if (!breaksWordsAt(narrowest())) return QLabel::sizeHint();
  const int width = qMin(QLabel::sizeHint().width(), 3 * narrowest());
  return {width, heightForWidth(width)};
}

int PlainLabel::heightForWidth(int width) const {
  constexpr qsizetype mostWidths = 16;  // a window that is drawn wider passes through many
  const bool isSame = heights_.text == text() && heights_.font == font() &&
                      heights_.around == contentsMargins() && heights_.wraps == wordWrap();
  if (!isSame) heights_ = {text(), font(), contentsMargins(), wordWrap(), {}};
  QHash<int, int>& known = heights_.byWidth;
  if (const auto one = known.constFind(width); one != known.constEnd()) return *one;
  if (known.size() >= mostWidths) known.clear();
  return *known.insert(width, measuredHeight(width));
}

void PlainLabel::changeEvent(QEvent* event) {
  QLabel::changeEvent(event);
  if (event->type() == QEvent::StyleChange) heights_.byWidth.clear();
}

int PlainLabel::measuredHeight(int width) const {
  if (!breaksWordsAt(width)) return QLabel::heightForWidth(width);
  const int wide = qMax(1, width - besideText());
  QString lines = drawn();
  lines.replace(u'\n', QChar::LineSeparator);
  QTextLayout layout(lines, font(), this);
  layout.setTextOption(broken(*this));
  layout.beginLayout();
  double high = 0;
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(wide);
    high += line.height() + fontMetrics().leading();
  }
  layout.endLayout();
  const QMargins around = contentsMargins();
  return static_cast<int>(std::ceil(high)) + around.top() + around.bottom() + 2 * margin();
}

void PlainLabel::paintEvent(QPaintEvent* event) {
  if (!breaksWordsAt(width())) return QLabel::paintEvent(event);
  QPainter painter(this);
  drawFrame(&painter);
  QRectF within = contentsRect().adjusted(margin(), margin(), -margin(), -margin());
  within.setLeft(within.left() + qMax(0, indent()));
  painter.setPen(palette().color(foregroundRole()));
  QTextOption option = broken(*this);
  option.setAlignment(option.alignment() | (alignment() & Qt::AlignVertical_Mask));
  painter.drawText(within, drawn(), option);
}

QString withoutMnemonic(QString text) { return text.replace(u'&', QStringLiteral("&&")); }

}  // namespace wardchalk::ui
