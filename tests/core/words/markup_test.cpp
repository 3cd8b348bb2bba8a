#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/check/work_out.h"
#include "core/words/step_markup.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"
#include "core/words/working_markup.h"
#include "core/words/working_text.h"
#include "tests/support/golden_cases.h"

namespace wardchalk::markup_test {
namespace {

using test::GoldenCase;
using test::goldenCases;

std::size_t countOf(std::string_view part, std::string_view text) {
  std::size_t count = 0;
  for (std::size_t at = text.find(part); at != std::string_view::npos; at = text.find(part, at + part.size()))
    ++count;
  return count;
}

std::string nameOf(const testing::TestParamInfo<GoldenCase>& info) {
  std::string name = info.param.name;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}

class MarkupOf : public testing::TestWithParam<GoldenCase> {
 protected:
  Worksheet sheet_ = workOut(GetParam().given, GetParam().rules);
};

TEST_P(MarkupOf, everyStepStrikesBothUnitsOfEachPair) {
  for (const Step& step : sheet_.steps) {
    const auto* solved = std::get_if<Solved>(&step.body);
    if (!solved) continue;
    const std::size_t struck = 2 * solved->product.pairs.size();
    const auto markup = [&](Markup as) { return stepMarkup(step, sheet_, as); };
    EXPECT_EQ(countOf("<menclose notation=\"updiagonalstrike\">", markup(Markup::mathml)), struck);
    EXPECT_EQ(countOf("\\cancel{", markup(Markup::latex)), struck);
  }
}

TEST_P(MarkupOf, everyStepHoldsItsNumbersAndWhatItComesTo) {
  for (const Step& step : sheet_.steps) {
    const std::string text = stepMarkup(step, sheet_, Markup::mathml);
    const auto* solved = std::get_if<Solved>(&step.body);
    for (const Factor& factor : solved ? solved->chain.factors : std::vector<Factor>())
      EXPECT_NE(text.find("<mn>" + valueText(factor.over) + "</mn>"), std::string::npos) << text;
    std::string last = conclusion(step);
    last = last.substr(last.find_last_of(' ') + 1);
    EXPECT_NE(text.find(last), std::string::npos) << last << " is not in\n" << text;
  }
}

/// Where a chain's product is not exact, no notation says that it is.
TEST_P(MarkupOf, sayEqualOnlyWhereItIsExact) {
  for (const Step& step : sheet_.steps) {
    if (!std::holds_alternative<Solved>(step.body)) continue;
    const auto equals = [&](Markup as, std::string_view sign) {
      Step alone = step;
      alone.sums.clear();
      return countOf(sign, stepMarkup(alone, sheet_, as));
    };
    const std::string inText = stepText(step, 1, sheet_);
    const std::size_t inSums = step.sums.size();
    EXPECT_EQ(equals(Markup::mathml, "<mo>=</mo>"), countOf(" = ", inText) - inSums) << inText;
    EXPECT_EQ(equals(Markup::latex, " = "), countOf(" = ", inText) - inSums) << inText;
  }
}

/// Braces and environments are closed in the order in which they were opened.
std::string latexFault(std::string_view text) {
  std::vector<std::string> open;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto name = [&](std::string_view order) {
      const std::size_t from = i + order.size();
      return std::string(text.substr(from, text.find('}', from) - from));
    };
    if (text.substr(i).starts_with("\\begin{")) open.push_back(name("\\begin{"));
    if (text.substr(i).starts_with("\\end{")) {
      if (open.empty() || open.back() != name("\\end{")) return "\\end{" + name("\\end{") + "}";
      open.pop_back();
    }
    if (text.substr(i).starts_with("\\[")) open.push_back("[");
    if (text.substr(i).starts_with("\\]")) {
      if (open.empty() || open.back() != "[") return "\\]";
      open.pop_back();
    }
    if (text[i] == '\\') {
      ++i;  // an escaped brace is a letter
      continue;
    }
    if (text[i] == '{') open.push_back("{");
    if (text[i] == '}') {
      if (open.empty() || open.back() != "{") return "}";
      open.pop_back();
    }
  }
  return open.empty() ? "" : "still open: " + open.back();
}

TEST_P(MarkupOf, latexClosesWhatItOpens) { EXPECT_EQ(latexFault(workingMarkup(sheet_, Markup::latex)), ""); }

/// Letters outside ASCII are all written by name, so that any TeX with its usual fonts can set them.
TEST_P(MarkupOf, latexIsPlainAscii) {
  for (const char c : workingMarkup(sheet_, Markup::latex))
    ASSERT_LT(static_cast<unsigned char>(c), 0x80) << "a letter that has no name";
}

INSTANTIATE_TEST_SUITE_P(GoldenCases, MarkupOf, testing::ValuesIn(goldenCases()), nameOf);

TEST(LatexFault, findsWhatItIsThereFor) {
  for (const char* bad : {"{", "}", "\\begin{a}", "\\end{a}", "\\begin{a}\\end{b}", "\\[ {\\] }", "\\]"})
    EXPECT_NE(latexFault(bad), "") << bad;
  for (const char* good : {"", "{a{b}}", "\\begin{a}{x}\\end{a}", "\\[ \\{ \\]", "\\% \\}"})
    EXPECT_EQ(latexFault(good), "") << good;
}

TEST(Markup, whatAPersonTypesIsEscaped) {
  Case given;
  given.title = "<b> & 50 % _{x}^ $y$ # \\end \"~";
  const Worksheet sheet = workOut(given, exactRules());
  const std::string mathMl = workingMarkup(sheet, Markup::mathml);
  EXPECT_NE(mathMl.find("&lt;b&gt; &amp; 50 %"), std::string::npos) << mathMl;
  EXPECT_EQ(mathMl.find("<b>"), std::string::npos);
  const std::string latex = workingMarkup(sheet, Markup::latex);
  EXPECT_EQ(latexFault(latex), "") << latex;
  EXPECT_NE(latex.find("\\& 50 \\% \\_\\{x\\}\\textasciicircum{} \\$y\\$ \\# \\textbackslash{}end"),
            std::string::npos)
      << latex;
}

const Step& stepOf(const Worksheet& sheet, StepId id) { return *sheet.step(id); }

TEST(Markup, writesTheUsualChain) {
  const auto usual = std::find_if(goldenCases().begin(), goldenCases().end(), [](const GoldenCase& each) {
    return each.name == "safe-per-surface-liquid";
  });
  const Worksheet sheet = workOut(usual->given, usual->rules);
  const std::string latex = stepMarkup(stepOf(sheet, StepId::give), sheet, Markup::latex);
  EXPECT_EQ(latex,
            "\\[\n\\frac{\\text{80}\\,\\cancel{\\text{mg}}_{a}}{\\text{1}\\,\\text{dose}} \\times "
            "\\frac{\\text{1}\\,\\text{mL}}{\\text{25}\\,\\cancel{\\text{mg}}_{a}} = "
            "\\text{3.2}\\,\\text{mL per dose}\n\\]\n");
  const std::string root = stepMarkup(stepOf(sheet, StepId::bsa), sheet, Markup::latex);
  EXPECT_NE(root.find("\\approx \\sqrt{\\text{0.4921}"), std::string::npos) << root;
  EXPECT_NE(root.find("\\to \\text{0.70}\\,\\text{m\\textsuperscript{2}}"), std::string::npos) << root;
  const std::string compared = stepMarkup(stepOf(sheet, StepId::compareSingle), sheet, Markup::mathml);
  EXPECT_NE(compared.find("<mo>≤</mo>"), std::string::npos) << compared;
  EXPECT_NE(compared.find("<mtext>true</mtext>"), std::string::npos) << compared;
  EXPECT_NE(compared.find("alttext=\"Is the ordered dose within the safe dose?"), std::string::npos)
      << compared;
}

}  // namespace
}  // namespace wardchalk::markup_test
