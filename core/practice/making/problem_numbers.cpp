#include "core/practice/making/problem_numbers.h"

#include <algorithm>
#include <array>
#include <vector>

#include "core/number/decimal_text.h"

namespace wardchalk {

namespace {

constexpr std::array<std::int64_t, 20> roundSteps = {500000, 250000, 200000, 100000, 50000, 25000, 20000,
                                                     10000,  5000,   2500,   2000,   1000,  500,   250,
                                                     200,    100,    50,     25,     20,    10};

constexpr std::size_t at(int i) { return static_cast<std::size_t>(i); }

/// What stands on labels, in thousandths at the smallest power of ten that is used.
constexpr std::array<std::int64_t, 17> labelFigures = {100, 120, 125, 150, 160, 200, 240, 250, 300,
                                                       320, 400, 480, 500, 600, 750, 800, 900};
/// As often as each is to be drawn.
constexpr std::array<std::int64_t, 20> oralLabels = {
    5 * one, 5 * one, 5 * one, 5 * one, 5 * one, 5 * one, 5 * one, 5 * one, 5 * one, 5 * one,
    5 * one, 5 * one, one,     one,     one,     one,     one,     2 * one, 3 * one, 4 * one};
constexpr std::array<std::int64_t, 10> ampouleLabels = {one,     one,     one,     2 * one, 2 * one,
                                                        2 * one, 5 * one, 5 * one, 3 * one, 4 * one};
constexpr std::int64_t greatestLabel = 1000 * one;

}  // namespace

std::string decimalText(std::int64_t thousandths) {
  return exactText(Number(thousandths) * Number::powerOfTen(-3));
}

std::optional<std::int64_t> roundNumberIn(ProblemDraw& draw, std::int64_t least, std::int64_t most) {
  constexpr int steps = static_cast<int>(roundSteps.size());
  for (int i = 0; i < steps; ++i) {
    if (most / roundSteps[at(i)] == 0 || (least - 1) / roundSteps[at(i)] == most / roundSteps[at(i)])
      continue;
    const int finer = i + static_cast<int>(draw.below(3));  // else a wide range would always give the same
    for (int j = finer < steps ? finer : steps - 1; j >= i; --j) {
      const std::int64_t step = roundSteps[at(j)];
      const std::int64_t first = (least + step - 1) / step;
      const std::int64_t last = most / step;
      if (first <= last) return draw.between(first < 1 ? 1 : first, last) * step;
    }
  }
  return std::nullopt;
}

bool isOnEveryMark(std::int64_t mL) {
  if (mL < one) return mL % 10 == 0;
  if (mL <= 3 * one) return mL % 100 == 0;
  if (mL <= 10 * one) return mL % 200 == 0;
  return mL % one == 0;
}

std::optional<ProblemLabel> labelFor(ProblemDraw& draw, const LabelWanted& wanted) {
  const std::int64_t dose = wanted.dose;
  const std::int64_t strongest =
      std::min(std::max(greatestLabel, dose), wanted.mostInMl * wanted.labelMl / one);
  std::vector<ProblemLabel> fitting;
  for (std::int64_t power = 1; power <= 10000; power *= 10)
    for (const std::int64_t figure : labelFigures) {
      const std::int64_t amount = figure * power;
      if (amount == dose || amount > strongest || dose * wanted.labelMl % amount != 0) continue;
      const std::int64_t mL = dose * wanted.labelMl / amount;
      if (mL >= wanted.leastMl && mL <= wanted.mostMl && isOnEveryMark(mL))
        fitting.push_back({amount, wanted.labelMl});
    }
  if (fitting.empty()) return std::nullopt;
  return draw.of(std::span<const ProblemLabel>(fitting));
}

std::int64_t drawLabelMl(ProblemDraw& draw, bool swallowed) {
  return swallowed ? draw.of(oralLabels) : draw.of(ampouleLabels);
}

std::int64_t ouncesFor(std::int64_t kgTenths) {
  return (kgTenths * 1600000 + 226796) / 453592;  // 16 oz in 0.453592 kg; only to draw a figure
}

std::int64_t poundsFor(std::int64_t kgTenths) { return (ouncesFor(kgTenths) + 8) / 16; }

std::int64_t inchesFor(std::int64_t cm) { return (cm * 100 + 127) / 254; }

std::int64_t surfaceFor(std::int64_t cm, std::int64_t kgTenths) {
  const std::int64_t square = cm * kgTenths * 1000000 / 36000;
  std::int64_t root = 0;
  while ((root + 1) * (root + 1) <= square) ++root;
  return root;
}

}  // namespace wardchalk
