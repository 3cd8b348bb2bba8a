#pragma once

#include <array>
#include <string_view>

#include "core/number/static_text.h"

/// The path of every entry of a case: its key in a case file, and the name by which a finding, a need or a
/// number in the working points at it.
namespace wardchalk::path {

inline constexpr StaticText title = "title";
inline constexpr StaticText age = "child.age";
inline constexpr StaticText sex = "child.sex";
inline constexpr StaticText height = "child.height";
inline constexpr StaticText weight = "child.weight";
inline constexpr StaticText bsa = "child.bsa";
inline constexpr StaticText weightMethod = "child.weight_method";
inline constexpr StaticText weighed = "child.weighed";
inline constexpr StaticText bornEarly = "child.born_early";
inline constexpr StaticText sizeConfirmed = "child.size_confirmed";
inline constexpr StaticText medicine = "order.medicine";
inline constexpr StaticText dose = "order.dose";
inline constexpr StaticText route = "order.route";
inline constexpr StaticText schedule = "order.schedule";
inline constexpr StaticText asNeeded = "order.as_needed";
inline constexpr StaticText maxDosesPerDay = "order.max_doses_per_day";
inline constexpr StaticText referenceMedicine = "reference.medicine";
inline constexpr StaticText alsoCalled = "reference.also_called";
inline constexpr StaticText low = "reference.low";
inline constexpr StaticText high = "reference.high";
inline constexpr StaticText limitOnly = "reference.limit_only";
inline constexpr StaticText referenceSchedule = "reference.schedule";
inline constexpr StaticText referenceRoute = "reference.route";
inline constexpr StaticText maxPerDose = "reference.max_per_dose";
inline constexpr StaticText maxPerDay = "reference.max_per_day";
inline constexpr StaticText referenceMaxDoses = "reference.max_doses_per_day";
inline constexpr StaticText ageFrom = "reference.age_from";
inline constexpr StaticText ageOver = "reference.age_over";
inline constexpr StaticText ageBelow = "reference.age_below";
inline constexpr StaticText ageUpTo = "reference.age_up_to";
inline constexpr StaticText weightFrom = "reference.weight_from";
inline constexpr StaticText weightOver = "reference.weight_over";
inline constexpr StaticText weightBelow = "reference.weight_below";
inline constexpr StaticText weightUpTo = "reference.weight_up_to";
inline constexpr StaticText bsaFrom = "reference.bsa_from";
inline constexpr StaticText bsaOver = "reference.bsa_over";
inline constexpr StaticText bsaBelow = "reference.bsa_below";
inline constexpr StaticText bsaUpTo = "reference.bsa_up_to";
inline constexpr StaticText maxConcentration = "reference.max_concentration";
inline constexpr StaticText minConcentration = "reference.min_concentration";
inline constexpr StaticText minInfusionTime = "reference.min_infusion_time";
inline constexpr StaticText maxInfusionRate = "reference.max_infusion_rate";
inline constexpr StaticText source = "reference.source";
inline constexpr StaticText secondCheckRequired = "reference.second_check_required";
inline constexpr StaticText stockKind = "stock.kind";
inline constexpr StaticText strength = "stock.strength";
inline constexpr StaticText content = "stock.content";
inline constexpr StaticText diluent = "stock.diluent";
inline constexpr StaticText finalVolume = "stock.final_volume";
inline constexpr StaticText displacement = "stock.displacement";
inline constexpr StaticText dividesInto = "stock.divides_into";
inline constexpr StaticText infusionVolume = "infusion.volume";
inline constexpr StaticText infusionOver = "infusion.over";
inline constexpr StaticText dropFactor = "infusion.drop_factor";

inline constexpr std::array all = {title,
                                   age,
                                   sex,
                                   height,
                                   weight,
                                   bsa,
                                   weightMethod,
                                   weighed,
                                   bornEarly,
                                   sizeConfirmed,
                                   medicine,
                                   dose,
                                   route,
                                   schedule,
                                   asNeeded,
                                   maxDosesPerDay,
                                   referenceMedicine,
                                   alsoCalled,
                                   low,
                                   high,
                                   limitOnly,
                                   referenceSchedule,
                                   referenceRoute,
                                   maxPerDose,
                                   maxPerDay,
                                   referenceMaxDoses,
                                   ageFrom,
                                   ageOver,
                                   ageBelow,
                                   ageUpTo,
                                   weightFrom,
                                   weightOver,
                                   weightBelow,
                                   weightUpTo,
                                   bsaFrom,
                                   bsaOver,
                                   bsaBelow,
                                   bsaUpTo,
                                   maxConcentration,
                                   minConcentration,
                                   minInfusionTime,
                                   maxInfusionRate,
                                   source,
                                   secondCheckRequired,
                                   stockKind,
                                   strength,
                                   content,
                                   diluent,
                                   finalVolume,
                                   displacement,
                                   dividesInto,
                                   infusionVolume,
                                   infusionOver,
                                   dropFactor};

/// The path that reads like this, as text that can be kept; empty if none does.
[[nodiscard]] constexpr StaticText known(std::string_view text) {
  for (const StaticText path : all)
    if (path == text) return path;
  return {};
}

}  // namespace wardchalk::path
