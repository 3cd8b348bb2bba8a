#include "ui/working/detail/chain_layout.h"

#include <algorithm>
#include <utility>

#include "ui/working/detail/pieces.h"
#include "ui/working/detail/term_box.h"

namespace wardchalk::ui::detail {

namespace {

/// A chain is never set smaller than this share of its size to make one factor fit.
constexpr double smallestChainScale = 0.3;

/// Sets one chain; knows which unit of which factor belongs to which struck pair.
class ChainSetter {
 public:
  ChainSetter(const ChainParts& parts, const Metrics& metrics, double width, int stage)
      : parts_(parts), metrics_(metrics), width_(width), stage_(stage) {}

  std::vector<Piece> pieces() const {
    std::vector<Piece> all = chainPieces();
    for (std::size_t i = 0; i < all.size(); ++i) {
      all[i].body.drawing.notBefore(factorStage(static_cast<int>(i)));
      all[i].tag.drawing.notBefore(factorStage(static_cast<int>(i)));
    }
    for (Piece& piece : resultPieces()) all.push_back(std::move(piece));
    return all;
  }

  /// What stands under one root is one formula and appears whole.
  int factorStage(int factor) const { return parts_.chain.rooted ? stage_ : stage_ + factor; }
  int strikeStage() const { return factorStage(count() - 1) + 1; }
  int underStage() const { return strikeStage() + static_cast<int>(parts_.pairs.size()); }
  int productStage() const { return underStage() + (parts_.result.under.isEmpty() ? 0 : 1); }
  int lastStage() const { return productStage() + (parts_.result.rounded.isEmpty() ? 0 : 1); }

 private:
  std::vector<int> pairsOf(int factor, bool over) const {
    const Term& term = over ? at(factor).over : at(factor).under;
    std::vector<int> pairs(term.units.size(), -1);
    for (std::size_t i = 0; i < parts_.pairs.size(); ++i) {
      const Place& place = over ? parts_.pairs[i].above : parts_.pairs[i].below;
      if (place.factor == factor) pairs[static_cast<std::size_t>(place.use)] = static_cast<int>(i);
    }
    return pairs;
  }

  const Factor& at(int factor) const { return parts_.chain.factors[static_cast<std::size_t>(factor)]; }
  int count() const { return static_cast<int>(parts_.chain.factors.size()); }

  Box term(int factor, bool over) const {
    Box box =
        termBox(over ? at(factor).over : at(factor).under, pairsOf(factor, over), metrics_, strikeStage());
    for (HitArea& hit : box.drawing.hits) hit.factor = factor;
    return box;
  }

  Box sign(const QString& text) const { return textBox(text, FontRole::number, Ink::text, metrics_); }
  double gap() const { return metrics_.px(8) * metrics_.chainScale; }

  Piece factorPiece(int factor) const {
    const Factor& both = at(factor);
    Box body = both.under.isPlainOne() ? term(factor, true)
                                       : fraction(term(factor, true), term(factor, false), metrics_);
    return {std::move(body), tagsBox({&both.over, &both.under}, parts_.tags, metrics_, width_)};
  }

  std::vector<Piece> factorPieces() const {
    std::vector<Piece> pieces;
    for (int factor = 0; factor < count(); ++factor) {
      Piece piece = factorPiece(factor);
      if (factor > 0) piece = withSign(QStringLiteral("×"), std::move(piece));
      pieces.push_back(std::move(piece));
    }
    return pieces;
  }

  /// One fraction under a root where that fits; else "√(" and the factors, which can be broken into lines.
  std::vector<Piece> chainPieces() const {
    if (!parts_.chain.rooted) return factorPieces();
    Piece whole = rootPiece();
    if (whole.width() <= width_) return {std::move(whole)};
    std::vector<Piece> pieces = factorPieces();
    pieces.front() = withSign(QStringLiteral("√("), std::move(pieces.front()));
    pieces.back().body = row({std::move(pieces.back().body), sign(QStringLiteral(")"))}, metrics_.px(2));
    return pieces;
  }

