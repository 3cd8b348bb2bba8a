#include "tests/support/safe_writing.h"

#include <algorithm>
#include <array>

namespace wardchalk::test {

namespace {

constexpr std::string_view jointCommission = "Joint Commission \"Do Not Use\" list, copies of it read";
constexpr std::string_view ismp = "ISMP List of Error-Prone Abbreviations, copies of it read";
constexpr std::string_view ismpRecalled = "ISMP List of Error-Prone Abbreviations, from memory";
constexpr std::string_view perDay = "AHRQ PSNet, Medication Overdose, 2003, read";

constexpr std::array spellings = {
    UnsafeSpelling{"U", "units", jointCommission},
    UnsafeSpelling{"u", "units", jointCommission},
    UnsafeSpelling{"IU", "units", jointCommission},
    UnsafeSpelling{"iu", "units", jointCommission},
    UnsafeSpelling{"I.U.", "units", jointCommission},
    UnsafeSpelling{"QD", "daily", jointCommission},
    UnsafeSpelling{"qd", "daily", jointCommission},
    UnsafeSpelling{"Q.D.", "daily", jointCommission},
    UnsafeSpelling{"q.d.", "daily", jointCommission},
    UnsafeSpelling{"QOD", "every 2 day", jointCommission},
    UnsafeSpelling{"qod", "every 2 day", jointCommission},
    UnsafeSpelling{"q.o.d.", "every 2 day", jointCommission},
    UnsafeSpelling{"µ", "mcg", ismp},  // the micro sign
    UnsafeSpelling{"μ", "mcg", ismp},  // the Greek letter that looks like it
    UnsafeSpelling{"cc", "mL", ismp},
    UnsafeSpelling{"SC", "subcutaneous", ismp},
    UnsafeSpelling{"SQ", "subcutaneous", ismp},
    UnsafeSpelling{"HS", "bedtime", ismp},
    UnsafeSpelling{"hs", "bedtime", ismp},
    UnsafeSpelling{"qhs", "bedtime", ismpRecalled},
    UnsafeSpelling{"qn", "bedtime", ismpRecalled},
    UnsafeSpelling{"q1d", "daily", ismpRecalled},
    UnsafeSpelling{"od", "daily", ismpRecalled},
    UnsafeSpelling{"OD", "daily", ismpRecalled},
    UnsafeSpelling{"o.d.", "daily", ismpRecalled},
    UnsafeSpelling{"TIW", "3 times a week", ismpRecalled},
    UnsafeSpelling{"tiw", "3 times a week", ismpRecalled},
    UnsafeSpelling{"ug", "mcg", ismpRecalled},
    UnsafeSpelling{"D/C", "stop", ismpRecalled},
    UnsafeSpelling{"gtt", "drops", "common practice, no source"},
    UnsafeSpelling{"tsp", "mL", "AAP policy on metric units, Pediatrics 2015;135:784, read"},
    UnsafeSpelling{"/d", "/day", perDay},
    UnsafeSpelling{"divided", "per dose, or per day with the number of doses", perDay},
};

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

/// A text that can be asked for what stands before its beginning and after its end.
class Page {
 public:
  explicit Page(std::string_view text) : text_(text) {}
  [[nodiscard]] char at(std::size_t i) const { return i < text_.size() ? text_[i] : ' '; }
  [[nodiscard]] char before(std::size_t i) const { return i > 0 ? text_[i - 1] : ' '; }
  [[nodiscard]] std::string_view from(std::size_t i) const { return text_.substr(std::min(i, text_.size())); }
  [[nodiscard]] std::string around(std::size_t i) const {
    const std::size_t begin = i > 20 ? i - 20 : 0;
    return " in \"" + std::string(text_.substr(begin, 50)) + "\"";
  }

 private:
  std::string_view text_;
};

bool isSurface(std::string_view after) {
  constexpr std::array<std::string_view, 5> marks = {" m²", " m2", " ~m²~", " square metre", "..."};
  return std::any_of(marks.begin(), marks.end(),
                     [&](std::string_view mark) { return after.starts_with(mark); });
}

/// Whether the digits before the point are set off with commas rightly, or not at all.
bool isGrouped(std::string_view whole, bool withCommas) {
  if (whole.find(',') == std::string_view::npos) return whole.size() < 4 || !withCommas;
  if (!withCommas || whole.front() == ',') return false;
  for (std::size_t i = 0; i < whole.size(); ++i)
    if ((whole[i] == ',') != ((whole.size() - i) % 4 == 0)) return false;
  return true;
}

/// One number that begins at `begin`; moves it past the number. What is wrong with it, or nothing.
std::string wrongNumber(const Page& page, std::size_t& begin, Written written) {
  std::size_t end = begin;
  while (isDigit(page.at(end)) || (page.at(end) == ',' && isDigit(page.at(end + 1)))) ++end;
  const std::string_view whole = page.from(begin).substr(0, end - begin);
  if (page.at(end) == '.' && isDigit(page.at(end + 1))) {
    ++end;
    while (isDigit(page.at(end))) ++end;
    if (page.before(end) == '0' && !isSurface(page.from(end)))
      return "a zero at the end" + page.around(begin);
  }
  if (isLetter(page.at(end))) return "a number joined to its unit" + page.around(begin);
  if (!isGrouped(whole, written == Written::forReaders)) return "thousands" + page.around(begin);
  begin = end;
  return {};
}

std::string wrongNumbers(const Page& page, std::size_t size, Written written) {
  for (std::size_t i = 0; i < size;) {
    if (page.at(i) == '.' && isDigit(page.at(i + 1)) && !isDigit(page.before(i)))
      return "a point without a digit before it" + page.around(i);
    if (!isDigit(page.at(i))) {
      ++i;
      continue;
    }
    if (isLetter(page.before(i)) || page.before(i) == '^') {  // "m2", and the exponents of a formula
      while (isDigit(page.at(i)) || page.at(i) == '.') ++i;
      continue;
    }
    if (std::string wrong = wrongNumber(page, i, written); !wrong.empty()) return wrong;
  }
  return {};
}

std::string wrongSpelling(std::string_view text, const UnsafeSpelling& unsafe) {
  const Page page(text);
  for (std::size_t at = text.find(unsafe.spelling); at != std::string_view::npos;
       at = text.find(unsafe.spelling, at + 1)) {
    const bool inWord = isLetter(unsafe.spelling.front()) && isLetter(page.before(at));
    const bool goesOn = isLetter(unsafe.spelling.back()) && isLetter(page.at(at + unsafe.spelling.size()));
    // a sum may be divided by something; what must not stand alone is a dose "in divided doses"
    const bool sum = unsafe.spelling == "divided" && page.from(at).starts_with("divided by");
    if (!inWord && !goesOn && !sum) return std::string(unsafe.spelling) + page.around(at);
  }
  return {};
}

}  // namespace

std::span<const UnsafeSpelling> unsafeSpellings() { return spellings; }

std::string unsafeWriting(std::string_view text, Written written) {
  if (std::string wrong = wrongNumbers(Page(text), text.size(), written); !wrong.empty()) return wrong;
  for (const UnsafeSpelling& unsafe : spellings)
    if (std::string wrong = wrongSpelling(text, unsafe); !wrong.empty()) return wrong;
  return {};
}

}  // namespace wardchalk::test
