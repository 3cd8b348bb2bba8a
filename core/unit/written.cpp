#include "core/unit/written.h"

#include <algorithm>
#include <array>

#include "core/number/decimal_text.h"

namespace wardchalk {

namespace {

struct Spelling {
  std::string_view typed;
  std::string_view write;
};

/// Spellings on the lists of error-prone abbreviations, with the safe form (T02). Sources: ISMP List of
/// Error-Prone Abbreviations; Joint Commission "Do Not Use" list, both as reprinted in nursing journals.
constexpr std::array unsafeSpellings = {
    Spelling{"U", "units"},      Spelling{"u", "units"},      Spelling{"IU", "units"},    Spelling{"iu", "units"},
    Spelling{"I.U.", "units"},   Spelling{"µg", "mcg"},       Spelling{"μg", "mcg"},      Spelling{"ug", "mcg"},
    Spelling{"mcgm", "mcg"},     Spelling{"cc", "mL"},        Spelling{"CC", "mL"},       Spelling{"ccm", "mL"},
    Spelling{"gtt", "drop"},     Spelling{"gtts", "drop"},    Spelling{"tsp", "mL"},      Spelling{"Tbsp", "mL"},
    Spelling{"tbsp", "mL"},      Spelling{"teaspoon", "mL"},  Spelling{"teaspoons", "mL"}, Spelling{"gr", "mg"},
    Spelling{"grain", "mg"},     Spelling{"grains", "mg"},    Spelling{"MU", "units"},    Spelling{"mU", "units"},
};

/// Other spellings people write, with ours.
constexpr std::array otherSpellings = {
    Spelling{"microgram", "mcg"}, Spelling{"micrograms", "mcg"}, Spelling{"MCG", "mcg"},    Spelling{"mgs", "mg"},
    Spelling{"Mg", "mg"},         Spelling{"MG", "mg"},          Spelling{"mgm", "mg"},     Spelling{"milligram", "mg"},
    Spelling{"milligrams", "mg"}, Spelling{"G", "g"},            Spelling{"gm", "g"},       Spelling{"gms", "g"},
    Spelling{"gram", "g"},        Spelling{"grams", "g"},        Spelling{"unit", "units"}, Spelling{"Units", "units"},
    Spelling{"UNITS", "units"},   Spelling{"mEQ", "mEq"},        Spelling{"meq", "mEq"},    Spelling{"MEQ", "mEq"},
    Spelling{"mMol", "mmol"},     Spelling{"mol", "mmol"},       Spelling{"Kg", "kg"},      Spelling{"KG", "kg"},
    Spelling{"kgs", "kg"},        Spelling{"kilogram", "kg"},    Spelling{"kilograms", "kg"}, Spelling{"kilo", "kg"},
    Spelling{"kilos", "kg"},      Spelling{"lbs", "lb"},         Spelling{"LB", "lb"},      Spelling{"Lb", "lb"},
    Spelling{"pound", "lb"},      Spelling{"pounds", "lb"},      Spelling{"#", "lb"},       Spelling{"ounce", "oz"},
    Spelling{"ounces", "oz"},     Spelling{"ozs", "oz"},         Spelling{"stone", "lb"},   Spelling{"st", "lb"},
    Spelling{"CM", "cm"},         Spelling{"Cm", "cm"},          Spelling{"cms", "cm"},     Spelling{"mm", "cm"},
    Spelling{"centimetre", "cm"}, Spelling{"centimetres", "cm"}, Spelling{"metre", "m"},    Spelling{"meter", "m"},
    Spelling{"metres", "m"},      Spelling{"inch", "in"},        Spelling{"inches", "in"},  Spelling{"\"", "in"},
    Spelling{"″", "in"},          Spelling{"foot", "ft"},        Spelling{"feet", "ft"},    Spelling{"'", "ft"},
    Spelling{"′", "ft"},          Spelling{"sq m", "m2"},        Spelling{"sqm", "m2"},     Spelling{"m^2", "m2"},
    Spelling{"M2", "m2"},         Spelling{"ml", "mL"},          Spelling{"ML", "mL"},      Spelling{"mls", "mL"},
    Spelling{"mLs", "mL"},        Spelling{"millilitre", "mL"},  Spelling{"millilitres", "mL"}, Spelling{"l", "L"},
    Spelling{"litre", "L"},       Spelling{"litres", "L"},       Spelling{"liter", "L"},    Spelling{"dL", "mL"},
    Spelling{"H", "h"},           Spelling{"hr", "h"},           Spelling{"hrs", "h"},      Spelling{"hour", "h"},
    Spelling{"hours", "h"},       Spelling{"mins", "min"},       Spelling{"minute", "min"}, Spelling{"minutes", "min"},
    Spelling{"days", "day"},      Spelling{"Day", "day"},        Spelling{"weeks", "week"}, Spelling{"wk", "week"},
    Spelling{"wks", "week"},      Spelling{"months", "month"},   Spelling{"mo", "month"},   Spelling{"mth", "month"},
    Spelling{"years", "year"},    Spelling{"yr", "year"},        Spelling{"yrs", "year"},   Spelling{"y", "year"},
    Spelling{"doses", "dose"},    Spelling{"Dose", "dose"},      Spelling{"tab", "tablet"}, Spelling{"tabs", "tablet"},
    Spelling{"tablets", "tablet"}, Spelling{"cap", "capsule"},   Spelling{"caps", "capsule"}, Spelling{"capsules", "capsule"},
    Spelling{"drops", "drop"},
};

/// Words that make an amount a total for a whole course of treatment (H10).
constexpr std::array courseWords = {"course", "total", "cycle", "treatment"};

Refusal refuse(RefusalCode code, std::string_view typed, std::string_view suggestion = {}) {
  return {code, std::string(typed.substr(0, 60)), std::string(suggestion), {}};
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

bool startsNumber(std::string_view text) {
  return !text.empty() && (isDigit(text[0]) || text[0] == '.' || text[0] == '-' || text[0] == '+' || text[0] == ',');
}

/// Characters that belong to a number or to what people mistake for one ("1,5", "1e3", "1:1000").
std::size_t numberLength(std::string_view text) {
  std::size_t i = 0;
  while (i < text.size()) {
    const char c = text[i];
    const bool exponent = (c == 'e' || c == 'E') && i > 0 && i + 1 < text.size() &&
                          (isDigit(text[i + 1]) || text[i + 1] == '-' || text[i + 1] == '+');
    if (!isDigit(c) && c != '.' && c != ',' && c != '-' && c != '+' && !exponent) break;
    ++i;
  }
  return i;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

/// "1:1000" or "1 in 200" as mg/mL: 1 g in so many mL (H17).
std::optional<Refusal> ratioStrength(std::string_view text) {
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos) return std::nullopt;
  const auto one = readPositive(trimmed(text.substr(0, colon)));
  const auto in = readPositive(trimmed(text.substr(colon + 1)));
  if (!one || !in) return refuse(RefusalCode::ratioStrength, text);
  return refuse(RefusalCode::ratioStrength, text, exactText(*one * Number(1000) / *in) + " mg/mL");
}

/// "1 %" as mg/mL: 1 g in 100 mL (H17).
std::optional<Refusal> percentStrength(std::string_view text) {
  const std::size_t sign = text.find('%');
  if (sign == std::string_view::npos) return std::nullopt;
  const auto percent = readPositive(trimmed(text.substr(0, sign)));
  if (!percent) return refuse(RefusalCode::percentStrength, text);
  return refuse(RefusalCode::percentStrength, text, exactText(*percent * Number(10)) + " mg/mL");
}

/// A cursor over one written quantity.
class Reader {
 public:
  explicit Reader(std::string_view text) : rest_(text) {}

  [[nodiscard]] bool atEnd() const { return rest_.empty(); }
  [[nodiscard]] bool atNumber() const { return startsNumber(rest_); }

  bool take(std::string_view what) {
    if (!rest_.starts_with(what)) return false;
    rest_.remove_prefix(what.size());
    return true;
  }

  Result<Number> number() {
    const std::string_view text = rest_.substr(0, numberLength(rest_));
    rest_.remove_prefix(text.size());
    return readDecimal(text);
  }

  Result<Unit> unit() {
    const std::string_view text = rest_.substr(0, std::min(rest_.find_first_of(" /"), rest_.size()));
    rest_.remove_prefix(text.size());
    return readUnit(text);
  }

  /// A number, one space and a unit.
  Result<Quantity> quantity() {
    if (!atNumber()) return refuse(RefusalCode::numberMissing, rest_);
    const std::string_view whole = rest_;
    Result<Number> value = number();
    if (!value) return value.refusal();
    if (atEnd()) return refuse(RefusalCode::unitMissing, whole);
    if (!take(" ")) return missingSpace(whole);
    if (atEnd()) return refuse(RefusalCode::unitMissing, whole);
    if (atNumber()) return refuse(RefusalCode::spaceInNumber, whole);
    Result<Unit> found = unit();
    if (!found) return found.refusal();
    return Quantity{*value, *found};
  }

  [[nodiscard]] std::string_view rest() const { return rest_; }

 private:
  [[nodiscard]] Refusal missingSpace(std::string_view whole) const {
    const std::string_view digits = whole.substr(0, whole.size() - rest_.size());
    const std::string_view name = rest_.substr(0, std::min(rest_.find_first_of(" /"), rest_.size()));
    const Result<Unit> found = readUnit(name);
    if (!found && found.refusal().code != RefusalCode::unitUnknown) return found.refusal();
    if (!found && found.refusal().suggestion.empty()) return refuse(RefusalCode::notANumber, whole);
    const std::string_view write = found ? name : std::string_view(found.refusal().suggestion);
    return refuse(RefusalCode::spaceMissing, whole, std::string(digits) + " " + std::string(write));
  }

  std::string_view rest_;
};

Result<Written::Per> readPer(Reader& reader) {
  if (reader.atNumber()) {
    Result<Quantity> quantity = reader.quantity();
    if (!quantity) return quantity.refusal();
    if (quantity->value.isZero()) return refuse(RefusalCode::zero, reader.rest());
    return Written::Per{quantity->value, quantity->unit};
  }
  if (reader.take("d/") || reader.rest() == "d" || reader.rest() == "D") return refuse(RefusalCode::perUnclear, "/d");
  Result<Unit> unit = reader.unit();
  if (!unit) return unit.refusal();
  return Written::Per{std::nullopt, *unit};
}

Result<Written> readWhole(Reader reader) {
  Result<Quantity> first = reader.quantity();
  if (!first) return first.refusal();
  Written written{*first, {}, {}};
  while (!reader.atEnd()) {
    if (reader.take("/")) {
      Result<Written::Per> per = readPer(reader);
      if (!per) return per.refusal();
      written.per.push_back(*per);
    } else if (reader.take(" ") && reader.atNumber() && written.per.empty()) {
      Result<Quantity> more = reader.quantity();
      if (!more) return more.refusal();
      written.more.push_back(*more);
    } else {
      return refuse(RefusalCode::trailingText, trimmed(reader.rest()));
    }
  }
  return written;
}

}  // namespace

Result<Unit> readUnit(std::string_view text) {
  if (text.empty()) return refuse(RefusalCode::unitMissing, text);
  if (const auto unit = unitWithId(text)) return *unit;
  if (text == "d" || text == "D") return refuse(RefusalCode::perUnclear, text);
  for (const Spelling& spelling : unsafeSpellings)
    if (spelling.typed == text) return refuse(RefusalCode::unitUnsafe, text, spelling.write);
  for (const Spelling& spelling : otherSpellings)
    if (spelling.typed == text) return refuse(RefusalCode::unitUnknown, text, spelling.write);
  if (std::find(courseWords.begin(), courseWords.end(), text) != courseWords.end())
    return refuse(RefusalCode::courseTotal, text);
  return refuse(RefusalCode::unitUnknown, text);
}

Result<Written> readWritten(std::string_view text) {
  if (text.empty()) return refuse(RefusalCode::empty, text);
  if (text.size() > 200) return refuse(RefusalCode::tooLong, text.substr(0, 40));
  if (auto refusal = ratioStrength(text)) return *refusal;
  if (auto refusal = percentStrength(text)) return *refusal;
  return readWhole(Reader(text));
}

}  // namespace wardchalk