  /// The sign stands before the body, and the word stays under the body's middle.
  Piece withSign(const QString& text, Piece piece) const {
    Box before = sign(text);
    const double shift = before.width + gap();
    const double wide = std::max(piece.body.width, piece.tag.width);
    Box body;
    body.width = shift + wide;
    body.above = std::max(before.above, piece.body.above);
    body.below = std::max(before.below, piece.body.below);
    body.drawing = std::move(before.drawing);
    body.drawing.add(std::move(piece.body.drawing), {shift + (wide - piece.body.width) / 2, 0});
    Box tag = std::move(piece.tag);
    if (tag.width > 0) {
      tag.drawing.moveBy({shift + (wide - tag.width) / 2, 0});
      tag.width = body.width;
    }
    return {std::move(body), std::move(tag)};
  }

  /// Everything above on one side of the bar, everything below on the other, under one root.
  Piece rootPiece() const {
    std::vector<Box> over, under;
    std::vector<const Term*> terms;
    for (int factor = 0; factor < count(); ++factor) {
      addTerm(over, factor, true);
      addTerm(under, factor, false);
      terms.push_back(&at(factor).over);
    }
    for (int factor = 0; factor < count(); ++factor) terms.push_back(&at(factor).under);
    Box top = row(std::move(over), gap() * 0.75);
    Box inside = under.empty() ? std::move(top)
                               : fraction(std::move(top), row(std::move(under), gap() * 0.75), metrics_);
    return {rooted(std::move(inside), metrics_), tagsBox(terms, parts_.tags, metrics_, width_)};
  }

  void addTerm(std::vector<Box>& side, int factor, bool over) const {
    if ((over ? at(factor).over : at(factor).under).isPlainOne()) return;
    if (!side.empty()) side.push_back(sign(QStringLiteral("×")));
    side.push_back(term(factor, over));
  }

  static QString equals(bool exact) { return exact ? QStringLiteral("=") : QStringLiteral("≈"); }

  Piece statement(const QString& mark, Box said, int stage) const {
    Box body = row({sign(mark), std::move(said)}, gap());
    body.drawing.setStage(stage);
    return {std::move(body), {}};
  }

  Box resultText(const QString& text, bool last) const {
    const double room = width_ - sign(QStringLiteral("≈")).width - gap();
    Box box = paragraph(text, last ? FontRole::result : FontRole::number, Ink::text, metrics_, room);
    if (last) box.drawing.hits.push_back({box.rect(), parts_.result.origin, text, 0});
    return box;
  }

  Piece leftOver() const {
    const double room = width_ - sign(QStringLiteral("→")).width - gap();
    Box units = paragraph(parts_.result.leftOver, FontRole::result, Ink::accent, metrics_, room);
    return statement(QStringLiteral("→"), std::move(units), productStage());
  }

  std::vector<Piece> resultPieces() const {
    const ChainResult& result = parts_.result;
    std::vector<Piece> pieces;
    if (!result.leftOver.isEmpty()) return {leftOver()};
    if (!result.under.isEmpty())
      pieces.push_back(
          statement(equals(result.underExact), rooted(sign(result.under), metrics_), underStage()));
    const bool last = result.rounded.isEmpty();
    pieces.push_back(statement(equals(result.exact), resultText(result.product, last), productStage()));
    if (last) return pieces;
    Piece rounding = statement(QStringLiteral("→"), resultText(result.rounded, true), lastStage());
    rounding.tag = quietBox(result.rule, metrics_, width_);
    rounding.tag.drawing.setStage(lastStage());
    pieces.push_back(std::move(rounding));
    return pieces;
  }

  const ChainParts& parts_;
  const Metrics& metrics_;
  double width_;
  int stage_;
};

}  // namespace

ChainBox chainBox(const ChainParts& parts, const Metrics& metrics, double width, int stage) {
  Metrics fitting = metrics;
  const ChainSetter setter(parts, fitting, width, stage);
  std::vector<Piece> pieces = setter.pieces();
  while (widestOf(pieces) > width && fitting.chainScale > smallestChainScale) {
    fitting.chainScale =
        std::max(smallestChainScale, fitting.chainScale * std::min(0.95, width / widestOf(pieces)));
    pieces = setter.pieces();
  }
  Box box = piecesBox(std::move(pieces), fitting.px(10) * fitting.chainScale, fitting, width);
  return {std::move(box), setter.lastStage()};
}

}  // namespace wardchalk::ui::detail
