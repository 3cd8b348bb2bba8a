#include "core/entry/read_words.h"

#include <algorithm>
#include <array>

#include "core/entry/detail/amount.h"
#include "core/entry/detail/schedule_phrase.h"
#include "core/entry/read_dose.h"
#include "core/entry/read_schedule.h"
#include "core/entry/read_strength.h"
#include "core/entry/unit_spelling.h"
#include "core/number/ascii.h"

namespace wardchalk {

namespace {

using entry::Cursor;
using entry::Findings;
using entry::Token;
using entry::TokenKind;

struct OtherWord {
  WordList list;
  std::string_view typed;
  SpellingUse how;
  std::string_view word;
};
constexpr std::array otherWords = {
#define WARDCHALK_WORD(list, typed, how, word) OtherWord{WordList::list, typed, SpellingUse::how, word},
#include "core/entry/word_spellings.def"
#undef WARDCHALK_WORD
};

const OtherWord* otherWord(WordList list, std::string_view plain) {
  const auto found = std::find_if(otherWords.begin(), otherWords.end(), [&](const OtherWord& one) {
    return one.list == list && one.typed == plain;
  });
  return found == otherWords.end() ? nullptr : found;
}

/// In the words of people: what files call solid is a tablet or a capsule. It is read as that.
std::string_view inWords(std::string_view word) { return word == "solid" ? "tablet" : word; }

std::string listed(std::span<const std::string_view> words) {
  std::string list;
  for (const std::string_view word : words) list.append(list.empty() ? "" : ", ").append(inWords(word));
  return list;
}

bool startsWithDose(std::string_view text) {
  Findings findings{EntrySetting{}};
  Cursor cursor(text);
  const auto amount = entry::readTypedAmount(cursor, findings, SpelledIn::elsewhere);
  return amount && measuresDrug(amount->parts.front().quantity.unit);
}

/// A number, and a unit by one word: without them nothing below is read, and most names have neither.
bool speaksOfQuantity(const Cursor& whole) {
  const auto isUnit = [](const Token& token) {
    return token.kind == TokenKind::word && spelledUnit(token.text, SpelledIn::elsewhere);
  };
  return std::ranges::any_of(whole.tokens(), isUnit) &&
         std::ranges::any_of(whole.tokens(),
                             [](const Token& token) { return token.kind == TokenKind::number; });
}

/// What a text that is no route says besides, so that it can be named.
std::optional<RefusalCode> namedInRoute(std::string_view text) {
  if (entry::saysHowOften(text)) return RefusalCode::scheduleHere;
  const Cursor cursor(text);
  for (const Token& token : cursor.tokens())
    if (token.at > 0 && token.spaced && entry::saysHowOften(text.substr(token.at)))
      return RefusalCode::scheduleHere;
  if (startsWithDose(text)) return RefusalCode::doseHere;
  return std::nullopt;
}

}  // namespace

EntryResult<std::size_t> readWord(std::string_view text, WordList list,
                                  std::span<const std::string_view> words, const EntrySetting& setting) {
  if (auto refusal = entry::refusedLength(text)) return UnreadEntry{*std::move(refusal), {}};
  const Cursor whole(text);
  if (auto refusal = entry::refusedText(whole)) return UnreadEntry{*std::move(refusal), {}};
  Findings findings(setting);
  const std::string plain = entry::plainText(whole);
  std::string_view meant = plain;
  if (const OtherWord* other = otherWord(list, plain)) {
    meant = other->word;
    if (other->how != SpellingUse::read) findings.object(RefusalCode::wordUnknown, text);
  }
  const auto found = std::find(words.begin(), words.end(), meant);
  if (found != words.end())
    return std::move(findings).finish<std::size_t>(static_cast<std::size_t>(found - words.begin()),
                                                   std::string(meant), std::string(inWords(meant)));
  if (list == WordList::route)
    if (const auto code = namedInRoute(text)) return UnreadEntry{refusalOf(*code, text), {}};
  return UnreadEntry{hintedRefusal(RefusalCode::wordUnknown, text, listed(words)), {}};
}

EntryResult<Route> readRoute(std::string_view text, const EntrySetting& setting) {
  EntryResult<std::size_t> read = readWord(text, WordList::route, routeIds, setting);
  if (auto* unread = std::get_if<UnreadEntry>(&read)) return std::move(*unread);
  auto& word = std::get<ReadEntryAs<std::size_t>>(read);
  return ReadEntryAs<Route>{static_cast<Route>(word.value), std::move(word.safe), {}, {}};
}

std::optional<RefusalCode> namedInText(std::string_view text) {
  const auto isRead = [](const auto& result) { return !std::holds_alternative<UnreadEntry>(result); };
  if (entry::refusedLength(text)) return std::nullopt;
  const Cursor whole(text);
  if (entry::refusedText(whole)) return std::nullopt;
  if (entry::isSchedule(whole)) return RefusalCode::scheduleHere;
  if (!speaksOfQuantity(whole)) return std::nullopt;
  if (isRead(readOrderedDose(text)) || isRead(readReferenceHigh(text)) ||
      isRead(readMaximum(text, PerTime::day)))
    return RefusalCode::doseHere;
  if (isRead(readStrength(text))) return RefusalCode::strengthHere;
  return std::nullopt;
}

bool saysRoute(std::string_view text) {
  const std::string plain = entry::plainText(Cursor(text));
  return otherWord(WordList::route, plain) ||
         std::find(routeIds.begin(), routeIds.end(), plain) != routeIds.end();
}

}  // namespace wardchalk
