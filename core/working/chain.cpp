#include "core/working/chain.h"

#include <algorithm>
#include <boost/container/small_vector.hpp>

namespace wardchalk {

namespace {

struct Use {
  Unit unit;
  Place place;
  bool struck = false;
};

/// Most chains have fewer uses on a side: they ask for no memory.
using Uses = boost::container::small_vector<Use, 16>;

Uses usesOn(const Chain& chain, bool over) {
  Uses uses;
  for (std::size_t f = 0; f < chain.factors.size(); ++f) {
    const Term& term = over ? chain.factors[f].over : chain.factors[f].under;
    for (std::size_t u = 0; u < term.units.size(); ++u)
      uses.push_back({term.units[u], {static_cast<int>(f), over, static_cast<int>(u)}});
  }
  return uses;
}

/// Strikes each unit above against the first free one below, in reading order.
template <typename Take>
void strike(Uses& above, Uses& below, Take take) {
  for (Use& up : above) {
    const auto partner = std::find_if(below.begin(), below.end(),
                                      [&](const Use& down) { return !down.struck && down.unit == up.unit; });
    if (partner == below.end()) continue;
    up.struck = partner->struck = true;
    take(up, *partner);
  }
}

UnitProduct leftIn(const Uses& uses) {
  UnitProduct left;
  for (const Use& use : uses)
    if (!use.struck) left.push_back(use.unit);
  return left;
}

/// In a fixed order, each square metre as a metre by a metre.
UnitProduct piled(UnitProduct units) {
  const auto squares = std::count(units.begin(), units.end(), Unit::m2);
  std::replace(units.begin(), units.end(), Unit::m2, Unit::m);
  for (std::ptrdiff_t i = 0; i < squares; ++i) units.push_back(Unit::m);
  std::sort(units.begin(), units.end());
  return units;
}

bool samePile(const UnitProduct& a, const UnitProduct& b) { return a == b || piled(a) == piled(b); }

/// Every second of each kind; no value if one has no twin.
std::optional<UnitProduct> halved(UnitProduct units) {
  std::sort(units.begin(), units.end());
  UnitProduct half;
  for (std::size_t i = 0; i < units.size(); i += 2) {
    if (i + 1 == units.size() || units[i] != units[i + 1]) return std::nullopt;
    half.push_back(units[i]);
  }
  return half;
}

Number valueOf(const Chain& chain) {
  Number over(1);
  Number under(1);
  for (const Factor& factor : chain.factors) {
    over = over * factor.over.value;
    under = under * factor.under.value;
  }
  return over / under;
}

}  // namespace

bool sameUnits(const Units& a, const Units& b) {
  return samePile(a.over, b.over) && samePile(a.under, b.under);
}

Product cancel(const Chain& chain) {
  Uses above = usesOn(chain, true);
  Uses below = usesOn(chain, false);
  Product product{valueOf(chain), {}, {}};
  product.pairs.reserve(std::min(above.size(), below.size()));
  strike(above, below, [&](const Use& up, const Use& down) {
    product.pairs.push_back({up.unit, up.place, down.place});
  });
  product.left = {leftIn(above), leftIn(below)};
  return product;
}

std::optional<Number> valueIn(const Chain& chain, const Units& wanted) {
  Uses above = usesOn(chain, true);
  Uses below = usesOn(chain, false);
  strike(above, below, [](const Use&, const Use&) {});
  if (chain.rooted || !sameUnits({leftIn(above), leftIn(below)}, wanted)) return std::nullopt;
  return valueOf(chain);
}

std::optional<Units> rootOf(const Units& units) {
  auto over = halved(units.over);
  auto under = halved(units.under);
  if (!over || !under) return std::nullopt;
  return Units{std::move(*over), std::move(*under)};
}

std::optional<Solution> solve(const Chain& chain, const Units& wanted) {
  Product product = cancel(chain);
  const std::optional<Units> found = chain.rooted ? rootOf(product.left) : product.left;
  if (!found || !sameUnits(*found, wanted)) return std::nullopt;
  return Solution{std::move(product), wanted};
}

Factor conversionFactor(const Conversion& fact) {
  const Origin origin = Origin::constant(fact.constant);
  return {{fact.toValue, {fact.to}, origin}, {fact.fromValue, {fact.from}, origin}};
}

std::vector<Factor> conversionFactors(Unit from, Unit to, Pounds pounds) {
  std::vector<Factor> factors;
  if (from == to) return factors;
  if (const auto path = conversionPath(from, to, pounds))
    for (const Conversion& fact : *path) factors.push_back(conversionFactor(fact));
  return factors;
}

}  // namespace wardchalk
