#include "core/entry/read_dose.h"

#include "core/entry/detail/dose.h"
#include "core/entry/detail/parts.h"
#include "core/entry/detail/schedule_phrase.h"
#include "core/entry/detail/schedule_words.h"
#include "core/entry/detail/whole.h"
#include "core/entry/safe_form.h"
#include "core/medicine/paths.h"
#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

using entry::Cursor;
using entry::Findings;
using entry::Meaning;
using entry::TypedNumber;
using entry::Volumes;

using DoseMeaning = Result<Meaning<DoseAmount>>;

DoseMeaning meaningOf(DoseAmount dose) {
  std::string safe = safeForm(dose);
  return Meaning<DoseAmount>{std::move(dose), std::move(safe), std::nullopt};
}

Result<DoseAmount> readDoseAlone(Cursor& cursor, Findings& findings, Volumes volumes, RefusalCode range) {
  Result<TypedNumber> first = entry::readTypedNumber(cursor, findings);
  if (!first) return first.refusal();
  if (auto refusal = entry::refusedRange(cursor, range)) return *std::move(refusal);
  Result<DoseAmount> dose = entry::readDoseFrom(*std::move(first), cursor, findings, volumes);
  if (!dose) return dose;
  if (auto refusal = entry::refusedRange(cursor, range)) return *std::move(refusal);
  if (auto refusal = entry::namedRest(cursor)) return *std::move(refusal);
  return dose;
}

/// One dose that fills the field, and nothing behind it. A range where one figure belongs has its own
/// refusal.
Result<DoseAmount> readOneDose(Cursor& cursor, Findings& findings, Volumes volumes, RefusalCode range) {
  return entry::namedUnlessRead(readDoseAlone(cursor, findings, volumes, range), cursor);
}

/// "max 500 mg": the field says so already.
void takeMaximumWord(Cursor& cursor, Findings& findings) {
  if (!cursor.isWord("max") && !cursor.isWord("maximum")) return;
  findings.object(RefusalCode::wordTooMany, cursor.take().text);
}

/// "up to 500 mg": so is the field called. Nothing is offered: a ceiling may be meant, which is a tick of its
/// own.
std::optional<Refusal> refusedUpTo(Cursor cursor) {
  const std::size_t from = cursor.place();
  if (!cursor.takeWord("up") || !cursor.takeWord("to")) return std::nullopt;
  return refusalOf(RefusalCode::wordTooMany, cursor.typedFrom(from));
}

enum class End : std::uint8_t { low, high };

struct Range {
  std::optional<DoseAmount> low;
  DoseAmount high;
};

/// "10-15 mg/kg/dose": the unit of both stands last; or each end with its own.
Result<Range> readRange(Cursor& cursor, Findings& findings) {
  Result<TypedNumber> first = entry::readTypedNumber(cursor, findings);
  if (!first) return first.refusal();
  if (entry::takeRangeWord(cursor)) {
    Result<DoseAmount> high = entry::readDoseAt(cursor, findings);
    if (!high) return high.refusal();
    DoseAmount low = *high;
    low.amount.value = first->value;
    return Range{std::move(low), *std::move(high)};
  }
  Result<DoseAmount> only = entry::readDoseFrom(*std::move(first), cursor, findings);
  if (!only) return only.refusal();
  if (!entry::takeRangeWord(cursor)) return Range{std::nullopt, *std::move(only)};
  Result<DoseAmount> high = entry::readDoseAt(cursor, findings);
  if (!high) return high.refusal();
  return Range{*std::move(only), *std::move(high)};
}

std::optional<Refusal> refusedEnds(const Range& range, std::string_view text) {
  if (!range.low) return std::nullopt;
  const DoseAmount& low = *range.low;
  const DoseAmount& high = range.high;
  const auto lowInHigh = converted(low.amount.value, low.amount.unit, high.amount.unit);
  if (!lowInHigh || low.perSize != high.perSize || low.perTime != high.perTime)
    return refusalOf(RefusalCode::lowBasisDiffers, text);
  if (low.amount.value.isZero()) return refusalOf(RefusalCode::zero, text);
  return *lowInHigh < high.amount.value ? std::nullopt
                                        : std::optional(refusalOf(RefusalCode::lowAboveHigh, text));
}

/// "÷", "divided", or "in 3 divided doses", which begins with its number.
bool beginsDivision(const Cursor& cursor) {
  if (cursor.isWord("divided") || cursor.isWord("div") || cursor.isSign("÷")) return true;
  Cursor further = cursor;
  while (!further.atEnd())
    if (further.isWord("divided"))
      return true;
    else
      further.take();
  return false;
}

Result<Schedule> readDivision(Cursor& cursor, Findings& findings) {
  const std::string_view all = cursor.rest();
  if (const auto doses = entry::readDividedDoses(all, findings)) return *doses;
  if (cursor.isWord("div")) findings.object(RefusalCode::wordTooMany, cursor.peek()->text);
  if (cursor.isWord("divided") || cursor.isWord("div") || cursor.isSign("÷")) cursor.take();
  if (cursor.atEnd()) return refusalOf(RefusalCode::dividedUnclear, all);
  const Result<entry::SchedulePhrase> phrase = entry::readSchedulePhrase(cursor.rest(), findings);
  if (!phrase) {
    const bool lookAlike = phrase.refusal().code == RefusalCode::scheduleLookAlike;
    return lookAlike ? phrase.refusal() : refusalOf(RefusalCode::dividedUnclear, all);
  }
  if (phrase->asNeeded || !phrase->schedule.isRepeated()) return refusalOf(RefusalCode::dividedUnclear, all);
  return phrase->schedule;
}

void goToEnd(Cursor& cursor) { cursor.goTo(cursor.tokens().size()); }

