#include "core/check/detail/notebook.h"

#include <algorithm>

namespace wardchalk::detail {

bool Notebook::hasTold(FindingCode code) const {
  return std::any_of(findings.begin(), findings.end(),
                     [code](const Finding& finding) { return finding.code == code; });
}

bool Notebook::allowsAmount() const {
  return std::all_of(findings.begin(), findings.end(),
                     [](const Finding& finding) { return finding.severity > Severity::notCovered; }) &&
         std::all_of(needs.begin(), needs.end(),
                     [](const Need& need) { return need.forWhat != Need::For::verdict; });
}

void Notebook::need(StaticText path, Need::For forWhat, bool finer) {
  for (Need& need : needs) {
    if (need.path != path) continue;
    if (forWhat == Need::For::verdict) need.forWhat = forWhat;
    return;
  }
  needs.push_back({path, forWhat, finer});
}

Finding& Notebook::tell(FindingCode code, StaticText field, std::vector<Argument> arguments,
                        std::optional<CheckId> check) {
  findings.push_back({code, usualSeverity(code), check, field, std::move(arguments)});
  return findings.back();
}

void Notebook::write(Section section, Step step) {
  if (!writesSteps()) return;
  constexpr std::size_t usual = 8;  // a step is large: it is not to be moved for each that follows
  std::vector<Step>& written = in(section);
  if (written.empty()) written.reserve(usual);
  written.push_back(std::move(step));
}

std::optional<Found> Notebook::solveStep(Section section, StepId id, Chain chain, const Units& wanted) {
  if (chain.factors.size() == 1) return solveUnwritten(chain, wanted, chain.factors.front().over.origin);
  if (!writesSteps()) return solveUnwritten(chain, wanted, Origin::step(id));
  std::optional<Solution> solution = found(solve(chain, wanted));
  if (!solution) return std::nullopt;
  std::optional<Found> value = found(foundBy(*solution, Origin::step(id)));
  const Number result = solution->product.exact;
  write(section, {id, wanted, Solved{std::move(chain), std::move(solution->product), result, -1}, {}, {}});
  return value;
}

std::optional<Found> Notebook::solveUnwritten(const Chain& chain, const Units& wanted, Origin origin) {
  return found(foundBy(chain, wanted, origin));
}

}  // namespace wardchalk::detail
