#pragma once

#include "core/practice/problem/problem.h"

namespace wardchalk::test {

// Three worked cases with invented medicines; every figure was computed by hand from the papers they state.

/// Per kg per day, liquid, by mouth; 33 lb and 38 in. Weight 14.97 kg; one dose 124.7 to 249.5 mg; 3 mL.
[[nodiscard]] Problem casePerDay();
/// Per m² and dose, powder, into a vein; 44 in and 42 lb. 0.77 m²; 77 to 115.5 mg; 4.5 mL; 36 mL/h.
[[nodiscard]] Problem casePowder();
/// 5 mcg/kg/min for 15 kg from 40 mg in 50 mL: 5.6 mL/h.
[[nodiscard]] Problem caseRate();
/// Per kg and dose, liquid, by mouth; 33 lb 8 oz. 15.195 kg; 121.6 to 152 mg in one dose; 180 mg ordered.
[[nodiscard]] Problem caseOunces();
/// 110 mg of 150 mg in 4 mL for 15.2 kg at most 10 mg/kg: 2.93 mL, and the limit lies near the label's
/// volume.
[[nodiscard]] Problem caseLabelNear();

/// Asks for these steps ("limit-dose") and "verdict", in this order.
void ask(Problem& problem, std::initializer_list<std::string_view> ids);

/// The place of a line among the asks.
[[nodiscard]] std::size_t askNamed(const Problem& problem, std::string_view id);

}  // namespace wardchalk::test
