#include "core/practice/lines/detail/line_tokens.h"

#include "core/number/characters.h"
#include "core/number/entry_text.h"
#include "core/number/refusal.h"
#include "core/practice/lines/detail/scanner.h"

namespace wardchalk::practice {

namespace {

/// The first byte that is part of no character; the size of the text if there is none.
std::size_t firstDamaged(std::string_view line) {
  std::size_t at = 0;
  while (at < line.size()) {
    const std::size_t bytes = characterLength(line.substr(at));
    if (bytes == 0) return at;
    at += bytes;
  }
  return at;
}

std::optional<LineFault> scanOne(Scanner& scanner) {
  if (beginsNumber(scanner)) return scanNumber(scanner);
  if (beginsWord(scanner)) return scanWord(scanner);
  return scanSign(scanner);
}

}  // namespace

std::size_t characterLength(std::string_view text) {
  const Character next = firstCharacter(text);
  return next.isWhole ? next.bytes.size() : 0;
}

LineFault faultAt(LineFaultCode code, std::string_view line, Span at, std::string instead) {
  const std::string_view typed = line.substr(at.begin, at.end - at.begin);
  return {code, at, shortened(typed), std::move(instead)};
}

Token& Scanner::add(TokenKind kind, std::size_t end) {
  Token token;
  token.kind = kind;
  token.at = {at, end};
  tokens.list.push_back(std::move(token));
  at = end;
  return tokens.list.back();
}

void Scanner::skipSpaces() {
  while (at < line.size()) {
    const std::size_t bytes = characterLength(rest());
    if (!hasAnySpace(rest().substr(0, bytes))) return;
    at += bytes;
  }
}

void Scanner::remark(LineRemarkCode code, Span where, std::string instead) {
  tokens.remarks.push_back(
      {code, where, std::string(line.substr(where.begin, where.end - where.begin)), std::move(instead)});
}

LineFault Scanner::fault(LineFaultCode code, Span where, std::string instead) const {
  return faultAt(code, line, where, std::move(instead));
}

std::variant<Tokens, LineFault> tokensOf(std::string_view line) {
  Scanner scanner{line, 0, {}};
  const std::size_t damaged = firstDamaged(line);
  if (damaged < line.size()) return scanner.fault(LineFaultCode::notUtf8, {damaged, damaged + 1});
  scanner.tokens.label = scanLabel(scanner);
  for (scanner.skipSpaces(); scanner.at < line.size(); scanner.skipSpaces())
    if (auto fault = scanOne(scanner)) return *std::move(fault);
  scanner.add(TokenKind::end, line.size());
  return std::move(scanner.tokens);
}

}  // namespace wardchalk::practice
