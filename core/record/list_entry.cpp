#include "core/record/list_entry.h"

#include <algorithm>
#include <array>

#include "core/medicine/paths.h"

namespace wardchalk {

namespace {

constexpr std::string_view referenceRoom = "reference.";

/// Like the free text of a case, words may hold nothing unseen. `most` is chosen so that all of them together
/// fit the source of a case.
Result<Done> putWords(std::string& into, std::string_view text, std::size_t most) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  if (text.size() > most) return refusalOf(RefusalCode::tooLong, text);
  Case trial;
  if (auto set = setEntry(trial, path::title, text); !set) return set;
  into = text;
  return Done{};
}

template <typename T>
Result<Done> putDate(T& into, std::string_view text) {
  const Result<Date> date = readDate(text);
  if (!date) return date.refusal();
  into = *date;
  return Done{};
}

constexpr std::string_view required = "required";

Result<Done> putRequired(bool& into, std::string_view text) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  if (text != required) return hintedRefusal(RefusalCode::wordUnknown, text, std::string(required));
  into = true;
  return Done{};
}

std::string textOf(const std::optional<Date>& date) { return date ? textOf(*date) : std::string(); }

/// What an entry says in words and dates.
struct WordKey {
  std::string_view key;
  bool needed;
  Result<Done> (*set)(ListEntry&, std::string_view);
  std::string (*text)(const ListEntry&);
};

// clang-format off
constexpr std::array wordKeyTable = {
    WordKey{"medicine", true, [](ListEntry& e, std::string_view t) { return putWords(e.medicine, t, 100); }, [](const ListEntry& e) { return e.medicine; }},
    WordKey{"indication", false, [](ListEntry& e, std::string_view t) { return putWords(e.indication, t, 100); }, [](const ListEntry& e) { return e.indication; }},
    WordKey{"source.title", true, [](ListEntry& e, std::string_view t) { return putWords(e.source.title, t, 120); }, [](const ListEntry& e) { return e.source.title; }},
    WordKey{"source.edition", false, [](ListEntry& e, std::string_view t) { return putWords(e.source.edition, t, 40); }, [](const ListEntry& e) { return e.source.edition; }},
    WordKey{"source.date", false, [](ListEntry& e, std::string_view t) { return putDate(e.source.date, t); }, [](const ListEntry& e) { return textOf(e.source.date); }},
    WordKey{"source.page", false, [](ListEntry& e, std::string_view t) { return putWords(e.source.page, t, 30); }, [](const ListEntry& e) { return e.source.page; }},
    WordKey{"checked_by", true, [](ListEntry& e, std::string_view t) { return putWords(e.checkedBy, t, 60); }, [](const ListEntry& e) { return e.checkedBy; }},
    WordKey{"checked_on", true, [](ListEntry& e, std::string_view t) { return putDate(e.checkedOn, t); }, [](const ListEntry& e) { return textOf(e.checkedOn); }},
    WordKey{"review_by", true, [](ListEntry& e, std::string_view t) { return putDate(e.reviewBy, t); }, [](const ListEntry& e) { return textOf(e.reviewBy); }},
    WordKey{"second_check", false, [](ListEntry& e, std::string_view t) { return putRequired(e.secondCheckRequired, t); }, [](const ListEntry& e) { return std::string(e.secondCheckRequired ? required : std::string_view()); }},
};
// clang-format on

const WordKey* findWordKey(std::string_view key) {
  const auto* found = std::find_if(wordKeyTable.begin(), wordKeyTable.end(),
                                   [&](const WordKey& one) { return one.key == key; });
  return found == wordKeyTable.end() ? nullptr : found;
}

/// The entry of a case that a figure of the list is. The source is told in parts, and a second check in a
/// word.
const CaseEntry* findFigure(std::string_view key) {
  const std::string path = std::string(referenceRoom).append(key);
  return path == path::source || path == path::secondCheckRequired ? nullptr : findEntry(path);
}

Refusal missing(std::string_view key) {
  return {RefusalCode::keyMissing, std::string(key), {}, std::string(key)};
}

}  // namespace

std::string_view listKeyOf(std::string_view path) {
  return path.starts_with(referenceRoom) && path != path::source ? path.substr(referenceRoom.size())
                                                                 : std::string_view();
}

std::string wordOf(const ListEntry& entry, std::string_view key) {
  const WordKey* known = findWordKey(key);
  return known ? known->text(entry) : std::string();
}

std::optional<EntryKind> ListEntryBuilder::kindOf(std::string_view key) {
  if (findWordKey(key)) return EntryKind::text;
  const CaseEntry* figure = findFigure(key);
  return figure ? std::optional(figure->kind) : std::nullopt;
}

std::vector<std::string_view> ListEntryBuilder::wordKeys() {
  std::vector<std::string_view> keys;
  for (const WordKey& one : wordKeyTable) keys.push_back(one.key);
  return keys;
}

Result<Done> ListEntryBuilder::set(std::string_view key, std::string_view text) {
  Result<Done> set = Done{};
  if (const WordKey* word = findWordKey(key)) {
    set = word->set(entry_, text);
    seen_.push_back(word->key);
  } else if (const CaseEntry* figure = findFigure(key)) {
    set = addFigure(figure->path, text);
  } else {
    set = refusalOf(RefusalCode::keyUnknown, key);
  }
  if (set) return set;
  Refusal refusal = set.refusal();
  refusal.path = key;
  return refusal;
}

Result<Done> ListEntryBuilder::addFigure(std::string_view path, std::string_view text) {
  const Result<std::vector<WrittenEntry>> entries = fillFrom(trial_, path, text, entry_.figures);
  if (!entries) return entries.refusal();
  for (const WrittenEntry& one : *entries) entry_.figures.push_back(one);
  return Done{};
}

Result<ListEntry> ListEntryBuilder::finish() {
  for (const WordKey& word : wordKeyTable)
    if (word.needed && std::find(seen_.begin(), seen_.end(), word.key) == seen_.end())
      return missing(word.key);
  if (!trial_.reference.route) return missing("route");
  if (!trial_.reference.high) return missing("high");
  if (entry_.source.edition.empty() && !entry_.source.date) return missing("source.date");
  if (entry_.reviewBy < entry_.checkedOn)
    return Refusal{RefusalCode::datesBackwards, wordOf(entry_, "review_by"), wordOf(entry_, "checked_on"),
                   "review_by"};
  if (auto refusal = contradictionIn(trial_)) {
    refusal->path = listKeyOf(refusal->path);
    return *refusal;
  }
  const auto place = [](const WrittenEntry& figure) { return findEntry(figure.path); };
  std::sort(entry_.figures.begin(), entry_.figures.end(),
            [&](const WrittenEntry& a, const WrittenEntry& b) { return place(a) < place(b); });
  entry_.reference = trial_.reference;
  entry_.reference.medicine = entry_.medicine;
  return entry_;
}

}  // namespace wardchalk
