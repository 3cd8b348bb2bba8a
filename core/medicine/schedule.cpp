#include "core/medicine/schedule.h"

#include <array>
#include <optional>
#include <vector>

#include "core/number/decimal_text.h"

namespace wardchalk {

namespace {

struct Shorthand {
  std::string_view typed;  // in lower case
  std::string_view means;
};

/// Abbreviations in common use that are not on the lists of error-prone ones. Source: nursing texts; BID, TID, QID and
/// q4h to q24h do not stand on the Joint Commission list (read), bd, tds, qds common practice in the UK, no source.
constexpr std::array shorthands = {
    Shorthand{"bid", "2 times a day"},          Shorthand{"b.i.d.", "2 times a day"},
    Shorthand{"bd", "2 times a day"},           Shorthand{"twice a day", "2 times a day"},
    Shorthand{"twice daily", "2 times a day"},  Shorthand{"tid", "3 times a day"},
    Shorthand{"t.i.d.", "3 times a day"},       Shorthand{"tds", "3 times a day"},
    Shorthand{"qid", "4 times a day"},          Shorthand{"q.i.d.", "4 times a day"},
    Shorthand{"qds", "4 times a day"},          Shorthand{"daily", "1 time a day"},
    Shorthand{"once daily", "1 time a day"},    Shorthand{"once a day", "1 time a day"},
    Shorthand{"every day", "1 time a day"},     Shorthand{"once weekly", "weekly"},
    Shorthand{"once a week", "weekly"},         Shorthand{"every week", "weekly"},
    Shorthand{"every other day", "every 2 day"}, Shorthand{"twice a week", "2 times a week"},
    Shorthand{"single dose", "once"},           Shorthand{"once only", "once"},
};

/// Abbreviations that have been misread, with the words to write (T02).
constexpr std::array unsafeShorthands = {
    Shorthand{"qd", "daily"},       Shorthand{"q.d.", "daily"},           Shorthand{"qod", "every 2 day"},
    Shorthand{"q.o.d.", "every 2 day"}, Shorthand{"od", "daily"},         Shorthand{"o.d.", "daily"},
    Shorthand{"q1d", "daily"},      Shorthand{"qhs", "daily"},            Shorthand{"hs", "daily"},
    Shorthand{"qn", "daily"},       Shorthand{"tiw", "3 times a week"},   Shorthand{"biw", "2 times a week"},
    Shorthand{"eod", "every 2 day"}, Shorthand{"stat", "once"},           Shorthand{"qw", "weekly"},
    Shorthand{"/d", "daily"},
};

Refusal refuse(RefusalCode code, std::string_view typed, std::string_view suggestion = {}) {
  return {code, std::string(typed.substr(0, 60)), std::string(suggestion), {}};
}

std::string lowered(std::string_view text) {
  std::string low(text);
  for (char& c : low)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return low;
}

std::vector<std::string_view> wordsOf(std::string_view text) {
  std::vector<std::string_view> words;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    if (end > 0) words.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return words;
}

struct Range {
  Number low;
  Number high;
};

/// "6" or "4 to 6", the words at `from`; moves `from` past them.
Result<Range> readRange(const std::vector<std::string_view>& words, std::size_t& from) {
  Result<Number> low = readPositive(words[from]);
  if (!low) return low.refusal();
  ++from;
  if (from + 1 >= words.size() || words[from] != "to") return Range{*low, *low};
  Result<Number> high = readPositive(words[from + 1]);
  if (!high) return high.refusal();
  from += 2;
  if (*high <= *low) return refuse(RefusalCode::scheduleBackwards, words[from - 1]);
  return Range{*low, *high};
}

std::string rangeText(const Range& range) {
  std::string text = exactText(range.low);
  if (range.low != range.high) text.append(" to ").append(exactText(range.high));
  return text;
}

/// More than one dose every quarter of an hour is no schedule but a slip.
Result<Schedule> checked(Schedule schedule, std::string_view typed) {
  if (schedule.most > Number(96)) return refuse(RefusalCode::scheduleTooOften, typed);
  return schedule;
}

/// "every 12 h", "every 4 to 6 h", "every 2 day", "every 1 week".
Result<Schedule> readEvery(const std::vector<std::string_view>& words, std::string_view typed) {
  std::size_t at = 1;
  if (words.size() < 3) return refuse(RefusalCode::scheduleUnknown, typed);
  Result<Range> range = readRange(words, at);
  if (!range) return range.refusal();
  if (at + 1 != words.size()) return refuse(RefusalCode::scheduleUnknown, typed);
  const std::string_view unit = words[at];
  Number hours;
  if (unit == "h") hours = Number(1);
  else if (unit == "day" || unit == "days") hours = Number(24);
  else if (unit == "week" || unit == "weeks") hours = Number(168);
  else if (unit == "hour" || unit == "hours" || unit == "hr" || unit == "hrs" || unit == "hourly")
    return refuse(RefusalCode::scheduleUnknown, typed, "every " + rangeText(*range) + " h");
  else return refuse(RefusalCode::scheduleUnknown, typed);
  const std::string_view shownUnit = unit.starts_with("day") ? "day" : unit.starts_with("week") ? "week" : "h";
  return checked({Schedule::Kind::repeated, Number(24) / (range->high * hours), Number(24) / (range->low * hours),
                  "every " + rangeText(*range) + " " + std::string(shownUnit)}, typed);
}

/// "3 times a day", "2 to 3 times a day", "2 times a week".
Result<Schedule> readTimes(const std::vector<std::string_view>& words, std::string_view typed) {
  std::size_t at = 0;
  Result<Range> range = readRange(words, at);
  if (!range) return range.refusal();
  const bool shape = at + 3 == words.size() && (words[at] == "times" || words[at] == "time") && words[at + 1] == "a";
  if (!shape) return refuse(RefusalCode::scheduleUnknown, typed);
  const std::string_view unit = words[at + 2];
  if (unit != "day" && unit != "week") return refuse(RefusalCode::scheduleUnknown, typed);
  const Number days(unit == "week" ? 7 : 1);
  const bool one = range->high == Number(1);
  return checked({Schedule::Kind::repeated, range->low / days, range->high / days,
                  rangeText(*range) + (one ? " time a " : " times a ") + std::string(unit)}, typed);
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
  if (hours.front() < '0' || hours.front() > '9') return std::nullopt;
  return "every " + hours + " h";
}

std::string_view expanded(std::string_view low) {
  for (const Shorthand& shorthand : shorthands)
    if (shorthand.typed == low) return shorthand.means;
  return low;
}

}  // namespace

Result<Schedule> readSchedule(std::string_view text) {
  if (text.empty()) return refuse(RefusalCode::empty, text);
  if (text.size() > 60) return refuse(RefusalCode::tooLong, text);
  const std::string low = lowered(text);
  for (const Shorthand& shorthand : unsafeShorthands)
    if (shorthand.typed == low) return refuse(RefusalCode::scheduleUnsafe, text, shorthand.means);
  const std::string meaning = expandedQ(low).value_or(std::string(expanded(low)));
  if (meaning == "once") return Schedule{Schedule::Kind::once, Number(1), Number(1), "once"};
  if (meaning == "continuous") return Schedule{Schedule::Kind::continuous, Number(1), Number(1), "continuous"};
  if (meaning == "weekly") return Schedule{Schedule::Kind::repeated, Number::ratio(1, 7), Number::ratio(1, 7), "weekly"};
  const std::vector<std::string_view> words = wordsOf(meaning);
  if (words.empty()) return refuse(RefusalCode::scheduleUnknown, text);
  if (words.front() == "every") return readEvery(words, text);
  if (words.front().front() >= '0' && words.front().front() <= '9') return readTimes(words, text);
  return refuse(RefusalCode::scheduleUnknown, text);
}

}  // namespace wardchalk
