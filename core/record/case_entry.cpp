#include "core/record/case_entry.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

#include "core/entry/read_dose.h"
#include "core/entry/read_entry.h"
#include "core/entry/read_schedule.h"
#include "core/entry/read_size.h"
#include "core/entry/read_strength.h"
#include "core/entry/read_words.h"
#include "core/medicine/medicine_name.h"
#include "core/medicine/paths.h"
#include "core/number/ascii.h"
#include "core/number/unseen_text.h"

namespace wardchalk {

namespace {

/// Fills the other fields that an entry speaks of.
void fillOthers(Case& inputs, const std::vector<AlsoFills>& also) {
  for (const AlsoFills& one : also) {
    [[maybe_unused]] const auto set = findEntry(one.path)->set(inputs, one.text, {});
    assert(set);  // a safe form is read
  }
}

/// Puts what was read where it belongs, or hands on why it could not be read.
template <typename T, typename U>
Result<Taken> put(Case& inputs, std::optional<T>& into, EntryResult<U> result) {
  if (auto* unread = std::get_if<UnreadEntry>(&result)) return std::move(unread->refusal);
  auto& read = std::get<ReadEntryAs<U>>(result);
  into = T{std::move(read.value)};
  fillOthers(inputs, read.also);
  return Taken{std::move(read.safe), std::move(read.also)};
}

Result<Taken> putText(std::string& into, std::string_view text) {
  if (text.size() > 500) return refusalOf(RefusalCode::tooLong, text);
  if (auto refusal = refusedUnseen(text)) return *refusal;
  into = text;
  return Taken{};
}

/// Names parted by semicolons.
/// A medicine or a source: a dose, a strength or a schedule alone was typed a field too early or too late,
/// and would stand in the wrong place without a word.
Result<Taken> putName(std::string& into, std::string_view text) {
  if (const auto code = namedInText(text)) return refusalOf(*code, text);
  return putText(into, text);
}

Result<Taken> putNames(std::vector<std::string>& into, std::string_view text) {
  std::string whole;
  if (auto put = putText(whole, text); !put) return put;
  into = medicineNames(whole);
  return Taken{};
}

Result<Taken> putFlag(bool& into, std::string_view text) {
  if (text.empty()) return refusalOf(RefusalCode::empty, text);
  if (text != "true" && text != "false")
    return hintedRefusal(RefusalCode::wordUnknown, text, "true or false");
  into = text == "true";
  return Taken{};
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

/// A number of parts, or the words that the form has for it.
Result<int> readParts(std::string_view text) {
  constexpr std::array words = {std::pair("whole only", 1), std::pair("whole", 1),
                                std::pair("halves", 2),     std::pair("half", 2),
                                std::pair("quarters", 4),   std::pair("quarter", 4)};
  for (const auto& [word, count] : words)
    if (lowered(text) == word) return count;
  Result<int> parts = readCount(text, 1, 4);
  if (text.empty()) return parts;
  if (!parts || *parts == 3)
    return hintedRefusal(RefusalCode::countNotWhole, text, "1, 2 or 4 (whole only, halves, quarters)");
  return parts;
}

/// One of a fixed list of words.
template <typename T, std::size_t size>
Result<Taken> putWord(std::optional<T>& into, std::string_view text, WordList list,
                      const std::array<std::string_view, size>& words) {
  const EntryResult<std::size_t> result = readWord(text, list, words);
  if (const auto* unread = std::get_if<UnreadEntry>(&result)) return unread->refusal;
  into = static_cast<T>(std::get<ReadEntryAs<std::size_t>>(result).value);
  return Taken{};
}

constexpr std::array<std::string_view, 2> sexWords = {"female", "male"};
constexpr std::array<std::string_view, 3> methodWords = {"measured", "estimated", "charted"};
constexpr std::array<std::string_view, 3> stockKindWords = {"liquid", "powder", "solid"};

Result<Taken> putCount(std::optional<int>& into, std::string_view text, int most) {
  const Result<int> count = readCount(text, 1, most);
  if (!count) return count.refusal();
  into = *count;
  return Taken{};
}

Result<Taken> putParts(std::optional<int>& into, std::string_view text) {
  Result<int> parts = readParts(text);
  if (!parts) return parts.refusal();
  into = *parts;
  return Taken{};
}

// clang-format off
constexpr std::array entryTable = {
    CaseEntry{path::title, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putText(c.title, t); }},
    CaseEntry{path::age, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.child.age, readAge(t, s)); }},
    CaseEntry{path::sex, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putWord(c.child.sex, t, WordList::sex, sexWords); }},
    CaseEntry{path::height, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.child.height, readHeight(t, s)); }},
    CaseEntry{path::weight, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.child.weight, readWeight(t, s)); }},
    CaseEntry{path::bsa, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.child.bsa, readSurface(t, s)); }},
    CaseEntry{path::weightMethod, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putWord(c.child.weightMethod, t, WordList::weightMethod, methodWords); }},
    CaseEntry{path::weighed, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.child.weighed, readWeighed(t, s)); }},
    CaseEntry{path::bornEarly, EntryKind::flag, [](Case& c, std::string_view t, const EntrySetting&) { return putFlag(c.child.bornEarly, t); }},
    CaseEntry{path::sizeConfirmed, EntryKind::flag, [](Case& c, std::string_view t, const EntrySetting&) { return putFlag(c.child.sizeConfirmed, t); }},
    CaseEntry{path::medicine, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putName(c.order.medicine, t); }},
    CaseEntry{path::dose, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.order.dose, readOrderedDose(t, s)); }},
    CaseEntry{path::route, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putWord(c.order.route, t, WordList::route, routeIds); }},
    CaseEntry{path::schedule, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.order.schedule, readOrderSchedule(t, s)); }},
    CaseEntry{path::asNeeded, EntryKind::flag, [](Case& c, std::string_view t, const EntrySetting&) { return putFlag(c.order.asNeeded, t); }},
    CaseEntry{path::maxDosesPerDay, EntryKind::count, [](Case& c, std::string_view t, const EntrySetting&) { return putCount(c.order.maxDosesPerDay, t, 96); }},
    CaseEntry{path::referenceMedicine, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putName(c.reference.medicine, t); }},
    CaseEntry{path::alsoCalled, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putNames(c.reference.alsoCalled, t); }},
    CaseEntry{path::low, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.low, readReferenceLow(t, s)); }},
    CaseEntry{path::high, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.high, readReferenceHigh(t, s)); }},
    CaseEntry{path::limitOnly, EntryKind::flag, [](Case& c, std::string_view t, const EntrySetting&) { return putFlag(c.reference.limitOnly, t); }},
    CaseEntry{path::referenceSchedule, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.schedule, readReferenceSchedule(t, s)); }},
    CaseEntry{path::referenceRoute, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putWord(c.reference.route, t, WordList::route, routeIds); }},
    CaseEntry{path::maxPerDose, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.maxPerDose, readMaximum(t, PerTime::dose, s)); }},
    CaseEntry{path::maxPerDay, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.maxPerDay, readMaximum(t, PerTime::day, s)); }},
    CaseEntry{path::referenceMaxDoses, EntryKind::count, [](Case& c, std::string_view t, const EntrySetting&) { return putCount(c.reference.maxDosesPerDay, t, 24); }},
    CaseEntry{path::ageFrom, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.age.from, readAge(t, s)); }},
    CaseEntry{path::ageOver, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.age.over, readAge(t, s)); }},
    CaseEntry{path::ageBelow, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.age.below, readAge(t, s)); }},
    CaseEntry{path::ageUpTo, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.age.upTo, readAge(t, s)); }},
    CaseEntry{path::weightFrom, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.weight.from, readWeight(t, s)); }},
    CaseEntry{path::weightOver, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.weight.over, readWeight(t, s)); }},
    CaseEntry{path::weightBelow, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.weight.below, readWeight(t, s)); }},
    CaseEntry{path::weightUpTo, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.weight.upTo, readWeight(t, s)); }},
    CaseEntry{path::bsaFrom, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.bsa.from, readSurface(t, s)); }},
    CaseEntry{path::bsaOver, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.bsa.over, readSurface(t, s)); }},
    CaseEntry{path::bsaBelow, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.bsa.below, readSurface(t, s)); }},
    CaseEntry{path::bsaUpTo, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.bsa.upTo, readSurface(t, s)); }},
    CaseEntry{path::maxConcentration, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.maxConcentration, readConcentration(t, s)); }},
    CaseEntry{path::minConcentration, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.minConcentration, readConcentration(t, s)); }},
    CaseEntry{path::minInfusionTime, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.minInfusionTime, readTime(t, s)); }},
    CaseEntry{path::maxInfusionRate, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.reference.maxInfusionRate, readRate(t, s)); }},
    CaseEntry{path::source, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putName(c.reference.source, t); }},
    CaseEntry{path::secondCheckRequired, EntryKind::flag, [](Case& c, std::string_view t, const EntrySetting&) { return putFlag(c.reference.secondCheckRequired, t); }},
    CaseEntry{path::stockKind, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting&) { return putWord(c.stock.kind, t, WordList::stockKind, stockKindWords); }},
    CaseEntry{path::strength, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.stock.strength, readStrength(t, s)); }},
    CaseEntry{path::content, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.stock.content, readContent(t, s)); }},
    CaseEntry{path::diluent, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.stock.diluent, readVolume(t, s)); }},
    CaseEntry{path::finalVolume, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.stock.finalVolume, readVolume(t, s)); }},
    CaseEntry{path::displacement, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.stock.displacement, readVolume(t, s)); }},
    CaseEntry{path::dividesInto, EntryKind::count, [](Case& c, std::string_view t, const EntrySetting&) { return putParts(c.stock.dividesInto, t); }},
    CaseEntry{path::infusionVolume, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.infusion.volume, readVolume(t, s)); }},
    CaseEntry{path::infusionOver, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.infusion.over, readTime(t, s)); }},
    CaseEntry{path::dropFactor, EntryKind::text, [](Case& c, std::string_view t, const EntrySetting& s) { return put(c, c.infusion.dropFactor, readDropFactor(t, s)); }},
};
// clang-format on

