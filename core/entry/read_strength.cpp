#include "core/entry/read_strength.h"

#include <array>

#include "core/entry/detail/dose.h"
#include "core/entry/detail/number_words.h"
#include "core/entry/detail/parts.h"
#include "core/entry/detail/whole.h"
#include "core/entry/safe_form.h"
#include "core/number/decimal_text.h"

namespace wardchalk {

namespace {

using entry::Cursor;
using entry::Findings;
using entry::Meaning;
using entry::TypedAmount;
using entry::TypedNumber;
using entry::TypedPer;
using entry::UnitList;

constexpr std::array containers = {Unit::mL, Unit::L, Unit::tablet, Unit::capsule};
constexpr std::array volumeUnits = {Unit::mL, Unit::L};
constexpr std::array timeUnits = {Unit::h, Unit::min};

/// The whole text is "1 %", "1 percent": its number of g in 100 mL.
std::optional<Result<Number>> percentIn(const Cursor& cursor) {
  const std::string_view text = cursor.text();
  const std::size_t last = cursor.tokens().size();
  const bool percent = last > 0 && (cursor.isSign("%", last - 1) || cursor.isWord("percent", last - 1));
  if (!percent) return std::nullopt;
  if (last != 2 || !cursor.isNumber()) return refusalOf(RefusalCode::percentStrength, text);
  return readPositive(cursor.peek()->text);
}

/// The whole text is "1:1000", "1 in 1000": g in mL.
std::optional<Result<Number>> ratioIn(const Cursor& cursor) {
  const std::string_view text = cursor.text();
  if (!cursor.isNumber() || (!cursor.isSign(":", 1) && !cursor.isWord("in", 1))) return std::nullopt;
  const bool worded = cursor.isWord("in", 1);
  if (worded && (!cursor.isNumber(2) || cursor.tokens().size() != 3)) return std::nullopt;
  if (!cursor.isNumber(2) || cursor.tokens().size() != 3) return refusalOf(RefusalCode::ratioStrength, text);
  const Result<Number> one = readPositive(cursor.peek()->text);
  const Result<Number> in = readPositive(cursor.peek(2)->text);
  if (!one) return one.refusal();
  if (!in) return in.refusal();
  return *one / *in;
}

/// So many mg in so many mL: as mg/mL where that ends, else in lowest terms: "1 mg/3 mL". Nothing where a
/// number of those would be longer than what may be typed.
std::optional<Strength> gramsPerMl(const Number& ratio) {
  const Number mg = ratio * Number(1000);
  if (mg.endsWithin(6)) return Strength{{mg, Unit::mg}, {Number(1), Unit::mL}};
  const std::string text = mg.rationalText();
  const std::size_t stroke = text.find('/');
  const Result<Number> over = readDecimal(text.substr(0, stroke));
  const Result<Number> under = readDecimal(text.substr(stroke + 1));
  if (!over || !under) return std::nullopt;
  return Strength{{*over, Unit::mg}, {*under, Unit::mL}};
}

struct Told {
  RefusalCode code;
  std::optional<Strength> strength;  ///< nothing where a number in it, or made of it, cannot be read
};

/// Of the whole text, which the cursor stands before.
std::optional<Told> ratioOrPercent(const Cursor& cursor) {
  if (const auto percent = percentIn(cursor))
    return Told{RefusalCode::percentStrength, *percent ? gramsPerMl(**percent / Number(100)) : std::nullopt};
  if (const auto ratio = ratioIn(cursor))
    return Told{RefusalCode::ratioStrength, *ratio ? gramsPerMl(**ratio) : std::nullopt};
  return std::nullopt;
}

using StrengthMeaning = Result<Meaning<Strength>>;

StrengthMeaning meaningOf(Strength strength) {
  std::string safe = safeForm(strength);
  return Meaning<Strength>{std::move(strength), std::move(safe)};
}

/// Of one meaning only where order and reference are in grams: whether they are, the setting says.
StrengthMeaning told(const Told& found, Cursor& cursor, Findings& findings) {
  const std::string_view text = cursor.text();
  if (!found.strength) return refusalOf(found.code, text);
  Refusal refusal = hintedRefusal(found.code, text, safeForm(*found.strength));
  if (!findings.setting().drugInGrams) return refusal;
  findings.object(std::move(refusal));
  cursor.goTo(cursor.tokens().size());
  return meaningOf(*found.strength);
}

StrengthMeaning readAmountIn(Cursor& cursor, Findings& findings, UnitList in) {
  const std::string_view text = cursor.text();
  Result<TypedNumber> first = entry::readTypedNumber(cursor, findings);
  if (!first) return first.refusal();
  if (auto refusal = entry::refusedRange(cursor, RefusalCode::rangeHere)) return *std::move(refusal);
  Result<TypedAmount> amount =
      entry::readTypedAmountFrom(*std::move(first), cursor, findings, SpelledIn::elsewhere);
  if (!amount) return amount.refusal();
  if (amount->parts.size() != 1 || amount->per.size() != 1)
    return refusalOf(RefusalCode::strengthShape, text);
  const TypedPer& per = amount->per.front();
  const Quantity& quantity = amount->parts.front().quantity;
  if (!entry::contains(entry::drugUnits, quantity.unit) || !entry::contains(in, per.unit))
    return refusalOf(RefusalCode::strengthShape, text);
  if (quantity.value.isZero()) return refusalOf(RefusalCode::zero, text);
  return meaningOf({quantity, {per.number ? per.number->value : Number(1), per.unit}});
}

StrengthMeaning readIn(Cursor& cursor, Findings& findings, UnitList in) {
  if (const auto found = ratioOrPercent(cursor)) return told(*found, cursor, findings);
  StrengthMeaning strength = readAmountIn(cursor, findings, in);
  if (!strength) return entry::namedWords(strength.refusal(), cursor.text());
  return strength;
}

using QuantityMeaning = Result<Meaning<Quantity>>;

QuantityMeaning meaningOf(Quantity quantity) {
  std::string safe = safeForm(quantity);
  return Meaning<Quantity>{std::move(quantity), std::move(safe)};
}

QuantityMeaning readSum(Cursor& cursor, Findings& findings, UnitList units, SpelledIn where) {
  const std::string_view text = cursor.text();
  Result<TypedNumber> first = entry::readTypedNumber(cursor, findings);
  if (!first) return first.refusal();
  if (auto refusal = entry::refusedRange(cursor, RefusalCode::rangeHere)) return *std::move(refusal);
  Result<TypedAmount> amount = entry::readTypedAmountFrom(*std::move(first), cursor, findings, where);
  if (!amount) return amount.refusal();
  Result<MixedQuantity> mixed = entry::partsOf(*std::move(amount), units, text);
  if (!mixed) return mixed.refusal();
  const Quantity total = entry::totalIn(mixed->smallestUnit(), *mixed);
  if (total.value.isZero()) return refusalOf(RefusalCode::zero, text);
  if (mixed->parts.size() > 1) findings.object(RefusalCode::twoUnits, text);
  return meaningOf(total);
}

/// A single positive quantity in one of the units, nothing per anything. Parts have one meaning in the
/// smaller unit.
QuantityMeaning readSingle(Cursor& cursor, Findings& findings, UnitList units, SpelledIn where) {
  QuantityMeaning sum = readSum(cursor, findings, units, where);
  if (!sum) return entry::namedWords(sum.refusal(), cursor.text());
  return sum;
}

/// "half an hour": a number in words.
bool takeHalfHour(Cursor& cursor, Findings& findings) {
  const std::size_t from = cursor.place();
  const bool half =
      cursor.takeWord("half") && (cursor.takeWord("an") || cursor.takeWord("a")) && cursor.takeWord("hour");
  if (half)
    findings.object(RefusalCode::numberInWords, cursor.typedFrom(from));
  else
    cursor.goTo(from);
  return half;
}

}  // namespace

std::optional<Refusal> refusedRatioOrPercent(std::string_view text) {
  const auto found = ratioOrPercent(Cursor(text));
  if (!found) return std::nullopt;
  return hintedRefusal(found->code, text, found->strength ? safeForm(*found->strength) : std::string());
}

EntryResult<Strength> readStrength(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<Strength>(
      text, setting, [](Cursor& cursor, Findings& findings) { return readIn(cursor, findings, containers); });
}

EntryResult<Strength> readConcentration(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<Strength>(text, setting, [](Cursor& cursor, Findings& findings) {
    return readIn(cursor, findings, volumeUnits);
  });
}

EntryResult<Quantity> readContent(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<Quantity>(text, setting, [](Cursor& cursor, Findings& findings) {
    return readSingle(cursor, findings, entry::drugUnits, SpelledIn::elsewhere);
  });
}

EntryResult<Quantity> readVolume(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<Quantity>(text, setting, [](Cursor& cursor, Findings& findings) {
    return readSingle(cursor, findings, volumeUnits, SpelledIn::elsewhere);
  });
}

EntryResult<Quantity> readTime(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<Quantity>(text, setting, [](Cursor& cursor, Findings& findings) -> QuantityMeaning {
    if (cursor.isWord("over")) findings.object(RefusalCode::wordTooMany, cursor.take().text);
    if (takeHalfHour(cursor, findings)) return meaningOf(Quantity{Number(30), Unit::min});
    return readSingle(cursor, findings, timeUnits, SpelledIn::time);
  });
}

EntryResult<Quantity> readDropFactor(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<Quantity>(
      text, setting, [&](Cursor& cursor, Findings& findings) -> QuantityMeaning {
        Result<TypedNumber> first = entry::readTypedNumber(cursor, findings);
        if (!first) return first.refusal();
        if (auto refusal = entry::refusedRange(cursor, RefusalCode::rangeHere)) return *std::move(refusal);
        Quantity drops{first->value, Unit::drop};
        if (drops.value.isZero()) return refusalOf(RefusalCode::zero, text);
        std::string safe = exactText(drops.value) + " drop/mL";
        if (cursor.atEnd()) {
          findings.object(RefusalCode::unitMissing, first->typed);
          return Meaning<Quantity>{std::move(drops), std::move(safe)};
        }
        const Result<TypedAmount> amount =
            entry::readTypedAmountFrom(*std::move(first), cursor, findings, SpelledIn::elsewhere);
        if (!amount) return amount.refusal();
        const bool fits = amount->parts.size() == 1 && amount->parts.front().quantity.unit == Unit::drop &&
                          amount->per.size() == 1 && amount->per.front().unit == Unit::mL &&
                          amount->per.front().isOne();
        if (!fits) return hintedRefusal(RefusalCode::unitUnfit, text, "drop/mL");
        return Meaning<Quantity>{std::move(drops), std::move(safe)};
      });
}

}  // namespace wardchalk
