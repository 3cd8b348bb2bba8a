#include "core/unit/written.h"

#include <algorithm>
#include <array>
#include <string>

#include "core/number/ascii.h"
#include "core/number/decimal_text.h"
#include "core/number/entry_text.h"

namespace wardchalk {

namespace {

constexpr std::size_t longestWritten = 200;  // longer than any quantity; a stuck key or a pasted page

/// "1,000" as on labels; empty when the commas do not set off thousands.
std::string withoutLabelThousands(std::string_view text) {
  std::size_t comma = text.find(',');
  if (comma == 0 || comma > 3) return std::string(text);
  for (; comma < text.size(); comma += 4) {
    const std::string_view group = text.substr(comma + 1, 3);
    const bool three = group.size() == 3 && std::all_of(group.begin(), group.end(), isDigit);
    const bool ends = comma + 4 == text.size() || (comma + 4 < text.size() && text[comma + 4] == ',');
    if (text[comma] != ',' || !three || !ends) return {};
  }
  return withReplaced(text, ",", "");
}

/// So many mg in so many mL: as mg/mL where that ends, else in lowest terms: "1 mg/3 mL".
std::string strengthText(const Number& mgPerMl) {
  if (mgPerMl.endsWithin(6)) return exactText(mgPerMl) + " mg/mL";
  const std::string ratio = mgPerMl.rationalText();
  return withReplaced(ratio, "/", " mg/") + " mL";
}

/// "1:1000", "1:10,000" or "1 in 200" as mg/mL: 1 g in so many mL (H17). It is told and not offered: whether
/// the order and the reference are in grams at all cannot be seen here.
std::optional<Refusal> ratioStrength(std::string_view text) {
  const bool worded = text.starts_with("1 in ");
  const std::size_t at = worded ? 2 : text.find(':');
  if (at == std::string_view::npos || !isDigit(text.front())) return std::nullopt;
  const auto one = readPositive(withPlainSpaces(text.substr(0, at)));
  const auto in = readPositive(withoutLabelThousands(withPlainSpaces(text.substr(at + (worded ? 2 : 1)))));
  if (!one || !in) return refusalOf(RefusalCode::ratioStrength, text);
  return hintedRefusal(RefusalCode::ratioStrength, text, strengthText(*one * Number(1000) / *in));
}

/// "1 %" as mg/mL: 1 g in 100 mL (H17).
std::optional<Refusal> percentStrength(std::string_view text) {
  const std::size_t sign = text.find('%');
  if (sign == std::string_view::npos) return std::nullopt;
  const auto percent = readPositive(withPlainSpaces(text.substr(0, sign)));
  if (!percent) return refusalOf(RefusalCode::percentStrength, text);
  return hintedRefusal(RefusalCode::percentStrength, text, strengthText(*percent * Number(10)));
}

/// A cursor over one written quantity.
class WrittenCursor {
 public:
  explicit WrittenCursor(std::string_view text) : rest_(text) {}

  [[nodiscard]] bool atEnd() const { return rest_.empty(); }
  [[nodiscard]] bool atNumber() const { return numberLength(rest_) > 0; }
  [[nodiscard]] std::string_view rest() const { return rest_; }

  bool take(std::string_view what) {
    if (!rest_.starts_with(what)) return false;
    rest_.remove_prefix(what.size());
    return true;
  }

  /// A unit's name: up to a space or a slash.
  std::string_view name() {
    constexpr std::string_view spaced = "sq m";
    std::size_t length = std::min(rest_.find_first_of(" /"), rest_.size());
    if (rest_.starts_with(spaced)) length = spaced.size();
    const std::string_view found = rest_.substr(0, length);
    rest_.remove_prefix(length);
    return found;
  }

  /// A number, one space and a unit.
  Result<Quantity> quantity() {
    if (!atNumber()) return refusalOf(RefusalCode::numberMissing, rest_);
    const std::string_view whole = rest_;
    const std::string_view digits = rest_.substr(0, numberLength(rest_));
    rest_.remove_prefix(digits.size());
    Result<Number> value = readDecimal(digits);
    if (!value) return value.refusal();
    const bool spaced = take(" ");
    if (atEnd()) return refusalOf(RefusalCode::unitMissing, whole);
    if (spaced && atNumber()) return refusalOf(RefusalCode::spaceInNumber, whole);
    const std::string_view unitName = name();
    if (!spaced) return missingSpace(whole, digits, unitName);
    Result<Unit> unit = readUnit(unitName);
    if (unit) return Quantity{*value, *unit};
    const std::string_view piece = whole.substr(0, whole.size() - rest_.size());
    return inOurSize(*value, unitName, piece).value_or(unit.refusal());
  }

