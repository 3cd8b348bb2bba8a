#include "core/practice/lines/detail/unit_reader.h"

namespace wardchalk::practice {

namespace {

bool isUnit(const std::vector<Token>& tokens, std::size_t at) {
  return at < tokens.size() && tokens[at].kind == TokenKind::unit;
}

bool is(const std::vector<Token>& tokens, std::size_t at, TokenKind kind) {
  return at < tokens.size() && tokens[at].kind == kind;
}

/// The piece behind a parenthesis that holds units joined by signs and nothing else; 0 if it is none.
std::size_t groupEnd(const std::vector<Token>& tokens, std::size_t at) {
  if (!is(tokens, at, TokenKind::open)) return 0;
  for (++at; isUnit(tokens, at); ++at) {
    ++at;
    if (is(tokens, at, TokenKind::close)) return at + 1;
    if (!is(tokens, at, TokenKind::times) && !is(tokens, at, TokenKind::slash)) return 0;
  }
  return 0;
}

void widen(Span& span, Span by) { span = span.end == 0 ? by : Span{span.begin, by.end}; }

/// Units on their way into what stands above and below.
struct Gathering {
  Units units;
  UnitPlaces places;
  bool below = false;

  void add(const Token& unit, bool under) {
    (under ? units.under : units.over).append(unit.units);
    widen(under ? places.under : places.over, unit.at);
  }
};

/// A parenthesis of units: inside it a slash turns only what is inside.
void addGroup(Gathering& into, const std::vector<Token>& tokens, std::size_t& at, std::size_t end) {
  const bool outer = into.below;
  const Span open = tokens[at].at;
  bool under = outer;
  widen(outer ? into.places.under : into.places.over, open);
  for (++at; at + 1 < end; ++at) {
    if (tokens[at].kind == TokenKind::slash) under = !outer;
    if (tokens[at].kind == TokenKind::unit) into.add(tokens[at], under);
  }
  widen(outer ? into.places.under : into.places.over, tokens[at].at);
  at = end;
}

bool addOne(Gathering& into, const std::vector<Token>& tokens, std::size_t& at) {
  if (isUnit(tokens, at)) {
    into.add(tokens[at++], into.below);
    return true;
  }
  const std::size_t end = groupEnd(tokens, at);
  if (end == 0) return false;
  addGroup(into, tokens, at, end);
  return true;
}

}  // namespace

bool unitsBegin(const std::vector<Token>& tokens, std::size_t at) {
  return isUnit(tokens, at) || groupEnd(tokens, at) > 0;
}

Units readUnits(const std::vector<Token>& tokens, std::size_t& at, SlashFirst slashFirst,
                UnitPlaces* places) {
  Gathering gathered;
  bool begun = slashFirst == SlashFirst::yes && is(tokens, at, TokenKind::slash);
  if (!begun) begun = addOne(gathered, tokens, at);
  while (begun) {
    const bool slash = is(tokens, at, TokenKind::slash);
    if (!slash && !is(tokens, at, TokenKind::times)) break;
    if (!unitsBegin(tokens, at + 1)) break;
    if (slash) gathered.below = true;
    ++at;
    addOne(gathered, tokens, at);
  }
  if (places) *places = gathered.places;
  return gathered.units;
}

}  // namespace wardchalk::practice
