#include "core/record/field_text.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/entry/read_entry.h"
#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"

namespace wardchalk {

namespace {

using View = std::string_view;
using Choices = std::span<const View>;

constexpr std::array<View, 4> heightUnits = {"cm", "m", "in", "ft in"};
constexpr std::array<View, 5> weightUnits = {"kg", "g", "lb", "oz", "lb oz"};
constexpr std::array<View, 5> ageUnits = {"year", "month", "week", "day", "year month"};
constexpr std::array<View, 1> areaUnits = {"m2"};
constexpr std::array<View, 6> drugUnitNames = {"mcg", "mg", "g", "units", "mmol", "mEq"};
constexpr std::array<View, 7> orderUnits = {"mcg", "mg", "g", "units", "mmol", "mEq", "mL"};
constexpr std::array<View, 2> volumeUnits = {"mL", "L"};
constexpr std::array<View, 2> timeUnits = {"min", "h"};
constexpr std::array<View, 1> dropUnits = {"drop/mL"};
constexpr std::array<View, 4> strengthIn = {"mL", "L", "tablet", "capsule"};

constexpr std::array<View, 12> orderBases = {"/dose", "/kg/dose", "/m2/dose", "/day", "/kg/day", "/m2/day",
                                             "/h",    "/kg/h",    "/m2/h",    "/min", "/kg/min", "/m2/min"};
constexpr std::array<View, 15> referenceBases = {"/dose",   "/kg/dose", "/m2/dose", "/day",     "/kg/day",
                                                 "/m2/day", "/week",    "/kg/week", "/m2/week", "/h",
                                                 "/kg/h",   "/m2/h",    "/min",     "/kg/min",  "/m2/min"};
constexpr std::array<View, 3> perDose = {"/dose", "/kg/dose", "/m2/dose"};
constexpr std::array<View, 3> perDay = {"/day", "/kg/day", "/m2/day"};
constexpr std::array<View, 4> rates = {"/min", "/kg/min", "/h", "/kg/h"};

struct Shaped {
  View path;
  FieldShape shape;
  Choices units;
  Choices second;
  View unsaid = {};  // the time that a file may leave out
};

constexpr std::array shapes = {
    Shaped{path::age, FieldShape::parts, ageUnits, {}},
    Shaped{path::height, FieldShape::parts, heightUnits, {}},
    Shaped{path::weight, FieldShape::parts, weightUnits, {}},
    Shaped{path::bsa, FieldShape::quantity, areaUnits, {}},
    Shaped{path::dose, FieldShape::dose, orderUnits, orderBases, "/dose"},
    Shaped{path::low, FieldShape::lowEnd, {}, {}},
    Shaped{path::high, FieldShape::dose, drugUnitNames, referenceBases},
    Shaped{path::maxPerDose, FieldShape::dose, drugUnitNames, perDose, "/dose"},
    Shaped{path::maxPerDay, FieldShape::dose, drugUnitNames, perDay, "/day"},
    Shaped{path::ageFrom, FieldShape::parts, ageUnits, {}},
    Shaped{path::ageOver, FieldShape::parts, ageUnits, {}},
    Shaped{path::ageBelow, FieldShape::parts, ageUnits, {}},
    Shaped{path::ageUpTo, FieldShape::parts, ageUnits, {}},
    Shaped{path::weightFrom, FieldShape::parts, weightUnits, {}},
    Shaped{path::weightOver, FieldShape::parts, weightUnits, {}},
    Shaped{path::weightBelow, FieldShape::parts, weightUnits, {}},
    Shaped{path::weightUpTo, FieldShape::parts, weightUnits, {}},
    Shaped{path::bsaFrom, FieldShape::quantity, areaUnits, {}},
    Shaped{path::bsaOver, FieldShape::quantity, areaUnits, {}},
    Shaped{path::bsaBelow, FieldShape::quantity, areaUnits, {}},
    Shaped{path::bsaUpTo, FieldShape::quantity, areaUnits, {}},
    Shaped{path::maxConcentration, FieldShape::strength, drugUnitNames, volumeUnits},
    Shaped{path::minConcentration, FieldShape::strength, drugUnitNames, volumeUnits},
    Shaped{path::minInfusionTime, FieldShape::quantity, timeUnits, {}},
    Shaped{path::maxInfusionRate, FieldShape::dose, drugUnitNames, rates},
    Shaped{path::strength, FieldShape::strength, drugUnitNames, strengthIn},
    Shaped{path::content, FieldShape::quantity, drugUnitNames, {}},
    Shaped{path::diluent, FieldShape::quantity, volumeUnits, {}},
    Shaped{path::finalVolume, FieldShape::quantity, volumeUnits, {}},
    Shaped{path::displacement, FieldShape::quantity, volumeUnits, {}},
    Shaped{path::infusionVolume, FieldShape::quantity, volumeUnits, {}},
    Shaped{path::infusionOver, FieldShape::quantity, timeUnits, {}},
    Shaped{path::dropFactor, FieldShape::quantity, dropUnits, {}},
};

constexpr Shaped plainWords{{}, FieldShape::words, {}, {}};

const Shaped& shapedOf(View path) {
  const auto found =
      std::find_if(shapes.begin(), shapes.end(), [&](const Shaped& one) { return one.path == path; });
  return found == shapes.end() ? plainWords : *found;
}

bool offers(Choices choices, View choice) {
  return std::find(choices.begin(), choices.end(), choice) != choices.end();
}

/// A space at either end of a box cannot be seen and means nothing.
View trimmed(View text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

bool isNumber(View text) { return static_cast<bool>(readDecimal(text)); }

/// "17.2 kg" in two: the number and the rest; nothing where it does not start with a number and one space.
struct NumberAndRest {
  View number;
  View rest;
};

std::optional<NumberAndRest> cut(View text) {
  text = trimmed(text);
  const std::size_t space = text.find(' ');
  if (space == View::npos || space + 1 == text.size() || !isNumber(text.substr(0, space)))
    return std::nullopt;
  return NumberAndRest{text.substr(0, space), text.substr(space + 1)};
}

Boxes sortedQuantity(const Shaped& field, Boxes boxes) {
  const auto typed = cut(boxes.text);
  if (!typed || !offers(field.units, typed->rest)) return boxes;
  return {std::string(typed->number), std::string(typed->rest), boxes.second, boxes.secondUnit};
}

/// "3 ft 4 in" with both parts; or "3 ft", which leaves a second box in use as it is.
Boxes sortedParts(const Shaped& field, Boxes boxes) {
  const auto typed = cut(boxes.text);
  if (!typed) return boxes;
  const std::size_t space = typed->rest.find(' ');
  const std::string first(typed->rest.substr(0, space));
  if (space == View::npos) {
    if (boxes.unit.starts_with(first + ' ') && !boxes.second.empty())
      return {std::string(typed->number), boxes.unit, boxes.second, {}};
    return sortedQuantity(field, std::move(boxes));
  }
  const auto smaller = cut(typed->rest.substr(space + 1));
  if (!smaller || !boxes.second.empty()) return boxes;
  const std::string both = first + ' ' + std::string(smaller->rest);
  if (!offers(field.units, both)) return boxes;
  return {std::string(typed->number), both, std::string(smaller->number), {}};
}

/// "120 mg/m2/dose"; what is not said stays as chosen.
Boxes sortedDose(const Shaped& field, Boxes boxes) {
  const auto typed = cut(boxes.text);
  if (!typed) return boxes;
  const std::size_t slash = std::min(typed->rest.find('/'), typed->rest.size());
  const View unit = typed->rest.substr(0, slash);
  const View basis = typed->rest.substr(slash);
  if (!offers(field.units, unit) || (!basis.empty() && !offers(field.second, basis))) return boxes;
  return {std::string(typed->number),
          std::string(unit),
          {},
          basis.empty() ? boxes.secondUnit : std::string(basis)};
}

/// Where the amount of a strength ends and what it is in begins: "25 mg/5 mL", "25 mg in 5 mL".
std::optional<NumberAndRest> cutStrength(View text) {
  for (const View between : {View("/"), View(" in ")}) {
    const std::size_t at = text.find(between);
    if (at != View::npos) return NumberAndRest{text.substr(0, at), text.substr(at + between.size())};
  }
  return std::nullopt;
}

/// "25 mg/5 mL"; "25 mg/mL" is in 1 mL. "25 mg" alone leaves what it is in as it stands.
Boxes sortedStrength(const Shaped& field, Boxes boxes) {
  const auto typed = cut(boxes.text);
  if (!typed) return boxes;
  const auto parts = cutStrength(typed->rest);
  if (!parts) return sortedQuantity(field, std::move(boxes));
  const auto in = cut(parts->rest);
  const View unit = in ? in->rest : parts->rest;
  if (!offers(field.units, parts->number) || !offers(field.second, unit)) return boxes;
  const View one = unit == "mL" || unit == "L" ? View("1") : View();
  return {std::string(typed->number), std::string(parts->number), std::string(in ? in->number : one),
          std::string(unit)};
}

/// The boxes sorted by the shape of their field, from text as files write it.
Boxes sortedByShape(const Shaped& field, Boxes boxes) {
  switch (field.shape) {
    case FieldShape::words:
    case FieldShape::lowEnd:
      return boxes;
    case FieldShape::quantity:
      return sortedQuantity(field, std::move(boxes));
    case FieldShape::parts:
      return sortedParts(field, std::move(boxes));
    case FieldShape::dose:
      return sortedDose(field, std::move(boxes));
    case FieldShape::strength:
      return sortedStrength(field, std::move(boxes));
  }
  return boxes;
}

/// The text in the safe form, where the field reads it and it fills no other; a dose may leave open what it
/// is for, which has a box of its own.
std::optional<std::string> inSafeForm(const Shaped& field, View text) {
  const auto isAlone = [](const std::optional<EntryAnswer>& one) {
    return one && one->isRead && one->also.empty();
  };
  const auto answer = readEntry(field.path, text);
  if (isAlone(answer)) return answer->safe;
  if (field.shape != FieldShape::dose) return std::nullopt;
  const auto dose = readEntry(path::dose, text);
  return isAlone(dose) ? std::optional(dose->safe) : std::nullopt;
}

std::string composedParts(const Boxes& boxes) {
  const std::size_t space = std::min(boxes.unit.find(' '), boxes.unit.size());
  const View text = trimmed(boxes.text);
  const View second = trimmed(boxes.second);
  std::string entry;
  if (!text.empty()) entry.append(text).append(" ").append(boxes.unit, 0, space);
  if (second.empty()) return entry;
  if (!entry.empty()) entry.append(" ");
  entry.append(second);
  return space == boxes.unit.size() ? entry : entry.append(boxes.unit, space);
}

std::string composedStrength(const Boxes& boxes) {
  std::string entry(trimmed(boxes.text));
  entry.append(" ").append(boxes.unit);
  if (boxes.secondUnit.empty()) return entry;
  entry.append("/").append(trimmed(boxes.second));
  if (!trimmed(boxes.second).empty()) entry.append(" ");
  return entry.append(boxes.secondUnit);
}

}  // namespace

bool standsForItself(View text) { return text.find_first_not_of("0123456789.,+- ") != View::npos; }

FieldShape shapeOf(View path) { return shapedOf(path).shape; }
Choices unitChoices(View path) { return shapedOf(path).units; }
Choices secondUnitChoices(View path) { return shapedOf(path).second; }

Boxes sorted(View path, Boxes boxes) {
  const Shaped& field = shapedOf(path);
  Boxes asTyped = sortedByShape(field, boxes);
  if (asTyped != boxes || !standsForItself(boxes.text)) return asTyped;
  const auto safe = inSafeForm(field, boxes.text);
  if (!safe) return boxes;
  Boxes spelled = boxes;
  spelled.text = *safe;
  Boxes sorted = sortedByShape(field, spelled);
  return sorted == spelled ? boxes : sorted;
}

std::string composed(View path, const Boxes& boxes, const Boxes& high) {
  const FieldShape shape = shapeOf(path);
  std::string text(trimmed(boxes.text));
  if (shape == FieldShape::words) return text;
  const std::string& unit = shape == FieldShape::lowEnd ? high.unit : boxes.unit;
  if (standsForItself(text) || unit.empty()) return text;
  switch (shape) {
    case FieldShape::words:
    case FieldShape::quantity:
      return text + " " + unit;
    case FieldShape::parts:
      return composedParts(boxes);
    case FieldShape::dose:
      return text + " " + unit + boxes.secondUnit;
    case FieldShape::lowEnd:
      return text + " " + unit + high.secondUnit;
    case FieldShape::strength:
      return composedStrength(boxes);
  }
  return text;
}

Boxes boxesOf(View path, View text, const Boxes& high) {
  const Shaped& field = shapedOf(path);
  Boxes boxes = sorted(path, {std::string(text), {}, {}, {}});
  if (field.shape == FieldShape::lowEnd) {
    const auto typed = cut(text);
    if (typed && !high.unit.empty() && typed->rest == high.unit + high.secondUnit) boxes.text = typed->number;
    return boxes;
  }
  if (field.unsaid.empty() || (!boxes.unit.empty() && !boxes.secondUnit.empty())) return boxes;
  const Boxes whole = sorted(path, {std::string(text).append(field.unsaid), {}, {}, {}});
  return whole.unit.empty() || whole.secondUnit.empty() ? boxes : whole;
}

}  // namespace wardchalk
