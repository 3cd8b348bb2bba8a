#include "core/child/surface_formula.h"

#include <array>
#include <boost/multiprecision/cpp_dec_float.hpp>
#include <string>

namespace wardchalk {

namespace {

// Decimal floating point is safe here: the result is rounded to at most 20 decimals, and 45 digits of it are
// right. A tie at the last place cannot be missed, since an irrational power never ends. Sixty digits are
// worked with: of fifty, the last of the 45 is sometimes wrong; a hundred change nothing and take more than
// twice as long.
using LongDecimal = boost::multiprecision::number<boost::multiprecision::cpp_dec_float<60>>;

LongDecimal toLongDecimal(const Number& value) {
  const std::string text = value.rationalText();
  const std::size_t slash = text.find('/');
  if (slash == std::string::npos) return LongDecimal(text);
  return LongDecimal(text.substr(0, slash)) / LongDecimal(text.substr(slash + 1));
}

Number cutTo(const LongDecimal& value, int decimals) {
  std::string digits = value.str(decimals + 10, std::ios_base::fixed);
  const std::size_t point = digits.find('.');
  digits.resize(point + 1 + static_cast<std::size_t>(decimals));
  digits.erase(point, 1);
  return Number::fromDigits(digits, decimals);
}

}  // namespace

const SurfaceFormula& surfaceFormula(BsaFormula formula) {
  static const std::array<SurfaceFormula, 4> table = {{
      {BsaFormula::mosteller, "mosteller", "Mosteller", Number::ratio(1, 60), Number::ratio(1, 2),
       Number::ratio(1, 2), "Mosteller RD. N Engl J Med 1987;317:1098"},
      {BsaFormula::haycock, "haycock", "Haycock", Number::ratio(24265, 1000000), Number::ratio(3964, 10000),
       Number::ratio(5378, 10000), "Haycock GB, Schwartz GJ, Wisotsky DH. J Pediatr 1978;93:62-66"},
      {BsaFormula::duBois, "du-bois", "Du Bois", Number::ratio(7184, 1000000), Number::ratio(725, 1000),
       Number::ratio(425, 1000), "Du Bois D, Du Bois EF. Arch Intern Med 1916;17:863-871"},
      {BsaFormula::gehanGeorge, "gehan-george", "Gehan–George", Number::ratio(235, 10000),
       Number::ratio(42246, 100000), Number::ratio(51456, 100000),
       "Gehan EA, George SL. Cancer Chemother Rep 1970;54:225-235"},
  }};
  return table[static_cast<std::size_t>(formula)];
}

Number surfaceByPowers(const SurfaceFormula& formula, const Number& heightCm, const Number& weightKg) {
  const LongDecimal surface = toLongDecimal(formula.factor) *
                              pow(toLongDecimal(heightCm), toLongDecimal(formula.heightPower)) *
                              pow(toLongDecimal(weightKg), toLongDecimal(formula.weightPower));
  return cutTo(surface, 45);
}

}  // namespace wardchalk
