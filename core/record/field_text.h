#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace wardchalk {

/// What stands in the boxes of one field, exactly as typed or chosen. A choice or a flag has its id in
/// `text`.
struct Boxes {
  std::string text;        ///< the number, the words, or the id of what was chosen
  std::string unit;        ///< the unit chosen: "kg", "lb oz", "mg"; empty until one is
  std::string second;      ///< the smaller part ("3" of 8 lb 3 oz), or the volume that a strength is in
  std::string secondUnit;  ///< what a dose is for ("/m2/dose"), or the unit that a strength is in ("mL")

  /// Whether nothing was typed; a unit alone says nothing.
  [[nodiscard]] bool isEmpty() const { return text.empty() && second.empty(); }
  friend bool operator==(const Boxes&, const Boxes&) = default;
};

/// How the boxes of a field make one entry.
enum class FieldShape : std::uint8_t {
  words,     ///< text alone: free text, a schedule, a choice, a flag, a count
  quantity,  ///< number and unit
  parts,     ///< number and unit, and a smaller part where the unit has two names: "lb oz"
  dose,      ///< number, unit and what it is for: "/kg/day"
  lowEnd,    ///< a number in the unit and for what the high end is for
  strength,  ///< number and unit in number and unit
};

[[nodiscard]] FieldShape shapeOf(std::string_view path);

/// The units that a field offers; "ft in" is feet and inches together. Empty for words and for the low end.
[[nodiscard]] std::span<const std::string_view> unitChoices(std::string_view path);

/// What a dose may be for, or the units that a strength may be in; empty for the other shapes.
[[nodiscard]] std::span<const std::string_view> secondUnitChoices(std::string_view path);

/// The boxes with a unit that was typed after the number moved to its place: "17.2 kg" and "17.2kgs" choose
/// kg. Boxes that hold anything else are given back as they are.
[[nodiscard]] Boxes sorted(std::string_view path, Boxes boxes);

/// Whether the text says more than a number, its own unit or a mistake: it is then read as it stands,
/// whatever unit is chosen beside it.
[[nodiscard]] bool standsForItself(std::string_view text);

/// The entry that the boxes make, as case files have it: "8 lb 3 oz", "120 mg/m2/dose". A text that names its
/// own unit stands for itself. `high` lends the low end its unit and basis.
[[nodiscard]] std::string composed(std::string_view path, const Boxes& boxes, const Boxes& high = {});

/// The boxes for an entry of a case file. What a file leaves unsaid by its format (an order without "/day" is
/// each dose) is said in the boxes. A text that does not fit the boxes stands whole in the first.
[[nodiscard]] Boxes boxesOf(std::string_view path, std::string_view text, const Boxes& high = {});

}  // namespace wardchalk
