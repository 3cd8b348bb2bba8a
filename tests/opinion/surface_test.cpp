// The body surface area, its root and its rounding, against whole-number roots in Python and decimal roots in
// bc.
#include <gtest/gtest.h>

#include <array>
#include <sstream>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "tests/opinion/other_program.h"
#include "tests/support/case_text.h"
#include "tests/support/csv.h"
#include "tests/support/random_case.h"

namespace wardchalk::test::surface_test {

namespace {

constexpr int gridSize = 201 * 126;  // 40.0 to 180.0 by 0.7, 2.0 to 90.0 by 0.7

const std::array<HouseRules, 4>& everyRounding() {
  static const std::array<HouseRules, 4> rules = {rulesOf("bsa_decimals=2"), rulesOf("bsa_decimals=3"),
                                                  rulesOf("bsa_decimals=4"), rulesOf("bsa_decimals=none")};
  return rules;
}

constexpr std::array decimalsOf = {2, 3, 4, 20};

Case child(int height, std::string_view lengthUnit, int weight, std::string_view massUnit) {
  return caseOf("child.height=" + decimal(height, 1) + " " + std::string(lengthUnit) +
                "; child.weight=" + decimal(weight, 1) + " " + std::string(massUnit));
}

/// Whether all four roundings of one child are as the other program says.
void expectRoots(const Case& inputs, std::istringstream& roots) {
  for (std::size_t i = 0; i < decimalsOf.size(); ++i) {
    std::string digits;
    roots >> digits;
    ASSERT_EQ(workOut(inputs, everyRounding()[i]).bsa->m2, Number::fromDigits(digits, decimalsOf[i]))
        << digits << " at " << decimalsOf[i] << " decimals";
  }
}

}  // namespace

TEST(SurfaceOpinion, wholeNumberRootsGiveTheSameSurfaceOverTheGrid) {
  if (std::string(WARDCHALK_PYTHON).empty()) GTEST_SKIP() << "NOT CHECKED: python3 is not installed";
  const std::string script = sourceFile("tests/opinion/surface_opinion.py").string();
  const std::vector<std::string> lines = answerOf("'" WARDCHALK_PYTHON "' '" + script + "'", "");
  ASSERT_EQ(lines.size(), static_cast<std::size_t>(gridSize));
  for (const std::string& line : lines) {
    std::istringstream roots(line);
    int height = 0;
    int weight = 0;
    roots >> height >> weight;
    SCOPED_TRACE(line);
    ASSERT_NO_FATAL_FAILURE(expectRoots(child(height, "cm", weight, "kg"), roots));
    ASSERT_NO_FATAL_FAILURE(expectRoots(child(height, "in", weight, "lb"), roots));
  }
}

// bc cuts at its scale and does not round: the cut root is compared, and what the worksheet shows unrounded.
TEST(SurfaceOpinion, bcGivesTheSameDigits) {
  if (std::string(WARDCHALK_BC).empty()) GTEST_SKIP() << "NOT CHECKED: bc is not installed";
  std::string input = "scale=25\n";
  std::vector<std::pair<int, int>> children;
  for (int height = 401; height <= 1800; height += 61)
    for (int weight = 23; weight <= 900; weight += 41) {
      children.emplace_back(height, weight);
      input.append("sqrt(")
          .append(std::to_string(height))
          .append("*")
          .append(std::to_string(weight))
          .append("/360000)\n");
    }
  const std::vector<std::string> lines = answerOf("BC_LINE_LENGTH=0 '" WARDCHALK_BC "'", input);
  ASSERT_EQ(lines.size(), children.size());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const auto [height, weight] = children[i];
    const std::string text = lines[i].front() == '.' ? "0" + lines[i] : lines[i];
    const Number root = *readDecimal(text);
    const SurfaceFound surface = *workOut(child(height, "cm", weight, "kg"), everyRounding()[3]).bsa;
    EXPECT_EQ((surface.m2 - root).absolute().rounded(19), Number(0))
        << height << " " << weight << ": " << text;
    EXPECT_EQ((root * Number(1000000)).floor(), *surface.unroundedCut * Number(1000000)) << text;
  }
}

}  // namespace wardchalk::test::surface_test
