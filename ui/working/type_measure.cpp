#include "ui/working/type_measure.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QHash>
#include <QPaintEngine>
#include <QPainter>
#include <QStaticText>
#include <QTextLayout>
#include <QTextOption>
#include <map>
#include <tuple>

#include "ui/theme/text.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui {

namespace {

/// So many words of a type are remembered; then it begins anew. A long working has a few hundred.
constexpr qsizetype mostWords = 1000;
constexpr qsizetype mostPieces = 250;  // of a type: each is some hundred bytes

/// As runs are painted, whatever letter they begin with.
const QTextOption& fromLeft() {
  static const QTextOption option = [] {
    QTextOption one;
    one.setTextDirection(Qt::LeftToRight);
    return one;
  }();
  return option;
}

}  // namespace

struct TypeMeasure::SetPiece {
  SetPiece() = default;
  SetPiece(const QString& piece, const QFont& font);

  QStaticText letters;
  double ascent = 0;  ///< of its line: a letter from another font may raise it
};

TypeMeasure::SetPiece::SetPiece(const QString& piece, const QFont& font) : letters(piece) {
  letters.setTextFormat(Qt::PlainText);
  letters.setTextOption(fromLeft());
  letters.setPerformanceHint(QStaticText::AggressiveCaching);
  QTextLayout line(piece, font);
  line.setTextOption(fromLeft());
  line.beginLayout();
  QTextLine only = line.createLine();
  only.setLineWidth(1e6);  // without a width nothing is measured
  ascent = only.ascent();
  line.endLayout();
}

struct TypeMeasure::Known {
  explicit Known(const QFont& one) : letters(one), font(one) {}
  QFont letters;
  QFontMetricsF font;
  QHash<QString, double> widths;
  QHash<QString, SetPiece> pieces;
};

TypeMeasure::TypeMeasure(const Type& type, const QString& family) : known_(knownOf(type, family)) {}

TypeMeasure::Known& TypeMeasure::knownOf(const Type& type, const QString& family) {
  static std::map<std::tuple<QString, int, bool>, Known> all;
  const QString used = family.isEmpty() ? QGuiApplication::font().family() : family;
  const auto key = std::make_tuple(used, type.pixels, type.bold);
  const auto found = all.find(key);
  if (found != all.end()) return found->second;
  return all.emplace(key, fontOf(type, family)).first->second;
}

const QFont& TypeMeasure::font() const { return known_.letters; }

double TypeMeasure::width(const QString& text) const {
  const auto found = known_.widths.constFind(text);
  if (found != known_.widths.constEnd()) return *found;
  if (known_.widths.size() >= mostWords) known_.widths.clear();
  double all = 0;
  for (const QString& piece : piecesByWriting(text)) all += known_.font.horizontalAdvance(piece, fromLeft());
  return *known_.widths.insert(text, all);
}

const TypeMeasure::SetPiece* TypeMeasure::setPiece(const QString& piece) const {
  const auto found = known_.pieces.find(piece);
  if (found == known_.pieces.end()) {
    if (known_.pieces.size() >= mostPieces) known_.pieces.clear();
    known_.pieces.insert(piece, {});
    return nullptr;
  }
  if (found->letters.text().isEmpty()) *found = SetPiece(piece, known_.letters);
  return &*found;
}

void TypeMeasure::write(QPainter& painter, const QPointF& at, const QString& piece) const {
  painter.setFont(known_.letters);
  const bool isScreen = painter.paintEngine()->type() == QPaintEngine::Raster;
  const SetPiece* set = isScreen && !piece.trimmed().isEmpty() ? setPiece(piece) : nullptr;
  if (!set) return painter.drawText(at, piece);
  painter.drawStaticText(at - QPointF(0, set->ascent), set->letters);
}

double TypeMeasure::ascent() const { return known_.font.ascent(); }
double TypeMeasure::descent() const { return known_.font.descent(); }
double TypeMeasure::capHeight() const { return known_.font.capHeight(); }
double TypeMeasure::xHeight() const { return known_.font.xHeight(); }

}  // namespace wardchalk::ui
