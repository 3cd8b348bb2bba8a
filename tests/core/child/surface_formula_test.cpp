#include "core/child/surface_formula.h"

#include <gtest/gtest.h>

#include <string>

#include "core/number/decimal_text.h"
#include "tests/core/test_names.h"

namespace wardchalk::surface_formula_test {
namespace {

/// Check values of published formulas, m², four decimals, worked out from the published constants by other
/// code. Formulas as read in: Mosteller RD. N Engl J Med 1987;317:1098 (by way of Pharmacology for Nurses,
/// OpenStax 2024, 2.4); Haycock GB, Schwartz GJ, Wisotsky DH. J Pediatr 1978;93:62-66; Du Bois D, Du Bois EF.
/// Arch Intern Med 1916;17:863-871; Gehan EA, George SL. Cancer Chemother Rep 1970;54:225-235 (the last three
/// by way of the documentation of the open R package admiral, function compute_bsa, and the encyclopaedia
/// article "Body surface area").
struct CheckValue {
  const char* name;
  const char* cm;
  const char* kg;
  const char* mosteller;
  const char* haycock;
  const char* duBois;
  const char* gehanGeorge;
};

constexpr CheckValue checkValues[] = {
    {"50 cm", "50", "3.5", "0.2205", "0.2244", "0.2086", "0.2338"},
    {"60 cm", "60", "6", "0.3162", "0.3224", "0.2994", "0.3332"},
    {"75 cm", "75", "10", "0.4564", "0.4635", "0.4373", "0.4762"},
    {"97 cm", "97", "16.8", "0.6728", "0.6784", "0.6569", "0.6933"},
    {"110 cm", "110", "18", "0.7416", "0.7401", "0.7411", "0.7575"},
    {"120 cm", "120", "25", "0.9129", "0.9141", "0.9076", "0.9306"},
    {"140 cm", "140", "36", "1.1832", "1.1822", "1.1851", "1.1982"},
    {"160 cm", "160", "60", "1.6330", "1.6405", "1.6221", "1.6489"},
    {"170 cm", "170", "70", "1.8181", "1.8257", "1.8097", "1.8313"},
    {"ten and more are cut at the same place", "1000", "1000", "16.6667", "15.4021", "20.2473", "15.2100"},
};

class SurfaceCheckValue : public ::testing::TestWithParam<CheckValue> {
 protected:
  static std::string surface(BsaFormula formula) {
    const Number cm = *readDecimal(GetParam().cm);
    const Number kg = *readDecimal(GetParam().kg);
    return fixedText(surfaceByPowers(surfaceFormula(formula), cm, kg), 4);
  }
};

TEST_P(SurfaceCheckValue, agreesToFourDecimals) {
  EXPECT_EQ(surface(BsaFormula::mosteller), GetParam().mosteller);
  EXPECT_EQ(surface(BsaFormula::haycock), GetParam().haycock);
  EXPECT_EQ(surface(BsaFormula::duBois), GetParam().duBois);
  EXPECT_EQ(surface(BsaFormula::gehanGeorge), GetParam().gehanGeorge);
}

TEST_P(SurfaceCheckValue, mostellerAgreesAsAnExactRoot) {
  const Number squared = *readDecimal(GetParam().cm) * *readDecimal(GetParam().kg) / Number(mostellerMetric);
  EXPECT_EQ(fixedText(squared.rootRounded(4), 4), GetParam().mosteller);
}

INSTANTIATE_TEST_SUITE_P(Table, SurfaceCheckValue, ::testing::ValuesIn(checkValues), test::NameOfRow());

/// The same at 45 decimals, cut: Python decimal at 90 digits, power as exp(b ln a).
struct LongValue {
  const char* name;
  BsaFormula formula;
  const char* cm;
  const char* kg;
  const char* m2;
};

constexpr LongValue longValues[] = {
    {"mosteller at 50 cm and 3.5 kg", BsaFormula::mosteller, "50", "3.5",
     "0.220479275922049215875134646136605035475854931"},
    {"haycock at 50 cm and 3.5 kg", BsaFormula::haycock, "50", "3.5",
     "0.224414957435525226782093714712217481467857757"},
    {"duBois at 50 cm and 3.5 kg", BsaFormula::duBois, "50", "3.5",
     "0.208616423511548213558825430880231983568151689"},
    {"gehanGeorge at 50 cm and 3.5 kg", BsaFormula::gehanGeorge, "50", "3.5",
     "0.233760099369030315677989202865411482943761224"},
    {"mosteller at 120 cm and 25 kg", BsaFormula::mosteller, "120", "25",
     "0.912870929175276855761616304668003556587907824"},
    {"haycock at 120 cm and 25 kg", BsaFormula::haycock, "120", "25",
     "0.914070889715295303430104633650001495900887590"},
    {"duBois at 120 cm and 25 kg", BsaFormula::duBois, "120", "25",
     "0.907605733490841532650329055703602329219033359"},
    {"gehanGeorge at 120 cm and 25 kg", BsaFormula::gehanGeorge, "120", "25",
     "0.930599430323566226447540157019784658754372568"},
    {"mosteller at 170 cm and 70 kg", BsaFormula::mosteller, "170", "70",
     "1.818118685772619068583692414562150312134188950"},
    {"haycock at 170 cm and 70 kg", BsaFormula::haycock, "170", "70",
     "1.825677124776976203888834023011152655604542762"},
    {"duBois at 170 cm and 70 kg", BsaFormula::duBois, "170", "70",
     "1.809707801753247399921869258723127062153124625"},
    {"gehanGeorge at 170 cm and 70 kg", BsaFormula::gehanGeorge, "170", "70",
     "1.831289313422129082509482921232285592792463226"},
    {"mosteller at 38.5 cm and 0.9 kg", BsaFormula::mosteller, "38.5", "0.9",
     "0.098107084351742917342630018945908871631564172"},
    {"haycock at 38.5 cm and 0.9 kg", BsaFormula::haycock, "38.5", "0.9",
     "0.097464969316768470409094176680788355582649687"},
    {"duBois at 38.5 cm and 0.9 kg", BsaFormula::duBois, "38.5", "0.9",
     "0.096912192520210354907709318514011843839376024"},
    {"gehanGeorge at 38.5 cm and 0.9 kg", BsaFormula::gehanGeorge, "38.5", "0.9",
     "0.104067860881909617354506573403969967775469582"},
    {"mosteller at 185.5 cm and 140.25 kg", BsaFormula::mosteller, "185.5", "140.25",
     "2.688265394884465891493571304016461904008688992"},
    {"haycock at 185.5 cm and 140.25 kg", BsaFormula::haycock, "185.5", "140.25",
     "2.746351915178578613522882804818946321282959300"},
    {"duBois at 185.5 cm and 140.25 kg", BsaFormula::duBois, "185.5", "140.25",
     "2.590295917052938230567574588892259972141191408"},
    {"gehanGeorge at 185.5 cm and 140.25 kg", BsaFormula::gehanGeorge, "185.5", "140.25",
     "2.716831931256345180292975213332394147956745488"},
};

class SurfaceToManyDigits : public ::testing::TestWithParam<LongValue> {};

TEST_P(SurfaceToManyDigits, isRightTo45Decimals) {
  const LongValue& row = GetParam();
  const Number m2 = surfaceByPowers(surfaceFormula(row.formula), *readDecimal(row.cm), *readDecimal(row.kg));
  EXPECT_EQ(fixedText(m2, 45), row.m2);
}

INSTANTIATE_TEST_SUITE_P(Table, SurfaceToManyDigits, ::testing::ValuesIn(longValues), test::NameOfRow());

TEST(SurfaceFormula, eachHasItsFiguresNameAndSource) {
  struct Figures {
    BsaFormula formula;
    const char* id;
    const char* factor;
    const char* heightPower;
    const char* weightPower;
  };
  for (const Figures& row :
       {Figures{BsaFormula::mosteller, "mosteller", "1/60", "0.5", "0.5"},
        Figures{BsaFormula::haycock, "haycock", "0.024265", "0.3964", "0.5378"},
        Figures{BsaFormula::duBois, "du-bois", "0.007184", "0.725", "0.425"},
        Figures{BsaFormula::gehanGeorge, "gehan-george", "0.0235", "0.42246", "0.51456"}}) {
    const SurfaceFormula& formula = surfaceFormula(row.formula);
    EXPECT_EQ(formula.formula, row.formula);
    EXPECT_EQ(formula.id, row.id);
    EXPECT_EQ(exactText(formula.factor), row.factor);
    EXPECT_EQ(exactText(formula.heightPower), row.heightPower);
    EXPECT_EQ(exactText(formula.weightPower), row.weightPower);
    EXPECT_FALSE(formula.source.empty());
    EXPECT_FALSE(formula.name.empty());
  }
}

TEST(SurfaceFormula, mostellersDivisors) {
  EXPECT_EQ(mostellerMetric, 3600);
  EXPECT_EQ(mostellerHousehold, 3131);
  // 3600 / (2.54 × 0.45359237) = 3124.66 (Python decimal): 3131 makes the surface 0.1 % low.
  const Number exact = Number(3600) / (Number::ratio(254, 100) * Number::ratio(45359237, 100000000));
  EXPECT_EQ(fixedText(exact, 2), "3124.66");
}

}  // namespace
}  // namespace wardchalk::surface_formula_test
