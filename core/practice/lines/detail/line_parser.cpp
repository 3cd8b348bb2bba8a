#include "core/practice/lines/detail/line_parser.h"

#include <optional>
#include <string>
#include <utility>

#include "core/number/entry_text.h"
#include "core/practice/lines/detail/mixed_parts.h"
#include "core/practice/lines/detail/unit_reader.h"
#include "core/words/unit_words.h"

namespace wardchalk::practice {

namespace {

/// How a fraction is divided, to see whether it can be read in one way alone.
struct Shape {
  int divisors = 0;         // numbers, roots and parentheses after slashes; units alone are none
  bool firstNamed = false;  // units are written with the first number
  bool lastNamed = false;   // units are written with the last divisor
};

/// Reads by descent: a rule of the grammar is a function. Each gives nothing once there is a fault.
class Parser {
 public:
  Parser(std::string_view line, const std::vector<Token>& tokens, Slashes slashes)
      : line_(line), tokens_(tokens), slashes_(slashes) {}

  std::variant<ParsedLine, LineFault> run() {
    readSides();
    if (fault_) return *std::move(fault_);
    return std::move(result_);
  }

 private:
  using Maybe = std::optional<Part>;

  [[nodiscard]] const Token& now() const { return tokens_[at_]; }
  [[nodiscard]] bool is(TokenKind kind) const { return now().kind == kind; }
  [[nodiscard]] bool nextIs(TokenKind kind) const {
    return !is(TokenKind::end) && tokens_[at_ + 1].kind == kind;
  }
  const Token& take() { return tokens_[at_++]; }

  Maybe fail(LineFaultCode code, Span at, std::string instead = {}) {
    if (!fault_) fault_ = faultAt(code, line_, at, std::move(instead));
    return std::nullopt;
  }

  /// What is wrong where a number, a root or a parenthesis should begin.
  Maybe failMissing() {
    if (is(TokenKind::unit)) return fail(LineFaultCode::numberMissing, now().at);
    const bool first = at_ == 0 || tokens_[at_ - 1].kind == TokenKind::relation;
    const bool atSign = is(TokenKind::plus) || is(TokenKind::minus);
    if (atSign) return fail(LineFaultCode::signHere, now().at);
    if (first && (is(TokenKind::end) || is(TokenKind::relation)) && tokens_.size() > 1)
      return fail(LineFaultCode::sideMissing, is(TokenKind::relation) ? now().at : tokens_[at_ - 1].at);
    if (is(TokenKind::close) && !inParenthesis_) return fail(LineFaultCode::parenthesisClose, now().at);
    const bool here = !is(TokenKind::end) && !is(TokenKind::close) && !is(TokenKind::relation);
    return fail(LineFaultCode::operandMissing, here || at_ == 0 ? now().at : tokens_[at_ - 1].at);
  }

  void readSides() {
    Maybe side = sum();
    while (side && is(TokenKind::relation)) {
      result_.sides.push_back(*std::move(side));
      result_.relations.push_back(take());
      side = sum();
    }
    if (!side) return;
    result_.sides.push_back(*std::move(side));
    if (is(TokenKind::close))
      fail(LineFaultCode::parenthesisClose, now().at);
    else if (!is(TokenKind::end))
      failBeside();
  }

  /// Something stands beside a part with no sign between them.
  Maybe failBeside() {
    const Token& before = tokens_[at_ - 1];
    if (is(TokenKind::unit) && before.kind == TokenKind::unit)
      return fail(LineFaultCode::unitTwice, {before.at.begin, now().at.end});
    if (is(TokenKind::number) && before.kind == TokenKind::number) return failNumbers();
    return fail(LineFaultCode::operatorMissing, now().at);
  }

  /// Numbers beside one another, as "1 000 000" has them.
  Maybe failNumbers() {
    const std::size_t first = at_ - 1;
    for (at_ = first; is(TokenKind::number);) ++at_;
    const bool points = line_[tokens_[first + 1].at.begin] == '.';  // "1..2"
    return fail(points ? LineFaultCode::secondPoint : LineFaultCode::spaceInNumber, spanFrom(first));
  }

  Maybe sum() {
    Maybe left = product();
    while (left && (is(TokenKind::plus) || is(TokenKind::minus))) {
      const bool minus = take().kind == TokenKind::minus;
      const Maybe right = product();
      if (!right) return std::nullopt;
      left = added(*left, *right, minus);
    }
    return left;
  }

