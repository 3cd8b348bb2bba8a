#include "ui/paper/detail/sheet_blocks.h"

#include <algorithm>
#include <utility>

#include "ui/paper/detail/flowed.h"
#include "ui/working/verdict_sign.h"

namespace wardchalk::ui::detail {

namespace {

constexpr double frameWidth = 1.6;

/// Height of the flag's sign; of the space inside frames; between columns. At 100 %.
constexpr double signSide = 44;
constexpr double pad = 8;
constexpr double columnGap = 16;

/// Room for the ward's own label, 20 mm high whatever the size of the letters, and for a signature.
constexpr double ownLabelHeight = 20 / 25.4 * 96;
constexpr double signHeight = 8 / 25.4 * 96;

void addRule(Drawing& drawing, QPointF from, QPointF to, double width, Ink ink = Ink::line) {
  drawing.bars.push_back({Bar::Kind::rule, from, to, width, ink, 0});
}

void addFrame(Drawing& drawing, const QRectF& rect, double width, Ink edge = Ink::line) {
  const double half = width / 2;
  drawing.areas.push_back(
      {corners(rect.adjusted(half, half, -half, -half)), 0, Area::Fill::none, Ink::card, width, edge, 0});
}

void put(SheetBlock& block, Box box, QPointF topLeft) {
  const double above = box.above;
  block.drawing.add(std::move(box.drawing), topLeft + QPointF(0, above));
}

bool isBarred(VerdictKind verdict) {
  return verdict == VerdictKind::unsafe || verdict == VerdictKind::notCovered;
}

Box paperBox(const SheetFacts& paper, const Metrics& metrics, double width) {
  std::vector<Box> lines;
  lines.push_back(flowed({{paper.heading, typeOf(FontRole::finding, true, metrics)}}, metrics, width));
  for (const SheetFact& fact : paper.facts)
    lines.push_back(flowed({{fact.label, typeOf(FontRole::tag, false, metrics)},
                            {fact.text, typeOf(FontRole::aside, true, metrics)}},
                           metrics, width, metrics.px(8)));
  return column(std::move(lines), metrics.px(2));
}

/// A line to write on with the words below it that say what.
void putLineToSign(SheetBlock& block, double left, double right, double y, const QString& what,
                   const Metrics& metrics) {
  addRule(block.drawing, {left, y}, {right, y}, 0.9);
  put(block, flowed(what, FontRole::tag, metrics, right - left), {left, y + metrics.px(1)});
}

void putTickBox(SheetBlock& block, QPointF topLeft, double side, bool ticked) {
  addFrame(block.drawing, QRectF(topLeft, QSizeF(side, side)), 1.3);
  if (!ticked) return;
  const auto at = [&](double x, double y) { return topLeft + QPointF(x * side, y * side); };
  block.drawing.bars.push_back({Bar::Kind::root, at(0.2, 0.55), at(0.42, 0.78), 1.8, Ink::line, 0});
  block.drawing.bars.push_back({Bar::Kind::root, at(0.42, 0.78), at(0.82, 0.2), 1.8, Ink::line, 0});
}

/// A heading run in with the text that follows it.
Box runIn(const QString& heading, const QString& text, const Metrics& metrics, double width) {
  return flowed(
      {{heading + u':', typeOf(FontRole::tag, true, metrics)}, {text, typeOf(FontRole::tag, false, metrics)}},
      metrics, width);
}

}  // namespace

namespace {

/// Title, order and time.
Box titleBox(const SheetContent& content, const Metrics& metrics, double width) {
  std::vector<Box> lines;
  lines.push_back(flowed(content.title, FontRole::flag, metrics, width));
  lines.push_back(flowed(content.order, FontRole::question, metrics, width));
  if (!content.caseTitle.isEmpty())
    lines.push_back(flowed(content.caseTitle, FontRole::aside, metrics, width));
  lines.push_back(flowed(content.workedOut, FontRole::aside, metrics, width));
  return column(std::move(lines), metrics.px(3));
}

void putOwnLabel(SheetBlock& block, const SheetContent& content, const QRectF& label,
                 const Metrics& metrics) {
  addFrame(block.drawing, label, 0.9);
  put(block, flowed(content.ownLabel, FontRole::tag, metrics, label.width() - metrics.px(12)),
      label.topLeft() + QPointF(metrics.px(6), metrics.px(3)));
}

}  // namespace

SheetBlock headBlock(const SheetContent& content, const Metrics& metrics) {
  constexpr std::size_t columns = 3;  // child and stock, order and infusion, reference
  SheetBlock block;
  const double gap = metrics.px(columnGap);
  const double width = (metrics.width + gap) / columns - gap;
  const double last = 2 * (width + gap);
  Box title = titleBox(content, metrics, last - gap);
  const double top = title.height() + metrics.px(7);
  put(block, std::move(title), {0, 0});
  putOwnLabel(block, content, {last, 0, width, ownLabelHeight}, metrics);
  addRule(block.drawing, {0, top}, {last - gap, top}, 0.9);
  for (std::size_t at = 0; at < columns; ++at) {
    std::vector<Box> boxes;
    for (std::size_t paper = at; paper < content.papers.size(); paper += columns)
      boxes.push_back(paperBox(content.papers[paper], metrics, width));
    Box box = column(std::move(boxes), metrics.px(5));
    const double y = at + 1 < columns ? top + metrics.px(5) : ownLabelHeight + metrics.px(6);
    block.height = std::max(block.height, y + box.height());
    put(block, std::move(box), {static_cast<double>(at) * (width + gap), y});
  }
  return block;
}

SheetBlock flagBlock(const SheetContent& content, const Metrics& metrics) {
  SheetBlock block;
  block.gapBefore = metrics.px(9);
  const bool onBlack = isBarred(content.verdict);
  const Ink ink = onBlack ? Ink::onDisc : Ink::text;
  const double air = metrics.px(pad);
  const double side = metrics.px(signSide);
  const double room = metrics.width - side - 3 * air;
  std::vector<Box> lines;
  lines.push_back(flowed(content.flag, FontRole::flag, metrics, room, ink));
  if (!content.reason.isEmpty()) lines.push_back(flowed(content.reason, FontRole::body, metrics, room, ink));
  if (!content.notMade.isEmpty())
    lines.push_back(flowed(content.notMade, FontRole::finding, metrics, room, ink));
  Box said = column(std::move(lines), metrics.px(3));
  const double inner = std::max(side, said.height());
  block.height = inner + 2 * air;
  const QRectF frame(0, 0, metrics.width, block.height);
  if (onBlack)
    block.drawing.areas.push_back({corners(frame), 0, Area::Fill::solid, Ink::disc, 0, Ink::line, 0});
  else
    addFrame(block.drawing, frame, frameWidth);
  block.signs.push_back({content.verdict, {air, air + (inner - side) / 2, side, side}, onBlack});
  const double top = air + (inner - said.height()) / 2;
  put(block, std::move(said), {side + 2 * air, top});
  return block;
}

std::vector<SheetBlock> questionBlocks(const SheetContent& content, const Metrics& metrics) {
  std::vector<SheetBlock> blocks;
  const double side = metrics.px(16);
  const double left = metrics.px(pad) + side + metrics.px(8);
  const double room = metrics.width - left - metrics.px(pad);
  for (const SheetQuestion& question : content.questions) {
    SheetBlock block;
    block.gapBefore = metrics.px(6);
    putTickBox(block, {metrics.px(pad), 0}, side, !question.settled.isEmpty());
    Box said = flowed(question.text, FontRole::body, metrics, room);
    const double below = said.height() + metrics.px(2);
    put(block, std::move(said), {left, 0});
    Box answer = !question.settled.isEmpty()
                     ? flowed({{question.settled, typeOf(FontRole::finding, true, metrics)}}, metrics, room)
                     : flowed(content.askedBy, FontRole::aside, metrics, room);
    const double line = below + answer.above + metrics.px(2);
    if (question.settled.isEmpty())
      addRule(block.drawing, {left + answer.width + metrics.px(6), line}, {left + room, line}, 0.9);
    block.height = below + answer.height() + metrics.px(2);
    put(block, std::move(answer), {left, below});
    blocks.push_back(std::move(block));
  }
  return blocks;
}

namespace {

/// The amount in the largest type, and beside or below it how to come to it.
Box measureBox(const SheetContent& content, const Metrics& metrics, double room) {
  std::vector<Box> parts;
  parts.push_back(flowed(content.measure, FontRole::amount, metrics, room));
  parts.push_back(flowed(content.dose, FontRole::dose, metrics, room));
  const double gap = metrics.px(14);
  const double aside = room - parts[0].width - gap - parts[1].width - metrics.px(24);
  Box headline = wrapped(std::move(parts), gap, metrics.px(2), room);
  const bool beside = aside > metrics.px(320);
  std::vector<Box> lines;
  for (const QString& line : content.amountLines)
    lines.push_back(
        flowed({{line, typeOf(FontRole::finding, true, metrics)}}, metrics, beside ? aside : room));
  Box said = column(std::move(lines), metrics.px(2));
  if (!beside) return column({std::move(headline), std::move(said)}, metrics.px(4));
  const double height = std::max(headline.height(), said.height());
  Box all{room, 0, height, {}};
  const double headlineTop = (height - headline.height()) / 2 + headline.above;
  const double saidTop = (height - said.height()) / 2 + said.above;
  all.drawing.add(std::move(headline.drawing), {0, headlineTop});
  all.drawing.add(std::move(said.drawing), {room - aside, saidTop});
  return all;
}

Box noAmountBox(const SheetContent& content, const Metrics& metrics, double room) {
  return column({flowed(content.doNotPrepare, FontRole::flag, metrics, room),
                 flowed(content.none, FontRole::body, metrics, room)},
                metrics.px(4));
}

}  // namespace

SheetBlock amountBlock(const SheetContent& content, const Metrics& metrics) {
  SheetBlock block;
  block.gapBefore = content.questions.empty() ? -frameWidth : metrics.px(8);
  const double air = metrics.px(pad);
  const double room = metrics.width - 2 * air;
  Box said =
      content.printsAmount() ? measureBox(content, metrics, room) : noAmountBox(content, metrics, room);
  block.height = said.height() + 2 * air;
  addFrame(block.drawing, {0, 0, metrics.width, block.height}, frameWidth);
  put(block, std::move(said), {air, air});
  return block;
}

std::vector<SheetBlock> findingBlocks(const SheetContent& content, const Metrics& metrics) {
  std::vector<SheetBlock> blocks;
  const double side = metrics.px(14);
  const double left = side + metrics.px(6);
  for (const SheetFinding& finding : content.findings) {
    SheetBlock block;
    block.gapBefore = metrics.px(blocks.empty() ? 7 : 3);
    Box said = flowed(finding.text, FontRole::finding, metrics, metrics.width - left);
    const QFontMetricsF font(fontOf(metrics.type(FontRole::finding), metrics.family));
    const double middle = said.above - font.capHeight() / 2;
    if (const auto verdict = verdictOf(finding.severity))
      block.signs.push_back({*verdict, {0, middle - side / 2, side, side}, false});
    else
      block.drawing.areas.push_back(
          {corners({side / 2 - 2, middle - 2, 4, 4}), 2, Area::Fill::solid, Ink::text, 0, Ink::line, 0});
    block.height = said.height();
    put(block, std::move(said), {left, 0});
    blocks.push_back(std::move(block));
  }
  return blocks;
}

namespace {

/// Who signs, for what, and the line to sign on.
double putPlaceToSign(SheetBlock& block, const QString& who, const QString& what, bool strong,
                      const QString& signHere, const QRectF& top, const Metrics& metrics) {
  const double inside = metrics.px(8);
  const double width = top.width() - 2 * inside;
  Box words = flowed({{who + u'.', typeOf(FontRole::aside, true, metrics)},
                      {what, typeOf(FontRole::aside, strong, metrics)}},
                     metrics, width);
  const double line = top.top() + metrics.px(5) + words.height() + signHeight;
  put(block, std::move(words), {top.left() + inside, top.top() + metrics.px(5)});
  putLineToSign(block, top.left() + inside, top.right() - inside, line, signHere, metrics);
  const double bottom = line + metrics.px(19);
  addFrame(block.drawing, {top.left(), top.top(), top.width(), bottom - top.top()}, 0.9);
  return bottom;
}

}  // namespace

SheetBlock endBlock(const SheetContent& content, const Metrics& metrics) {
  SheetBlock block;
  block.gapBefore = metrics.px(6);
  const double gap = metrics.px(columnGap);
  const double left = (metrics.width - gap) * 0.54;
  const double right = metrics.width - gap - left;
  std::vector<Box> boxes;
  boxes.push_back(runIn(content.checksMadeHeading, content.checksMade, metrics, left));
  boxes.push_back(runIn(content.checksNotMadeHeading, content.checksNotMade, metrics, left));
  boxes.push_back(runIn(content.rulesHeading, content.rules, metrics, left));
  Box small = column(std::move(boxes), metrics.px(4));
  const double top = metrics.px(6);
  addRule(block.drawing, {0, 0}, {metrics.width, 0}, 0.9);
  block.height = top + small.height();
  put(block, std::move(small), {0, top});
  const double x = left + gap;
  const double first = putPlaceToSign(block, content.workedBy, content.workedWhat, false, content.signHere,
                                      {x, top, right, 0}, metrics);
  const double second = putPlaceToSign(block, content.secondBy, content.second, true, content.signHere,
                                       {x, first + metrics.px(6), right, 0}, metrics);
  block.height = std::max(block.height, second);
  return block;
}

SheetBlock runningHead(const SheetContent& content, const Metrics& metrics) {
  SheetBlock block;
  const double side = metrics.px(18);
  const double left = side + metrics.px(8);
  QString text =
      content.title + QStringLiteral(": ") + content.order + QStringLiteral(". ") + content.flag + u'.';
  if (!content.measure.isEmpty()) text += u' ' + content.measure + u' ' + content.dose + u'.';
  Box said = flowed({{text, typeOf(FontRole::finding, true, metrics)},
                     {content.doNotPrepare, typeOf(FontRole::finding, true, metrics)},
                     {content.workedOut, typeOf(FontRole::aside, false, metrics)}},
                    metrics, metrics.width - left);
  const double inner = std::max(side, said.height());
  block.signs.push_back({content.verdict, {0, (inner - side) / 2, side, side}, false});
  const double top = (inner - said.height()) / 2;
  put(block, std::move(said), {left, top});
  block.height = inner + metrics.px(4);
  addRule(block.drawing, {0, inner + metrics.px(4)}, {metrics.width, inner + metrics.px(4)}, 0.9);
  return block;
}

SheetBlock footBlock(const SheetContent& content, const Metrics& metrics, int page, int pages) {
  SheetBlock block;
  const QString where = content.pageOfAll.arg(page).arg(pages);
  Box all = flowed({{content.caution, typeOf(FontRole::tag, true, metrics)},
                    {content.program + QStringLiteral(" · ") + where, typeOf(FontRole::tag, false, metrics)}},
                   metrics, metrics.width);
  addRule(block.drawing, {0, 0}, {metrics.width, 0}, 0.9);
  block.height = all.height() + metrics.px(3);
  put(block, std::move(all), {0, metrics.px(3)});
  return block;
}

}  // namespace wardchalk::ui::detail
