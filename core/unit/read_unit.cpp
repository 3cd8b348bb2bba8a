#include "core/unit/read_unit.h"

#include <algorithm>
#include <array>
#include <string>

namespace wardchalk {

namespace {

struct Spelling {
  std::string_view typed;
  std::string_view write;  // the same unit in our spelling; empty: no unit of ours is the same
};

/// Spellings on the lists of error-prone abbreviations, with the safe form (T02). Sources: ISMP List of
/// Error-Prone Abbreviations; Joint Commission "Do Not Use" list, both as reprinted in nursing journals.
/// Spoons: AAP policy on metric units, Pediatrics 2015;135:784. A spoon, a grain and a megaunit are no other
/// name for a unit of ours, so nothing is offered that would leave the number standing.
constexpr std::array unsafeSpellings = {
    Spelling{"U", "units"},     Spelling{"u", "units"}, Spelling{"IU", "units"},  Spelling{"I.U.", "units"},
    Spelling{"µg", "mcg"},      Spelling{"μg", "mcg"},  Spelling{"ug", "mcg"},    Spelling{"mcgm", "mcg"},
    Spelling{"cc", "mL"},       Spelling{"ccm", "mL"},  Spelling{"gtt", "drop"},  Spelling{"gtts", "drop"},
    Spelling{"tsp", ""},        Spelling{"tbsp", ""},   Spelling{"teaspoon", ""}, Spelling{"teaspoons", ""},
    Spelling{"tablespoon", ""}, Spelling{"gr", ""},     Spelling{"grain", ""},    Spelling{"grains", ""},
    Spelling{"MU", ""},         Spelling{"mU", ""},     Spelling{"ng", ""},
};

/// Other spellings people write, with ours. Capitals are looked up in lower case too.
constexpr std::array otherSpellings = {
    Spelling{"microgram", "mcg"},  Spelling{"micrograms", "mcg"},
    Spelling{"mcgs", "mcg"},       Spelling{"mgs", "mg"},
    Spelling{"mgm", "mg"},         Spelling{"milligram", "mg"},
    Spelling{"milligrams", "mg"},  Spelling{"gm", "g"},
    Spelling{"gms", "g"},          Spelling{"gram", "g"},
    Spelling{"grams", "g"},        Spelling{"unit", "units"},
    Spelling{"kgs", "kg"},         Spelling{"kilogram", "kg"},
    Spelling{"kilograms", "kg"},   Spelling{"kilo", "kg"},
    Spelling{"kilos", "kg"},       Spelling{"lbs", "lb"},
    Spelling{"pound", "lb"},       Spelling{"pounds", "lb"},
    Spelling{"#", "lb"},           Spelling{"ounce", "oz"},
    Spelling{"ounces", "oz"},      Spelling{"ozs", "oz"},
    Spelling{"cms", "cm"},         Spelling{"centimetre", "cm"},
    Spelling{"centimetres", "cm"}, Spelling{"centimeter", "cm"},
    Spelling{"centimeters", "cm"}, Spelling{"metre", "m"},
    Spelling{"metres", "m"},       Spelling{"meter", "m"},
    Spelling{"meters", "m"},       Spelling{"inch", "in"},
    Spelling{"inches", "in"},      Spelling{"ins", "in"},
    Spelling{"\"", "in"},          Spelling{"″", "in"},
    Spelling{"foot", "ft"},        Spelling{"feet", "ft"},
    Spelling{"'", "ft"},           Spelling{"′", "ft"},
    Spelling{"sq m", "m2"},        Spelling{"sqm", "m2"},
    Spelling{"m^2", "m2"},         Spelling{"mls", "mL"},
    Spelling{"millilitre", "mL"},  Spelling{"millilitres", "mL"},
    Spelling{"milliliter", "mL"},  Spelling{"milliliters", "mL"},
    Spelling{"litre", "L"},        Spelling{"litres", "L"},
    Spelling{"liter", "L"},        Spelling{"liters", "L"},
    Spelling{"hr", "h"},           Spelling{"hrs", "h"},
    Spelling{"hour", "h"},         Spelling{"hours", "h"},
    Spelling{"mins", "min"},       Spelling{"minute", "min"},
    Spelling{"minutes", "min"},    Spelling{"days", "day"},
    Spelling{"weeks", "week"},     Spelling{"wk", "week"},
    Spelling{"wks", "week"},       Spelling{"months", "month"},
    Spelling{"mo", "month"},       Spelling{"mos", "month"},
    Spelling{"mth", "month"},      Spelling{"mths", "month"},
    Spelling{"years", "year"},     Spelling{"yr", "year"},
    Spelling{"yrs", "year"},       Spelling{"y", "year"},
    Spelling{"yo", "year"},        Spelling{"doses", "dose"},
    Spelling{"tab", "tablet"},     Spelling{"tabs", "tablet"},
    Spelling{"tablets", "tablet"}, Spelling{"cap", "capsule"},
    Spelling{"caps", "capsule"},   Spelling{"capsules", "capsule"},
    Spelling{"drops", "drop"},
};

/// Units that are not ours and an exact count of one that is. Sources: SI prefixes, SI Brochure (BIPM), 9th
/// edition; stone: International yard and pound, 14 lb.
struct Multiple {
  std::string_view typed;
  std::int64_t over;
  std::int64_t under;
  Unit unit;
};
constexpr std::array multiples = {
    Multiple{"mm", 1, 10, Unit::cm},           Multiple{"dL", 100, 1, Unit::mL},
    Multiple{"dl", 100, 1, Unit::mL},          Multiple{"mol", 1000, 1, Unit::mmol},
    Multiple{"stone", 14, 1, Unit::lb},        Multiple{"st", 14, 1, Unit::lb},
    Multiple{"MU", 1000000, 1, Unit::units},   Multiple{"mU", 1, 1000, Unit::units},
    Multiple{"ng", 1, 1000, Unit::mcg},        Multiple{"nanogram", 1, 1000, Unit::mcg},
    Multiple{"nanograms", 1, 1000, Unit::mcg},
};

constexpr std::array<std::string_view, 4> courseWords = {"course", "total", "cycle", "treatment"};

std::string lowered(std::string_view text) {
  std::string low(text);
  for (char& c : low)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return low;
}

template <std::size_t size>
const Spelling* find(const std::array<Spelling, size>& table, std::string_view text) {
  const auto found =
      std::find_if(table.begin(), table.end(), [&](const Spelling& one) { return one.typed == text; });
  return found == table.end() ? nullptr : &*found;
}

/// A unit of ours written with other capitals. Only where no two of ours, and no unit of another size, differ
/// by them.
std::string_view inOtherCapitals(const std::string& low) {
  if (low == "m" || low == "mu") return {};
  for (const UnitInfo& info : unitTable)
    if (lowered(info.id) == low) return info.id;
  if (const Spelling* spelling = find(otherSpellings, low)) return spelling->write;
  return {};
}

/// What to write for a spelling that is not ours and not unsafe; empty where that is not certain.
std::string_view respelled(std::string_view text) {
  if (const Spelling* spelling = find(otherSpellings, text)) return spelling->write;
  if (otherSize(text)) return {};
  if (text.size() > 1 && (text.back() == '.' || text.back() == ',')) {
    const std::string_view bare = text.substr(0, text.size() - 1);
    if (const auto unit = unitWithId(bare)) return idOf(*unit);
    return respelled(bare);
  }
  return inOtherCapitals(lowered(text));
}

/// On a list of error-prone abbreviations, in the capitals given or, for "Gtt" and "CC", in small letters.
const Spelling* unsafe(std::string_view text) {
  if (const Spelling* spelling = find(unsafeSpellings, text)) return spelling;
  const std::string low = lowered(text);
  if (low == "iu") return find(unsafeSpellings, "IU");
  return find(unsafeSpellings, low);
}

}  // namespace

std::optional<OtherSize> otherSize(std::string_view text) {
  for (const Multiple& multiple : multiples)
    if (multiple.typed == text) return OtherSize{Number::ratio(multiple.over, multiple.under), multiple.unit};
  return std::nullopt;
}

bool isCourseWord(std::string_view word) {
  return std::find(courseWords.begin(), courseWords.end(), word) != courseWords.end();
}

Result<Unit> readUnit(std::string_view text) {
  if (text.empty()) return refusalOf(RefusalCode::unitMissing, text);
  if (const auto unit = unitWithId(text)) return *unit;
  if (text == "d" || text == "D") return refusalOf(RefusalCode::perUnclear, text);
  if (const Spelling* spelling = unsafe(text))
    return refusalOf(RefusalCode::unitUnsafe, text, spelling->write);
  if (isCourseWord(text)) return refusalOf(RefusalCode::courseTotal, text);
  return refusalOf(RefusalCode::unitUnknown, text, respelled(text));
}

}  // namespace wardchalk
