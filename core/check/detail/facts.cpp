#include "core/check/detail/facts.h"

namespace wardchalk::detail {

Facts findFacts(Notebook& notes) {
  Size size = findSize(notes);
  Strengths strengths = findStrength(notes);
  checkFit(notes);
  Doses doses = findDoses(notes, size, strengths);
  Limits limits = findLimits(notes, size, doses);
  return {std::move(size), std::move(strengths), std::move(doses), std::move(limits)};
}

}  // namespace wardchalk::detail
