#include "core/entry/detail/schedule_phrase.h"

#include <algorithm>
#include <array>

#include "core/entry/detail/schedule_words.h"
#include "core/number/ascii.h"

namespace wardchalk::entry {

namespace {

enum class HowSaid : std::uint8_t { read, before, other, lookAlike, never };

struct KnownSchedule {
  std::string_view typed;
  HowSaid how;
  std::string_view means;
};
constexpr std::array knownSchedules = {
#define WARDCHALK_SCHEDULE(typed, how, means) KnownSchedule{typed, HowSaid::how, means},
#include "core/entry/schedule_spellings.def"
#undef WARDCHALK_SCHEDULE
};

const KnownSchedule* known(std::string_view plain) {
  const auto found = std::find_if(knownSchedules.begin(), knownSchedules.end(),
                                  [&](const KnownSchedule& one) { return one.typed == plain; });
  return found == knownSchedules.end() ? nullptr : found;
}

/// A meaning of the table, which is in our words.
Schedule meant(std::string_view means) {
  if (means == "once") return givenOnce();
  if (means == "continuous") return givenContinuously();
  if (means == "weekly") return givenWeekly();
  EntrySetting file;
  file.from = EntryFrom::file;
  Findings none(file);
  Cursor cursor(means);
  return *readScheduleWords(cursor, none);
}

Result<Schedule> readKnown(const KnownSchedule& schedule, std::string_view text, Findings& findings) {
  if (schedule.how == HowSaid::lookAlike) return refusalOf(RefusalCode::scheduleLookAlike, text);
  if (schedule.how == HowSaid::never) return refusalOf(RefusalCode::scheduleUnsafe, text);
  if (schedule.how == HowSaid::other) findings.object(RefusalCode::scheduleUnknown, text);
  if (schedule.how == HowSaid::before) findings.objectAtBedside(RefusalCode::scheduleUnknown, text);
  return meant(schedule.means);
}

bool endsInLow(std::string_view text, std::string_view low) {
  return text.size() >= low.size() && isInSmallLetters(text.substr(text.size() - low.size()), low);
}

/// Words for "as needed": those that are read, and others of the same meaning.
constexpr std::array<std::string_view, 2> asNeededWords = {"prn", "as needed"};
constexpr std::array<std::string_view, 4> otherAsNeededWords = {"p.r.n.", "when required", "if needed",
                                                                "if required"};

/// The text before one of the words.
template <std::size_t size>
std::optional<std::string> without(const std::string& plain,
                                   const std::array<std::string_view, size>& words) {
  for (const std::string_view word : words) {
    if (!endsInLow(plain, word)) continue;
    std::string before = plain.substr(0, plain.size() - word.size());
    if (before.ends_with(' ')) before.pop_back();
    return before;
  }
  return std::nullopt;
}

/// The phrase without "as needed" behind it (or, as nobody writes it here, before it).
struct Stripped {
  std::string phrase;
  bool asNeeded = false;
};

Stripped stripped(const std::string& plain, std::string_view text, Findings& findings) {
  if (auto rest = without(plain, asNeededWords)) return {*rest, true};
  if (auto rest = without(plain, otherAsNeededWords)) {
    findings.object(RefusalCode::scheduleUnknown, text);
    return {*rest, true};
  }
  for (const std::string_view word : asNeededWords) {
    if (!plain.starts_with(std::string(word) + ' ')) continue;
    findings.object(RefusalCode::scheduleUnknown, text);
    return {plain.substr(word.size() + 1), true};
  }
  return {plain, false};
}

}  // namespace

Result<SchedulePhrase> readSchedulePhrase(std::string_view text, Findings& findings) {
  return readSchedulePhrase(Cursor(text), findings);
}

Result<SchedulePhrase> readSchedulePhrase(const Cursor& whole, Findings& findings) {
  const std::string_view text = whole.text();
  const Stripped said = stripped(plainText(whole), text, findings);
  Cursor cursor(said.phrase);
  if (cursor.atEnd()) return refusalOf(RefusalCode::asNeededAlone, text);
  const KnownSchedule* schedule = known(said.phrase);
  Result<Schedule> read =
      schedule ? readKnown(*schedule, text, findings) : readScheduleWords(cursor, findings);
  // the phrase was read in small letters; a refusal tells what was typed
  findings.quote(text);
  if (read) return SchedulePhrase{*std::move(read), said.asNeeded};
  Refusal refusal = read.refusal();
  if (text.find(refusal.typed) == std::string_view::npos) refusal.typed = shortened(text);
  return refusal;
}

bool isSchedule(const Cursor& whole) {
  Findings findings{EntrySetting{}};
  return readSchedulePhrase(whole, findings) && findings.isClear();
}

bool saysHowOften(std::string_view text) {
  Findings findings{EntrySetting{}};
  const Result<SchedulePhrase> phrase = readSchedulePhrase(text, findings);
  if (phrase) return true;
  const RefusalCode code = phrase.refusal().code;
  return code == RefusalCode::scheduleLookAlike || code == RefusalCode::scheduleUnsafe ||
         code == RefusalCode::asNeededAlone || code == RefusalCode::scheduleBackwards;
}

}  // namespace wardchalk::entry
