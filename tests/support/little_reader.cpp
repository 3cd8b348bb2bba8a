#include "tests/support/little_reader.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <numeric>
#include <regex>
#include <utility>
#include <vector>

namespace wardchalk::test {

namespace {

__extension__ using Wide = __int128;

/// Exact, and with none of the program's arithmetic.
struct Fraction {
  Wide over = 0;
  Wide under = 1;
};

Fraction lowest(Wide over, Wide under) {
  Wide a = over;
  Wide b = under;
  while (b != 0) a = std::exchange(b, a % b);
  return a == 0 ? Fraction{0, 1} : Fraction{over / a, under / a};
}
Fraction operator*(Fraction a, Fraction b) { return lowest(a.over * b.over, a.under * b.under); }
Fraction operator/(Fraction a, Fraction b) { return lowest(a.over * b.under, a.under * b.over); }
Fraction operator+(Fraction a, Fraction b) {
  return lowest(a.over * b.under + b.over * a.under, a.under * b.under);
}
bool operator<(Fraction a, Fraction b) { return a.over * b.under < b.over * a.under; }

std::string textOfWhole(Wide value) {
  std::string digits;
  do digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(value % 10)));
  while ((value /= 10) != 0);
  return digits;
}
std::string textOfFraction(Fraction value) {
  return textOfWhole(value.over) + ":" + textOfWhole(value.under);
}

std::optional<Fraction> figure(const std::string& text) {
  static const std::regex shape(R"(\d{0,9}\.?\d{1,9})");  // "5." may be half of 5.5
  if (!std::regex_match(text, shape) || text.find_first_of("0123456789") == std::string::npos)
    return std::nullopt;
  Fraction value;
  bool behind = false;
  for (const char c : text) {
    if (c == '.') {
      behind = true;
      continue;
    }
    value.over = value.over * 10 + (c - '0');
    if (behind) value.under *= 10;
  }
  return lowest(value.over, value.under);
}

struct Measure {
  std::string of;  // what kind of thing is measured
  Fraction size;   // in the smallest of its kind
};

/// Every spelling with one meaning. A "g" may be a child's or a medicine's and is one kind here.
const std::map<std::string, Measure>& measures() {
  static const std::map<std::string, Measure> all = [] {
    struct Line {
      const char* of;
      Fraction size;
      const char* spellings;
    };
    const Line lines[] = {
        {"mass", {1, 1000}, "ng nanogram nanograms"},
        {"mass", {1, 1}, "mcg mcgs microgram micrograms µg μg ug mcgm"},
        {"mass", {1000, 1}, "mg mgs milligram milligrams"},
        {"mass", {1000000, 1}, "g gram grams"},
        {"mass", {1000000000, 1}, "kg kgs kilo kilos kilogram kilograms"},
        {"ounces", {1, 1}, "oz ozs ounce ounces"},
        {"ounces", {16, 1}, "lb lbs pound pounds #"},
        {"ounces", {224, 1}, "st stone"},
        {"units", {1, 1}, "units unit u iu i.u"},
        {"mmol", {1, 1}, "mmol"},
        {"mmol", {1000, 1}, "mol"},
        {"mEq", {1, 1}, "meq"},
        {"length", {1, 10}, "mm"},
        {"length", {1, 1}, "cm cms centimetre centimetres centimeter centimeters"},
        {"length", {100, 1}, "m metre metres meter meters"},
        {"inches", {1, 1}, "in ins inch inches \" ″"},
        {"inches", {12, 1}, "ft foot feet ' ′"},
        {"surface", {1, 1}, "area"},
        {"volume", {1, 1}, "ml mls cc ccm millilitre millilitres milliliter milliliters"},
        {"volume", {100, 1}, "dl"},
        {"volume", {1000, 1}, "L litre litres liter liters"},
        {"minutes", {1, 1}, "min mins minute minutes"},
        {"minutes", {60, 1}, "h hr hrs hour hours"},
        {"days", {1, 1}, "day days"},
        {"days", {7, 1}, "week weeks wk wks"},
        {"months", {1, 1}, "month months mo mos mth mths"},
        {"months", {12, 1}, "year years y yr yrs yo"},
        {"dose", {1, 1}, "dose doses"},
        {"tablet", {1, 1}, "tablet tablets tab tabs"},
        {"capsule", {1, 1}, "capsule capsules cap caps"},
        {"drop", {1, 1}, "drop drops gtt gtts"},
    };
    std::map<std::string, Measure> found;
    for (const Line& line : lines) {
      const std::regex space(" ");
      const std::string words = line.spellings;
      for (std::sregex_token_iterator at(words.begin(), words.end(), space, -1), end; at != end; ++at)
        found[at->str()] = {line.of, line.size};
    }
    return found;
  }();
  return all;
}

