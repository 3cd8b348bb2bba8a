#include "core/record/line_choices.h"

#include <algorithm>
#include <array>

#include "core/medicine/paths.h"

namespace wardchalk {

namespace {

using View = std::string_view;
using Choices = std::span<const View>;

constexpr std::array<View, 3> heights = {"cm", "m", "in"};
constexpr std::array<View, 4> weights = {"kg", "g", "lb", "oz"};
constexpr std::array<View, 4> ages = {"years", "months", "weeks", "days"};
constexpr std::array<View, 4> agesAgo = {"days", "weeks", "months", "years"};
constexpr std::array<View, 1> areas = {"m²"};
constexpr std::array<View, 13> orders = {"mg",   "mcg",   "g",         "units",      "mmol",
                                         "mEq",  "mL",    "mg/day",    "mg/kg/dose", "mg/m²/dose",
                                         "mg/h", "mcg/h", "mcg/kg/min"};
constexpr std::array<View, 15> references = {"mg/kg/dose",  "mg/kg/day",     "mg/m²/dose",   "mg/m²/day",
                                             "mcg/kg/dose", "mcg/kg/day",    "mg/dose",      "mg/day",
                                             "mcg/dose",    "units/kg/dose", "units/kg/day", "mmol/kg/day",
                                             "mEq/kg/day",  "mcg/kg/min",    "mg/kg/h"};
constexpr std::array<View, 8> mostADose = {"mg",   "mcg", "g",          "units",
                                           "mmol", "mEq", "mg/kg/dose", "mg/m²/dose"};
constexpr std::array<View, 8> mostADay = {"mg", "mcg", "g", "units", "mmol", "mEq", "mg/kg/day", "mg/m²/day"};
constexpr std::array<View, 6> drugs = {"mg", "mcg", "g", "units", "mmol", "mEq"};
constexpr std::array<View, 4> rates = {"mg/min", "mg/kg/min", "mg/h", "mg/kg/h"};
constexpr std::array<View, 8> strengths = {"mg in 1 mL",      "mg in 5 mL",     "mcg in 1 mL",
                                           "g in 1 mL",       "units in 1 mL",  "mg in 1 tablet",
                                           "mcg in 1 tablet", "mg in 1 capsule"};
constexpr std::array<View, 5> concentrations = {"mg/mL", "mcg/mL", "units/mL", "mmol/L", "mg/L"};
constexpr std::array<View, 2> volumes = {"mL", "L"};
constexpr std::array<View, 2> times = {"min", "h"};
constexpr std::array<View, 1> drops = {"drops/mL"};
constexpr std::array<View, 10> schedules = {
    "every 4 h",     "every 6 h",     "every 8 h",     "every 12 h",     "every 24 h",
    "2 times a day", "3 times a day", "4 times a day", "every 4 to 6 h", "once"};

struct Offered {
  View path;
  Choices choices;
};

constexpr std::array offered = {
    Offered{path::height, heights},
    Offered{path::weight, weights},
    Offered{path::age, ages},
    Offered{path::weighed, agesAgo},
    Offered{path::bsa, areas},
    Offered{path::dose, orders},
    Offered{path::schedule, schedules},
    Offered{path::low, references},
    Offered{path::high, references},
    Offered{path::referenceSchedule, schedules},
    Offered{path::maxPerDose, mostADose},
    Offered{path::maxPerDay, mostADay},
    Offered{path::ageFrom, ages},
    Offered{path::ageOver, ages},
    Offered{path::ageBelow, ages},
    Offered{path::ageUpTo, ages},
    Offered{path::weightFrom, weights},
    Offered{path::weightOver, weights},
    Offered{path::weightBelow, weights},
    Offered{path::weightUpTo, weights},
    Offered{path::bsaFrom, areas},
    Offered{path::bsaOver, areas},
    Offered{path::bsaBelow, areas},
    Offered{path::bsaUpTo, areas},
    Offered{path::strength, strengths},
    Offered{path::content, drugs},
    Offered{path::diluent, volumes},
    Offered{path::finalVolume, volumes},
    Offered{path::displacement, volumes},
    Offered{path::infusionVolume, volumes},
    Offered{path::infusionOver, times},
    Offered{path::dropFactor, drops},
    Offered{path::minInfusionTime, times},
    Offered{path::maxInfusionRate, rates},
    Offered{path::maxConcentration, concentrations},
    Offered{path::minConcentration, concentrations},
};

/// The number that a line begins with, and nothing of what follows.
View leadingNumber(View line) {
  line.remove_prefix(std::min(line.find_first_not_of(' '), line.size()));
  return line.substr(0, std::min(line.find_first_not_of("0123456789.,"), line.size()));
}

}  // namespace

std::span<const std::string_view> lineChoices(std::string_view path) {
  const auto found = std::ranges::find(offered, path, &Offered::path);
  return found == offered.end() ? Choices() : found->choices;
}

std::string lineWith(std::string_view path, std::string_view line, std::string_view choice) {
  const bool whole = path == path::schedule || path == path::referenceSchedule;
  const View number = whole ? View() : leadingNumber(line);
  return number.empty() && whole ? std::string(choice) : std::string(number).append(" ").append(choice);
}

}  // namespace wardchalk
