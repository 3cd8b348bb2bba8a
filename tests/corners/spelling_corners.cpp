// Every spelling that the reader has in a table, in every field and in many places of an entry: it is read,
// and then its safe form reads as the same, or it is refused with a sentence, and what is offered in its
// place is read.
#include <algorithm>
#include <cctype>
#include <string>
#include <vector>

#include "core/record/case_draft.h"
#include "core/record/case_entry.h"
#include "core/words/sentences.h"
#include "tests/corners/tally.h"

namespace wardchalk::corners::spellings {

namespace {

std::vector<std::string> unitSpellings() {
  std::vector<std::string> typed = {
#define WARDCHALK_SPELLING(typed, capitals, how, unit, over, under, where) typed,
#include "core/entry/unit_spellings.def"
#undef WARDCHALK_SPELLING
  };
  std::ranges::sort(typed);
  typed.erase(std::unique(typed.begin(), typed.end()), typed.end());
  return typed;
}

std::vector<std::string> scheduleSpellings() {
  return {
#define WARDCHALK_SCHEDULE(typed, how, means) typed,
#include "core/entry/schedule_spellings.def"
#undef WARDCHALK_SCHEDULE
  };
}

std::vector<std::string> wordSpellings() {
  return {
#define WARDCHALK_WORD(list, typed, how, word) typed,
#include "core/entry/word_spellings.def"
#undef WARDCHALK_WORD
  };
}

/// Places of a spelling (@) in an entry.
const std::vector<std::string> unitPlaces = {
    "@",          "5 @",        "5@",          "0.5 @",       "5.0 @",    "5,000 @",    "5 @ 3 @",
    "5 @/kg",     "5 @/kg/day", "5 @/m2/dose", "5 @/5 mL",    "5 mg/5 @", "5 mg/@",     "5 mg/kg/@",
    "5 mg per @", "5 to 9 @",   "every 6 @",   "3 times a @", "5 lb 3 @", "1 year 2 @", "5 @ every 6 h",
    "5 @/min"};
const std::vector<std::string> schedulePlaces = {"@",      "@ prn",     "as needed @",
                                                 "5 mg @", "5 mg/kg @", "5 to 9 mg/kg/dose @"};
const std::vector<std::string> wordPlaces = {"@", "5 mg @", "@ 5 mg"};

std::string placed(const std::string& place, const std::string& spelling) {
  std::string text;
  for (const char c : place)
    if (c == '@')
      text += spelling;
    else
      text += c;
  return text;
}

std::string inCapitals(std::string text) {
  for (char& c : text) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
  return text;
}

struct Counts {
  long read = 0;
  long refused = 0;
  long offered = 0;
};

/// Read by a file: its safe form gives the same case.
void tryFile(Tally& tally, const CaseEntry& entry, const std::string& typed) {
  Case first;
  const Result<Taken> taken = entry.set(first, typed, fileSetting);
  const auto words = [&] { return std::string(entry.path) + " in a file: \"" + typed + "\""; };
  if (!taken) {
    tally.expect(!sentence(taken.refusal()).empty(),
                 [&] { return words() + ": refused without a sentence"; });
    tally.expect(first == Case{}, [&] { return words() + ": refused, and the case is another"; });
    return;
  }
  if (taken->safe.empty()) return;  // a word, a tick, a count or free text means no more than it says
  Case second;
  const Result<Taken> again = entry.set(second, taken->safe, fileSetting);
  bool filled = again && again->also.empty();
  for (const AlsoFills& other : taken->also)  // what the entry said of other fields stands in them
    filled = filled && (other.path == entry.path || setEntry(second, other.path, other.text));
  tally.expect(filled && second == first && again->safe == taken->safe,
               [&] { return words() + ": its safe form \"" + taken->safe + "\" is another"; });
}

void tryOffered(Tally& tally, std::string_view path, const std::string& offered, const std::string& words,
                Counts& counts) {
  ++counts.offered;
  CaseDraft draft;
  draft.set(path, offered);
  draft.commit(path);
  tally.expect(draft.state(path) == FieldState::read,
               [&] { return words + ": offers \"" + offered + "\", not read"; });
}

/// Typed into the form: read, and what then stands in the line reads as the same; or refused.
void tryForm(Tally& tally, std::string_view path, const std::string& typed, Counts& counts) {
  CaseDraft draft;
  draft.set(path, typed);
  draft.commit(path);
  const std::string words = std::string(path) + ": \"" + typed + "\"";
  const std::optional<Refusal> refusal = draft.refusal(path);
  tally.expect((draft.state(path) == FieldState::read) != refusal.has_value(),
               [&] { return words + ": neither read nor refused, or both"; });
  if (refusal) {
    ++counts.refused;
    tally.expect(!sentence(*refusal).empty(), [&] { return words + ": refused without a sentence"; });
    tally.expect(draft.line(path) == typed, [&] { return words + ": what was typed is lost"; });
    if (!refusal->suggestion.empty()) tryOffered(tally, path, refusal->suggestion, words, counts);
    for (const std::string& answer : draft.answers(path)) tryOffered(tally, path, answer, words, counts);
    return;
  }
  ++counts.read;
  CaseDraft again;
  again.open(draft.entries());
  tally.expect(again.toCase() == draft.toCase() && again.entries() == draft.entries(),
               [&] { return words + ": saved and opened it is another"; });
  const std::string line = draft.line(path);
  CaseDraft typedAgain = draft;
  typedAgain.touch(path);
  typedAgain.commit(path);
  tally.expect(typedAgain.line(path) == line && typedAgain.toCase() == draft.toCase(),
               [&] { return words + ": its line \"" + line + "\" reads as another"; });
}

long tryAll(const std::string& name, const std::vector<std::string>& spellings,
            const std::vector<std::string>& places) {
  Tally tally("spellings " + name);
  Counts counts;
  for (const std::string& spelling : spellings)
    for (const std::string& place : places)
      for (const std::string& typed : {placed(place, spelling), inCapitals(placed(place, spelling))})
        for (const CaseEntry& entry : caseEntries()) {
          tally.tried();
          tryFile(tally, entry, typed);
          tryForm(tally, entry.path, typed, counts);
        }
  tally.print();
  std::cout << "  " << spellings.size() << " spellings in " << places.size() << " places and "
            << caseEntries().size() << " fields: " << counts.read << " read, " << counts.refused
            << " refused, " << counts.offered << " entries offered" << std::endl;
  return tally.wrong();
}

}  // namespace

long tryWhole() {
  return tryAll("of units", unitSpellings(), unitPlaces) +
         tryAll("of schedules", scheduleSpellings(), schedulePlaces) +
         tryAll("of words", wordSpellings(), wordPlaces);
}

}  // namespace wardchalk::corners::spellings
