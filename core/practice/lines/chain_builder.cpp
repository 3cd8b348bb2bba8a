#include "core/practice/lines/chain_builder.h"

#include <algorithm>
#include <utility>

#include "core/words/step_words.h"

namespace wardchalk {

namespace {

using Offset = std::vector<Factor>::difference_type;

void insertAt(std::vector<Factor>& factors, std::size_t place, Factor factor) {
  factors.insert(factors.begin() + static_cast<Offset>(std::min(place, factors.size())), std::move(factor));
}

/// A term in one line, in parentheses where "1/2 doses" would be half a dose.
std::string factorText(const Factor& factor) {
  const bool wouldBeHalf =
      factor.over.units.empty() && !factor.under.units.empty() && factor.under.value != Number(1);
  if (!wouldBeHalf) return factorLine(factor);
  return factorLine({factor.over, Term{}}) + "/(" + factorLine({factor.under, Term{}}) + ")";
}

}  // namespace

ChainWork withFact(ChainWork work, const ChainFact& fact, std::size_t place) {
  insertAt(work.chain.factors, place, fact.factor);
  return work;
}

ChainWork withTurned(ChainWork work, std::size_t place) {
  if (place < work.chain.factors.size()) work.chain.factors[place] = work.chain.factors[place].turned();
  return work;
}

ChainWork without(ChainWork work, std::size_t place) {
  std::vector<Factor>& factors = work.chain.factors;
  if (place < factors.size()) factors.erase(factors.begin() + static_cast<Offset>(place));
  return work;
}

ChainWork withMoved(ChainWork work, std::size_t from, std::size_t to) {
  if (from >= work.chain.factors.size()) return work;
  Factor factor = work.chain.factors[from];
  work = without(std::move(work), from);
  insertAt(work.chain.factors, to, std::move(factor));
  return work;
}

ChainWork withRoot(ChainWork work, bool rooted) {
  work.chain.rooted = rooted;
  return work;
}

ChainState stateOf(const ChainWork& work) {
  ChainState state;
  state.product = cancel(work.chain);
  state.left = work.chain.rooted ? rootOf(state.product.left) : state.product.left;
  state.value = work.chain.rooted ? state.product.exact.rootCut(20) : state.product.exact;
  state.exact = !work.chain.rooted || state.value * state.value == state.product.exact;
  state.isWanted = !work.chain.factors.empty() && state.left && sameUnits(*state.left, work.wanted);
  return state;
}

std::string lineText(const Chain& chain) {
  std::string line;
  for (const Factor& factor : chain.factors)
    line.append(line.empty() ? "" : " × ").append(factorText(factor));
  return chain.rooted && !line.empty() ? "√(" + line + ")" : line;
}

}  // namespace wardchalk
