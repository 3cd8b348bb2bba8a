#pragma once

#include "core/practice/problem/problem.h"

namespace wardchalk::test {

// Worked cases with invented medicines; every figure was computed by hand from the papers they state.

/// Per kg per day, liquid, by mouth; 33 lb and 38 in. Weight 14.97 kg; one dose 124.7 to 249.5 mg; 3 mL.
[[nodiscard]] Problem casePerDay();
/// Per kg per day, 3 times a day, and no hours: 15 kg; one dose 125 to 250 mg; 3 mL.
[[nodiscard]] Problem caseTimesADay();
/// Per m² and dose, powder, into a vein; 44 in and 42 lb. 0.77 m²; 77 to 115.5 mg; 4.5 mL; 36 mL/h.
[[nodiscard]] Problem casePowder();
/// 5 mcg/kg/min for 15 kg from 40 mg in 50 mL: 5.6 mL/h.
[[nodiscard]] Problem caseRate();
/// The same by the hour: 0.3 mg/kg/h.
[[nodiscard]] Problem caseRateInLitres();
[[nodiscard]] Problem caseRateByTheHour();
/// Per kg and dose, liquid, by mouth; 33 lb 8 oz. 15.195 kg; 121.6 to 152 mg in one dose; 180 mg ordered.
[[nodiscard]] Problem caseOunces();
/// 110 mg of 150 mg in 4 mL for 15.2 kg at most 10 mg/kg: 2.93 mL, and the limit lies near the label's
/// volume.
[[nodiscard]] Problem caseLabelNear();
/// Per kg per day, by mouth; 36 lb. 16.33 kg; the order is in g and the label in mg: 0.2 g are 4 mL.
[[nodiscard]] Problem caseGrams();
/// The same in a house that rounds a weight to whole kilograms: 16 kg.
[[nodiscard]] Problem caseWholeKilograms();
/// Tablets for 15 kg: 60 mg every 8 h of a reference for every 6 h; 75 mg at most, 3 tablets.
[[nodiscard]] Problem caseTablets();
/// So much every 6 h for 15 kg, 75 mg at most, in tablets of 30 mg: how many they are.
[[nodiscard]] Problem caseOfTablets(std::string_view dose);
/// Per m² and dose; 6500 g and 0.62 m: 0.33 m², and no pounds or inches anywhere.
[[nodiscard]] Problem caseMetric();
/// Per m² and day in three doses; 3 ft 8 in and 19 kg: 111.76 cm, 0.77 m².
[[nodiscard]] Problem caseInches();
/// Every 5 h, which are five doses in a day: 60 mg of 75 mg, 3 mL.
[[nodiscard]] Problem caseFiveHours();
/// An order for each m² beside a reference for no size: 31.5 mg of 50 mg.
[[nodiscard]] Problem caseFlat();
/// Per kg per day, without a low end: 240 mg, which is the limit of a dose; 720 mg, which is that of a day.
[[nodiscard]] Problem caseHighOfDay();
/// A powder of 100 mg in 5 mL with 4.8 mL, and its own volume not stated: 20 mg/mL, 4.5 mL.
[[nodiscard]] Problem caseFinalVolume();
/// 33 lb and no ounces: 14.97 kg; 149.7 mg at most.
[[nodiscard]] Problem caseNoOunces();
/// A powder of 250 mg that is half of its 5 mL: 50 mg/mL, 1.8 mL.
[[nodiscard]] Problem caseHalfAPowder();

/// Asks for these steps ("limit-dose") and "verdict", in this order.
void ask(Problem& problem, std::initializer_list<std::string_view> ids);

/// The place of a line among the asks.
[[nodiscard]] std::size_t askNamed(const Problem& problem, std::string_view id);

}  // namespace wardchalk::test
