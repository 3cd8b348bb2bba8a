#include "core/record/case_entry.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/medicine/paths.h"
#include "core/number/ascii.h"
#include "core/number/entry_text.h"
#include "core/number/unseen_text.h"
#include "core/unit/read_quantity.h"
#include "core/unit/whole_suggestion.h"

namespace wardchalk {

namespace {

/// Puts what was read where it belongs, or hands on why it could not be read.
template <typename T, typename U>
Result<Done> put(std::optional<T>& into, Result<U> read) {
  if (!read) return read.refusal();
  into = T{*std::move(read)};
  return Done{};
}

Result<Done> putText(std::string& into, std::string_view text) {
  if (text.size() > 500) return refusalOf(RefusalCode::tooLong, text);
  if (auto refusal = refusedUnseen(text)) return *refusal;
  into = text;
  return Done{};
}

Result<Done> putFlag(bool& into, std::string_view text) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  if (text != "true" && text != "false")
    return hintedRefusal(RefusalCode::wordUnknown, text, "true or false");
  into = text == "true";
  return Done{};
}

Result<int> readCount(std::string_view text, int least, int most) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const bool plain = text[0] != '-' && (text[0] != '0' || text.size() == 1);
  if (error != std::errc() || end != text.data() + text.size() || !plain || value < least || value > most)
    return hintedRefusal(RefusalCode::countNotWhole, text,
                         std::to_string(least) + " to " + std::to_string(most));
  return value;
}

Result<int> readParts(std::string_view text) {
  Result<int> parts = readCount(text, 1, 4);
  if (text.empty()) return parts;
  if (!parts || *parts == 3) return hintedRefusal(RefusalCode::countNotWhole, text, "1, 2 or 4");
  return parts;
}

/// Other words that people write, in small letters, and ours. They are refused, in any capitals, with ours as
/// what to write.
struct OtherWord {
  std::string_view typed;
  std::string_view write;
};
constexpr std::array otherWords = {
    OtherWord{"po", "oral"},
    OtherWord{"by mouth", "oral"},
    OtherWord{"per os", "oral"},
    OtherWord{"ng", "enteral"},
    OtherWord{"nasogastric", "enteral"},
    OtherWord{"iv", "intravenous"},
    OtherWord{"im", "intramuscular"},
    OtherWord{"sc", "subcutaneous"},
    OtherWord{"sq", "subcutaneous"},
    OtherWord{"subcut", "subcutaneous"},
    OtherWord{"sub q", "subcutaneous"},
    OtherWord{"subq", "subcutaneous"},
    OtherWord{"s.c.", "subcutaneous"},
    OtherWord{"p.o.", "oral"},
    OtherWord{"i.v.", "intravenous"},
    OtherWord{"i.m.", "intramuscular"},
    OtherWord{"pr", "rectal"},
    OtherWord{"rectally", "rectal"},
    OtherWord{"inh", "inhaled"},
    OtherWord{"inhalation", "inhaled"},
    OtherWord{"f", "female"},
    OtherWord{"girl", "female"},
    OtherWord{"m", "male"},
    OtherWord{"boy", "male"},
    OtherWord{"tablet", "solid"},
    OtherWord{"capsule", "solid"},
};

/// Why none of the words was read: with the one that is meant, or with all of them to choose from.
Refusal unknownWord(std::string_view text, std::span<const std::string_view> words) {
  const std::string low = lowered(withPlainSpaces(text));
  std::string_view meant = low;
  for (const OtherWord& word : otherWords)
    if (word.typed == low) meant = word.write;
  std::string list;
  for (const std::string_view word : words) {
    if (word == meant) return refusalOf(RefusalCode::wordUnknown, text, word);
    list.append(list.empty() ? "" : ", ").append(word);
  }
  return hintedRefusal(RefusalCode::wordUnknown, text, std::move(list));
}