std::string small(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

std::optional<Measure> measure(std::string name) {
  while (name.size() > 1 && name.back() == '.') name.pop_back();
  for (const char* two : {"Mg", "mG", "M", "MU", "mU", "Mm", "mM", "MM", "Mmol", "MMOL", "mMol", "mMOL"})
    if (name == two && small(name) != "mmol") return std::nullopt;  // two meanings
  for (const std::string& spelling : {name, small(name)})
    if (const auto found = measures().find(spelling); found != measures().end()) return found->second;
  return std::nullopt;
}

/// Blanks of every kind as one, none at the ends.
std::string plain(std::string_view text) {
  std::string all(text);
  for (const char* blank : {"\u00A0", "\u2009", "\u202F", "\u200B", "\t", "\r", "\n"})
    for (std::size_t at = all.find(blank); at != std::string::npos; at = all.find(blank))
      all.replace(at, std::string_view(blank).size(), " ");
  all = std::regex_replace(all, std::regex(" +"), " ");
  return std::regex_replace(all, std::regex("^ | $"), "");
}

/// "17.2 kg", "8lb 3 oz", "kg": figures and units in turn, from the larger to the smaller, the sizes of a
/// kind put together. Months and days are counted side by side: no month has a fixed number of days.
std::optional<std::string> amount(std::string text, bool figureWanted) {
  static const std::regex part(R"(^ ?([0-9.]*) ?([^0-9 ]+))");
  std::string months;
  std::optional<Measure> sum;
  Fraction last;
  for (std::smatch match; !text.empty(); text = match.suffix()) {
    if (!std::regex_search(text, match, part)) return std::nullopt;
    const bool bare = match[1].length() == 0;
    if (bare && (figureWanted || sum)) return std::nullopt;
    const auto value = bare ? std::optional(Fraction{1, 1}) : figure(match[1]);
    const auto unit = measure(match[2]);
    if (!value || !unit) return std::nullopt;
    if (sum && sum->of == "months" && unit->of == "days") {
      months = "months " + textOfFraction(sum->size) + " and ";
      sum.reset();
    }
    if (sum && (sum->of != unit->of || !(unit->size < last))) return std::nullopt;
    last = unit->size;
    sum = Measure{unit->of, (sum ? sum->size : Fraction{}) + *value * unit->size};
  }
  if (!sum) return std::nullopt;
  return months + sum->of + " " + textOfFraction(sum->size);
}

}  // namespace

std::optional<std::string> quantityMeant(std::string_view text) {
  std::string all = std::regex_replace(
      plain(text), std::regex("(^|[^a-zA-Z])(sq m|sqm|[mM]2|m\\^2)(?![0-9a-zA-Z])"), "$1area");
  all = std::regex_replace(all, std::regex(" per | ?/ ?"), "/");
  all = std::regex_replace(all, std::regex("([^0-9 ]) in ?(?=[0-9.])"), "$1/");
  all = std::regex_replace(all, std::regex("/24 ?(h|H|hr|hrs|hours)(?![a-zA-Z])"), "/day");
  std::vector<std::string> parts;
  for (std::size_t at = 0; at <= all.size();) {
    const std::size_t stroke = std::min(all.find('/', at), all.size());
    const auto read = amount(all.substr(at, stroke - at), at == 0);
    if (!read) return std::nullopt;
    parts.push_back(*read);
    at = stroke + 1;
  }
  std::sort(parts.begin(), parts.end());  // "per kg per day" and "per day per kg", a label turned over
  return std::accumulate(parts.begin(), parts.end(), std::string(),
                         [](const std::string& a, const std::string& b) { return a + "|" + b; });
}