  Maybe added(const Part& left, const Part& right, bool minus) {
    const Worth a = worthOf(left);
    const Worth b = worthOf(right);
    const Span both{left.at.begin, right.at.end};
    if (!canBeAdded(a, left.named == 0, b, right.named == 0)) {
      fail(LineFaultCode::unlikeUnits, both);
      fault_->typed = unitsText(a.units, Spelling::printed);
      fault_->instead = unitsText(b.units, Spelling::printed);
      return std::nullopt;
    }
    if (minus && a.value < b.value) return fail(LineFaultCode::belowZero, both);
    return sumOf(left, right, minus);
  }

  Maybe product() {
    const std::size_t begin = at_;
    Shape shape;
    Maybe left = fraction(shape);
    bool divided = shape.divisors > 0;
    if (left && shape.divisors > 1 && shape.lastNamed && slashes_ == Slashes::clear)
      return fail(LineFaultCode::unclearDivision, spanFrom(begin));
    while (left) {
      const bool withoutSign = is(TokenKind::open);  // ")(" multiplies
      if (!withoutSign && !is(TokenKind::times) && !is(TokenKind::divide)) break;
      if (withoutSign && divided) return fail(LineFaultCode::unclearDivision, upToClose(begin));
      const bool divide = !withoutSign && take().kind == TokenKind::divide;
      const std::size_t from = at_;
      const Maybe right = fraction(shape);
      if (!right) return std::nullopt;
      if (!isClear(shape, divide))
        return fail(LineFaultCode::unclearDivision, spanFrom(divide ? begin : from));
      divided = divided || divide || shape.divisors > 0;
      left = joined(*std::move(left), *right, divide);
    }
    return left;
  }

  /// From a piece to the end of the parenthesis that opens here.
  [[nodiscard]] Span upToClose(std::size_t begin) const {
    std::size_t close = at_;
    while (tokens_[close].kind != TokenKind::close && tokens_[close].kind != TokenKind::end) ++close;
    return {tokens_[begin].at.begin, tokens_[close].at.end};
  }

  /// A fraction after ÷ is clear where it is an amount in an amount ("÷ 120 mg/5 mL") or has one number
  /// alone.
  [[nodiscard]] bool isClear(const Shape& shape, bool afterDivide) const {
    if (slashes_ == Slashes::leftToRight) return true;
    if (afterDivide && shape.divisors > 0) return shape.divisors == 1 && shape.firstNamed && shape.lastNamed;
    return shape.divisors < 2 || !shape.lastNamed;
  }

  Maybe joined(Part left, const Part& right, bool divide) {
    if (!divide) return times(std::move(left), right);
    if (worthOf(right).value.isZero()) return fail(LineFaultCode::divisionByZero, right.at);
    return dividedBy(std::move(left), right);
  }

  Maybe fraction(Shape& shape) {
    shape = {};
    Maybe left = part();
    if (left) shape.firstNamed = left->named > 0;
    while (left && is(TokenKind::slash)) {
      take();
      const bool number = is(TokenKind::number);
      Maybe right = unitsBegin(tokens_, at_) ? unitsAlone() : part();
      if (!right) return std::nullopt;
      // "400/120 mL": the unit may be meant of the whole; the number is the same
      if (number && left->named == 0 && right->named > 0) right->open = true;
      if (!right->isUnits) {
        ++shape.divisors;
        shape.lastNamed = right->named > 0;
      }
      left = joined(*std::move(left), *right, /*divide=*/true);
    }
    return left;
  }

  /// Units after a slash that follows no number of its own: "(84 mg)/dose".
  Maybe unitsAlone() {
    const std::size_t begin = at_;
    const Units units = readUnits(tokens_, at_, SlashFirst::no);
    Part alone = amountPart(Number(1), units, spanFrom(begin));
    alone.named = 0;
    alone.isUnits = true;
    return alone;
  }

  Maybe part() {
    if (is(TokenKind::relation) && now().relation == LineRelation::about && mayBeMarked()) take();
    if (is(TokenKind::root)) return root();
    if (is(TokenKind::open)) return parenthesis();
    if (is(TokenKind::number)) return amounts();
    return failMissing();
  }

  /// "≈" directly before a number inside a chain, as the program writes it, marks that number alone.
  [[nodiscard]] bool mayBeMarked() const {
    if (!nextIs(TokenKind::number)) return false;
    if (at_ == 0) return true;
    const Token& before = tokens_[at_ - 1];
    return before.kind != TokenKind::relation || before.relation == LineRelation::equal;  // "= ≈17.69 kg"
  }

  Maybe root() {
    const Span sign = take().at;
    if (++depth_ > deepestParentheses) return fail(LineFaultCode::tooDeep, sign);
    Maybe under = part();
    --depth_;
    if (!under) return std::nullopt;
    const Span at{sign.begin, under->at.end};
    return rootOfPart(*std::move(under), at);
  }

