#include "core/entry/read_size.h"

#include <algorithm>
#include <array>

#include "core/entry/detail/parts.h"
#include "core/entry/detail/whole.h"
#include "core/entry/safe_form.h"

namespace wardchalk {

namespace {

using entry::Cursor;
using entry::Findings;
using entry::Meaning;
using entry::TypedAmount;
using entry::TypedNumber;
using entry::UnitList;
using entry::Zeros;

constexpr std::array weightUnits = {Unit::kg, Unit::bodyG, Unit::lb, Unit::oz};
constexpr std::array heightUnits = {Unit::cm, Unit::m, Unit::ft, Unit::in};
constexpr std::array ageUnits = {Unit::year, Unit::month, Unit::week, Unit::day};
constexpr std::array surfaceUnits = {Unit::m2};

/// How the sizes of one kind are read.
struct SizeKind {
  UnitList units;
  SpelledIn where;
  std::optional<Unit> bare;       ///< the unit that stood there before typing
  std::array<Unit, 2> questions;  ///< what a bare number is asked about
  bool grams = false;             ///< whether a large one may be in grams
};

/// Nobody weighs so many kg: beside such a number kg is no question.
const Number& mostInKg() {
  static const Number most(250);
  return most;
}
const Number& mostInPounds() {
  static const Number most(550);
  return most;
}

/// The weight of a baby is often charted in grams.
Result<MixedQuantity> bareGrams(const TypedNumber& number, Findings& findings) {
  const MixedQuantity grams{{{number.value, Unit::bodyG}}};
  const MixedQuantity pounds{{{number.value, Unit::lb}}};
  Refusal why = refusalOf(RefusalCode::unitMissing, number.typed);
  if (number.value > mostInPounds())
    findings.object(std::move(why));
  else
    findings.ask(std::move(why), {safeForm(grams), safeForm(pounds)});
  return grams;
}

/// A number without a unit: in the unit that stood there before, or asked about. A file has nobody to ask.
Result<MixedQuantity> bareSize(const TypedNumber& number, const SizeKind& kind, Findings& findings) {
  const MixedQuantity first{{{number.value, kind.bare.value_or(kind.questions[0])}}};
  if (kind.bare) return first;
  if (kind.grams && !findings.inFile() && number.value > mostInKg()) return bareGrams(number, findings);
  if (findings.inFile()) return refusalOf(RefusalCode::unitMissing, number.typed);
  const MixedQuantity second{{{number.value, kind.questions[1]}}};
  findings.ask(refusalOf(RefusalCode::unitMissing, number.typed), {safeForm(first), safeForm(second)});
  return first;
}

Result<MixedQuantity> typedSize(Cursor& cursor, const SizeKind& kind, Findings& findings) {
  Result<TypedNumber> first = entry::readTypedNumber(cursor, findings);
  if (!first) return first.refusal();
  if (auto refusal = entry::refusedRange(cursor, RefusalCode::rangeHere)) return *std::move(refusal);
  if (cursor.atEnd()) return bareSize(*first, kind, findings);
  Result<TypedAmount> amount = entry::readTypedAmountFrom(*std::move(first), cursor, findings, kind.where);
  if (!amount) return amount.refusal();
  return entry::partsOf(*std::move(amount), kind.units, cursor.text());
}

/// A pair that is not written so beside a scale or a rod: a file is read as ever, a person is offered one
/// unit.
void objectToPair(MixedQuantity& mixed, Unit larger, Unit offered, std::string_view text,
                  Findings& findings) {
  if (findings.inFile() || mixed.parts.size() < 2 || mixed.parts.front().unit != larger) return;
  findings.object(RefusalCode::twoUnits, text);
  mixed.parts = {entry::totalIn(offered, mixed)};
}

std::optional<Refusal> refusedZero(const MixedQuantity& mixed, std::string_view text) {
  const bool zero = std::all_of(mixed.parts.begin(), mixed.parts.end(),
                                [](const Quantity& part) { return part.value.isZero(); });
  return zero ? std::optional(refusalOf(RefusalCode::zero, text)) : std::nullopt;
}

Result<Meaning<MixedQuantity>> meaningOf(MixedQuantity mixed) {
  std::string safe = safeForm(mixed);
  return Meaning<MixedQuantity>{std::move(mixed), std::move(safe)};
}

/// 18/12 is 18 months to one hand and a fraction or a date to another: told as that.
Refusal ofAge(const Refusal& refusal) {
  return refusal.code == RefusalCode::fraction ? refusalOf(RefusalCode::ageFraction, refusal.typed) : refusal;
}

}  // namespace

EntryResult<MixedQuantity> readWeight(std::string_view text, const EntrySetting& setting) {
  const SizeKind kind{weightUnits, SpelledIn::elsewhere, setting.bareWeight, {Unit::kg, Unit::lb}, true};
  return entry::readWhole<MixedQuantity>(
      text, setting, [&](Cursor& cursor, Findings& findings) -> Result<Meaning<MixedQuantity>> {
        Result<MixedQuantity> mixed = typedSize(cursor, kind, findings);
        if (!mixed) return mixed.refusal();
        if (auto refusal = refusedZero(*mixed, text)) return *std::move(refusal);
        MixedQuantity weight = *std::move(mixed);
        objectToPair(weight, Unit::kg, Unit::kg, text, findings);
        return meaningOf(std::move(weight));
      });
}

EntryResult<MixedQuantity> readHeight(std::string_view text, const EntrySetting& setting) {
  const SizeKind kind{heightUnits, SpelledIn::height, setting.bareHeight, {Unit::cm, Unit::in}};
  return entry::readWhole<MixedQuantity>(
      text, setting, [&](Cursor& cursor, Findings& findings) -> Result<Meaning<MixedQuantity>> {
        Result<MixedQuantity> mixed = typedSize(cursor, kind, findings);
        if (!mixed) return mixed.refusal();
        if (auto refusal = refusedZero(*mixed, text)) return *std::move(refusal);
        MixedQuantity height = *std::move(mixed);
        const Quantity& only = height.parts.front();
        const bool partOfFoot = height.parts.size() == 1 && only.unit == Unit::ft && !only.value.isWhole();
        if (partOfFoot && !findings.inFile())
          return refusalOf(RefusalCode::partNotWhole, text);  // 3 ft 6 in, or 3 ft 5 in
        objectToPair(height, Unit::m, Unit::cm, text, findings);
        return meaningOf(std::move(height));
      });
}

EntryResult<MixedQuantity> readAge(std::string_view text, const EntrySetting& setting) {
  const SizeKind kind{ageUnits, SpelledIn::age, std::nullopt, {Unit::year, Unit::month}};
  return entry::readWhole<MixedQuantity>(
      text, setting, [&](Cursor& cursor, Findings& findings) -> Result<Meaning<MixedQuantity>> {
        Result<MixedQuantity> mixed = typedSize(cursor, kind, findings);
        if (!mixed) return ofAge(mixed.refusal());
        if (cursor.isWord("old")) findings.object(RefusalCode::wordTooMany, cursor.take().text);
        return meaningOf(*std::move(mixed));
      });
}

EntryResult<MixedQuantity> readWeighed(std::string_view text, const EntrySetting& setting) {
  const SizeKind kind{ageUnits, SpelledIn::age, std::nullopt, {Unit::month, Unit::week}};
  return entry::readWhole<MixedQuantity>(
      text, setting, [&](Cursor& cursor, Findings& findings) -> Result<Meaning<MixedQuantity>> {
        const MixedQuantity none{{{Number(0), Unit::day}}};
        if (cursor.takeWord("today")) return Meaning<MixedQuantity>{none, "today"};
        Result<MixedQuantity> mixed = typedSize(cursor, kind, findings);
        if (!mixed) return mixed.refusal();
        cursor.takeWord("ago");
        if (refusedZero(*mixed, text)) return Meaning<MixedQuantity>{none, "today"};
        return meaningOf(*std::move(mixed));
      });
}

EntryResult<Quantity> readSurface(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<Quantity>(
      text, setting, [&](Cursor& cursor, Findings& findings) -> Result<Meaning<Quantity>> {
        Result<TypedNumber> number = entry::readTypedNumber(cursor, findings, Zeros::kept);
        if (!number) return number.refusal();
        if (auto refusal = entry::refusedRange(cursor, RefusalCode::rangeHere)) return *std::move(refusal);
        if (number->value.isZero()) return refusalOf(RefusalCode::zero, text);
        const std::string digits = number->digits;
        Quantity surface{number->value, Unit::m2};
        if (cursor.atEnd()) {
          findings.object(RefusalCode::unitMissing, number->typed);
        } else {
          Result<TypedAmount> amount =
              entry::readTypedAmountFrom(*std::move(number), cursor, findings, SpelledIn::elsewhere);
          if (!amount) return amount.refusal();
          Result<MixedQuantity> mixed = entry::partsOf(*std::move(amount), surfaceUnits, text);
          if (!mixed) return mixed.refusal();
        }
        return Meaning<Quantity>{std::move(surface), digits + " m2"};
      });
}

}  // namespace wardchalk
