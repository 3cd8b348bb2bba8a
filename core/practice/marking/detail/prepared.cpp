#include "core/practice/marking/detail/prepared.h"

#include "core/check/work_out.h"

namespace wardchalk::detail {

Problem asIfAllowed(const Problem& problem) {
  Problem allowed = problem;
  const Order& order = problem.given.order;
  Reference reference;
  reference.medicine = problem.given.reference.medicine;
  reference.high = order.dose;
  reference.limitOnly = true;
  reference.schedule = order.schedule;
  reference.route = order.route;
  allowed.given.reference = reference;
  allowed.key = workOut(allowed.given, allowed.rules);
  return allowed;
}

}  // namespace wardchalk::detail