  Maybe parenthesis() {
    const Span open = take().at;
    if (++depth_ > deepestParentheses) return fail(LineFaultCode::tooDeep, open);
    const bool outer = std::exchange(inParenthesis_, true);
    Maybe inside = sum();
    inParenthesis_ = outer;
    --depth_;
    if (!inside) {
      if (fault_->code == LineFaultCode::operandMissing && is(TokenKind::end))
        fault_ = faultAt(LineFaultCode::parenthesisOpen, line_, open);
      return std::nullopt;
    }
    if (is(TokenKind::end) || is(TokenKind::relation)) return fail(LineFaultCode::parenthesisOpen, open);
    if (!is(TokenKind::close)) return failBeside();
    inside->at = {open.begin, take().at.end};
    if (is(TokenKind::rootBefore)) {
      const Span at{open.begin, take().at.end};
      return rootOfPart(*std::move(inside), at);
    }
    return withUnits(*std::move(inside));
  }

  /// "(16 + 2) mL": units behind a parenthesis belong to what stands in it.
  Maybe withUnits(Part inside) {
    if (!is(TokenKind::unit)) return inside;
    if (inside.named > 0) return fail(LineFaultCode::unitTwice, {inside.at.begin, now().at.end});
    const std::size_t begin = at_;
    const Units units = readUnits(tokens_, at_, SlashFirst::no);
    Part one = amountPart(Number(1), units, spanFrom(begin));
    const bool isSum = inside.isSum;
    Part whole = times(std::move(inside), std::move(one));
    Worth worth = worthOf(whole);
    Part named = amountPart(worth.value, worth.units, whole.at);
    named.exact = worth.exact;
    named.isAmount = false;
    named.isSum = isSum;
    return named;
  }

  /// An amount, or parts of falling size: "7 lb 8 oz".
  Maybe amounts() {
    Maybe first = amount();
    if (!first || !is(TokenKind::number) || first->named == 0) return first;
    std::vector<Part> parts{*std::move(first)};
    while (is(TokenKind::number)) {
      const std::size_t begin = at_;
      Maybe more = amount();
      if (!more) return std::nullopt;
      if (!areAlike(parts.back(), *more)) return fail(LineFaultCode::operatorMissing, tokens_[begin].at);
      parts.push_back(*std::move(more));
    }
    auto together = putTogether(parts);
    if (const auto* fault = std::get_if<PartsFault>(&together)) return fail(fault->code, fault->at);
    return std::get<Part>(std::move(together));
  }

  Maybe amount() {
    const Token& number = take();
    const std::size_t unitsAt = at_;
    Units units;
    Span above = number.at;
    Span below;
    if (unitsBegin(tokens_, at_) || (is(TokenKind::slash) && unitsBegin(tokens_, at_ + 1))) {
      UnitPlaces places;
      units = readUnits(tokens_, at_, SlashFirst::yes, &places);
      if (places.over.end > 0) above.end = places.over.end;
      below = places.under;
    }
    if (is(TokenKind::unit)) return failBeside();
    Part part = amountPart(number.value, units, above, below);
    part.decimals = number.decimals;
    part.typed = line_.substr(number.at.begin, number.at.end - number.at.begin);
    finish(part, number, unitsAt == at_);
    return part;
  }

  /// Decimals that end in a zero stay visible, and are remarked unless they measure a surface.
  void finish(Part& part, const Token& number, bool bare) {
    if (number.decimals <= 0 || !part.typed.ends_with('0')) return;
    Term& term = part.chain.factors.front().over;
    term.fixedDecimals = number.decimals;
    if (!term.units.empty() && term.units.front() == Unit::m2) return;
    std::string shorter = withReplaced(part.typed, ",", "");
    while (shorter.ends_with('0')) shorter.pop_back();
    if (shorter.ends_with('.')) shorter.pop_back();
    if (shorter.empty()) shorter = "0";
    if (shorter.starts_with('.')) shorter.insert(0, "0");
    result_.remarks.push_back({LineRemarkCode::trailingZero, number.at, part.typed, shorter, bare});
  }

  [[nodiscard]] Span spanFrom(std::size_t begin) const {
    return {tokens_[begin].at.begin, tokens_[at_ > begin ? at_ - 1 : begin].at.end};
  }

  std::string_view line_;
  const std::vector<Token>& tokens_;
  Slashes slashes_;
  std::size_t at_ = 0;
  int depth_ = 0;
  bool inParenthesis_ = false;
  ParsedLine result_;
  std::optional<LineFault> fault_;
};

}  // namespace

std::variant<ParsedLine, LineFault> parseLine(std::string_view line, const std::vector<Token>& tokens,
                                              Slashes slashes) {
  return Parser(line, tokens, slashes).run();
}

}  // namespace wardchalk::practice
