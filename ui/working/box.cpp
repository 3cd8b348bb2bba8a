#include "ui/working/box.h"

#include <QStringList>
#include <QTextBoundaryFinder>
#include <algorithm>
#include <utility>

#include "ui/theme/text.h"
#include "ui/working/type_measure.h"

namespace wardchalk::ui {

namespace {

/// Height of the fraction bar over the baseline, so that it stands level with the middle of "×" and "=".
double axisOf(const Metrics& metrics) { return 0.32 * metrics.type(FontRole::number).pixels; }

double barWidth(const Metrics& metrics) { return std::max(1.0, metrics.px(1.4) * metrics.chainScale); }

/// Whether a word is a name so long that it may be cut: a figure with its unit never is.
bool mayBeCut(const QString& word) {
  constexpr qsizetype longestWord = 24;
  constexpr qsizetype longestFigure = 60;
  const bool figure = std::any_of(word.begin(), word.end(), [](QChar letter) { return letter.isDigit(); });
  return word.size() > (figure ? longestFigure : longestWord);
}

/// The pieces of a word that a line of this width holds, each as long as can be.
QStringList cut(const QString& word, double width, const TypeMeasure& letters) {
  QStringList pieces;
  QString piece;
  double used = 0;
  QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, word);
  for (qsizetype at = 0; at < word.size();) {
    const qsizetype next = finder.toNextBoundary();
    const QString letter = word.mid(at, (next < 0 ? word.size() : next) - at);
    const double wide = letters.width(letter);
    if (!piece.isEmpty() && used + wide > width) {
      pieces << std::exchange(piece, {});
      used = 0;
    }
    piece += letter;
    used += wide;
    at += letter.size();
  }
  return pieces << piece;
}

/// The words of a text. A name that no line holds comes in pieces, so that nothing beside it is made smaller
/// for it.
QStringList wordsOf(const QString& text, const Type& type, const Metrics& metrics, double width) {
  const TypeMeasure letters(type, metrics.family);
  QStringList words;
  for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    if (mayBeCut(word) && letters.width(word) > width)
      words << cut(word, width - 2, letters);  // so near the edge that nothing follows a piece
    else
      words << word;
  }
  return words;
}

/// The type, made smaller until the longest word is no wider than `width`.
Type fittingType(const QStringList& words, Type type, const Metrics& metrics, double width) {
  constexpr int smallest = 8;
  const auto widest = [&] {
    const TypeMeasure letters(type, metrics.family);
    double most = 0;
    for (const QString& word : words) most = std::max(most, letters.width(word));
    return most;
  };
  while (type.pixels > smallest && widest() > width) --type.pixels;
  return type;
}

Box runBox(const QString& text, double width, Type type, Ink ink, const TypeMeasure& letters) {
  Box box{width, letters.ascent(), letters.descent(), {}};
  box.drawing.runs.push_back({text, {0, 0}, box.rect(), type, ink, 0});
  return box;
}

}  // namespace

Box textBox(const QString& text, Type type, Ink ink, const Metrics& metrics) {
  const TypeMeasure letters(type, metrics.family);
  return runBox(text, letters.width(text), type, ink, letters);
}

Box textBox(const QString& text, FontRole role, Ink ink, const Metrics& metrics) {
  return textBox(text, metrics.type(role), ink, metrics);
}

Box row(std::vector<Box> boxes, double gap) {
  Box all;
  for (Box& box : boxes) {
    const double x = all.width > 0 ? all.width + gap : 0;
    all.drawing.add(std::move(box.drawing), {x, 0});
    all.above = std::max(all.above, box.above);
    all.below = std::max(all.below, box.below);
    all.width = x + box.width;
  }
  return all;
}

Box column(std::vector<Box> boxes, double gap) {
  Box all;
  bool first = true;
  for (Box& box : boxes) {
    if (first) all.above = box.above;
    const double y = first ? 0 : all.below + gap + box.above;
    all.drawing.add(std::move(box.drawing), {0, y});
    all.below = y + box.below;
    all.width = std::max(all.width, box.width);
    first = false;
  }
  return all;
}

