#include "core/entry/detail/schedule_words.h"

#include "core/entry/detail/amount.h"
#include "core/entry/detail/number_words.h"

namespace wardchalk::entry {

namespace {

struct CountRange {
  Number low;
  Number high;
  bool hasTwo = false;  ///< two ends were written

  [[nodiscard]] bool isBackwards() const { return hasTwo && high <= low; }
};

/// "6", "six": number words stand in schedules.
Result<Number> readCount(Cursor& cursor, Findings& findings) {
  const std::string_view typed = cursor.text();
  std::optional<Number> count = takeNumberWords(cursor);
  if (!count) {
    Result<TypedNumber> number = readTypedNumber(cursor, findings);
    if (!number) return number.refusal();
    count = number->value;
  }
  if (count->isZero()) return refusalOf(RefusalCode::zero, typed);
  return *count;
}

/// "6", "4 to 6", "4-6", and "6 to 4" as well: what stands behind it says whether it is a schedule at all.
Result<CountRange> readEnds(Cursor& cursor, Findings& findings) {
  Result<Number> low = readCount(cursor, findings);
  if (!low) return low.refusal();
  Cursor further = cursor;
  const bool hasEnd = takeRangeWord(further) && (further.isNumber() || takeNumberWords(further));
  if (!hasEnd) return CountRange{*low, *low};
  takeRangeWord(cursor);
  Result<Number> high = readCount(cursor, findings);
  if (!high) return high.refusal();
  return CountRange{*low, *high, true};
}

Refusal backwards(const Cursor& cursor) { return refusalOf(RefusalCode::scheduleBackwards, cursor.text()); }

/// The same of a schedule.
Result<CountRange> readRange(Cursor& cursor, Findings& findings) {
  Result<CountRange> range = readEnds(cursor, findings);
  if (range && range->isBackwards()) return backwards(cursor);
  return range;
}

Refusal unknown(const Cursor& cursor) { return refusalOf(RefusalCode::scheduleUnknown, cursor.text()); }

/// A dose more often than every quarter of an hour is taken for a slip of the keys.
Result<Schedule> checked(Schedule schedule, std::string_view typed) {
  if (schedule.isRepeated() && schedule.most > Number(96))
    return refusalOf(RefusalCode::scheduleTooOften, typed);
  return schedule;
}

std::optional<Unit> takeTimeUnit(Cursor& cursor) {
  if (!cursor.isWord()) return std::nullopt;
  const auto spelled = spelledUnit(cursor.peek()->text, SpelledIn::elsewhere);
  if (!spelled || spelled->how != SpellingUse::read) return std::nullopt;
  const bool fits = spelled->unit == Unit::h || spelled->unit == Unit::day || spelled->unit == Unit::week ||
                    spelled->unit == Unit::min;
  if (!fits) return std::nullopt;
  cursor.take();
  return spelled->unit;
}

/// Half an hour is "every 0.5 h" in our words; two weeks are 14 days beside a person.
Result<Schedule> interval(CountRange range, Unit unit, std::string_view text, Findings& findings) {
  if (unit == Unit::min) {
    findings.object(RefusalCode::scheduleUnknown, text);
    range = {range.low / Number(60), range.high / Number(60)};
    if (range.low * Number(4) < Number(1)) return refusalOf(RefusalCode::scheduleTooOften, text);
    if (!range.low.endsWithin(4) || !range.high.endsWithin(4))
      return refusalOf(RefusalCode::scheduleUnknown, text);
    unit = Unit::h;
  }
  if (unit == Unit::week && !findings.inFile()) {
    findings.object(RefusalCode::scheduleUnknown, text);
    range = {range.low * Number(7), range.high * Number(7)};
    unit = Unit::day;
  }
  return checked(everyInterval(range.low, range.high, unit), text);
}

/// What follows "every" or "q".
Result<Schedule> readEvery(Cursor& cursor, Findings& findings) {
  if (cursor.atEnd()) return unknown(cursor);
  Result<CountRange> range = readRange(cursor, findings);
  if (!range) return range.refusal();
  const auto unit = takeTimeUnit(cursor);
  if (!unit || !cursor.atEnd()) return unknown(cursor);
  return interval(*range, *unit, cursor.text(), findings);
}

bool takeTimesWord(Cursor& cursor) {
  return cursor.takeWord("times") || cursor.takeWord("time") || cursor.takeWord("x") || cursor.takeSign("×");
}

/// "a day", "/day", "in 24 h", "daily", "per week"; nothing where no time is said.
std::optional<Unit> takePeriod(Cursor& cursor) {
  if (cursor.takeWord("daily")) return Unit::day;
  if (cursor.takeWord("weekly")) return Unit::week;
  const bool in = cursor.takeWord("in");
  const bool stroke = cursor.takeWord("a") || cursor.takeWord("per") || cursor.takeSign("/");
  if (!in && !stroke) return std::nullopt;
  const bool hours = cursor.isNumber() && cursor.peek()->text == "24" && !(in && stroke);
  if (in && !stroke && !hours) return std::nullopt;
  if (hours) cursor.take();
  const auto unit = takeTimeUnit(cursor);
  if (!unit) return std::nullopt;
  if (hours) return *unit == Unit::h ? std::optional(Unit::day) : std::nullopt;
  return *unit == Unit::day || *unit == Unit::week ? unit : std::nullopt;
}

Result<Schedule> times(const CountRange& range, Cursor& cursor) {
  const auto period = takePeriod(cursor);
  if (!period || !cursor.atEnd()) return unknown(cursor);
  if (!range.low.isWhole() || !range.high.isWhole())
    return refusalOf(RefusalCode::countNotWhole, cursor.text());
  return checked(timesIn(range.low, range.high, *period), cursor.text());
}

/// "6 hourly", "4-6 hourly", "6-hourly".
bool takeHourly(Cursor& cursor) {
  Cursor further = cursor;
  further.takeSign("-");
  if (!further.takeWord("hourly") && !further.takeWord("hrly")) return false;
  cursor = further;
  return true;
}

/// "6 to 4" and "6 to 4 h" were meant as a schedule; "15-10 mg/kg" was not.
Refusal uncounted(const CountRange& range, Cursor cursor) {
  const bool ends = cursor.atEnd() || (takeTimeUnit(cursor) && cursor.atEnd());
  return range.isBackwards() && ends ? backwards(cursor) : unknown(cursor);
}

Result<Schedule> readCounted(Cursor& cursor, Findings& findings) {
  Result<CountRange> range = readEnds(cursor, findings);
  if (!range) return range.refusal();
  const bool hourly = takeHourly(cursor);
  if (!hourly && !takeTimesWord(cursor)) return uncounted(*range, cursor);
  if (range->isBackwards()) return backwards(cursor);
  if (!hourly) return times(*range, cursor);
  if (!cursor.atEnd()) return unknown(cursor);
  return interval(*range, Unit::h, cursor.text(), findings);
}

}  // namespace

Result<Schedule> readScheduleWords(Cursor& cursor, Findings& findings) {
  if (cursor.takeWord("every")) return readEvery(cursor, findings);
  if (cursor.isWord("each")) {
    findings.object(RefusalCode::scheduleUnknown, cursor.text());
    cursor.take();
    return readEvery(cursor, findings);
  }
  if (cursor.isWord("q") && cursor.peek(1)) {
    cursor.take();
    return readEvery(cursor, findings);
  }
  if (cursor.takeWord("twice")) return times({Number(2), Number(2)}, cursor);
  if (cursor.isWord("thrice")) {
    findings.object(RefusalCode::scheduleUnknown, cursor.take().text);
    return times({Number(3), Number(3)}, cursor);
  }
  Cursor words = cursor;
  if (cursor.isNumber() || takeNumberWords(words)) return readCounted(cursor, findings);
  if (cursor.peek() && cursor.peek()->kind == TokenKind::sign) {
    Result<TypedNumber> number =
        readTypedNumber(cursor, findings);  // says what is wrong with a sign or a fraction
    if (!number && number.refusal().code != RefusalCode::numberMissing) return number.refusal();
  }
  return unknown(cursor);
}

std::optional<Schedule> readDividedDoses(std::string_view text, Findings& findings) {
  Cursor cursor(text);
  if (!cursor.takeWord("in")) return std::nullopt;
  const Result<CountRange> range = readRange(cursor, findings);
  if (!range || !cursor.takeWord("divided") || !cursor.takeWord("doses") || !cursor.atEnd())
    return std::nullopt;
  if (!range->low.isWhole() || !range->high.isWhole() || range->high > Number(96)) return std::nullopt;
  return timesIn(range->low, range->high, Unit::day);
}

}  // namespace wardchalk::entry
