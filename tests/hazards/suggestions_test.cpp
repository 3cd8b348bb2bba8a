// H50: what a refusal says to write, written, means all that was typed, or nothing is said to write.
#include <gtest/gtest.h>

#include <iostream>
#include <random>
#include <string>
#include <vector>

#include "core/entry/read_entry.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "tests/support/little_reader.h"

namespace wardchalk::test::suggestions_test {

namespace {

using Meant = std::optional<std::string> (*)(std::string_view);

/// The fields of one kind, and entries that they read.
struct Kind {
  Meant meant;
  std::vector<const char*> paths;
  std::vector<std::string> entries;
};

const std::vector<Kind>& kinds() {
  static const std::vector<Kind> all = {
      {quantityMeant,
       {"child.weight", "reference.weight_from", "reference.weight_up_to"},
       {"17.2 kg", "8 lb 3 oz", "3 kg 200 g", "37 lb", "3200 g", "2 lb", "0.9 kg"}},
      {quantityMeant, {"child.height"}, {"103 cm", "3 ft 5 in", "1.03 m", "41 in", "1 m 3 cm"}},
      {ageMeant, {"child.age", "reference.age_over"}, {"4 year", "4 year 2 month", "5 week", "3 week 2 day"}},
      {quantityMeant, {"child.bsa", "reference.bsa_below"}, {"0.71 m2", "1.2 m2"}},
      {quantityMeant,
       {"order.dose"},
       {"80 mg", "120 mg/m2/dose", "15 mg/kg", "500 units/kg/dose", "5 mL", "0.1 mcg/kg/min", "2 mmol/kg/day",
        "20 mEq", "0.5 g", "10 units"}},
      {quantityMeant,
       {"reference.high", "reference.low"},
       {"15 mg/kg/dose", "120 mg/m2/day", "500 units/kg/day", "0.2 mcg/kg/min", "1 g/dose"}},
      {quantityMeant, {"reference.max_per_dose", "reference.max_per_day"}, {"500 mg", "1 g", "15 mg/kg"}},
      {quantityMeant, {"reference.max_infusion_rate"}, {"1 mg/kg/min", "50 mg/h"}},
      {quantityMeant,
       {"stock.strength"},
       {"120 mg/5 mL", "25 mg/mL", "2 mg/tablet", "5 mg/capsule", "100 units/mL", "1 g/L", "5 mL/120 mg"}},
      {quantityMeant, {"reference.max_concentration"}, {"5 mg/mL", "1 g/50 mL"}},
      {quantityMeant, {"stock.content"}, {"500 mg", "1 g", "5000 units", "1 g 500 mg"}},
      {quantityMeant,
       {"stock.diluent", "stock.final_volume", "infusion.volume"},
       {"5 mL", "1 L", "50 mL", "0.5 L"}},
      {timeMeant, {"infusion.over", "reference.min_infusion_time"}, {"30 min", "1.5 h", "1 h 30 min"}},
      {quantityMeant, {"infusion.drop_factor"}, {"20 drop/mL", "60 drop/mL"}},
      {scheduleMeant,
       {"order.schedule", "reference.schedule"},
       {"every 6 h",
        "every 4 to 6 h",
        "3 times a day",
        "2 to 3 times a day",
        "2 times a week",
        "every 2 day",
        "weekly",
        "once",
        "continuous",
        "q6h",
        "q4-6h",
        "BID",
        "QD",
        "QOD",
        "daily",
        "8 hourly",
        "every 30 min",
        "twice daily",
        "3/d",
        "every 6 to 4 h",
        "at night",
        "fortnightly",
        "TIW",
        "every 12 hours",
        "q6",
        "HS",
        "three times daily",
        "3x/day",
        "every 1 week",
        "thrice daily",
        "stat",
        "qh"}},
      {wordMeant,
       {"order.route", "reference.route", "child.sex", "stock.kind", "child.weight_method"},
       {"oral", "PO", "IV", "SC", "subq", "SL", "IN", "IT", "ID", "OD", "AU", "NG", "M", "f", "girl",
        "tablet", "liquid", "by mouth", "charted"}},
  };
  return all;
}

/// Spellings of one unit that are refused or not ours; some have two meanings.
const std::vector<std::vector<std::string>>& spellings() {
  static const std::vector<std::vector<std::string>> all = {
      {"mcg", "ug", "µg", "μg", "mcgm", "microgram", "MCG"},
      {"mg", "MG", "Mg", "mG", "mgs", "mgm", "milligrams", "mg.", "ng"},
      {"g", "gm", "gms", "gr", "gram", "G", "GM"},
      {"units", "U", "u", "IU", "unit", "MU", "mU", "I.U."},
      {"mmol", "mM", "mol", "MMOL"},
      {"mEq", "meq", "MEQ"},
      {"kg", "Kg", "KG", "kgs", "kilo", "K"},
      {"lb", "lbs", "pounds", "#", "st", "stone"},
      {"oz", "ozs", "ounces", "OZ"},
      {"cm", "cms", "CM", "mm", "M", "centimetres"},
      {"in", "inches", "\"", "IN"},
      {"ft", "feet", "'"},
      {"m2", "sqm", "sq m", "m^2", "M2"},
      {"mL", "ml", "ML", "cc", "CC", "mls", "dL", "l"},
      {"L", "l", "litre", "liters"},
      {"h", "hr", "hrs", "hours", "H"},
      {"min", "mins", "minutes", "m"},
      {"day", "d", "days", "24 h", "24h"},
      {"week", "wk", "weeks"},
      {"month", "mo", "months", "M"},
      {"year", "yr", "yo", "years", "Y"},
      {"dose", "doses"},
      {"tablet", "tab", "tabs"},
      {"capsule", "cap"},
      {"drop", "gtt", "gtts", "drops"},
  };
  return all;
}

class Mangler {
 public:
  std::size_t below(std::size_t count) { return static_cast<std::size_t>(random_() % count); }

