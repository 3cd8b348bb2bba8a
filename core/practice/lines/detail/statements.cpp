#include "core/practice/lines/detail/statements.h"

#include <algorithm>
#include <array>

#include "core/number/ascii.h"

namespace wardchalk::practice {

namespace {

/// Signs at which a statement goes on over a line break.
constexpr std::array<std::string_view, 18> joining = {"=", "≈", "×", "÷", "*", "/",  "+", "-", "−",
                                                      "·", "≤", "≥", "<", ">", "x ", "(", ")", "√"};

bool isSpace(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool beginsWithSign(std::string_view text) {
  return std::ranges::any_of(joining, [&](std::string_view sign) {
    return sign != "(" && sign != "√" && sign != "x " && text.starts_with(sign);
  });
}

bool endsWithSign(std::string_view text) {
  return std::ranges::any_of(
      joining, [&](std::string_view sign) { return sign != ")" && sign != "x " && text.ends_with(sign); });
}

Span trimmed(std::string_view text, Span at) {
  while (at.begin < at.end && isSpace(text[at.begin])) ++at.begin;
  while (at.end > at.begin && isSpace(text[at.end - 1])) --at.end;
  return at;
}

std::string_view piece(std::string_view text, Span at) { return text.substr(at.begin, at.end - at.begin); }

/// ", x = 4 mL": what the unknown comes to begins a statement of its own.
bool namesUnknown(std::string_view rest) {
  std::size_t at = 0;
  while (at < rest.size() && rest[at] == ' ') ++at;
  if (at == 0 || at >= rest.size() || lowered(rest[at]) != 'x') return false;
  for (++at; at < rest.size() && rest[at] == ' ';) ++at;
  return at < rest.size() && rest[at] == '=';
}

bool isBreak(std::string_view text, std::size_t at) {
  const char c = text[at];
  return c == '\n' || c == ';' || (c == ',' && namesUnknown(text.substr(at + 1)));
}

/// A line break that falls inside a statement joins what stands before and after it.
bool goesOn(std::string_view text, Span before, Span after, char breaking) {
  if (breaking != '\n') return false;
  return beginsWithSign(piece(text, after)) || endsWithSign(piece(text, before));
}

}  // namespace

std::vector<Span> statementsOf(std::string_view text) {
  std::vector<Span> statements;
  char breaking = ';';
  for (std::size_t begin = 0; begin <= text.size();) {
    std::size_t end = begin;
    while (end < text.size() && !isBreak(text, end)) ++end;
    const Span at = trimmed(text, {begin, end});
    if (at.begin < at.end) {
      if (!statements.empty() && goesOn(text, statements.back(), at, breaking))
        statements.back().end = at.end;
      else
        statements.push_back(at);
    }
    breaking = end < text.size() ? text[end] : ';';
    begin = end + 1;
  }
  return statements;
}

std::size_t headingEnd(std::string_view text) {
  const std::size_t equal = text.find('=');
  if (equal == std::string_view::npos) return 0;
  const std::size_t colon = text.rfind(": ", equal);
  if (colon != std::string_view::npos) return colon + 1;
  const std::string_view left = text.substr(0, equal);
  return std::ranges::any_of(left, [](char c) { return isDigit(c); }) ? 0 : equal + 1;
}

}  // namespace wardchalk::practice
