// The body surface of every height from 30.0 to 200.0 cm with every weight from 1.0 to 120.0 kg, in tenths:
// what is shown is the nearest to the root of height × weight ÷ 3600, half up. Squares of whole numbers
// decide, and no root is taken.
#include <cstdint>
#include <string>
#include <vector>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/record/case_entry.h"
#include "tests/corners/tally.h"

namespace wardchalk::corners::surface {

namespace {

constexpr int lowestHeight = 300;  // tenths of a cm, and of a kg
constexpr int highestHeight = 2000;
constexpr int lowestWeight = 10;
constexpr int highestWeight = 1200;

std::string tenths(int value) {
  const std::string whole = std::to_string(value / 10);
  return value % 10 == 0 ? whole : whole + "." + std::to_string(value % 10);
}

/// Heights and weights read once each, as a form reads them.
std::vector<Child> childrenOf(std::string_view path, int lowest, int highest, const char* unit,
                              Tally& tally) {
  std::vector<Child> children;
  for (int value = lowest; value <= highest; ++value) {
    Case one;
    const bool read = bool(setEntry(one, path, tenths(value) + " " + unit));
    tally.expect(read, [&] { return "not read: " + tenths(value) + " " + unit; });
    children.push_back(one.child);
  }
  return children;
}

/// The digits of what is shown as a whole number; -1 where it has not the decimals that are asked for.
std::int64_t shownDigits(const std::string& shown, int decimals) {
  const std::size_t point = shown.find('.');
  if (point == std::string::npos || shown.size() - point - 1 != static_cast<std::size_t>(decimals)) return -1;
  return std::stoll(shown.substr(0, point) + shown.substr(point + 1));
}

/// Whether shown ÷ 10^decimals is nearest to the root of height × weight ÷ 360,000 (tenths each), half up:
/// that is (2 shown - 1)² ≤ 4 · 10^2decimals · height · weight ÷ 360,000 < (2 shown + 1)².
bool isNearest(std::int64_t shown, int decimals, std::int64_t height, std::int64_t weight) {
  std::int64_t square = 1;
  for (int i = 0; i < decimals; ++i) square *= 100;
  const std::int64_t middle = 4 * square * height * weight;
  const std::int64_t below = (2 * shown - 1) * (2 * shown - 1) * 360000;
  const std::int64_t above = (2 * shown + 1) * (2 * shown + 1) * 360000;
  return below <= middle && middle < above;
}

void tryOne(Tally& tally, const Case& given, const HouseRules& rules, int height, int weight) {
  tally.tried();
  const Worksheet sheet = workOut(given, rules);
  const auto words = [&] { return tenths(height) + " cm, " + tenths(weight) + " kg"; };
  tally.expect(sheet.bsa.has_value(), [&] { return words() + ": no surface"; });
  if (!sheet.bsa) return;
  const int decimals = *rules.bsaDecimals;
  const std::string shown = fixedText(sheet.bsa->m2, sheet.bsa->fixedDecimals);
  tally.expect(isNearest(shownDigits(shown, decimals), decimals, height, weight),
               [&] { return words() + ": " + shown + " is not the nearest"; });
  tally.expect(
      Number::ratio(shownDigits(shown, decimals), 1) * Number::powerOfTen(-decimals) == sheet.bsa->m2,
      [&] { return words() + ": " + shown + " is not what is reckoned with"; });
}

/// Every `step`-th height with every `step`-th weight.
long tryGrid(const std::string& name, int decimals, int step) {
  Tally tally("surface, " + name);
  const auto heights = childrenOf("child.height", lowestHeight, highestHeight, "cm", tally);
  const auto weights = childrenOf("child.weight", lowestWeight, highestWeight, "kg", tally);
  HouseRules rules = exactRules();
  rules.bsaDecimals = decimals;
  Case given;
  for (int height = lowestHeight; height <= highestHeight; height += step) {
    given.child.height = heights[static_cast<std::size_t>(height - lowestHeight)].height;
    for (int weight = lowestWeight; weight <= highestWeight; weight += step) {
      given.child.weight = weights[static_cast<std::size_t>(weight - lowestWeight)].weight;
      tryOne(tally, given, rules, height, weight);
    }
  }
  tally.print();
  return tally.wrong();
}

}  // namespace

long tryWhole() {
  return tryGrid("2 decimals", 2, 1) + tryGrid("3 decimals, every seventh", 3, 7) +
         tryGrid("4 decimals, every seventh", 4, 7);
}

}  // namespace wardchalk::corners::surface