/// One of a fixed list of words.
template <typename T, std::size_t size>
Result<Done> putWord(std::optional<T>& into, std::string_view text,
                     const std::array<std::string_view, size>& words) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  const auto found = std::find(words.begin(), words.end(), text);
  if (found != words.end()) {
    into = static_cast<T>(found - words.begin());
    return Done{};
  }
  return unknownWord(text, words);
}

constexpr std::array<std::string_view, 2> sexWords = {"female", "male"};
constexpr std::array<std::string_view, 3> methodWords = {"measured", "estimated", "charted"};
constexpr std::array<std::string_view, 3> stockKindWords = {"liquid", "powder", "solid"};

Result<DoseAmount> readPerDose(std::string_view text) { return readMaximum(text, PerTime::dose); }
Result<DoseAmount> readPerDay(std::string_view text) { return readMaximum(text, PerTime::day); }

Result<Done> putParts(int& into, std::string_view text) {
  Result<int> parts = readParts(text);
  if (!parts) return parts.refusal();
  into = *parts;
  return Done{};
}

// clang-format off
constexpr std::array entryTable = {
    CaseEntry{path::title, EntryKind::text, [](Case& c, std::string_view t) { return putText(c.title, t); }},
    CaseEntry{path::age, EntryKind::text, [](Case& c, std::string_view t) { return put(c.child.age, readAge(t)); }},
    CaseEntry{path::sex, EntryKind::text, [](Case& c, std::string_view t) { return putWord(c.child.sex, t, sexWords); }},
    CaseEntry{path::height, EntryKind::text, [](Case& c, std::string_view t) { return put(c.child.height, readHeight(t)); }},
    CaseEntry{path::weight, EntryKind::text, [](Case& c, std::string_view t) { return put(c.child.weight, readWeight(t)); }},
    CaseEntry{path::bsa, EntryKind::text, [](Case& c, std::string_view t) { return put(c.child.bsa, readArea(t)); }},
    CaseEntry{path::weightMethod, EntryKind::text, [](Case& c, std::string_view t) { return putWord(c.child.weightMethod, t, methodWords); }},
    CaseEntry{path::bornEarly, EntryKind::flag, [](Case& c, std::string_view t) { return putFlag(c.child.bornEarly, t); }},
    CaseEntry{path::sizeConfirmed, EntryKind::flag, [](Case& c, std::string_view t) { return putFlag(c.child.sizeConfirmed, t); }},
    CaseEntry{path::medicine, EntryKind::text, [](Case& c, std::string_view t) { return putText(c.order.medicine, t); }},
    CaseEntry{path::dose, EntryKind::text, [](Case& c, std::string_view t) { return put(c.order.dose, readOrderedDose(t)); }},
    CaseEntry{path::route, EntryKind::text, [](Case& c, std::string_view t) { return putWord(c.order.route, t, routeIds); }},
    CaseEntry{path::schedule, EntryKind::text, [](Case& c, std::string_view t) { return put(c.order.schedule, readSchedule(t)); }},
    CaseEntry{path::asNeeded, EntryKind::flag, [](Case& c, std::string_view t) { return putFlag(c.order.asNeeded, t); }},
    CaseEntry{path::maxDosesPerDay, EntryKind::count, [](Case& c, std::string_view t) { return put(c.order.maxDosesPerDay, readCount(t, 1, 96)); }},
    CaseEntry{path::low, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.low, readReferenceDose(t)); }},
    CaseEntry{path::high, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.high, readReferenceDose(t)); }},
    CaseEntry{path::limitOnly, EntryKind::flag, [](Case& c, std::string_view t) { return putFlag(c.reference.limitOnly, t); }},
    CaseEntry{path::referenceSchedule, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.schedule, readSchedule(t)); }},
    CaseEntry{path::referenceRoute, EntryKind::text, [](Case& c, std::string_view t) { return putWord(c.reference.route, t, routeIds); }},
    CaseEntry{path::maxPerDose, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.maxPerDose, readPerDose(t)); }},
    CaseEntry{path::maxPerDay, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.maxPerDay, readPerDay(t)); }},
    CaseEntry{path::ageFrom, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.age.from, readAge(t)); }},
    CaseEntry{path::ageOver, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.age.over, readAge(t)); }},
    CaseEntry{path::ageBelow, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.age.below, readAge(t)); }},
    CaseEntry{path::ageUpTo, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.age.upTo, readAge(t)); }},
    CaseEntry{path::weightFrom, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.weight.from, readWeight(t)); }},
    CaseEntry{path::weightOver, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.weight.over, readWeight(t)); }},
    CaseEntry{path::weightBelow, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.weight.below, readWeight(t)); }},
    CaseEntry{path::weightUpTo, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.weight.upTo, readWeight(t)); }},
    CaseEntry{path::bsaFrom, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.bsa.from, readArea(t)); }},
    CaseEntry{path::bsaOver, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.bsa.over, readArea(t)); }},
    CaseEntry{path::bsaBelow, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.bsa.below, readArea(t)); }},
    CaseEntry{path::bsaUpTo, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.bsa.upTo, readArea(t)); }},
    CaseEntry{path::maxConcentration, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.maxConcentration, readConcentration(t)); }},
    CaseEntry{path::minConcentration, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.minConcentration, readConcentration(t)); }},
    CaseEntry{path::minInfusionTime, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.minInfusionTime, readTime(t)); }},
    CaseEntry{path::maxInfusionRate, EntryKind::text, [](Case& c, std::string_view t) { return put(c.reference.maxInfusionRate, readRate(t)); }},
    CaseEntry{path::source, EntryKind::text, [](Case& c, std::string_view t) { return putText(c.reference.source, t); }},
    CaseEntry{path::stockKind, EntryKind::text, [](Case& c, std::string_view t) { return putWord(c.stock.kind, t, stockKindWords); }},
    CaseEntry{path::strength, EntryKind::text, [](Case& c, std::string_view t) { return put(c.stock.strength, readStrength(t)); }},
    CaseEntry{path::content, EntryKind::text, [](Case& c, std::string_view t) { return put(c.stock.content, readContent(t)); }},
    CaseEntry{path::diluent, EntryKind::text, [](Case& c, std::string_view t) { return put(c.stock.diluent, readVolume(t)); }},
    CaseEntry{path::finalVolume, EntryKind::text, [](Case& c, std::string_view t) { return put(c.stock.finalVolume, readVolume(t)); }},
    CaseEntry{path::displacement, EntryKind::text, [](Case& c, std::string_view t) { return put(c.stock.displacement, readVolume(t)); }},
    CaseEntry{path::dividesInto, EntryKind::count, [](Case& c, std::string_view t) { return putParts(c.stock.dividesInto, t); }},
    CaseEntry{path::infusionVolume, EntryKind::text, [](Case& c, std::string_view t) { return put(c.infusion.volume, readVolume(t)); }},
    CaseEntry{path::infusionOver, EntryKind::text, [](Case& c, std::string_view t) { return put(c.infusion.over, readTime(t)); }},
    CaseEntry{path::dropFactor, EntryKind::text, [](Case& c, std::string_view t) { return put(c.infusion.dropFactor, readDropFactor(t)); }},
};
// clang-format on

}  // namespace

std::span<const CaseEntry> caseEntries() { return entryTable; }

const CaseEntry* findEntry(std::string_view path) {
  const auto found = std::find_if(entryTable.begin(), entryTable.end(),
                                  [&](const CaseEntry& entry) { return entry.path == path; });
  return found == entryTable.end() ? nullptr : &*found;
}

Result<Done> setEntry(Case& inputs, std::string_view path, std::string_view text) {
  const CaseEntry* entry = findEntry(path);
  if (!entry) return Refusal{RefusalCode::keyUnknown, std::string(path), {}, std::string(path)};
  const Result<Done> set = entry->set(inputs, text);
  if (set) return set;
  Refusal refusal = set.refusal();
  refusal.suggestion = wholeSuggestion(text, refusal, [entry](std::string_view other) {
    Case trial;
    return entry->set(trial, other);
  });
  refusal.path = path;
  return refusal;
}

}  // namespace wardchalk
