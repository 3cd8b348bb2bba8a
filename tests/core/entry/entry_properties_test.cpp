#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <string>
#include <vector>

#include "core/entry/read_entry.h"
#include "core/medicine/paths.h"

// What holds of every entry, whatever is typed: what is printed reads as itself; what a button writes is
// read, and clean; a question's answers are read; nothing is read in two ways.

namespace wardchalk::entry_properties_test {
namespace {

constexpr std::array fields = {path::age,          path::height,
                               path::weight,       path::bsa,
                               path::dose,         path::route,
                               path::schedule,     path::low,
                               path::high,         path::referenceSchedule,
                               path::maxPerDose,   path::maxPerDay,
                               path::strength,     path::maxConcentration,
                               path::content,      path::infusionVolume,
                               path::infusionOver, path::maxInfusionRate,
                               path::dropFactor};

/// Text made of the pieces that entries are made of, so that more than the first is reached.
std::string entryLike() {
  const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
      "80", "0", "0.5", "5.0", ".5", "5.", ",", " ", " ", " ", "/", "per", "mg", "mcg", "MG", "Mg", "g", "kg",
      "m2", "mL", "ml", "L", "l", "lb", "oz", "st", "ft", "in", "cm", "m", "day", "days", "year", "mo",
      "dose", "d", "U", "µg", "cc", "tablet", "drops", "gtt", ":", "%", "1", "24", "1000", "h", "hours",
      "min", "every", "q", "q6h", "6", "six", "to", "-", "–", "times", "x", "×", "a", "daily", "twice",
      "once", "weekly", "BID", "QD", "PRN", "as needed", "hourly", "12", "divided", "÷", "in", "doses", "max",
      "over", "old", "PO", "IV", "oral", "two", "hundred", "million", "half", "an", "\u00A0", "\u200B", "\t",
      "\n", "½", "²", "٨", "'", "\"", ".", "+", "−", "O", "e3", "💊", "\xC2"));
  std::string text;
  for (const std::string& piece : pieces) text.append(piece);
  return text;
}

/// An entry as people write it, of the right shape more often than by chance.
std::string nearlyRight() {
  const auto number =
      *rc::gen::element<std::string>("1", "5", "12", "24", "0.5", ".5", "17.0", "1000", "six", "1O", "1,5");
  const auto blank = *rc::gen::element<std::string>("", " ", "  ", "\u00A0");
  const auto unit = *rc::gen::element<std::string>("mg", "MG", "mcg", "µg", "units", "U", "kg", "lbs", "cm",
                                                   "years", "mo", "mL", "cc", "min", "hrs", "m2", "tablets",
                                                   "drops", "st", "mm", "gm", "m");
  const auto behind = *rc::gen::element<std::string>("", "/kg", "/kg/day", " per dose", "/24 h", "/5 mL",
                                                     " in 5 ml", "/mL", " 3 oz", " 5 in", " 2 months", " q6h",
                                                     " divided every 8 h", ".", "/h", "/min", "/d");
  const auto before =
      *rc::gen::element<std::string>("", "", "", "every ", "q", "5-", "10 to ", "max ", "over ", "~");
  return before + number + blank + unit + behind;
}

EntrySetting anySetting() {
  EntrySetting setting;
  setting.from = *rc::gen::element(EntryFrom::person, EntryFrom::file);
  setting.drugInGrams = *rc::gen::arbitrary<bool>();
  return setting;
}

void demandRead(std::string_view path, const std::string& text, const std::string& safe,
                const EntrySetting& setting) {
  const auto answer = *readEntry(path, text, setting);
  RC_ASSERT(answer.isRead);
  RC_ASSERT(answer.safe == safe);
}

/// Everything that is promised of one entry in one field.
void demandAll(StaticText path, const std::string& text, const EntrySetting& setting) {
  const EntryAnswer answer = *readEntry(path, text, setting);
  const EntryAnswer again = *readEntry(path, text, setting);
  RC_ASSERT(answer.isRead == again.isRead && answer.safe == again.safe && answer.also == again.also &&
            answer.refusal == again.refusal && answer.answers == again.answers);
  if (answer.isRead) {
    RC_ASSERT(!answer.safe.empty() && !answer.refusal);
    demandRead(path, answer.safe, answer.safe, setting);
    RC_ASSERT(readEntry(path, answer.safe, setting)->remarks.empty());
    for (const AlsoFills& one : answer.also)
      if (one.path != path::asNeeded) demandRead(one.path, one.text, one.text, setting);
    return;
  }
  RC_ASSERT(answer.refusal && answer.refusal->path == path);
  RC_ASSERT(text.find(answer.refusal->typed) != std::string::npos);
  RC_ASSERT(answer.refusal->typed.size() <= 60U);
  RC_ASSERT(answer.also.empty());
  if (!answer.refusal->suggestion.empty())
    RC_ASSERT(readEntry(path, answer.refusal->suggestion, setting)->isRead);
  RC_ASSERT(answer.answers.empty() || (answer.answers.size() == 2 && answer.refusal->suggestion.empty()));
  for (const std::string& one : answer.answers) RC_ASSERT(readEntry(path, one, setting)->isRead);
}

RC_GTEST_PROP(EntryProperty, holdsOfAnyBytes, (const std::string& text)) {
  const EntrySetting setting = anySetting();
  for (const StaticText path : fields) demandAll(path, text, setting);
}

RC_GTEST_PROP(EntryProperty, holdsOfTheAlphabetOfEntries, ()) {
  const std::string text = entryLike();
  const EntrySetting setting = anySetting();
  for (const StaticText path : fields) demandAll(path, text, setting);
}

RC_GTEST_PROP(EntryProperty, holdsOfWhatIsNearlyRight, ()) {
  const std::string text = nearlyRight();
  const EntrySetting setting = anySetting();
  for (const StaticText path : fields) demandAll(path, text, setting);
}

// A file reads what a person writes, and to the same.
RC_GTEST_PROP(EntryProperty, whatIsReadIsReadAlikeInFiles, ()) {
  const std::string text = nearlyRight();
  for (const StaticText path : fields) {
    const auto typed = *readEntry(path, text);
    EntrySetting setting;
    setting.from = EntryFrom::file;
    const auto filed = *readEntry(path, text, setting);
    if (typed.isRead) RC_ASSERT(filed.isRead && filed.safe == typed.safe && filed.also == typed.also);
  }
}

// Digits are never joined, split or mended: every digit that a reading shows was typed, in that order.
RC_GTEST_PROP(EntryProperty, aReadNumberWasTyped, ()) {
  const auto whole = *rc::gen::inRange<std::int64_t>(1, 100000);
  const auto inside =
      *rc::gen::element<std::string>(" ", "\u00A0", "\u2009", ",", "O", "l", "'", "\u200B", "/", "½", "٠");
  std::string digits = std::to_string(whole + 10);
  digits.insert(1, inside);
  for (const StaticText path : {path::dose, path::content, path::maxPerDose}) {
    const auto answer = *readEntry(path, digits + " mg");
    RC_ASSERT(!answer.isRead);
    RC_ASSERT(answer.refusal->suggestion.empty());
  }
}

}  // namespace
}  // namespace wardchalk::entry_properties_test