  template <typename T>
  const T& of(const std::vector<T>& list) {
    return list[below(list.size())];
  }

  std::string mangled(std::string text) {
    for (std::size_t times = 1 + below(3); times > 0; --times) text = once(std::move(text));
    return text;
  }

 private:
  std::string once(std::string text) {
    const auto place = [&](const char* set) {
      std::vector<std::size_t> places;
      for (std::size_t at = text.find_first_of(set); at != std::string::npos;
           at = text.find_first_of(set, at + 1))
        places.push_back(at);
      return places.empty() ? text.size() : of(places);
    };
    switch (below(11)) {
      case 0:
      case 1:
      case 2:
        return respelled(std::move(text));
      case 3:  // another part
        return text + " " + std::to_string(1 + below(20)) + " " + of(of(spellings()));
      case 4:  // doubled
        return text + " " + text;
      case 5:  // a blank or a letter inside a number
        return text.insert(place("0123456789"), of(std::vector<std::string>{" ", "\u2009", "O", "l", ","}));
      case 6:  // words behind
        return text +
               of(std::vector<std::string>{" max", " orally", " total", " with food", " per dose", " prn",
                                           " in 5 mL", " per kg", " x3", " x 3 days", ".", " daily"});
      case 7: {  // blanks where they stand already
        const std::size_t at = place(" ");
        if (at < text.size())
          text.replace(at, 1, of(std::vector<std::string>{"  ", "\t", "\u00A0", "", " \u200B"}));
        return text;
      }
      case 8: {  // the point and zeros
        const std::size_t at = place("0123456789");
        return text.insert(at, of(std::vector<std::string>{"0", "00", ".", "0.", "1/"}));
      }
      case 9: {  // words for strokes
        const std::size_t at = place("/");
        if (at < text.size()) text.replace(at, 1, of(std::vector<std::string>{" per ", " in ", " / ", "//"}));
        return text;
      }
      default:
        return of(std::vector<std::string>{" ", "", "\n"}) + text +
               of(std::vector<std::string>{" ", "  ", ""});
    }
  }

  std::string respelled(std::string text) {
    const std::vector<std::string>& names = of(spellings());
    for (std::size_t at = text.find(names[0]); at != std::string::npos; at = text.find(names[0], at + 1)) {
      const auto isLetter = [&](std::size_t i) {
        return i < text.size() && ((text[i] >= 'a' && text[i] <= 'z') || (text[i] >= 'A' && text[i] <= 'Z'));
      };
      if ((at > 0 && isLetter(at - 1)) || isLetter(at + names[0].size())) continue;
      return text.replace(at, names[0].size(), of(names));
    }
    return text;
  }

