#include "core/check/detail/checks.h"

#include <algorithm>

#include "core/check/detail/comparing.h"

namespace wardchalk::detail {

Checks::Checks(WhyNot why) {
  for (std::size_t i = 0; i < checkCount; ++i) {
    all[i].id = static_cast<CheckId>(i);
    all[i].why = why;
  }
}

bool Checks::areKeptBy(const Number& times) const {
  return std::ranges::all_of(
      bounds, [&](const DoseBound& bound) { return !bound.holdsFor(Number(1)) || bound.holdsFor(times); });
}

namespace {

bool isAnyOutside(const Checks& checks) {
  return std::ranges::any_of(checks.all,
                             [](const Check& check) { return check.status == CheckStatus::outside; });
}

void compareRest(Comparing& comparing) {
  compareMaxDoses(comparing);
  compareLow(comparing);
  compareRate(comparing);
}

}  // namespace

Checks checkAmount(Notebook& notes, const Facts& facts) {
  Checks checks;
  Comparing comparing{notes, facts, checks};
  compareDose(comparing);
  compareRest(comparing);
  return checks;
}

Checks checkAmountUntilOutside(Notebook& notes, const Facts& facts) {
  Checks checks;
  Comparing comparing{notes, facts, checks};
  compareDose(comparing);
  if (!isAnyOutside(checks)) compareRest(comparing);
  return checks;
}

void checkChild(Notebook& notes, const Facts& facts, Checks& checks) {
  Comparing comparing{notes, facts, checks};
  compareBands(comparing);
  compareSize(comparing);
}

Checks makeChecks(Notebook& notes, const Facts& facts) {
  Checks checks = facts.otherMedicine ? Checks(WhyNot::otherMedicine) : checkAmount(notes, facts);
  Comparing comparing{notes, facts, checks};
  if (!facts.otherMedicine) {
    compareInfusion(comparing);
    compareSchedule(comparing);
  }
  askForInterval(comparing);
  checkChild(notes, facts, checks);
  return checks;
}

}  // namespace wardchalk::detail
