#include "core/practice/lines/detail/line_part.h"

#include <utility>

namespace wardchalk::practice {

namespace {

/// A root or a sum stands as one factor among others, with its value and units.
Part folded(Part part) {
  if (!part.chain.rooted) return part;
  Worth worth = worthOf(part);
  part.chain = Chain{{Factor{Term{worth.value, std::move(worth.units.over), {}},
                             Term{Number(1), std::move(worth.units.under), {}}}}};
  part.places = {{part.at, {}}};
  part.exact = worth.exact;
  part.open = worth.open;
  return part;
}

void count(Part& into, const Part& other) {
  into.named += other.named;
  into.bare += other.bare;
  into.exact = into.exact && other.exact;
  into.open = into.open || other.open;
}

/// What is said of one number alone no longer holds of two.
void becomeWorked(Part& part, const Part& other) {
  count(part, other);
  part.at = {part.at.begin, other.at.end};
  part.isSum = part.isParts = part.isAmount = part.isUnits = false;
  part.decimals = part.rootDecimals = -1;
  part.typed.clear();
}

bool isPlainOver(const Factor& factor) { return factor.under.isPlainOne(); }

void append(Part& left, Part& right, bool turned) {
  for (std::size_t i = 0; i < right.chain.factors.size(); ++i) {
    Factor& factor = right.chain.factors[i];
    const FactorPlace& place = right.places[i];
    left.chain.factors.push_back(turned ? factor.turned() : std::move(factor));
    left.places.push_back(turned ? FactorPlace{place.under, place.over} : place);
  }
}

/// Units alone after a slash go below with what is there: "mg/m²/dose".
void putUnitsBelow(Part& left, const Part& right) {
  Term& under = left.chain.factors.back().under;
  const Term& units = right.chain.factors.front().over;
  under.units.append(units.units);
  Span& place = left.places.back().under;
  place = place.end == 0 ? right.at : Span{place.begin, right.at.end};
}

}  // namespace

Part amountPart(const Number& value, Units units, Span at, Span underAt) {
  Part part;
  const bool bare = units.over.empty() && units.under.empty();
  part.chain.factors.push_back(
      {Term{value, std::move(units.over), {}}, Term{Number(1), std::move(units.under), {}}});
  part.places.push_back({at, underAt});
  part.at = {at.begin, underAt.end == 0 ? at.end : underAt.end};
  (bare ? part.bare : part.named) = 1;
  part.isAmount = true;
  return part;
}

Worth worthOf(const Part& part) {
  Product product = cancel(part.chain);
  if (!part.chain.rooted) {
    Worth worth{product.exact, product.left, {}, part.exact, part.open};
    if (part.open) worth.units = {};
    worth.product = std::move(product);
    return worth;
  }
  const std::optional<Units> units = rootOf(product.left);
  const bool open = part.open || !units;
  Worth worth{product.exact.rootCut(endlessRootDecimals), open ? Units{} : *units, {}, part.exact, open};
  worth.exact = part.exact && worth.value * worth.value == product.exact;
  worth.product = std::move(product);
  return worth;
}

Part times(Part left, Part right) {
  left = folded(std::move(left));
  right = folded(std::move(right));
  becomeWorked(left, right);
  append(left, right, /*turned=*/false);
  return left;
}

Part dividedBy(Part left, Part right) {
  left = folded(std::move(left));
  right = folded(std::move(right));
  const bool staysAmount = right.isUnits && left.isAmount;
  const Part before = staysAmount ? left : Part{};
  becomeWorked(left, right);
  if (right.isUnits) {
    putUnitsBelow(left, right);
    if (staysAmount) {
      left.isAmount = true;
      left.decimals = before.decimals;
      left.typed = before.typed;
      left.named = 1;  // units alone after a slash are still units
      left.bare = 0;
    }
    return left;
  }
  const bool single = right.chain.factors.size() == 1 && isPlainOver(right.chain.factors.front());
  if (single && isPlainOver(left.chain.factors.back())) {
    left.chain.factors.back().under = std::move(right.chain.factors.front().over);
    left.places.back().under = right.places.front().over;
  } else {
    append(left, right, /*turned=*/true);
  }
  return left;
}

Part rootOfPart(Part part, Span at) {
  const int decimals = part.isAmount ? part.decimals : -1;
  part = folded(std::move(part));
  part.chain.rooted = true;
  part.at = at;
  part.isSum = part.isParts = part.isAmount = false;
  part.decimals = -1;
  part.rootDecimals = decimals;
  part.typed.clear();
  return part;
}

bool canBeAdded(const Worth& left, bool leftBare, const Worth& right, bool rightBare) {
  return leftBare || rightBare || left.open || right.open || sameUnits(left.units, right.units);
}

Part sumOf(const Part& left, const Part& right, bool minus) {
  const Worth a = worthOf(left);
  const Worth b = worthOf(right);
  const bool takeRight = (left.named == 0 && !left.open) || a.open;
  Part sum = amountPart(minus ? a.value - b.value : a.value + b.value, takeRight ? b.units : a.units,
                        {left.at.begin, right.at.end});
  sum.named = sum.bare = 0;
  count(sum, left);
  count(sum, right);
  sum.exact = a.exact && b.exact;
  sum.open = a.open && b.open;
  sum.isAmount = false;
  sum.isSum = true;
  return sum;
}

}  // namespace wardchalk::practice
