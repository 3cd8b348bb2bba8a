#include "core/record/reference_choice.h"

#include <algorithm>
#include <array>

#include "core/check/work_out.h"
#include "core/medicine/medicine_name.h"
#include "core/medicine/paths.h"
#include "core/number/entry_text.h"
#include "core/record/unicode_text.h"
#include "core/words/case_facts.h"
#include "core/words/fact_words.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "core/words/stated_words.h"

namespace wardchalk {

namespace {

/// What is one for the entries of a group. A medicine is one where the check of a case takes it for one.
std::string groupOf(const ListEntry& entry) {
  return medicineKey(entry.medicine) + "\n" + folded(entry.indication) + "\n" +
         std::string(idOf(*entry.reference.route));
}

/// Everything that an entry may be searched by.
std::string searchedText(const ListEntry& entry) {
  std::string text = folded(entry.medicine) + "\n" + folded(entry.indication) + "\n" +
                     std::string(idOf(*entry.reference.route));
  for (const std::string& name : entry.reference.alsoCalled) text.append("\n").append(folded(name));
  return text;
}

/// Names that a group is also called by, each once.
void addNames(ListGroup& group, const ListEntry& entry) {
  for (const std::string& name : entry.reference.alsoCalled)
    if (std::ranges::find(group.alsoCalled, name) == group.alsoCalled.end()) group.alsoCalled.push_back(name);
}

bool hasAll(const std::string& name, const std::vector<std::string_view>& words) {
  return std::all_of(words.begin(), words.end(),
                     [&](const std::string_view word) { return name.find(word) != std::string::npos; });
}

std::vector<ListGroup> groupsWith(const ReferenceList& list, const std::vector<std::string_view>& words) {
  std::vector<ListGroup> groups;
  std::vector<std::string> names;
  for (std::size_t i = 0; i < list.entries.size(); ++i) {
    const ListEntry& entry = list.entries[i];
    if (!hasAll(searchedText(entry), words)) continue;
    std::string name = groupOf(entry);
    const auto place = static_cast<std::size_t>(std::find(names.begin(), names.end(), name) - names.begin());
    if (place == names.size()) {
      names.push_back(std::move(name));
      groups.push_back({entry.medicine, {}, entry.indication, *entry.reference.route, {}});
    }
    groups[place].entries.push_back(i);
    addNames(groups[place], entry);
  }
  return groups;
}

constexpr std::array bandChecks = {CheckId::ageBand, CheckId::weightBand, CheckId::bsaBand};

/// The needs that the bands have, and not the dose.
std::vector<Need> bandNeeds(const Worksheet& sheet) {
  constexpr std::array paths = {path::age, path::weight, path::height, path::bsa};
  std::vector<Need> needs;
  std::copy_if(sheet.needs.begin(), sheet.needs.end(), std::back_inserter(needs), [&](const Need& need) {
    return std::find(paths.begin(), paths.end(), need.path) != paths.end();
  });
  return needs;
}

/// The checks of a case, with nothing but the child and the reference's bands filled in.
JudgedEntry judge(const ReferenceList& list, std::size_t index, const Child& child, const HouseRules& rules) {
  Case inputs;
  inputs.child = child;
  inputs.reference.age = list.entries[index].reference.age;
  inputs.reference.weight = list.entries[index].reference.weight;
  inputs.reference.bsa = list.entries[index].reference.bsa;
  const Worksheet sheet = workOut(inputs, rules);
  JudgedEntry judged{index, BandFit::covers, {}, {}};
  for (const CheckId id : bandChecks) {
    const Check& check = sheet.check(id);
    if (check.status == CheckStatus::outside) judged.fit = BandFit::doesNotCover;
    if (!check.isMade() && check.why != WhyNot::noBand && judged.fit == BandFit::covers)
      judged.fit = BandFit::unclear;
    if (isStated(check.value))
      judged.child.append(judged.child.empty() ? "" : ", ").append(statedText(check.value));
  }
  if (judged.fit == BandFit::unclear) judged.needs = bandNeeds(sheet);
  return judged;
}

std::vector<const JudgedEntry*> thatAre(const BandChoice& choice, BandFit fit) {
  std::vector<const JudgedEntry*> some;
  for (const JudgedEntry& judged : choice.entries)
    if (judged.fit == fit) some.push_back(&judged);
  return some;
}

std::string bandOf(const ReferenceList& list, std::size_t entry) {
  const std::string band = bandWords(list.entries[entry].reference);
  return band.empty() ? say(PhraseId::list_everyChild) : band;
}

/// What must be known before the bands can be told apart, each thing once.
std::string needWords(const std::vector<const JudgedEntry*>& unclear) {
  std::vector<std::string> told;
  for (const JudgedEntry* judged : unclear)
    for (const Need& need : judged->needs) {
      std::string words = sentence(need);
      if (std::find(told.begin(), told.end(), words) == told.end()) told.push_back(std::move(words));
    }
  std::string list;
  for (const std::string_view words : told) list.append(list.empty() ? "" : "; ").append(words);
  return list;
}

std::string takenWords(const JudgedEntry& taken, const BandChoice& choice, const ReferenceList& list,
                       const Date& today) {
  const ListEntry& entry = list.entries[taken.entry];
  const auto with = [&](PhraseId id) {
    return say(id, {{"medicine", entry.medicine},
                    {"route", routeText(*entry.reference.route)},
                    {"band", bandOf(list, taken.entry)},
                    {"child", taken.child},
                    {"date", textOf(entry.reviewBy)}});
  };
  if (isPastReview(entry, today)) return with(PhraseId::list_coversPast);
  if (!taken.child.empty()) return with(PhraseId::list_taken);
  return with(choice.entries.size() == 1 ? PhraseId::list_takenOnly : PhraseId::list_takenForAll);
}

/// Parts with a semicolon between; empty ones are left out.
std::string joined(const std::vector<std::string>& parts) {
  std::string line;
  for (const std::string& part : parts)
    if (!part.empty()) line.append(line.empty() ? "" : "; ").append(part);
  return line;
}

std::string severalWords(const std::vector<const JudgedEntry*>& covering, const ReferenceList& list) {
  std::string bands;
  for (const JudgedEntry* judged : covering)
    bands.append(bands.empty() ? "" : "; ").append(bandOf(list, judged->entry));
  return say(PhraseId::list_several, {{"n", std::to_string(covering.size())}, {"bands", bands}},
             static_cast<long>(covering.size()));
}

}  // namespace

std::vector<ListGroup> find(const ReferenceList& list, std::string_view part) {
  const std::string wanted = folded(part);
  const std::vector<std::string_view> words = wordsOf(wanted);
  std::vector<ListGroup> groups = groupsWith(list, words);
  if (!words.empty())
    std::stable_partition(groups.begin(), groups.end(), [&](const ListGroup& group) {
      return folded(group.medicine).starts_with(words.front());
    });
  return groups;
}

BandChoice bandFor(const ReferenceList& list, const ListGroup& group, const Child& child,
                   const HouseRules& rules) {
  BandChoice choice;
  for (const std::size_t index : group.entries) choice.entries.push_back(judge(list, index, child, rules));
  const auto covering = thatAre(choice, BandFit::covers);
  if (covering.size() == 1 && thatAre(choice, BandFit::unclear).empty())
    choice.chosen = covering.front()->entry;
  return choice;
}

bool isForOrdered(const ListEntry& entry, const Order& order) {
  return !namesMedicine(order.medicine) || isFor(entry.reference, order.medicine);
}

bool isForOrdered(const ListGroup& group, const Order& order) {
  Reference named;
  named.medicine = group.medicine;
  named.alsoCalled = group.alsoCalled;
  return !namesMedicine(order.medicine) || isFor(named, order.medicine);
}

bool mayBeTaken(const ListEntry& entry, const Order& order, const Date& today, const Agreed& agreed) {
  const bool reviewed = !isPastReview(entry, today) || agreed.pastReview;
  return reviewed && (isForOrdered(entry, order) || agreed.otherMedicine);
}

std::optional<std::size_t> firstToLookAt(const std::vector<ListGroup>& groups, std::string_view part,
                                         const Order& order) {
  const bool nothingSaid = wordsOf(folded(part)).empty() && !namesMedicine(order.medicine);
  if (groups.empty() || nothingSaid) return std::nullopt;
  const auto place = [&](const auto& fits) -> std::optional<std::size_t> {
    const auto found = std::find_if(groups.begin(), groups.end(), fits);
    if (found == groups.end()) return std::nullopt;
    return static_cast<std::size_t>(found - groups.begin());
  };
  const auto byRoute = [&](const ListGroup& group) {
    return isForOrdered(group, order) && order.route == group.route;
  };
  if (const auto found = place(byRoute)) return found;
  const auto found = place([&](const ListGroup& group) { return isForOrdered(group, order); });
  return found ? found : std::optional<std::size_t>(0);
}

std::string maximumWords(const Reference& reference) {
  Case inputs;
  inputs.reference = reference;
  return joined({enteredWords(path::maxPerDose, inputs), enteredWords(path::maxPerDay, inputs)});
}

std::string infusionWords(const Reference& reference) {
  Case inputs;
  inputs.reference = reference;
  const auto limit = [&](PhraseId id, std::string_view name, std::string_view path) {
    const std::string text = enteredWords(path, inputs);
    return text.empty() ? text : say(id, {{name, text}});
  };
  const std::string limits =
      joined({limit(PhraseId::list_mostConcentrated, "amount", path::maxConcentration),
              limit(PhraseId::list_leastConcentrated, "amount", path::minConcentration),
              limit(PhraseId::list_leastTime, "time", path::minInfusionTime),
              limit(PhraseId::list_fastest, "rate", path::maxInfusionRate)});
  return limits.empty() ? limits : say(PhraseId::list_infusion, {{"limits", limits}});
}

std::string sentence(const BandChoice& choice, const ReferenceList& list, const Date& today) {
  const auto covering = thatAre(choice, BandFit::covers);
  const auto unclear = thatAre(choice, BandFit::unclear);
  if (choice.chosen) return takenWords(*covering.front(), choice, list, today);
  if (covering.size() > 1) return severalWords(covering, list);
  if (!unclear.empty()) return say(PhraseId::list_unclear, {{"what", needWords(unclear)}});
  return say(PhraseId::list_none, {{"child", choice.entries.empty() ? "" : choice.entries.front().child}});
}

std::string fitWords(const JudgedEntry& judged) {
  switch (judged.fit) {
    case BandFit::covers:
      return say(PhraseId::list_covers, {{"child", judged.child}});
    case BandFit::doesNotCover:
      return say(PhraseId::list_doesNotCover, {{"child", judged.child}});
    case BandFit::unclear:
      return say(PhraseId::list_cannotTell, {{"what", needWords({&judged})}});
  }
  return {};
}

namespace {

/// A source with what is to stand beside it; any of the last four may be empty.
std::string sourceLine(const ListEntry& entry, const std::string& medicine, const std::string& route,
                       const std::string& from, const std::string& review) {
  return say(PhraseId::list_source, {{"medicine", medicine},
                                     {"route", route},
                                     {"title", entry.source.title},
                                     {"edition", entry.source.edition},
                                     {"date", entry.source.date ? textOf(*entry.source.date) : std::string()},
                                     {"page", entry.source.page},
                                     {"indication", entry.indication},
                                     {"from", from},
                                     {"who", entry.checkedBy},
                                     {"when", textOf(entry.checkedOn)},
                                     {"review", review}});
}

}  // namespace

std::string sourceWords(const ListEntry& entry) { return sourceLine(entry, {}, {}, {}, {}); }

/// Where everything together is more than a case takes, the medicine is left out: the order names it.
std::string takenFrom(const ListEntry& entry, const Date& today) {
  constexpr std::size_t mostInCase = 500;
  const std::string from = say(PhraseId::list_fromList);
  const std::string review = isPastReview(entry, today) ? textOf(entry.reviewBy) : std::string();
  // An entry of a case is text that was written, without marks of ours; where it is shown it is isolated as a
  // whole.
  std::string whole =
      withoutIsolates(sourceLine(entry, entry.medicine, routeText(*entry.reference.route), from, review));
  return whole.size() <= mostInCase ? whole : withoutIsolates(sourceLine(entry, {}, {}, from, review));
}

bool isFromList(const Reference& reference) {
  return reference.source.find("; " + say(PhraseId::list_fromList) + ", ") != std::string::npos;
}

bool isKeptByList(std::string_view path, const Reference& reference) {
  const bool ofEntry = path == path::referenceMedicine || path == path::alsoCalled || path == path::source ||
                       path == path::secondCheckRequired;
  return ofEntry && isFromList(reference);
}

std::vector<WrittenEntry> entriesOf(const ListEntry& entry, const Date& today) {
  std::vector<WrittenEntry> entries = entry.figures;
  entries.push_back({std::string(path::referenceMedicine), entry.medicine});
  entries.push_back({std::string(path::source), takenFrom(entry, today)});
  if (entry.secondCheckRequired) entries.push_back({std::string(path::secondCheckRequired), "true"});
  return entries;
}

}  // namespace wardchalk
