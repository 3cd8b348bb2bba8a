#include "core/check/detail/size.h"

namespace wardchalk::detail {

namespace {

bool addWeight(Notebook& notes, const Size& child, Chain& chain) {
  if (!child.kg) {
    notes.need(path::weight, Need::For::verdict);
    return false;
  }
  notes.weightUsed = true;
  chain.factors.push_back(factorOf(*child.kg));
  return true;
}

bool addSurface(Notebook& notes, const Size& child, Chain& chain) {
  if (!child.m2) {
    if (!notes.given.child.height) notes.need(path::height, Need::For::verdict);
    if (!notes.given.child.weight) notes.need(path::weight, Need::For::verdict);
    return false;
  }
  notes.surfaceUsed = true;
  Factor surface = factorOf(*child.m2);
  surface.over.fixedDecimals = child.surface->fixedDecimals;
  chain.factors.push_back(std::move(surface));
  return true;
}

}  // namespace

bool addSizeFactor(Notebook& notes, const Size& child, Chain& chain, PerSize size) {
  switch (size) {
    case PerSize::none:
      return true;
    case PerSize::kg:
      return addWeight(notes, child, chain);
    case PerSize::m2:
      return addSurface(notes, child, chain);
  }
  return false;
}

std::optional<Number> sizeValue(const Size& child, PerSize size) {
  if (size == PerSize::none) return Number(1);
  const std::optional<Found>& found = size == PerSize::kg ? child.kg : child.m2;
  if (!found) return std::nullopt;
  return found->value();
}

}  // namespace wardchalk::detail
