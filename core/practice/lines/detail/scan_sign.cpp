#include <array>

#include "core/number/entry_text.h"
#include "core/practice/lines/detail/scanner.h"

namespace wardchalk::practice {

namespace {

struct Sign {
  std::string_view typed;
  TokenKind kind;
  LineRelation relation = LineRelation::equal;
};
/// Every sign that is understood; longer ones before those they begin with.
constexpr std::array signs = {
    Sign{"<=", TokenKind::relation, LineRelation::atMost},
    Sign{">=", TokenKind::relation, LineRelation::atLeast},
    Sign{"~=", TokenKind::relation, LineRelation::about},
    Sign{"=", TokenKind::relation},
    Sign{"≈", TokenKind::relation, LineRelation::about},
    Sign{"~", TokenKind::relation, LineRelation::about},
    Sign{"≃", TokenKind::relation, LineRelation::about},
    Sign{"≅", TokenKind::relation, LineRelation::about},
    Sign{"≤", TokenKind::relation, LineRelation::atMost},
    Sign{"⩽", TokenKind::relation, LineRelation::atMost},
    Sign{"≥", TokenKind::relation, LineRelation::atLeast},
    Sign{"⩾", TokenKind::relation, LineRelation::atLeast},
    Sign{"<", TokenKind::relation, LineRelation::below},
    Sign{">", TokenKind::relation, LineRelation::above},
    Sign{"×", TokenKind::times},
    Sign{"*", TokenKind::times},
    Sign{"·", TokenKind::times},
    Sign{"⋅", TokenKind::times},
    Sign{"•", TokenKind::times},
    Sign{"∙", TokenKind::times},
    Sign{"÷", TokenKind::divide},
    Sign{"/", TokenKind::slash},
    Sign{"⁄", TokenKind::slash},
    Sign{"∕", TokenKind::slash},
    Sign{"+", TokenKind::plus},
    Sign{"-", TokenKind::minus},
    Sign{"−", TokenKind::minus},
    Sign{"–", TokenKind::minus},
    Sign{"√", TokenKind::root},
    Sign{"(", TokenKind::open},
    Sign{")", TokenKind::close},
    Sign{"[", TokenKind::open},
    Sign{"]", TokenKind::close},
};

struct Instead {
  std::string_view typed;
  std::string_view write;
};
constexpr std::array otherSigns = {Instead{"→", "="}, Instead{"⇒", "="},  Instead{"{", "("},
                                   Instead{"}", ")"}, Instead{"\\", "/"}, Instead{"∗", "×"},
                                   Instead{"✕", "×"}};

/// "0·70": a point set high, as it was once printed, and no product.
bool isHighPoint(const Scanner& scanner, std::size_t length) {
  return scanner.lastIs(TokenKind::number) && scanner.tokens.list.back().at.end == scanner.at &&
         isDigit(scanner.charAt(scanner.at + length));
}

LineFault unknownSign(const Scanner& scanner, Span at) {
  const std::string_view typed = scanner.rest().substr(0, at.end - at.begin);
  if (typed == "%" || typed == "‰") return scanner.fault(LineFaultCode::percentHere, at);
  if (hasOtherDigits(typed)) return scanner.fault(LineFaultCode::otherDigits, at);
  for (const std::string_view power : {"^", "²", "³", "⁴"})
    if (typed == power) return scanner.fault(LineFaultCode::powerUnknown, at);
  for (const Instead& other : otherSigns)
    if (typed == other.typed) return scanner.fault(LineFaultCode::signUnknown, at, std::string(other.write));
  return scanner.fault(LineFaultCode::signUnknown, at);
}

/// "^0.5", "^½", "^(1/2)" behind a parenthesis: the root of what stands in it.
bool addPowerOfHalf(Scanner& scanner) {
  if (!scanner.lastIs(TokenKind::close)) return false;
  for (const std::string_view power : {"^0.5", "^½", "^(1/2)", "^1/2"})
    if (scanner.startsWith(power) && !isDigit(scanner.charAt(scanner.at + power.size()))) {
      scanner.add(TokenKind::rootBefore, scanner.at + power.size());
      return true;
    }
  return false;
}

}  // namespace

std::optional<LineFault> scanSign(Scanner& scanner) {
  if (addPowerOfHalf(scanner)) return std::nullopt;
  const Span at{scanner.at, scanner.at + characterLength(scanner.rest())};
  const bool dot = scanner.startsWith("·") || scanner.startsWith("⋅") || scanner.startsWith("∙");
  if (dot && isHighPoint(scanner, at.end - at.begin))
    return scanner.fault(LineFaultCode::highPoint, {scanner.tokens.list.back().at.begin, at.end + 1});
  for (const Sign& sign : signs) {
    if (!scanner.startsWith(sign.typed)) continue;
    scanner.add(sign.kind, scanner.at + sign.typed.size()).relation = sign.relation;
    return std::nullopt;
  }
  return unknownSign(scanner, at);
}

}  // namespace wardchalk::practice
