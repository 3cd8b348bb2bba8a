#include "core/unit/read_unit.h"

#include <algorithm>
#include <array>
#include <string>

#include "core/number/ascii.h"

namespace wardchalk {

namespace {

struct TypedSpelling {
  std::string_view typed;
  std::string_view write;  // the same unit in our spelling; empty: no unit of ours is the same
};

/// Spellings on the lists of error-prone abbreviations, with the safe form (T02). Sources: ISMP List of
/// Error-Prone Abbreviations; Joint Commission "Do Not Use" list, both as reprinted in nursing journals.
/// Spoons: AAP policy on metric units, Pediatrics 2015;135:784. A spoon, a grain and a megaunit are no other
/// name for a unit of ours, so nothing is offered that would leave the number standing.
constexpr std::array unsafeSpellings = {
    TypedSpelling{"U", "units"},    TypedSpelling{"u", "units"},     TypedSpelling{"IU", "units"},
    TypedSpelling{"I.U.", "units"}, TypedSpelling{"µg", "mcg"},      TypedSpelling{"μg", "mcg"},
    TypedSpelling{"ug", "mcg"},     TypedSpelling{"mcgm", "mcg"},    TypedSpelling{"cc", "mL"},
    TypedSpelling{"ccm", "mL"},     TypedSpelling{"gtt", "drop"},    TypedSpelling{"gtts", "drop"},
    TypedSpelling{"tsp", ""},       TypedSpelling{"tbsp", ""},       TypedSpelling{"teaspoon", ""},
    TypedSpelling{"teaspoons", ""}, TypedSpelling{"tablespoon", ""}, TypedSpelling{"gr", ""},
    TypedSpelling{"grain", ""},     TypedSpelling{"grains", ""},     TypedSpelling{"MU", ""},
    TypedSpelling{"mU", ""},        TypedSpelling{"ng", ""},
};

/// Other spellings people write, with ours. Capitals are looked up in lower case too.
constexpr std::array otherSpellings = {
    TypedSpelling{"microgram", "mcg"},  TypedSpelling{"micrograms", "mcg"},
    TypedSpelling{"mcgs", "mcg"},       TypedSpelling{"mgs", "mg"},
    TypedSpelling{"mgm", "mg"},         TypedSpelling{"milligram", "mg"},
    TypedSpelling{"milligrams", "mg"},  TypedSpelling{"gm", "g"},
    TypedSpelling{"gms", "g"},          TypedSpelling{"gram", "g"},
    TypedSpelling{"grams", "g"},        TypedSpelling{"unit", "units"},
    TypedSpelling{"kgs", "kg"},         TypedSpelling{"kilogram", "kg"},
    TypedSpelling{"kilograms", "kg"},   TypedSpelling{"kilo", "kg"},
    TypedSpelling{"kilos", "kg"},       TypedSpelling{"lbs", "lb"},
    TypedSpelling{"pound", "lb"},       TypedSpelling{"pounds", "lb"},
    TypedSpelling{"#", "lb"},           TypedSpelling{"ounce", "oz"},
    TypedSpelling{"ounces", "oz"},      TypedSpelling{"ozs", "oz"},
    TypedSpelling{"cms", "cm"},         TypedSpelling{"centimetre", "cm"},
    TypedSpelling{"centimetres", "cm"}, TypedSpelling{"centimeter", "cm"},
    TypedSpelling{"centimeters", "cm"}, TypedSpelling{"metre", "m"},
    TypedSpelling{"metres", "m"},       TypedSpelling{"meter", "m"},
    TypedSpelling{"meters", "m"},       TypedSpelling{"inch", "in"},
    TypedSpelling{"inches", "in"},      TypedSpelling{"ins", "in"},
    TypedSpelling{"\"", "in"},          TypedSpelling{"″", "in"},
    TypedSpelling{"foot", "ft"},        TypedSpelling{"feet", "ft"},
    TypedSpelling{"'", "ft"},           TypedSpelling{"′", "ft"},
    TypedSpelling{"sq m", "m2"},        TypedSpelling{"sqm", "m2"},
    TypedSpelling{"m^2", "m2"},         TypedSpelling{"mls", "mL"},
    TypedSpelling{"millilitre", "mL"},  TypedSpelling{"millilitres", "mL"},
    TypedSpelling{"milliliter", "mL"},  TypedSpelling{"milliliters", "mL"},
    TypedSpelling{"litre", "L"},        TypedSpelling{"litres", "L"},
    TypedSpelling{"liter", "L"},        TypedSpelling{"liters", "L"},
    TypedSpelling{"hr", "h"},           TypedSpelling{"hrs", "h"},
    TypedSpelling{"hour", "h"},         TypedSpelling{"hours", "h"},
    TypedSpelling{"mins", "min"},       TypedSpelling{"minute", "min"},
    TypedSpelling{"minutes", "min"},    TypedSpelling{"days", "day"},
    TypedSpelling{"weeks", "week"},     TypedSpelling{"wk", "week"},
    TypedSpelling{"wks", "week"},       TypedSpelling{"months", "month"},
    TypedSpelling{"mo", "month"},       TypedSpelling{"mos", "month"},
    TypedSpelling{"mth", "month"},      TypedSpelling{"mths", "month"},
    TypedSpelling{"years", "year"},     TypedSpelling{"yr", "year"},
    TypedSpelling{"yrs", "year"},       TypedSpelling{"y", "year"},
    TypedSpelling{"yo", "year"},        TypedSpelling{"doses", "dose"},
    TypedSpelling{"tab", "tablet"},     TypedSpelling{"tabs", "tablet"},
    TypedSpelling{"tablets", "tablet"}, TypedSpelling{"cap", "capsule"},
    TypedSpelling{"caps", "capsule"},   TypedSpelling{"capsules", "capsule"},
    TypedSpelling{"drops", "drop"},
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

template <std::size_t size>
const TypedSpelling* find(const std::array<TypedSpelling, size>& table, std::string_view text) {
  const auto found =
      std::find_if(table.begin(), table.end(), [&](const TypedSpelling& one) { return one.typed == text; });
  return found == table.end() ? nullptr : &*found;
}

/// A unit of ours written with other capitals. Only where no two of ours, and no unit of another size, differ
/// by them.
std::string_view inOtherCapitals(const std::string& low) {
  if (low == "m" || low == "mu") return {};
  for (const UnitInfo& info : unitTable)
    if (lowered(info.id) == low) return info.id;
  if (const TypedSpelling* spelling = find(otherSpellings, low)) return spelling->write;
  return {};
}

/// What to write for a spelling that is not ours and not unsafe; empty where that is not certain.
std::string_view respelled(std::string_view text) {
  if (const TypedSpelling* spelling = find(otherSpellings, text)) return spelling->write;
  if (otherSize(text)) return {};
  if (text.size() > 1 && (text.back() == '.' || text.back() == ',')) {
    const std::string_view bare = text.substr(0, text.size() - 1);
    if (const auto unit = unitWithId(bare)) return idOf(*unit);
    return respelled(bare);
  }
  return inOtherCapitals(lowered(text));
}

/// On a list of error-prone abbreviations, in the capitals given or, for "Gtt" and "CC", in small letters.
const TypedSpelling* unsafe(std::string_view text) {
  if (const TypedSpelling* spelling = find(unsafeSpellings, text)) return spelling;
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
  if (const TypedSpelling* spelling = unsafe(text))
    return refusalOf(RefusalCode::unitUnsafe, text, spelling->write);
  if (isCourseWord(text)) return refusalOf(RefusalCode::courseTotal, text);
  return refusalOf(RefusalCode::unitUnknown, text, respelled(text));
}

}  // namespace wardchalk