 private:
  /// "2 dL" with "200 mL" to write, where the unit is a count of one of ours.
  static std::optional<Refusal> inOurSize(const Number& value, std::string_view unitName,
                                          std::string_view piece) {
    const auto size = otherSize(unitName);
    if (!size) return std::nullopt;
    const std::string write = exactText(value * size->count).append(" ").append(idOf(size->unit));
    return refusalOf(readUnit(unitName).refusal().code, piece, write);
  }

  static Refusal missingSpace(std::string_view whole, std::string_view digits, std::string_view unitName) {
    const Result<Unit> unit = readUnit(unitName);
    if (!unit && unit.refusal().code != RefusalCode::unitUnknown) return unit.refusal();
    const std::string_view write = unit ? unitName : std::string_view(unit.refusal().suggestion);
    if (write.empty()) return refusalOf(RefusalCode::notANumber, whole);
    const std::string_view piece = whole.substr(0, digits.size() + unitName.size());
    return refusalOf(RefusalCode::spaceMissing, piece, std::string(digits).append(" ").append(write));
  }

  std::string_view rest_;
};

Result<Written::Per> readPer(WrittenCursor& reader) {
  const std::string_view whole = reader.rest();
  if (reader.atNumber()) {
    Result<Quantity> quantity = reader.quantity();
    if (!quantity) return quantity.refusal();
    if (quantity->value.isZero())
      return refusalOf(RefusalCode::zero, whole.substr(0, whole.size() - reader.rest().size()));
    return Written::Per{quantity->value, quantity->unit};
  }
  const std::string_view name = reader.name();
  Result<Unit> unit = readUnit(name);
  if (unit) return Written::Per{std::nullopt, *unit};
  if (const auto size = otherSize(name))
    return refusalOf(unit.refusal().code, name, exactText(size->count).append(" ").append(idOf(size->unit)));
  return unit.refusal();
}

/// What stands after the quantity and is no part of it. "2 g total", "4 g/m2 over 4 days" are totals for a
/// course (H10).
Refusal strayText(std::string_view text) {
  const std::string_view word = text.substr(0, text.find(' '));
  const bool course = isCourseWord(word) || word == "over";
  return refusalOf(course ? RefusalCode::courseTotal : RefusalCode::trailingText, text);
}

Result<Written> readWhole(WrittenCursor reader) {
  Result<Quantity> first = reader.quantity();
  if (!first) return first.refusal();
  Written written{*first, {}, {}};
  while (!reader.atEnd()) {
    if (reader.take("/")) {
      Result<Written::Per> per = readPer(reader);
      if (!per) return per.refusal();
      written.per.push_back(*per);
    } else if (reader.take(" ") && reader.atNumber() && written.per.empty()) {
      Result<Quantity> more = reader.quantity();
      if (!more) return more.refusal();
      written.more.push_back(*more);
    } else {
      return strayText(reader.rest());
    }
  }
  return written;
}

/// With plain single spaces, and slashes for the words people say in their place: "120 mg per m2 per dose".
std::string withSlashes(std::string_view text) {
  std::string plain = withPlainSpaces(text);
  for (const std::string_view slash : {" per ", " in ", " / ", "/ ", " /"})
    plain = withReplaced(plain, slash, "/");
  return plain;
}

/// A better refusal for text that would read if it were spaced plainly.
std::optional<Refusal> badlySpaced(std::string_view text) {
  const std::string plain = withPlainSpaces(text);
  const std::string slashed = withSlashes(text);
  if (plain != text) {
    const Result<Written> again = readWhole(WrittenCursor(plain));
    if (again) return refusalOf(RefusalCode::spaceWrong, text, plain);
    if (text.find(again.refusal().typed) != std::string_view::npos) return again.refusal();
  }
  if (slashed == text || !readWhole(WrittenCursor(slashed))) return std::nullopt;
  const bool worded = withReplaced(slashed, " ", "") != withReplaced(plain, " ", "");
  return refusalOf(worded ? RefusalCode::trailingText : RefusalCode::spaceWrong, text, slashed);
}

}  // namespace

Result<Written> readWritten(std::string_view text) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  if (text.size() > longestWritten) return refusalOf(RefusalCode::tooLong, text);
  Result<Written> written = readWhole(WrittenCursor(text));
  if (written) return written;
  if (auto refusal = badlySpaced(text)) return *refusal;
  return written;
}

Result<Written> readWrittenDrug(std::string_view text) {
  if (text.size() <= longestWritten) {
    if (auto refusal = ratioStrength(text)) return *refusal;
    if (auto refusal = percentStrength(text)) return *refusal;
  }
  return readWritten(text);
}

}  // namespace wardchalk
