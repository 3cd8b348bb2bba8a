#include "ui/working/detail/pieces.h"

#include <QStringList>
#include <utility>

namespace wardchalk::ui::detail {

namespace {

struct Line {
  std::vector<Piece> pieces;
  double width = 0;
};

std::vector<Line> brokenIntoLines(std::vector<Piece> pieces, double gap, double width) {
  std::vector<Line> lines(1);
  for (Piece& piece : pieces) {
    const double wide = piece.width();
    if (!lines.back().pieces.empty() && lines.back().width + gap + wide > width) lines.emplace_back();
    Line& line = lines.back();
    line.width += (line.pieces.empty() ? 0 : gap) + wide;
    line.pieces.push_back(std::move(piece));
  }
  return lines;
}

Box lineBox(Line line, double gap, const Metrics& metrics) {
  Box all;
  double tagAbove = 0;
  double tagBelow = 0;
  for (const Piece& piece : line.pieces) {
    all.above = std::max(all.above, piece.body.above);
    all.below = std::max(all.below, piece.body.below);
    tagAbove = std::max(tagAbove, piece.tag.above);
    tagBelow = std::max(tagBelow, piece.tag.below);
  }
  const double tagBase = all.below + metrics.px(1) + tagAbove;
  double x = 0;
  for (Piece& piece : line.pieces) {
    const double wide = piece.width();
    all.drawing.add(std::move(piece.body.drawing), {x + (wide - piece.body.width) / 2, 0});
    all.drawing.add(std::move(piece.tag.drawing), {x + (wide - piece.tag.width) / 2, tagBase});
    x += wide + gap;
  }
  all.width = line.width;
  if (tagAbove > 0) all.below = tagBase + tagBelow;
  return all;
}

QString originOf(const Term& term) { return QString::fromStdString(term.origin.text()); }

}  // namespace

double widestOf(const std::vector<Piece>& pieces) {
  double widest = 0;
  for (const Piece& piece : pieces) widest = std::max(widest, piece.width());
  return widest;
}

Box piecesBox(std::vector<Piece> pieces, double gap, const Metrics& metrics, double width) {
  std::vector<Box> lines;
  for (Line& line : brokenIntoLines(std::move(pieces), gap, width))
    lines.push_back(lineBox(std::move(line), gap, metrics));
  return column(std::move(lines), metrics.px(8));
}

Box tagsBox(const std::vector<const Term*>& terms, const QHash<QString, QString>& tags,
            const Metrics& metrics, double width) {
  std::vector<Box> words;
  QStringList said;
  for (const Term* term : terms) {
    const QString origin = originOf(*term);
    const QString word = tags.value(origin);
    if (word.isEmpty() || said.contains(word)) continue;
    said << word;
    if (!words.empty()) words.push_back(quietBox(QStringLiteral("·"), metrics, width));
    Box box = paragraph(word, FontRole::tag, Ink::accent, metrics, width);
    box.drawing.hits.push_back({box.rect(), origin, word, 0});
    words.push_back(std::move(box));
  }
  return wrapped(std::move(words), metrics.px(4), metrics.px(1), width);
}

Box quietBox(const QString& word, const Metrics& metrics, double width) {
  return paragraph(word, FontRole::tag, Ink::quiet, metrics, width);
}

}  // namespace wardchalk::ui::detail