std::optional<std::string> ageMeant(std::string_view text) {
  std::string all = plain(text);
  for (const auto& [letter, word] : {std::pair{"d", "day"}, std::pair{"w", "week"}, std::pair{"m", "month"}})
    all = std::regex_replace(all, std::regex(std::string("([0-9] ?)") + letter + "(?![a-zA-Z])"),
                             std::string("$1") + word);
  return quantityMeant(all);
}

std::optional<std::string> timeMeant(std::string_view text) {
  return quantityMeant(std::regex_replace(plain(text), std::regex("([0-9] ?)m(?![a-zA-Z0-9])"), "$1min"));
}

namespace {

/// Schedules of one meaning that are no sum: the doses in a week.
const std::map<std::string, std::string>& saidWhole() {
  static const std::map<std::string, std::string> all = {
      {"once", "once"},
      {"single dose", "once"},
      {"once only", "once"},
      {"one dose", "once"},
      {"1 dose", "once"},
      {"now", "once"},
      {"stat", "once"},
      {"continuous", "continuous"},
      {"continuously", "continuous"},
      {"bid", "14:1"},
      {"bd", "14:1"},
      {"twice a day", "14:1"},
      {"twice daily", "14:1"},
      {"tid", "21:1"},
      {"tds", "21:1"},
      {"qid", "28:1"},
      {"qds", "28:1"},
      {"daily", "7:1"},
      {"once daily", "7:1"},
      {"once a day", "7:1"},
      {"every day", "7:1"},
      {"qd", "7:1"},
      {"q.d.", "7:1"},
      {"od", "7:1"},
      {"o.d.", "7:1"},
      {"q1d", "7:1"},
      {"/d", "7:1"},
      {"qod", "7:2"},
      {"q.o.d.", "7:2"},
      {"eod", "7:2"},
      {"q2d", "7:2"},
      {"every other day", "7:2"},
      {"alternate days", "7:2"},
      {"weekly", "1:1"},
      {"every second day", "7:2"},
      {"once weekly", "1:1"},
      {"once a week", "1:1"},
      {"every week", "1:1"},
      {"qw", "1:1"},
      {"twice a week", "2:1"},
      {"every other week", "1:2"},
      {"continuous infusion", "continuous"},
      {"hourly", "168:1"},
      {"every h", "168:1"},
  };
  return all;
}

std::string range(Fraction a, Fraction b) {
  if (b < a) std::swap(a, b);
  const std::string low = textOfFraction(a);
  const std::string high = textOfFraction(b);
  return low == high ? low : low + " to " + high;
}

}  // namespace

