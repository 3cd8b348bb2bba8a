#include "core/practice/lines/detail/line_tokens.h"

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
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) return 1;
  if (lead < 0xC2 || lead > 0xF4) return 0;
  const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (text.size() < bytes) return 0;
  for (std::size_t i = 1; i < bytes; ++i)
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
  return bytes;
}

LineFault faultAt(LineFaultCode code, std::string_view line, Span at, std::string instead) {
  // A refusal keeps the beginning of what was typed and cuts no character in two.
  const std::string_view typed = line.substr(at.begin, at.end - at.begin);
  return {code, at, refusalOf(RefusalCode::empty, typed).typed, std::move(instead)};
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
