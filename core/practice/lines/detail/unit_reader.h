#pragma once

#include <cstddef>
#include <vector>

#include "core/practice/lines/detail/line_tokens.h"

namespace wardchalk::practice {

/// Whether units may begin with the slash: "12/min".
enum class SlashFirst : bool { no, yes };

/// Where the units above and below stand; empty where there are none.
struct UnitPlaces {
  Span over;
  Span under;
};

/// Whether units begin at this piece: a unit, or a parenthesis that holds units alone.
[[nodiscard]] bool unitsBegin(const std::vector<Token>& tokens, std::size_t at);

/// Reads the units that begin at `at`, and moves it behind them: "cm·kg/m⁴", "mg/(m²·dose)", "/min". A "·"
/// after a slash stays below. A slash before anything but units is left for the fraction.
[[nodiscard]] Units readUnits(const std::vector<Token>& tokens, std::size_t& at, SlashFirst slashFirst,
                              UnitPlaces* places = nullptr);

}  // namespace wardchalk::practice
