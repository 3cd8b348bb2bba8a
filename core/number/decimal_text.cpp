#include "core/number/decimal_text.h"

#include <algorithm>
#include <array>

#include "core/number/ascii.h"
#include "core/number/entry_text.h"

namespace wardchalk {

namespace {

/// What to write for "05".
std::string withoutLeadingZeros(std::string_view text) {
  const std::size_t first = text.find_first_not_of('0');
  if (first == std::string_view::npos) return "0";
  if (text[first] == '.') return "0" + std::string(text.substr(first));
  return std::string(text.substr(first));
}

bool isExponent(std::string_view text) {
  const std::size_t e = text.find_first_of("eE");
  return e != std::string_view::npos && e > 0 && isDigit(text[0]) && e + 1 < text.size() &&
         (isDigit(text[e + 1]) || text[e + 1] == '-' || text[e + 1] == '+');
}

bool hasFraction(std::string_view text) {
  constexpr std::array<std::string_view, 6> signs = {"/", "½", "¼", "¾", "⅓", "⅔"};
  return std::any_of(signs.begin(), signs.end(),
                     [&](std::string_view sign) { return text.find(sign) != std::string_view::npos; });
}

/// The reason why text with something other than digits and points in it is refused.
RefusalCode strangeCharacter(std::string_view text) {
  const char first = text.front();
  if (first == '-' || first == '+' || text.starts_with("−")) return RefusalCode::sign;
  if (text.find(',') != std::string_view::npos) return RefusalCode::comma;
  if (isExponent(text)) return RefusalCode::exponent;
  if (hasAnySpace(text)) return RefusalCode::spaceInNumber;
  if (hasFraction(text)) return RefusalCode::fraction;
  if (hasOtherDigits(text)) return RefusalCode::otherDigits;
  return RefusalCode::notANumber;
}

std::optional<Refusal> badShape(std::string_view text) {
  const std::size_t point = text.find('.');
  if (text.size() > mostDigits + (point == std::string_view::npos ? 0 : 1))
    return refusalOf(RefusalCode::tooLong, text);
  if (point != std::string_view::npos && text.find('.', point + 1) != std::string_view::npos)
    return refusalOf(RefusalCode::secondPoint, text);
  if (text == ".") return refusalOf(RefusalCode::notANumber, text);
  if (point == 0) return refusalOf(RefusalCode::barePoint, text, "0" + std::string(text));
  if (point == text.size() - 1)
    return refusalOf(RefusalCode::trailingPoint, text);  // "5." may be half of 5.5
  if (text.size() > 1 && text[0] == '0' && text[1] != '.')
    return refusalOf(RefusalCode::leadingZero, text, withoutLeadingZeros(text));
  return std::nullopt;
}

/// With this many decimals. A negative value that rounds to zero loses its sign.
std::string fixed(const Number& value, int decimals) {
  std::string digits = value.roundedDigits(decimals);
  const bool isNothing = digits == "0";
  if (decimals > 0) {
    const auto wanted = static_cast<std::size_t>(decimals) + 1;
    if (digits.size() < wanted) digits.insert(0, wanted - digits.size(), '0');
    digits.insert(digits.size() - static_cast<std::size_t>(decimals), ".");
  }
  if (value.isNegative() && !isNothing) digits.insert(0, 1, '-');
  return digits;
}

/// The same without the zeros that end its decimals.
std::string trimmed(const Number& value, int decimals) {
  std::string text = fixed(value, decimals);
  if (decimals == 0) return text;
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text;
}

void group(std::string& text, Grouping grouping) {
  if (grouping == Grouping::none) return;
  std::size_t end = text.find('.');
  if (end == std::string::npos) end = text.size();
  const std::size_t begin = text.starts_with('-') ? 1 : 0;
  while (end > begin + 3) {
    end -= 3;
    text.insert(end, ",");
  }
}

/// Decimals needed to show `significant` digits; 0 where the whole part has as many or more.
int decimalsFor(const Number& value, int significant) {
  return value.isZero() ? 0 : std::max(significant - value.firstPlace(), 0);
}

/// Whether the smaller of two that are not negative lacks more than a thousandth of the larger: more than the
/// last of the larger's four digits is worth, and so more than rounding can bring together.
bool areFarApart(const Number& smaller, const Number& larger) {
  return !smaller.isNegative() && larger * Number(999) > smaller * Number(1000);
}

}  // namespace

Result<Number> readDecimal(std::string_view text) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  const bool plain = std::all_of(text.begin(), text.end(), [](char c) { return isDigit(c) || c == '.'; });
  if (!plain) return refusalOf(strangeCharacter(text), text);
  if (auto refusal = badShape(text)) return *refusal;
  const std::size_t point = text.find('.');
  if (point == std::string_view::npos) return Number::fromDigits(text, 0);
  std::string digits(text.substr(0, point));
  digits.append(text.substr(point + 1));
  return Number::fromDigits(digits, static_cast<int>(text.size() - point - 1));
}

Result<Number> readPositive(std::string_view text) {
  Result<Number> number = readDecimal(text);
  if (number && number->isZero()) return refusalOf(RefusalCode::zero, text);
  return number;
}

ShownNumber show(const Number& value, Grouping grouping, int significant) {
  const bool whole = value.isWhole();
  const bool exact = whole || value.endsWithin(4);
  ShownNumber shown{
      whole ? value.rationalText() : trimmed(value, exact ? 4 : decimalsFor(value, significant)), exact};
  group(shown.text, grouping);
  return shown;
}

int digitsApart(const Number& a, const Number& b) {
  int significant = 4;
  if (a.endsWithin(significant) && b.endsWithin(significant))
    return significant;  // both are shown as they are
  if (areFarApart(a, b) || areFarApart(b, a)) return significant;
  while (a != b && show(a, Grouping::none, significant).text == show(b, Grouping::none, significant).text)
    ++significant;
  return significant;
}

std::pair<ShownNumber, ShownNumber> showApart(const Number& a, const Number& b, Grouping grouping) {
  const int significant = digitsApart(a, b);
  return {show(a, grouping, significant), show(b, grouping, significant)};
}

std::string withoutThousands(std::string_view text) {
  const auto isDigitAt = [text](std::size_t at) { return at < text.size() && isDigit(text[at]); };
  std::string plain;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (text[i] != ',' || i == 0 || !isDigitAt(i - 1) || !isDigitAt(i + 1)) plain.push_back(text[i]);
  return plain;
}

std::string fixedText(const Number& value, int decimals) { return fixed(value, decimals); }

std::string exactText(const Number& value, Grouping grouping) {
  const auto decimals = value.decimals(40);
  if (!decimals) return value.rationalText();
  std::string text = fixed(value, *decimals);
  group(text, grouping);
  return text;
}

std::string percentText(const Number& part, const Number& whole) {
  const Number percent = part * Number(100) / whole;
  const Number rounded = percent.rounded(1);
  if (rounded != Number(100) || part == whole) return plainPercent(rounded);
  return percent < Number(100) ? "99.9" : "100.1";
}

std::string excessText(const Number& value, const Number& limit) {
  const Number percent = (value - limit) * Number(100) / limit;
  if (!percent.rounded(1).isZero()) return plainPercent(percent);
  return trimmed(percent, decimalsFor(percent, 1));  // below 0.05: no thousands
}

std::string plainPercent(const Number& percent) {
  std::string text = trimmed(percent.rounded(1), 1);
  group(text, Grouping::commas);
  return text;
}

}  // namespace wardchalk