Box wrapped(std::vector<Box> boxes, double gap, double lineGap, double width) {
  std::vector<Box> lines;
  std::vector<Box> line;
  double used = 0;
  const auto finish = [&] {
    if (!line.empty()) lines.push_back(row(std::exchange(line, {}), gap));
    used = 0;
  };
  for (Box& box : boxes) {
    if (!line.empty() && used + gap + box.width > width) finish();
    used += (line.empty() ? 0 : gap) + box.width;
    line.push_back(std::move(box));
  }
  finish();
  return column(std::move(lines), lineGap);
}

Box paragraph(const QString& text, FontRole role, Ink ink, const Metrics& metrics, double width) {
  const QStringList words = wordsOf(text, metrics.type(role), metrics, width);
  const Type type = fittingType(words, metrics.type(role), metrics, width);
  const TypeMeasure letters(type, metrics.family);
  const double space = letters.width(QStringLiteral(" "));
  QStringList lines;
  std::vector<double> widths;
  QString line;
  double used =
      0;  // the words one by one: measuring each longer line anew would cost the square of its length
  for (const QString& word : words) {
    const double wide = letters.width(word);
    if (!line.isEmpty() && used + space + wide > width) {
      lines << line;
      widths.push_back(used);
      line.clear();
    }
    used = line.isEmpty() ? wide : used + space + wide;
    line = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
  }
  if (!line.isEmpty()) {
    lines << line;
    widths.push_back(used);
  }
  const QStringList whole = withWholeIsolates(lines);
  std::vector<Box> boxes;
  for (std::size_t i = 0; i < widths.size(); ++i)
    boxes.push_back(runBox(whole[static_cast<qsizetype>(i)], widths[i], type, ink, letters));
  return column(std::move(boxes), metrics.px(1));
}

Box fraction(Box over, Box under, const Metrics& metrics) {
  const double overhang = metrics.px(4) * metrics.chainScale;
  const double gap = metrics.px(1) * metrics.chainScale;
  const double axis = axisOf(metrics);
  const double thick = barWidth(metrics);
  Box box;
  box.width = std::max(over.width, under.width) + 2 * overhang;
  const double overBase = -axis - thick / 2 - gap - over.below;
  const double underBase = -axis + thick / 2 + gap + under.above;
  box.above = -overBase + over.above;
  box.below = underBase + under.below;
  box.drawing.bars.push_back({Bar::Kind::fraction, {0, -axis}, {box.width, -axis}, thick, Ink::line, 0});
  box.drawing.add(std::move(over.drawing), {(box.width - over.width) / 2, overBase});
  box.drawing.add(std::move(under.drawing), {(box.width - under.width) / 2, underBase});
  return box;
}

Box rooted(Box inside, const Metrics& metrics) {
  const double pad = metrics.px(3) * metrics.chainScale;
  const double sign = metrics.px(18) * metrics.chainScale;
  const double thick = barWidth(metrics);
  const double top = -inside.above - pad;
  const double foot = inside.below;
  const double middle = foot - std::min(inside.height() * 0.45, metrics.px(26) * metrics.chainScale);
  Box box{sign + inside.width + 2 * pad, inside.above + 2 * pad, inside.below, {}};
  const QPointF points[] = {
      {0, middle + metrics.px(2)}, {sign * 0.28, middle}, {sign * 0.6, foot}, {sign, top}, {box.width, top}};
  for (std::size_t i = 0; i + 1 < std::size(points); ++i)
    box.drawing.bars.push_back(
        {Bar::Kind::root, points[i], points[i + 1], i == 1 ? thick * 1.8 : thick, Ink::line, 0});
  box.drawing.add(std::move(inside.drawing), {sign + pad, 0});
  return box;
}

}  // namespace wardchalk::ui