/// What stands behind the dose: a division, or nothing. A schedule without it is one of the dose, or of the
/// day's amount.
using MaybeSchedule = std::optional<Schedule>;

Result<MaybeSchedule> readBehind(const DoseAmount& dose, Cursor& cursor, Findings& findings) {
  if (cursor.atEnd()) return MaybeSchedule();
  if (!beginsDivision(cursor)) {
    if (auto refusal = entry::namedRest(cursor)) return *std::move(refusal);
    return MaybeSchedule();
  }
  if (dose.perTime != PerTime::day) return refusalOf(RefusalCode::dividedUnclear, cursor.rest());
  const Result<Schedule> schedule = readDivision(cursor, findings);
  if (!schedule) return schedule.refusal();
  findings.also(path::referenceSchedule, schedule->text);
  goToEnd(cursor);
  return MaybeSchedule(*schedule);
}

std::string rangeText(const Range& range, PerTime time) {
  DoseAmount high = range.high;
  high.perTime = time;
  if (!range.low) return safeForm(high);
  DoseAmount low = *range.low;
  low.perTime = time;
  return safeForm(low).append(" to ").append(safeForm(high));
}

/// All that the entry says, in one line.
std::string wholeText(const Range& range, const std::optional<Schedule>& schedule) {
  std::string whole = rangeText(range, range.high.perTime);
  if (!schedule) return whole;
  return range.high.perTime == PerTime::day ? whole.append(" divided ").append(schedule->text)
                                            : std::string();
}

/// Without "per": asked about, with the whole entry as each answer. A file has nobody to ask.
Result<Done> askPer(const Range& range, std::string_view text, Findings& findings) {
  if (findings.inFile()) return refusalOf(RefusalCode::perMissing, text);
  findings.ask(refusalOf(RefusalCode::perMissing, text),
               {rangeText(range, PerTime::dose), rangeText(range, PerTime::day)});
  return Done{};
}

DoseMeaning readEnds(Cursor& cursor, Findings& findings, End end) {
  if (end == End::high)
    if (auto refusal = refusedUpTo(cursor)) return *std::move(refusal);
  Result<Range> range = readRange(cursor, findings);
  if (!range) return range.refusal();
  if (auto refusal = refusedEnds(*range, cursor.text())) return *std::move(refusal);
  const Result<MaybeSchedule> behind = readBehind(range->high, cursor, findings);
  if (!behind) return behind.refusal();
  if (range->high.perTime == PerTime::none) {
    if (auto refusal = entry::refusedRest(cursor, findings)) return *std::move(refusal);
    if (const auto asked = askPer(*range, cursor.text(), findings); !asked) return asked.refusal();
  }
  std::string whole = wholeText(*range, *behind);
  const bool isLow = end == End::low && range->low;
  if (range->low) findings.also(isLow ? path::high : path::low, safeForm(isLow ? range->high : *range->low));
  DoseAmount dose = isLow ? *range->low : range->high;
  std::string safe = safeForm(dose);
  return Meaning<DoseAmount>{std::move(dose), std::move(safe), std::move(whole)};
}

DoseMeaning readReference(Cursor& cursor, Findings& findings, End end) {
  return entry::namedUnlessRead(readEnds(cursor, findings, end), cursor);
}

}  // namespace

EntryResult<DoseAmount> readOrderedDose(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<DoseAmount>(text, setting, [&](Cursor& cursor, Findings& findings) -> DoseMeaning {
    Result<DoseAmount> dose = readOneDose(cursor, findings, Volumes::taken, RefusalCode::doseLeftOpen);
    if (!dose) return dose.refusal();
    if (dose->perTime == PerTime::week) return hintedRefusal(RefusalCode::unitUnfit, text, "each dose");
    if (dose->amount.unit == Unit::mL && dose->isRate()) return refusalOf(RefusalCode::rateHere, text);
    return meaningOf(*std::move(dose));
  });
}

EntryResult<DoseAmount> readReferenceLow(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<DoseAmount>(text, setting, [](Cursor& cursor, Findings& findings) {
    return readReference(cursor, findings, End::low);
  });
}

EntryResult<DoseAmount> readReferenceHigh(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<DoseAmount>(text, setting, [](Cursor& cursor, Findings& findings) {
    return readReference(cursor, findings, End::high);
  });
}

EntryResult<DoseAmount> readMaximum(std::string_view text, PerTime time, const EntrySetting& setting) {
  return entry::readWhole<DoseAmount>(text, setting, [&](Cursor& cursor, Findings& findings) -> DoseMeaning {
    takeMaximumWord(cursor, findings);
    Result<DoseAmount> dose = readOneDose(cursor, findings, Volumes::refused, RefusalCode::rangeHere);
    if (!dose) return dose.refusal();
    if (dose->perTime != PerTime::none && dose->perTime != time)
      return hintedRefusal(RefusalCode::unitUnfit, text, std::string("per ").append(idOf(unitOf(time))));
    std::string safe = safeForm(*dose);  // whether the time was said stays as it was
    return Meaning<DoseAmount>{{dose->amount, dose->perSize, time}, std::move(safe)};
  });
}

EntryResult<DoseAmount> readRate(std::string_view text, const EntrySetting& setting) {
  return entry::readWhole<DoseAmount>(text, setting, [&](Cursor& cursor, Findings& findings) -> DoseMeaning {
    Result<DoseAmount> dose = readOneDose(cursor, findings, Volumes::refused, RefusalCode::rangeHere);
    if (!dose) return dose.refusal();
    if (!dose->isRate() || dose->perSize == PerSize::m2)
      return hintedRefusal(RefusalCode::unitUnfit, text, "mg/min, mg/kg/min, mg/h or mg/kg/h");
    return meaningOf(*std::move(dose));
  });
}

}  // namespace wardchalk
