#pragma once

#include <string_view>

/// The path of every entry of a case: its key in a case file, and the name by which a finding, a need or a number in
/// the working points at it.
namespace wardchalk::path {

inline constexpr std::string_view title = "title";
inline constexpr std::string_view age = "child.age";
inline constexpr std::string_view sex = "child.sex";
inline constexpr std::string_view height = "child.height";
inline constexpr std::string_view weight = "child.weight";
inline constexpr std::string_view bsa = "child.bsa";
inline constexpr std::string_view weightMethod = "child.weight_method";
inline constexpr std::string_view bornEarly = "child.born_early";
inline constexpr std::string_view sizeConfirmed = "child.size_confirmed";
inline constexpr std::string_view medicine = "order.medicine";
inline constexpr std::string_view dose = "order.dose";
inline constexpr std::string_view route = "order.route";
inline constexpr std::string_view schedule = "order.schedule";
inline constexpr std::string_view asNeeded = "order.as_needed";
inline constexpr std::string_view maxDosesPerDay = "order.max_doses_per_day";
inline constexpr std::string_view low = "reference.low";
inline constexpr std::string_view high = "reference.high";
inline constexpr std::string_view limitOnly = "reference.limit_only";
inline constexpr std::string_view referenceSchedule = "reference.schedule";
inline constexpr std::string_view referenceRoute = "reference.route";
inline constexpr std::string_view maxPerDose = "reference.max_per_dose";
inline constexpr std::string_view maxPerDay = "reference.max_per_day";
inline constexpr std::string_view ageFrom = "reference.age_from";
inline constexpr std::string_view ageOver = "reference.age_over";
inline constexpr std::string_view ageBelow = "reference.age_below";
inline constexpr std::string_view ageUpTo = "reference.age_up_to";
inline constexpr std::string_view weightFrom = "reference.weight_from";
inline constexpr std::string_view weightOver = "reference.weight_over";
inline constexpr std::string_view weightBelow = "reference.weight_below";
inline constexpr std::string_view weightUpTo = "reference.weight_up_to";
inline constexpr std::string_view bsaFrom = "reference.bsa_from";
inline constexpr std::string_view bsaOver = "reference.bsa_over";
inline constexpr std::string_view bsaBelow = "reference.bsa_below";
inline constexpr std::string_view bsaUpTo = "reference.bsa_up_to";
inline constexpr std::string_view maxConcentration = "reference.max_concentration";
inline constexpr std::string_view minConcentration = "reference.min_concentration";
inline constexpr std::string_view minInfusionTime = "reference.min_infusion_time";
inline constexpr std::string_view maxInfusionRate = "reference.max_infusion_rate";
inline constexpr std::string_view source = "reference.source";
inline constexpr std::string_view stockKind = "stock.kind";
inline constexpr std::string_view strength = "stock.strength";
inline constexpr std::string_view content = "stock.content";
inline constexpr std::string_view diluent = "stock.diluent";
inline constexpr std::string_view finalVolume = "stock.final_volume";
inline constexpr std::string_view displacement = "stock.displacement";
inline constexpr std::string_view dividesInto = "stock.divides_into";
inline constexpr std::string_view infusionVolume = "infusion.volume";
inline constexpr std::string_view infusionOver = "infusion.over";
inline constexpr std::string_view dropFactor = "infusion.drop_factor";

}  // namespace wardchalk::path
