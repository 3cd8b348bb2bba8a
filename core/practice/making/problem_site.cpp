#include "core/practice/making/problem_site.h"

#include <array>
#include <span>

namespace wardchalk {

namespace {

/// Up to which age how much goes into one place.
struct SiteRow {
  int belowMonths;
  std::int64_t mostMl;  ///< thousandths
};

constexpr int allAges = 12 * 200;

/// Sources, read 2026-11-30, thigh muscle: "Medication Administration: Intramuscular", table 62-1,
/// nursekey.com: infant 0.5 mL, toddler 0.5 to 1, preschool 1, school age 1.5 to 2; "Pediatrics Medication:
/// Intramuscular Injection", section 20.16, docest.com: to 1.5 years 0.5 mL, to 3 years 1, to 6 years 1.5, to
/// 15 years 1.5 to 2. The edges of the first's groups (3 and 6 years) are common practice, no source; neither
/// goes past 15 years: what holds before is kept.
constexpr std::array muscle = {SiteRow{18, 500}, SiteRow{6 * 12, 1000}, SiteRow{allAges, 1500}};

/// Source, read 2026-11-30: "Medication Administration: Subcutaneous", table 71-1, nursekey.com: small child
/// 0.5 mL, preschool and school age 1 mL, adolescent 0.5 to 1. The edge at 3 years is common practice, no
/// source.
constexpr std::array skin = {SiteRow{3 * 12, 500}, SiteRow{allAges, 1000}};

std::optional<std::int64_t> mostIn(std::span<const SiteRow> rows, int months) {
  for (const SiteRow& row : rows)
    if (months < row.belowMonths) return row.mostMl;
  return std::nullopt;
}

}  // namespace

std::optional<std::int64_t> mostInOnePlace(std::string_view route, int months) {
  if (route == "intramuscular") return mostIn(muscle, months);
  if (route == "subcutaneous") return mostIn(skin, months);
  return std::nullopt;
}

}  // namespace wardchalk
