#include <algorithm>
#include <array>

#include "core/check/detail/decide.h"
#include "core/check/detail/size.h"

namespace wardchalk::detail {

namespace {

/// The order of the papers on the desk, in which what is wanting is asked for.
constexpr std::array paperOrder = {
    path::age,
    path::height,
    path::weight,
    path::bsa,
    path::medicine,
    path::dose,
    path::route,
    path::schedule,
    path::low,
    path::high,
    path::referenceSchedule,
    path::stockKind,
    path::strength,
    path::dividesInto,
    path::content,
    path::diluent,
    path::finalVolume,
    path::displacement,
    path::infusionVolume,
    path::infusionOver,
    path::dropFactor,
};

std::size_t rankOf(StaticText path) {
  return static_cast<std::size_t>(std::find(paperOrder.begin(), paperOrder.end(), path) - paperOrder.begin());
}

void sortNeeds(Worksheet& sheet) {
  std::stable_sort(sheet.needs.begin(), sheet.needs.end(), [](const Need& a, const Need& b) {
    if (a.forWhat != b.forWhat) return a.forWhat < b.forWhat;
    return rankOf(a.path) < rankOf(b.path);
  });
}

/// How many times what is allowed; of a time that is too short, how many times too short. None where the
/// finding is about nothing that can be counted.
std::optional<Number> timesAllowed(const Worksheet& sheet, const Finding& finding) {
  if (!finding.check) return std::nullopt;
  const Check& check = sheet.check(*finding.check);
  if (!check.ratio || check.id != CheckId::infusionTime) return check.ratio;
  return Number(1) / *check.ratio;
}

/// By severity, then what is furthest over first, then in the order of the catalogue.
void sortFindings(Worksheet& sheet) {
  std::stable_sort(sheet.findings.begin(), sheet.findings.end(), [&](const Finding& a, const Finding& b) {
    if (a.severity != b.severity) return a.severity < b.severity;
    if (a.severity == Severity::unsafe) {
      const std::optional<Number> first = timesAllowed(sheet, a);
      const std::optional<Number> second = timesAllowed(sheet, b);
      if (first && second && *first != *second) return *first > *second;
    }
    return a.code < b.code;
  });
}

bool needsForVerdict(const Worksheet& sheet) {
  return std::any_of(sheet.needs.begin(), sheet.needs.end(),
                     [](const Need& need) { return need.forWhat == Need::For::verdict; });
}

/// The made upper limit that the order fills most.
std::optional<CheckId> fullest(const Worksheet& sheet) {
  const auto& dose = sheet.given.order.dose;
  const bool ofRate = dose && dose->isRate();
  const Check* worst = nullptr;
  for (const Check& check : sheet.checks)
    if (isUpperLimit(check.id, ofRate) && check.isMade() && check.ratio &&
        (!worst || *check.ratio > *worst->ratio))
      worst = &check;
  if (!worst) return std::nullopt;
  return worst->id;
}

void moveToEnd(std::vector<Step>& steps, std::vector<Step>& more) {
  for (Step& step : more) steps.push_back(std::move(step));
  more.clear();
}

}  // namespace

void decide(Worksheet& sheet, Notebook& notes) {
  sheet.findings = std::move(notes.findings);
  sheet.needs = std::move(notes.needs);
  sortNeeds(sheet);
  sortFindings(sheet);
  sheet.worst = fullest(sheet);
  const Severity first = sheet.findings.empty() ? Severity::note : sheet.findings.front().severity;
  const bool wanting = needsForVerdict(sheet);
  if (first <= Severity::notCovered || (first == Severity::ask && !wanting)) {
    sheet.deciding = 0;
    constexpr std::array verdicts = {VerdictKind::undecided, VerdictKind::unsafe, VerdictKind::notCovered,
                                     VerdictKind::ask};
    sheet.verdict = verdicts[static_cast<std::size_t>(first)];
    return;
  }
  sheet.verdict = wanting ? VerdictKind::undecided : VerdictKind::safe;
}

void arrange(Worksheet& sheet, Notebook& notes, const Size& size) {
  const bool referenceAwaited = !notes.given.reference.high;
  const bool surfaceShown = notes.surfaceUsed || referenceAwaited;
  const bool weightInSurface = surfaceShown && !size.household && !notes.surfaceSteps.empty();
  if (notes.weightUsed || referenceAwaited || weightInSurface)
    moveToEnd(notes.in(Section::size), notes.weightSteps);
  if (surfaceShown) moveToEnd(notes.in(Section::size), notes.surfaceSteps);

  std::optional<CheckId> first = sheet.worst;
  if (sheet.deciding && sheet.findings[*sheet.deciding].check) first = sheet.findings[*sheet.deciding].check;
  std::vector<Step>& comparisons = notes.in(Section::comparisons);
  std::stable_sort(comparisons.begin(), comparisons.end(), [&](const Step& a, const Step& b) {
    const bool aFirst = first && a.id == stepOf(*first);
    const bool bFirst = first && b.id == stepOf(*first);
    return aFirst != bFirst ? aFirst : a.id < b.id;
  });
  std::size_t count = 0;
  for (const std::vector<Step>& section : notes.sections) count += section.size();
  sheet.steps.reserve(count);
  for (std::vector<Step>& section : notes.sections) moveToEnd(sheet.steps, section);
}

}  // namespace wardchalk::detail
