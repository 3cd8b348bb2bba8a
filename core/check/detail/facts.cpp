#include "core/check/detail/facts.h"

#include "core/medicine/medicine_name.h"

namespace wardchalk::detail {

namespace {

bool isOfOtherMedicine(const Case& given) {
  return namesMedicine(given.order.medicine) && namesMedicine(medicineOf(given.reference)) &&
         !isFor(given.reference, given.order.medicine);
}

}  // namespace

Facts findFacts(Notebook& notes) { return findFacts(notes, findSize(notes)); }

Facts findFacts(Notebook& notes, Size size) {
  Strengths strengths = findStrength(notes);
  checkFit(notes);
  Doses doses = findDoses(notes, size, strengths);
  const bool otherMedicine = isOfOtherMedicine(notes.given);
  Limits limits = otherMedicine ? Limits{} : findLimits(notes, size, doses);
  findOrdered(notes, doses, limits);
  return {std::move(size), std::move(strengths), std::move(doses), std::move(limits), otherMedicine};
}

}  // namespace wardchalk::detail