  std::mt19937_64 random_{20261129};
};

/// How many entries were answered with what to write, and how many were read.
struct Tally {
  int offered = 0;
  int read = 0;
};

std::string apart(const std::string& text, const std::string& other, Meant meant) {
  const auto wanted = meant(text);
  if (!wanted) return "has no one meaning, and is taken for: " + other;
  const auto got = meant(other);
  if (!got || *got != *wanted) return "means " + *wanted + ", and is taken for: " + other;
  return {};
}

/// What is wrong with how this entry is read, or with what is offered for it; nothing where it is as it
/// should be.
std::string wrongWith(const char* path, const std::string& text, Meant meant, Tally& tally) {
  const auto answer = readEntry(path, text);
  if (!answer) return {};
  if (answer->isRead) {
    ++tally.read;
    std::string whole = answer->safe;
    for (const AlsoFills& one : answer->also)
      if (one.path == path::asNeeded) whole += " as needed";
    return apart(text, whole, meant);
  }
  const std::string& write = answer->refusal->suggestion;
  if (write.empty()) return {};
  ++tally.offered;
  if (!readEntry(path, write)->isRead) return "is refused itself: " + write;
  return apart(text, write, meant);
}

}  // namespace

// Two readers that share nothing agree on whatever is read or offered.
TEST(Suggestions, H50_whatIsToBeWrittenMeansAllThatWasTyped) {
  Mangler mangler;
  Tally tally;
  int wrong = 0;
  for (int i = 0; i < 100000; ++i) {
    const Kind& kind = mangler.of(kinds());
    const char* path = mangler.of(kind.paths);
    const std::string text = mangler.mangled(mangler.of(kind.entries));
    const std::string why = wrongWith(path, text, kind.meant, tally);
    if (!why.empty() && ++wrong <= 20) ADD_FAILURE() << path << ": '" << text << "' " << why;
  }
  EXPECT_EQ(wrong, 0);
  EXPECT_GT(tally.offered, 3000);
  EXPECT_GT(tally.read, 15000);
  std::cout << "  of 100000 mangled entries " << tally.read << " are read and " << tally.offered
            << " answered with what to write\n";
}

namespace {

struct Answer {
  const char* path;
  std::string typed;
  std::string write;
};

}  // namespace

TEST(Suggestions, H50_aPartIsNeverOfferedForTheWhole) {
  const std::vector<Answer> answers = {
      {"child.weight", "2 st 13 lb", "41 lb"},
      {"child.weight", "2 st 13 lbs", "41 lb"},
      {"child.weight", "2 st 14 lb", ""},
      {"child.weight", "2.5 st 3 lb", ""},
      {"child.height", "3 ft.5 in", ""},
      {"child.weight", "2 st", "28 lb"},
      {"child.weight", "2 st 5 oz", "28 lb 5 oz"},
      {"child.height", "3' 5\"", "3 ft 5 in"},
      {"child.height", "3'5\"", "3 ft 5 in"},
      {"stock.diluent", "1 dL 50 mL", "150 mL"},
      {"stock.diluent", "1 dL", "100 mL"},
      {"stock.strength", "5 mg/dL", "5 mg/100 mL"},
      {"stock.strength", "120 MG/5 cc", "120 mg/5 mL"},
      {"order.dose", "10 U", "10 units"},
      {"order.dose", "10U", "10 units"},
      {"order.dose", "5 cc", "5 mL"},
      {"order.dose", "500 ug", "500 mcg"},
      {"order.dose", "5 ug/kg/d", ""},
      {"order.dose", "5 cc orally", ""},
      {"order.dose", ".5 U", "0.5 units"},
      {"infusion.over", "1 h 30 min", "90 min"},
      {"infusion.over", "1 hr 30 mins", "90 min"},
      {"order.schedule", "every .5 h", "every 0.5 h"},
      {"order.schedule", "every 06 hours", ""},
      {"order.dose", "05 mg", ""},
  };
  for (const Answer& answer : answers) {
    Case inputs;
    const auto refusal = setEntry(inputs, answer.path, answer.typed).refusalIfAny();
    ASSERT_TRUE(refusal) << answer.typed;
    EXPECT_EQ(refusal->suggestion, answer.write) << answer.typed;
  }
}

/// Each of these has been read in two ways, or is read by nobody alike.
TEST(Suggestions, H50_whatHasTwoMeaningsIsNeverPutRight) {
  const std::vector<std::pair<const char*, std::vector<std::string>>> never = {
      {"order.dose",
       {"1,5 mg", "1,000 mg", "4 5 mg", "1O mg",    "l0 mg",     "1\u2009000 mg", "5 gm",   "5 gr",
        "5 mgm",  "5 Mg",     "5 mG",   "5 M",      "5 MU",      "5 mU",          "5 K",    "5 mM",
        "1/2 mg", "5 GM",     "5gm",    "5 gm.",    "1.2 MU/kg", "5 gms",         "1/2 gm", "½ mg",
        "5 U mg", "1:1000",   "1 %",    "5 mg max", "5. mg",     "5.mg",          "0. mg",  "5. U"}},
      {"stock.strength", {"5 mg/l", "5 mg/5 l", "1:1000", "1:10,000", "1 in 200", "1 %", "1%", "0.9 %"}},
      {"stock.diluent", {"5 l", "5l", "0.5 l"}},
      {"child.height", {"1 M", "103 m m", "103. cm"}},
      {"child.weight", {"17. kg", "37. lb 4 oz", "37 lb 4. oz"}},
      {"order.schedule",
       {"q4",  "q6",       "Q6",          "q6pm", "q6°",      "6/24",         "qh",         "TIW",
        "BIW", "biweekly", "fortnightly", "x3",   "x3d",      "TID × 3 days", "3 daily",    "BT",
        "HS",  "q.n.",     "qn",          "QHS",  "at night", "nightly",      "every 1/2 h"}},
      {"order.route", {"SL", "IN", "IT", "ID", "OD", "OS", "OU", "AD", "AS", "AU"}},
      {"reference.high", {"20 mg/kg divided", "20 mg/kg/day divided", "20 mg/kg/d"}},
  };
  for (const auto& [path, texts] : never)
    for (const std::string& text : texts) {
      Case inputs;
      const auto refusal = setEntry(inputs, path, text).refusalIfAny();
      ASSERT_TRUE(refusal) << text;
      EXPECT_EQ(refusal->suggestion, "") << text;
    }
}

}  // namespace wardchalk::test::suggestions_test
