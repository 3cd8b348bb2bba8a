// Conversions and chains against GNU units, which reads the same factors and gives the value in what is left
// over.
#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/unit/conversion.h"
#include "core/working/chain.h"
#include "tests/opinion/other_program.h"
#include "tests/support/case_text.h"
#include "tests/support/csv.h"
#include "tests/support/random_case.h"

namespace wardchalk::test::chains_test {

namespace {

std::string nameInGnuUnits(Unit unit) {
  switch (unit) {
    case Unit::mcg:
      return "microgram";
    case Unit::units:
      return "drugunit";
    case Unit::mEq:
      return "mEqdrug";
    case Unit::kg:
      return "kgbody";
    case Unit::bodyG:
      return "gbody";
    case Unit::lb:
      return "lbbody";
    case Unit::oz:
      return "ozbody";
    case Unit::m2:
      return "surface";
    case Unit::h:
      return "hour";
    case Unit::month:
      return "monthmean";
    case Unit::year:
      return "yearmean";
    case Unit::drop:
      return "dropcount";
    default:
      return std::string(idOf(unit));
  }
}

std::string expression(const UnitProduct& units) {
  std::string text = "1";
  for (const Unit unit : units) text.append(" * ").append(nameInGnuUnits(unit));
  return "(" + text + ")";
}

std::string expression(const Term& term) {
  return "(" + term.value.rationalText() + ") * " + expression(term.units);
}

std::string expression(const Chain& chain) {
  std::string text = "1";
  for (const Factor& factor : chain.factors)
    text.append(" * (")
        .append(expression(factor.over))
        .append(") / (")
        .append(expression(factor.under))
        .append(")");
  return text;
}

/// A value as a floating number: GNU units answers with one, of which 12 digits are held to be right.
double rough(const Number& value) {
  const std::string text = value.rationalText();
  const std::size_t slash = text.find('/');
  const long double over = std::stold(text.substr(0, slash));
  return static_cast<double>(slash == std::string::npos ? over : over / std::stold(text.substr(slash + 1)));
}

void expectSame(const std::vector<Chain>& chains) {
  std::string input;
  for (const Chain& chain : chains) {
    const Product product = cancel(chain);
    input.append(expression(chain)).append("\n");
    input.append(expression(product.left.over))
        .append(" / ")
        .append(expression(product.left.under))
        .append("\n");
  }
  const std::string definitions = sourceFile("tests/opinion/our.units").string();
  const std::vector<std::string> lines =
      answerOf("'" WARDCHALK_UNITS "' -t -q -o '%.16g' -f '' -f '" + definitions + "'", input);
  ASSERT_EQ(lines.size(), chains.size());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const double expected = rough(cancel(chains[i]).exact);
    std::size_t read = 0;
    double given = 0;
    ASSERT_NO_THROW(given = std::stod(lines[i], &read)) << expression(chains[i]) << ": " << lines[i];
    EXPECT_EQ(read, lines[i].size()) << expression(chains[i]) << ": " << lines[i];
    EXPECT_NEAR(given / expected, 1.0, 1e-12) << expression(chains[i]) << ": " << lines[i];
  }
  std::cout << chains.size() << " chains\n";
}

/// Rows of numbers that are the same everywhere: Knuth's 64-bit linear congruence, high half.
std::vector<std::uint32_t> row(std::uint64_t seed) {
  std::vector<std::uint32_t> numbers;
  std::uint64_t state = seed * 0x9E3779B97F4A7C15ULL + 1;
  for (int i = 0; i < 80; ++i) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    numbers.push_back(static_cast<std::uint32_t>(state >> 40U));
  }
  return numbers;
}

Term randomTerm(Choices& choices) {
  Term term{Number(choices.between(1, 9999)) * Number::powerOfTen(-choices.between(0, 3)), {}, {}};
  for (int uses = choices.between(0, 2); uses > 0; --uses)
    term.units.push_back(static_cast<Unit>(choices.below(static_cast<std::uint32_t>(unitTable.size()))));
  return term;
}

/// Two to six factors of any of our units, with conversions between them.
Chain randomChain(Choices& choices) {
  Chain chain;
  for (int factors = choices.between(2, 4); factors > 0; --factors)
    chain.factors.push_back({randomTerm(choices), randomTerm(choices)});
  for (int more = choices.between(0, 2); more > 0; --more) {
    const auto& facts = allConversions();
    const Conversion& fact = facts[choices.below(static_cast<std::uint32_t>(facts.size()))];
    chain.factors.push_back(conversionFactor(choices.onceIn(2) ? fact.turned() : fact));
  }
  return chain;
}

}  // namespace

class ChainOpinion : public testing::Test {
 protected:
  void SetUp() override {
    if (std::string(WARDCHALK_UNITS).empty()) GTEST_SKIP() << "NOT CHECKED: GNU units is not installed";
  }
};

TEST_F(ChainOpinion, everyConstantIsWhatGnuUnitsKnows) {
  std::vector<Chain> chains;
  for (const UnitInfo& from : unitTable) {
    for (const UnitInfo& to : unitTable) {
      const Unit a = static_cast<Unit>(&from - unitTable.data());
      const Unit b = static_cast<Unit>(&to - unitTable.data());
      if (a == b || from.dimension != to.dimension) continue;
      Chain chain{{{Term{Number(1), {a}, {}}, Term{}}}};
      for (const Factor& factor : conversionFactors(a, b, Pounds::exact)) chain.factors.push_back(factor);
      EXPECT_TRUE(sameUnits(cancel(chain).left, {{b}, {}})) << from.id << " to " << to.id;
      chains.push_back(std::move(chain));
    }
  }
  EXPECT_GT(chains.size(), 50U);
  expectSame(chains);
}

TEST_F(ChainOpinion, randomChainsComeToTheSame) {
  std::vector<Chain> chains;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    Choices choices(row(seed));
    chains.push_back(randomChain(choices));
  }
  expectSame(chains);
}

TEST_F(ChainOpinion, chainsOfWorksheetsComeToTheSame) {
  std::vector<Chain> chains;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    Choices choices(row(seed));
    const RandomCase random = randomCase(choices);
    for (const Step& step : workOut(caseOf(random.entries), rulesOf(random.rules)).steps)
      if (const auto* solved = std::get_if<Solved>(&step.body)) chains.push_back(solved->chain);
  }
  EXPECT_GT(chains.size(), 500U);
  expectSame(chains);
}

}  // namespace wardchalk::test::chains_test