/// Reads the text into the case; the refusal carries the path.
Result<Taken> take(Case& inputs, std::string_view path, std::string_view text, const EntrySetting& setting) {
  const CaseEntry* entry = findEntry(path);
  if (!entry) return Refusal{RefusalCode::keyUnknown, std::string(path), {}, std::string(path)};
  Result<Taken> taken = entry->set(inputs, text, setting);
  if (taken) return taken;
  Refusal refusal = taken.refusal();
  refusal.path = path;
  return refusal;
}

}  // namespace

std::span<const CaseEntry> caseEntries() { return entryTable; }

const CaseEntry* findEntry(std::string_view path) {
  const auto found = std::find_if(entryTable.begin(), entryTable.end(),
                                  [&](const CaseEntry& entry) { return entry.path == path; });
  return found == entryTable.end() ? nullptr : &*found;
}

Result<Done> setEntry(Case& inputs, std::string_view path, std::string_view text,
                      const EntrySetting& setting) {
  const Result<Taken> taken = take(inputs, path, text, setting);
  if (!taken) return taken.refusal();
  return Done{};
}

Result<std::vector<WrittenEntry>> fillFrom(Case& inputs, std::string_view path, std::string_view text,
                                           std::span<const WrittenEntry> filled) {
  const Result<Taken> taken = take(inputs, path, text, fileSetting);
  if (!taken) return taken.refusal();
  std::vector<WrittenEntry> entries{
      {std::string(path), taken->also.empty() ? std::string(text) : taken->safe}};
  for (const AlsoFills& one : taken->also) entries.push_back({std::string(one.path), one.text});
  for (const WrittenEntry& entry : entries)
    if (std::ranges::find(filled, entry.path, &WrittenEntry::path) != filled.end())
      return Refusal{RefusalCode::filledTwice, entry.path, {}, std::string(path)};
  return entries;
}

}  // namespace wardchalk