std::optional<std::string> scheduleMeant(std::string_view text) {
  std::string all = small(plain(text));
  const std::string asNeeded = std::regex_search(all, std::regex(" ?(prn|as needed)$")) ? " as needed" : "";
  if (!asNeeded.empty()) {
    const auto rest = scheduleMeant(std::regex_replace(all, std::regex(" ?(prn|as needed)$"), ""));
    return rest ? std::optional(*rest + asNeeded) : std::nullopt;
  }
  if (const auto found = saidWhole().find(all); found != saidWhole().end()) return found->second;
  all = std::regex_replace(all, std::regex("–"), "-");
  all = std::regex_replace(all, std::regex("(/|in|per|a) ?24 ?(h|hr|hrs|hours)$"), "$1 day");
  const std::map<std::string, std::string> numbers = {{"one", "1"},  {"two", "2"},    {"three", "3"},
                                                      {"four", "4"}, {"six", "6"},    {"eight", "8"},
                                                      {"five", "5"}, {"twelve", "12"}};
  for (const auto& [word, digits] : numbers)
    all = std::regex_replace(all, std::regex("\\b" + word + "\\b"), digits);
  all = std::regex_replace(all, std::regex("^thrice\\b"), "3 times");
  const std::string figures = R"((\d*\.?\d+|\d+\.)(?: ?(?:-|to) ?(\d*\.?\d+|\d+\.))?)";
  static const std::regex spaced(
      "(?:every|each|q)? ?" + figures +
      "[ -]?(h|hr|hrs|hour|hours|hourly|hrly|min|mins|minute|minutes|d|day|days|week|weeks)");
  static const std::regex counted(
      figures + "(?: ?(?:x|times?))? ?(?:a|per|/|each|every)? ?(days|day|daily|d|weeks|week|weekly)");
  std::smatch match;
  const auto ends = [&match](Fraction& low, Fraction& high) {
    const auto a = figure(match[1]);
    const auto b = match[2].matched ? figure(match[2]) : a;
    if (!a || !b || a->over == 0 || b->over == 0) return false;
    low = *a;
    high = *b;
    return true;
  };
  Fraction low;
  Fraction high;
  const bool counts = std::regex_search(all, std::regex("x|time|/| (a|per) "));
  if (!counts && std::regex_match(all, match, spaced) && ends(low, high)) {
    const std::string unit = match[3];
    const bool named = unit[0] == 'h' || all.find_first_of("eq") == 0;
    const Fraction week = unit[0] == 'h'   ? Fraction{168, 1}
                          : unit[0] == 'm' ? Fraction{10080, 1}
                          : unit[0] == 'd' ? Fraction{7, 1}
                                           : Fraction{1, 1};
    if (named) return range(week / low, week / high);
    return std::nullopt;
  }
  if (counts && std::regex_match(all, match, counted) && ends(low, high)) {
    const Fraction days = match[3].str()[0] == 'd' ? Fraction{7, 1} : Fraction{1, 1};
    return range(low * days, high * days);
  }
  return std::nullopt;
}

std::optional<std::string> wordMeant(std::string_view text) {
  static const std::map<std::string, std::string> all = {{"po", "oral"},
                                                         {"by mouth", "oral"},
                                                         {"per os", "oral"},
                                                         {"p.o.", "oral"},
                                                         {"ng", "enteral"},
                                                         {"nasogastric", "enteral"},
                                                         {"iv", "intravenous"},
                                                         {"i.v.", "intravenous"},
                                                         {"im", "intramuscular"},
                                                         {"i.m.", "intramuscular"},
                                                         {"sc", "subcutaneous"},
                                                         {"sq", "subcutaneous"},
                                                         {"subcut", "subcutaneous"},
                                                         {"sub q", "subcutaneous"},
                                                         {"subq", "subcutaneous"},
                                                         {"s.c.", "subcutaneous"},
                                                         {"pr", "rectal"},
                                                         {"rectally", "rectal"},
                                                         {"inh", "inhaled"},
                                                         {"inhalation", "inhaled"},
                                                         {"f", "female"},
                                                         {"girl", "female"},
                                                         {"m", "male"},
                                                         {"boy", "male"},
                                                         {"tablet", "solid"},
                                                         {"capsule", "solid"}};
  const std::string word = small(plain(text));
  if (const auto found = all.find(word); found != all.end()) return found->second;
  for (const char* ours :
       {"oral", "enteral", "intravenous", "intramuscular", "subcutaneous", "rectal", "inhaled", "topical",
        "female", "male", "measured", "estimated", "charted", "liquid", "powder", "solid"})
    if (word == ours) return word;
  return std::nullopt;
}

}  // namespace wardchalk::test
