#include "core/entry/read_schedule.h"

#include "core/entry/detail/amount.h"
#include "core/entry/detail/schedule_phrase.h"
#include "core/entry/detail/schedule_words.h"
#include "core/entry/read_dose.h"
#include "core/entry/read_words.h"
#include "core/medicine/paths.h"

namespace wardchalk {

namespace {

using entry::Cursor;
using entry::Findings;
using entry::SchedulePhrase;

/// Refusals that say only that the words are no schedule: what they are is told where it is known.
bool isOnlyUnread(RefusalCode code) {
  return code == RefusalCode::scheduleUnknown || code == RefusalCode::numberMissing ||
         code == RefusalCode::notANumber;
}

/// "10-15 mg/kg/dose", which belongs into a reference; or "10-15 mg", which is asked about there.
bool isRangeOfDoses(std::string_view text) {
  const EntryResult<DoseAmount> read = readReferenceHigh(text);
  const auto* unread = std::get_if<UnreadEntry>(&read);
  return !unread || !unread->answers.empty();
}

bool isDose(std::string_view text) {
  Findings findings{EntrySetting{}};
  Cursor cursor(text);
  const auto amount = entry::readTypedAmount(cursor, findings, SpelledIn::elsewhere);
  return amount && cursor.atEnd() && measuresDrug(amount->parts.front().quantity.unit);
}

Refusal named(Refusal refusal, std::string_view text) {
  if (!isOnlyUnread(refusal.code)) return refusal;
  if (isDose(text) || isRangeOfDoses(text)) return refusalOf(RefusalCode::doseHere, text);
  if (saysRoute(text)) return refusalOf(RefusalCode::routeHere, text);
  return refusal;
}

enum class Whose : std::uint8_t { order, reference };

EntryResult<Schedule> readFor(Whose whose, std::string_view text, const EntrySetting& setting) {
  if (auto refusal = entry::refusedLength(text)) return UnreadEntry{*std::move(refusal), {}};
  const Cursor typed(text);
  if (auto refusal = entry::refusedText(typed)) return UnreadEntry{*std::move(refusal), {}};
  Findings findings(setting);
  if (whose == Whose::reference) {
    if (const auto divided = entry::readDividedDoses(text, findings)) {
      findings.object(RefusalCode::scheduleUnknown, text);
      return std::move(findings).finish<Schedule>(*divided, divided->text, divided->text);
    }
  }
  const Result<SchedulePhrase> phrase = entry::readSchedulePhrase(typed, findings);
  if (!phrase) return UnreadEntry{named(phrase.refusal(), text), {}};
  if (phrase->asNeeded && whose == Whose::reference)
    return UnreadEntry{refusalOf(RefusalCode::asNeededHere, text), {}};
  std::string whole = phrase->schedule.text;
  if (phrase->asNeeded) {
    findings.also(path::asNeeded, "true");
    whole.append(" as needed");
  }
  return std::move(findings).finish<Schedule>(phrase->schedule, phrase->schedule.text, std::move(whole));
}

}  // namespace

EntryResult<Schedule> readOrderSchedule(std::string_view text, const EntrySetting& setting) {
  return readFor(Whose::order, text, setting);
}

EntryResult<Schedule> readReferenceSchedule(std::string_view text, const EntrySetting& setting) {
  return readFor(Whose::reference, text, setting);
}

}  // namespace wardchalk
