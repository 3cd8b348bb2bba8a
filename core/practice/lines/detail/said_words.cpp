#include "core/practice/lines/detail/said_words.h"

#include <algorithm>
#include <array>

#include "core/number/ascii.h"

namespace wardchalk::practice {

namespace {

/// Common ways to talk a sum through; common practice, no source.
constexpr auto joinings = std::to_array<Joining>({{"comes to", Joint::result},
                                                  {"comes out at", Joint::result},
                                                  {"comes out as", Joint::result},
                                                  {"comes out to", Joint::result},
                                                  {"which comes to", Joint::result},
                                                  {"works out at", Joint::result},
                                                  {"works out as", Joint::result},
                                                  {"works out to", Joint::result},
                                                  {"amounts to", Joint::result},
                                                  {"turns into", Joint::result},
                                                  {"becomes", Joint::result},
                                                  {"gives me", Joint::result},
                                                  {"gives", Joint::result},
                                                  {"which gives", Joint::result},
                                                  {"makes", Joint::result},
                                                  {"which makes", Joint::result},
                                                  {"leaves", Joint::result},
                                                  {"and got", Joint::result},
                                                  {"and get", Joint::result},
                                                  {"and i got", Joint::result},
                                                  {"i get", Joint::result},
                                                  {"i got", Joint::result},
                                                  {"came to", Joint::result},
                                                  {"came out at", Joint::result},
                                                  {"came out as", Joint::result},
                                                  {"came out to", Joint::result},
                                                  {"gave", Joint::result},
                                                  {"gave me", Joint::result},
                                                  {"which gave", Joint::result},
                                                  {"which gave me", Joint::result},
                                                  {"that gives", Joint::result},
                                                  {"and that gives", Joint::result},
                                                  {"that makes", Joint::result},
                                                  {"and that makes", Joint::result},
                                                  {"rounds to", Joint::result},
                                                  {"rounds up to", Joint::result},
                                                  {"rounds down to", Joint::result},
                                                  {"rounded to", Joint::result},
                                                  {"rounded up to", Joint::result},
                                                  {"rounded down to", Joint::result},
                                                  {"round to", Joint::result},
                                                  {"round up to", Joint::result},
                                                  {"round down to", Joint::result},
                                                  {"say", Joint::result},
                                                  {"needs", Joint::result},
                                                  {"which is", Joint::result},
                                                  {"is about", Joint::result},
                                                  {"is", Joint::result},
                                                  {"are", Joint::result},
                                                  {"because", Joint::cause},
                                                  {"since", Joint::cause},
                                                  {"from", Joint::cause},
                                                  {"so", Joint::next},
                                                  {"and so", Joint::next},
                                                  {"therefore", Joint::next},
                                                  {"hence", Joint::next},
                                                  {"thus", Joint::next},
                                                  {"then", Joint::next},
                                                  {"and then", Joint::next},
                                                  {"then divided by", Joint::divide},
                                                  {"then divide by", Joint::divide},
                                                  {"and then divided by", Joint::divide},
                                                  {"shared over", Joint::divide},
                                                  {"shared among", Joint::divide},
                                                  {"shared between", Joint::divide},
                                                  {"shared into", Joint::divide},
                                                  {"split over", Joint::divide},
                                                  {"split into", Joint::divide},
                                                  {"divided among", Joint::divide},
                                                  {"divided into", Joint::divide},
                                                  {"divided over", Joint::divide},
                                                  {"a day shared over", Joint::divide},
                                                  {"a day split over", Joint::divide},
                                                  {"per day shared over", Joint::divide},
                                                  {"the root of", Joint::root},
                                                  {"root of", Joint::root},
                                                  {"the square root of", Joint::root},
                                                  {"check", Joint::check},
                                                  {"to check", Joint::check},
                                                  {"checking", Joint::check},
                                                  {"proof", Joint::check}});

constexpr auto counting = std::to_array<std::string_view>(
    {"double", "half",   "quarter", "third",   "thrice",   "triple", "twice",  "two",    "three",   "four",
     "five",   "six",    "seven",   "eight",   "nine",     "ten",    "eleven", "twelve", "fifteen", "sixteen",
     "twenty", "thirty", "sixty",   "hundred", "thousand", "dozen",  "times",  "root"});

bool goesOnWord(char c) { return isLetter(c) || isDigit(c) || static_cast<unsigned char>(c) >= 0x80; }

}  // namespace

std::optional<Joining> joiningAt(std::string_view small) {
  const Joining* longest = nullptr;
  for (const Joining& known : joinings) {
    const std::size_t length = known.words.size();
    if (longest && length <= longest->words.size()) continue;
    if (small.starts_with(known.words) && (small.size() == length || !goesOnWord(small[length])))
      longest = &known;
  }
  return longest ? std::optional(*longest) : std::nullopt;
}

bool counts(std::string_view word) { return std::ranges::find(counting, word) != counting.end(); }

}  // namespace wardchalk::practice
