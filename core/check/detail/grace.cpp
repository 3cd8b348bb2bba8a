#include <algorithm>
#include <array>

#include "core/check/detail/telling.h"

namespace wardchalk::detail {

namespace {

/// A check that the house may leave a little room above, with what is told where it is over.
struct Graced {
  CheckId check;
  FindingCode over;
  StaticText name;
  StaticText limitName;
  StaticText overName;
};
constexpr std::array gracedChecks = {
    Graced{CheckId::single, FindingCode::overSingle, "single", "single_limit", "single_over"},
    Graced{CheckId::daily, FindingCode::overDaily, "daily", "daily_limit", "daily_over"},
    Graced{CheckId::period, FindingCode::overPeriod, "period", "period_limit", "period_over"},
};

bool isGracedFinding(const Finding& finding) {
  return std::ranges::find(gracedChecks, finding.code, &Graced::over) != gracedChecks.end();
}

/// Nothing else is unsafe, and no doubt about the size is asked: then it is the reference's own limit alone.
bool isOverTheReferenceAlone(const Notebook& notes) {
  return std::ranges::any_of(notes.findings, isGracedFinding) &&
         std::ranges::none_of(notes.findings, [](const Finding& finding) {
           if (finding.severity == Severity::unsafe) return !isGracedFinding(finding);
           return doubtsSize(finding.code) && finding.severity != Severity::note;
         });
}

/// What one check is over by, as the sentence names it.
void addArguments(std::vector<Argument>& arguments, const Graced& graced, const Check& check) {
  const auto& value = std::get<Quantity>(check.value);
  const auto& limit = std::get<Quantity>(check.limit);
  const int significant = digitsApart(value.value, limit.value);
  arguments.push_back({graced.name, value, significant});
  arguments.push_back({graced.limitName, limit, significant});
  arguments.push_back({graced.overName, Excess{value.value, limit.value}});
}

/// A measured dose stays within the grace, and is never more than was ordered.
void boundWithin(Checks& checks, CheckId check, const Number& most) {
  for (DoseBound& bound : checks.bounds)
    if (bound.check == check) bound.filled = bound.filled / most;
  checks.bounds.push_back({check, Relation::atMost, Number(1)});
}

}  // namespace

void allowGrace(Notebook& notes, Checks& checks) {
  const Number& percent = notes.rules.gracePercent;
  if (percent.isZero() || notes.given.reference.limitOnly || !isOverTheReferenceAlone(notes)) return;
  const Number most = Number(1) + percent / Number(100);
  std::vector<Argument> arguments = {{"grace", percent}};
  std::vector<CheckId> over;
  for (const Graced& graced : gracedChecks) {
    const Check& check = checks.check(graced.check);
    if (check.status != CheckStatus::outside) continue;
    if (*check.ratio > most) return;
    addArguments(arguments, graced, check);
    over.push_back(graced.check);
  }
  std::erase_if(notes.findings, isGracedFinding);
  for (const CheckId check : over) boundWithin(checks, check, most);
  notes.tell(FindingCode::overWithinGrace, path::dose, std::move(arguments), over.front());
}

}  // namespace wardchalk::detail
