#include "core/medicine/schedule.h"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

#include "core/number/ascii.h"
#include "core/number/decimal_text.h"
#include "core/number/entry_text.h"

namespace wardchalk {

namespace {

struct Shorthand {
  std::string_view typed;  // in lower case
  std::string_view means;
};

/// Abbreviations in common use that are on no list of error-prone ones. Source: nursing texts. BID, TID, QID
/// and q4h to q24h are not on the Joint Commission list (read); bd, tds and qds are common practice in the
/// UK, no source.
constexpr std::array shorthands = {
    Shorthand{"bid", "2 times a day"},
    Shorthand{"b.i.d.", "2 times a day"},
    Shorthand{"bd", "2 times a day"},
    Shorthand{"twice a day", "2 times a day"},
    Shorthand{"twice daily", "2 times a day"},
    Shorthand{"tid", "3 times a day"},
    Shorthand{"t.i.d.", "3 times a day"},
    Shorthand{"tds", "3 times a day"},
    Shorthand{"qid", "4 times a day"},
    Shorthand{"q.i.d.", "4 times a day"},
    Shorthand{"qds", "4 times a day"},
    Shorthand{"daily", "1 time a day"},
    Shorthand{"once daily", "1 time a day"},
    Shorthand{"once a day", "1 time a day"},
    Shorthand{"every day", "1 time a day"},
    Shorthand{"once weekly", "weekly"},
    Shorthand{"once a week", "weekly"},
    Shorthand{"every week", "weekly"},
    Shorthand{"every other day", "every 2 day"},
    Shorthand{"twice a week", "2 times a week"},
    Shorthand{"single dose", "once"},
    Shorthand{"once only", "once"},
};

/// Abbreviations that have been misread, with the words to write (T02). None are offered where a second
/// reading is another number of doses: HS and QN, a time of the day or half strength or nothing at all; TIW,
/// BIW, three or two in a week, or every so many weeks.
constexpr std::array unsafeShorthands = {
    Shorthand{"qd", "daily"},
    Shorthand{"q.d.", "daily"},
    Shorthand{"qod", "every 2 day"},
    Shorthand{"q.o.d.", "every 2 day"},
    Shorthand{"od", "daily"},
    Shorthand{"o.d.", "daily"},
    Shorthand{"q1d", "daily"},
    Shorthand{"qhs", ""},
    Shorthand{"hs", ""},
    Shorthand{"qn", ""},
    Shorthand{"tiw", ""},
    Shorthand{"biw", ""},
    Shorthand{"eod", "every 2 day"},
    Shorthand{"stat", "once"},
    Shorthand{"qw", "weekly"},
    Shorthand{"/d", "daily"},
    Shorthand{"q.n.", ""},
    Shorthand{"bt", ""},
    Shorthand{"qh", ""},
};

struct CountRange {
  Number low;
  Number high;
};

/// "6" or "4 to 6", the words at `from`; moves `from` past them. A backwards range is refused without its
/// text, which the caller knows.
Result<CountRange> readRange(const std::vector<std::string_view>& words, std::size_t& from) {
  Result<Number> low = readPositive(words[from]);
  if (!low) return low.refusal();
  ++from;
  if (from + 1 >= words.size() || words[from] != "to") return CountRange{*low, *low};
  Result<Number> high = readPositive(words[from + 1]);
  if (!high) return high.refusal();
  from += 2;
  if (*high <= *low) return refusalOf(RefusalCode::scheduleBackwards, {});
  return CountRange{*low, *high};
}

std::string rangeText(const CountRange& range) {
  std::string text = exactText(range.low);
  if (range.low != range.high) text.append(" to ").append(exactText(range.high));
  return text;
}

/// A dose more often than every quarter of an hour is taken for a slip of the keys.
Result<Schedule> checked(Schedule schedule, std::string_view typed) {
  if (schedule.most > Number(96)) return refusalOf(RefusalCode::scheduleTooOften, typed);
  return schedule;
}

/// "every 6 to 4 h" turned: "every 4 to 6 h", "every 4 h" when both ends are the same.
Refusal backwards(const std::vector<std::string_view>& words, std::size_t from, std::string_view typed) {
  std::string write;
  const bool same = words[from] == words[from + 2];
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (same && (i == from + 1 || i == from + 2)) continue;
    const bool swapped = i == from || i == from + 2;
    write.append(write.empty() ? "" : " ").append(swapped ? words[2 * from + 2 - i] : words[i]);
  }
  return refusalOf(RefusalCode::scheduleBackwards, typed, write);
}

struct Interval {
  Unit unit;
  int hours;
};

/// The unit of an interval as we write it and its hours; no value for others.
std::optional<Interval> intervalIn(std::string_view unit) {
  if (unit == "h") return Interval{Unit::h, 1};
  if (unit == "day" || unit == "days") return Interval{Unit::day, 24};
  if (unit == "week" || unit == "weeks") return Interval{Unit::week, 168};
  return std::nullopt;
}

/// "every 30 min" in hours, where that ends: "every 0.5 h".
Refusal inMinutes(const CountRange& range, std::string_view typed) {
  const CountRange hours{range.low / Number(60), range.high / Number(60)};
  if (Number(24) / hours.low > Number(96)) return refusalOf(RefusalCode::scheduleTooOften, typed);
  const bool ends = hours.low.endsWithin(4) && hours.high.endsWithin(4);
  return refusalOf(RefusalCode::scheduleUnknown, typed, ends ? "every " + rangeText(hours) + " h" : "");
}

/// "every 12 h", "every 4 to 6 h", "every 2 day", "every 1 week".
Result<Schedule> readEvery(const std::vector<std::string_view>& words, std::string_view typed) {
  std::size_t at = 1;
  if (words.size() < 3) return refusalOf(RefusalCode::scheduleUnknown, typed);
  Result<CountRange> range = readRange(words, at);
  if (!range && range.refusal().code == RefusalCode::scheduleBackwards) return backwards(words, 1, typed);
  if (!range) return range.refusal();
  if (at + 1 != words.size()) return refusalOf(RefusalCode::scheduleUnknown, typed);
  if (words[at] == "min") return inMinutes(*range, typed);
  const auto interval = intervalIn(words[at]);
  if (!interval) return refusalOf(RefusalCode::scheduleUnknown, typed);
  const Number hours(interval->hours);
  return checked(
      {Schedule::Kind::repeated, Number(24) / (range->high * hours), Number(24) / (range->low * hours),
       "every " + rangeText(*range) + " " + std::string(idOf(interval->unit)), true, interval->unit},
      typed);
}

/// "3 times a day", "2 to 3 times a day", "2 times a week".
Result<Schedule> readTimes(const std::vector<std::string_view>& words, std::string_view typed) {
  std::size_t at = 0;
  Result<CountRange> range = readRange(words, at);
  if (!range && range.refusal().code == RefusalCode::scheduleBackwards) return backwards(words, 0, typed);
  if (!range) return range.refusal();
  const bool shape =
      at + 3 == words.size() && (words[at] == "times" || words[at] == "time") && words[at + 1] == "a";
  if (!shape) return refusalOf(RefusalCode::scheduleUnknown, typed);
  const std::string_view unit = words[at + 2];
  if (unit != "day" && unit != "week") return refusalOf(RefusalCode::scheduleUnknown, typed);
  if (!range->low.isWhole() || !range->high.isWhole()) return refusalOf(RefusalCode::countNotWhole, typed);
  const Number days(unit == "week" ? 7 : 1);
  const bool one = range->high == Number(1);
  std::string shown = rangeText(*range) + (one ? " time a " : " times a ") + std::string(unit);
  if (one && unit == "day") shown = "daily";
  return checked({Schedule::Kind::repeated, range->low / days, range->high / days, std::move(shown), false,
                  unit == "week" ? Unit::week : Unit::day},
                 typed);
}

/// "q6h", "q4-6h", "q4–6h" as "every 6 h", "every 4 to 6 h".
std::optional<std::string> expandedQ(std::string_view text) {
  if (text.size() < 3 || text.front() != 'q' || text.back() != 'h') return std::nullopt;
  std::string hours(text.substr(1, text.size() - 2));
  for (const std::string_view dash : {"–", "-"}) {
    const std::size_t at = hours.find(dash);
    if (at == std::string::npos) continue;
    hours.replace(at, dash.size(), " to ");
    break;
  }
  if (!isDigit(hours.front())) return std::nullopt;
  return "every " + hours + " h";
}

std::string_view expanded(std::string_view low) {
  for (const Shorthand& shorthand : shorthands)
    if (shorthand.typed == low) return shorthand.means;
  return low;
}

/// Words people say, one by one, in ours.
constexpr std::array otherScheduleWords = {
    Shorthand{"one", "1"},       Shorthand{"two", "2"},     Shorthand{"three", "3"},
    Shorthand{"four", "4"},      Shorthand{"five", "5"},    Shorthand{"six", "6"},
    Shorthand{"eight", "8"},     Shorthand{"twelve", "12"}, Shorthand{"thrice", "3 times"},
    Shorthand{"x", "times"},     Shorthand{"per", "a"},     Shorthand{"each", "every"},
    Shorthand{"q", "every"},     Shorthand{"hour", "h"},    Shorthand{"hours", "h"},
    Shorthand{"hr", "h"},        Shorthand{"hrs", "h"},     Shorthand{"minute", "min"},
    Shorthand{"minutes", "min"}, Shorthand{"mins", "min"},  Shorthand{"hrly", "hourly"},
    Shorthand{"d", "day"},
};

/// Whole schedules people say that are none of ours, with what to write. A time of the day ("at night") is no
/// schedule of ours, and to write "daily" would lose it; "fortnightly" is not said on every ward.
constexpr std::array otherSchedules = {
    Shorthand{"hourly", "every 1 h"},
    Shorthand{"every h", "every 1 h"},
    Shorthand{"alternate days", "every 2 day"},
    Shorthand{"every second day", "every 2 day"},
    Shorthand{"every other week", "every 2 week"},
    Shorthand{"continuous infusion", "continuous"},
    Shorthand{"continuously", "continuous"},
    Shorthand{"one dose", "once"},
    Shorthand{"1 dose", "once"},
    Shorthand{"now", "once"},
    Shorthand{"q2d", "every 2 day"},
};

/// Digits and letters set apart, " to " for a dash between numbers: "4-6hourly" is "4 to 6 hourly". A dash
/// that could be a sign stays.
std::string setApart(std::string_view low) {
  const std::string dashed = withReplaced(withReplaced(low, "–", "-"), "/", " a ");
  const auto at = [&](std::size_t i) { return i < dashed.size() ? dashed[i] : ' '; };
  std::string apart;
  for (std::size_t i = 0; i < dashed.size(); ++i) {
    const char before = i > 0 ? dashed[i - 1] : ' ';
    const char c = dashed[i];
    const bool dash = c == '-' && isDigit(before) && (isDigit(at(i + 1)) || isLetter(at(i + 1)));
    if ((isDigit(before) && isLetter(c)) || (isLetter(before) && isDigit(c))) apart.push_back(' ');
    if (dash)
      apart.append(isDigit(at(i + 1)) ? " to " : " ");
    else
      apart.push_back(c);
  }
  return apart;
}

/// The schedule in our words as far as that goes: "4-6 hourly" is "every 4 to 6 h", "three times daily" 3
/// times a day.
std::string respelled(const std::string& low) {
  const std::string apart = setApart(low);
  std::string text;
  for (std::string_view word : wordsOf(apart)) {
    for (const Shorthand& other : otherScheduleWords)
      if (other.typed == word) word = other.means;
    text.append(text.empty() ? "" : " ").append(word);
  }
  const bool counted =
      text.find(" times ") == std::string::npos && isDigit(text.empty() ? ' ' : text.front());
  if (counted && (text.ends_with(" a day") || text.ends_with(" a week")))
    text = withReplaced(text, " a ", " times a ");  // "3/d"
  if (text.ends_with(" times daily")) text = withReplaced(text, " daily", " a day");
  if (text.ends_with(" times weekly")) text = withReplaced(text, " weekly", " a week");
  if (text.ends_with(" hourly")) text = withReplaced(text, " hourly", " h");
  if (text.ends_with(" h") && isDigit(text.front())) text.insert(0, "every ");
  return text;
}

/// A schedule exactly in our words or in a common abbreviation. `low` is in small letters, `typed` as it
/// stood.
Result<Schedule> readOurs(const std::string& low, std::string_view typed) {
  const std::string meaning = expandedQ(low).value_or(std::string(expanded(low)));
  if (meaning == "once") return Schedule{Schedule::Kind::once, Number(1), Number(1), "once"};
  if (meaning == "continuous")
    return Schedule{Schedule::Kind::continuous, Number(1), Number(1), "continuous"};
  if (meaning == "weekly")
    return Schedule{
        Schedule::Kind::repeated, Number::ratio(1, 7), Number::ratio(1, 7), "weekly", false, Unit::week};
  const std::vector<std::string_view> words = wordsOf(meaning);
  if (words.empty()) return refusalOf(RefusalCode::scheduleUnknown, typed);
  if (words.front() == "every") return readEvery(words, typed);
  if (isDigit(words.front().front())) return readTimes(words, typed);
  return refusalOf(RefusalCode::scheduleUnknown, typed);
}

/// Refusals that mean no more than that the words are not ours; others say what is wrong with a number.
bool isOnlyUnread(RefusalCode code) {
  return code == RefusalCode::scheduleUnknown || code == RefusalCode::notANumber ||
         code == RefusalCode::fraction;
}

/// The schedule to write for text that ours does not read; empty where none is plainly meant.
std::string offered(const std::string& low) {
  const std::string plain = respelled(low);
  for (const Shorthand& other : otherSchedules)
    if (other.typed == low || other.typed == plain) return std::string(other.means);
  const Result<Schedule> schedule = readOurs(plain, plain);
  if (schedule) return schedule->text;
  return schedule.refusal().code == RefusalCode::scheduleUnknown ? schedule.refusal().suggestion
                                                                 : std::string();
}

/// A refusal shows the part that was refused as it was typed, not in the lower case in which it was read.
Result<Schedule> asTyped(Result<Schedule> schedule, std::string_view low, std::string_view text) {
  if (schedule || text.find(schedule.refusal().typed) != std::string_view::npos) return schedule;
  Refusal refusal = schedule.refusal();
  const std::size_t at = low.find(refusal.typed);
  refusal.typed = at == std::string_view::npos ? text : text.substr(at, refusal.typed.size());
  return refusal;
}

}  // namespace

Result<Schedule> readSchedule(std::string_view text) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  if (text.size() > 60) return refusalOf(RefusalCode::tooLong, text);
  const std::string plain = withPlainSpaces(text);
  if (plain != text)
    return refusalOf(RefusalCode::spaceWrong, text, readSchedule(plain) ? plain : std::string());
  const std::string low = lowered(text);
  for (const Shorthand& shorthand : unsafeShorthands)
    if (shorthand.typed == low) return refusalOf(RefusalCode::scheduleUnsafe, text, shorthand.means);
  Result<Schedule> schedule = asTyped(readOurs(low, text), low, text);
  if (schedule || !schedule.refusal().suggestion.empty()) return schedule;
  if (!isOnlyUnread(schedule.refusal().code)) return schedule;
  const std::string write = offered(low);
  return write.empty() ? schedule : refusalOf(RefusalCode::scheduleUnknown, text, write);
}

}  // namespace wardchalk
