#include <algorithm>
#include <array>

#include "core/number/decimal_text.h"
#include "core/number/entry_text.h"
#include "core/practice/lines/detail/scanner.h"

namespace wardchalk::practice {

namespace {

struct PartOfOne {
  std::string_view sign;   // one character
  std::string_view typed;  // with a stroke, without space
  int over;
  int under;
};
/// The parts that tablets and hours are spoken of in; any other fraction is a division.
constexpr std::array partsOfOne = {PartOfOne{"½", "1/2", 1, 2}, PartOfOne{"¼", "1/4", 1, 4},
                                   PartOfOne{"¾", "3/4", 3, 4}, PartOfOne{"⅓", "1/3", 1, 3},
                                   PartOfOne{"⅔", "2/3", 2, 3}};

const PartOfOne* signAt(std::string_view text) {
  for (const PartOfOne& part : partsOfOne)
    if (text.starts_with(part.sign)) return &part;
  return nullptr;
}

/// "1/2" before a unit, with nothing before it that would make it the tail of another number or of a
/// fraction.
const PartOfOne* strokeAt(const Scanner& scanner, std::size_t at) {
  for (const PartOfOne& part : partsOfOne) {
    if (!scanner.line.substr(at).starts_with(part.typed)) continue;
    Scanner ahead{scanner.line, at + part.typed.size(), {}};
    ahead.skipSpaces();
    return unitFollows(ahead) && !scanner.lastIs(TokenKind::slash) ? &part : nullptr;
  }
  return nullptr;
}

/// Digits, points and commas that stand together; a mark at the end without a digit after it is left out.
std::size_t runEnd(const Scanner& scanner) {
  std::size_t end = scanner.at;
  while (isDigit(scanner.charAt(end)) ||
         ((scanner.charAt(end) == '.' || scanner.charAt(end) == ',') && isDigit(scanner.charAt(end + 1))))
    ++end;
  return end;
}

bool isGroupedInThousands(std::string_view whole) {
  const std::size_t first = whole.find(',');
  if (first == 0 || first > 3 || whole[0] == '0') return false;
  for (std::size_t at = first; at < whole.size(); at += 4) {
    if (whole[at] != ',' || at + 4 > whole.size()) return false;
    for (std::size_t i = at + 1; i < at + 4; ++i)
      if (!isDigit(whole[i])) return false;
  }
  return true;
}

std::optional<LineFault> faultOf(const Scanner& scanner, Span at, std::string_view typed) {
  const std::size_t point = typed.find('.');
  if (point != std::string_view::npos && typed.find_first_of(".,", point + 1) != std::string_view::npos)
    return scanner.fault(
        typed.find(',', point) == std::string_view::npos ? LineFaultCode::secondPoint : LineFaultCode::comma,
        at);
  const std::size_t comma = typed.find(',');
  if (comma != std::string_view::npos && !isGroupedInThousands(typed.substr(0, point)))
    return scanner.fault(LineFaultCode::comma, at);
  // What stands between them does not count: our own lines write such a number in thousands.
  if (std::ranges::count_if(typed, isDigit) > static_cast<std::ptrdiff_t>(mostDigits))
    return scanner.fault(LineFaultCode::tooManyDigits, at);
  return std::nullopt;
}

/// "e3" directly after a number.
bool isExponent(const Scanner& scanner, std::size_t at) {
  const char e = scanner.charAt(at);
  const char next = scanner.charAt(at + 1);
  if (e != 'e' && e != 'E') return false;
  return isDigit(next) || ((next == '-' || next == '+') && isDigit(scanner.charAt(at + 2)));
}

/// "05": it is 5, or 0.5 that lost its point.
bool hasLeadingZero(std::string_view digits) {
  return digits.size() > 1 && digits[0] == '0' && isDigit(digits[1]);
}

/// What is unsafe or unusual in a number that is read. (Zeros at its end depend on the unit; the parser sees
/// to them.)
void remarkNumber(Scanner& scanner, Span at, std::string_view typed, const std::string& digits) {
  if (digits[0] == '.') scanner.remark(LineRemarkCode::noLeadingZero, at, "0" + digits);
  if (digits != typed) scanner.remark(LineRemarkCode::otherSpelling, at, digits);  // thousands
}

/// A point after which the line goes on, "5. mL", may have lost what stood behind it; at the end of the line
/// it ends a sentence.
std::optional<LineFault> passTrailingPoint(Scanner& scanner, Span at) {
  if (scanner.charAt(scanner.at) != '.') return std::nullopt;
  ++scanner.at;
  Scanner ahead{scanner.line, scanner.at, {}};
  ahead.skipSpaces();
  if (ahead.at == scanner.line.size() || ahead.startsWith(".")) return std::nullopt;
  return scanner.fault(LineFaultCode::trailingPoint, {at.begin, at.end + 1});
}

void addPart(Scanner& scanner, const PartOfOne& part, std::size_t end, const Number& whole) {
  Token& token = scanner.add(TokenKind::number, end);
  token.value = whole + Number::ratio(part.over, part.under);
  token.decimals = -1;
}

/// "2½" and "2 1/2 tablets": a part of one directly after a whole number belongs to it.
const PartOfOne* partAfter(Scanner& scanner, std::size_t end, std::size_t& partEnd) {
  Scanner ahead{scanner.line, end, {}};
  ahead.skipSpaces();
  const PartOfOne* part = signAt(ahead.rest());
  partEnd = ahead.at + (part ? part->sign.size() : 0);
  if (part || ahead.at == end) return part;
  part = strokeAt(ahead, ahead.at);
  if (part) partEnd = ahead.at + part->typed.size();
  return part;
}

}  // namespace

bool beginsNumber(const Scanner& scanner) {
  const char c = scanner.charAt(scanner.at);
  return isDigit(c) || (c == '.' && isDigit(scanner.charAt(scanner.at + 1))) || signAt(scanner.rest());
}

std::optional<LineFault> scanNumber(Scanner& scanner) {
  if (const PartOfOne* part = signAt(scanner.rest())) {
    addPart(scanner, *part, scanner.at + part->sign.size(), Number(0));
    return std::nullopt;
  }
  if (const PartOfOne* part = strokeAt(scanner, scanner.at)) {
    addPart(scanner, *part, scanner.at + part->typed.size(), Number(0));
    return std::nullopt;
  }
  const Span at{scanner.at, runEnd(scanner)};
  const std::string_view typed = scanner.line.substr(at.begin, at.end - at.begin);
  if (auto fault = faultOf(scanner, at, typed)) return fault;
  if (isExponent(scanner, at.end)) return scanner.fault(LineFaultCode::exponent, {at.begin, at.end + 2});
  const std::string digits = withReplaced(typed, ",", "");
  if (hasLeadingZero(digits) && !scanner.lastIs(TokenKind::number))
    return scanner.fault(LineFaultCode::leadingZero, at);
  remarkNumber(scanner, at, typed, digits);
  const std::size_t point = digits.find('.');
  const int decimals = point == std::string::npos ? 0 : static_cast<int>(digits.size() - point - 1);
  const Number value = Number::fromDigits(withReplaced(digits, ".", ""), decimals);
  std::size_t partEnd = 0;
  const PartOfOne* part = decimals == 0 ? partAfter(scanner, at.end, partEnd) : nullptr;
  if (part) {
    addPart(scanner, *part, partEnd, value);
    return std::nullopt;
  }
  Token& token = scanner.add(TokenKind::number, at.end);
  token.value = value;
  token.decimals = decimals;
  return passTrailingPoint(scanner, at);
}

}  // namespace wardchalk::practice
