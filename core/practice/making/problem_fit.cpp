#include "core/practice/making/problem_fit.h"

#include <algorithm>
#include <array>

#include "core/check/work_out.h"

namespace wardchalk {

namespace {

bool isOneOf(FindingCode code, std::initializer_list<FindingCode> codes) {
  return std::find(codes.begin(), codes.end(), code) != codes.end();
}

/// The deciding finding that each aim wants.
bool isAimedAt(ProblemAim aim, FindingCode code) {
  using enum FindingCode;
  switch (aim) {
    case ProblemAim::safe:
      return false;
    case ProblemAim::tooMuch:
      return usualSeverity(code) == Severity::unsafe;
    case ProblemAim::tooLittle:
      return isOneOf(code, {belowLow, belowUsual});
    case ProblemAim::scheduleDiffers:
      return code == scheduleDiffers;
    case ProblemAim::notCovered:
      return usualSeverity(code) == Severity::notCovered;
  }
  return false;
}

VerdictKind verdictOf(ProblemAim aim) {
  switch (aim) {
    case ProblemAim::safe:
      return VerdictKind::safe;
    case ProblemAim::tooMuch:
      return VerdictKind::unsafe;
    case ProblemAim::notCovered:
      return VerdictKind::notCovered;
    case ProblemAim::tooLittle:
    case ProblemAim::scheduleDiffers:
      return VerdictKind::ask;
  }
  return VerdictKind::safe;
}

/// A case of a child alone, for a sum about its size, has no verdict.
bool hasOrder(const Worksheet& key) { return key.given.order.dose.has_value(); }

bool hasVerdictAimedAt(const Worksheet& key, ProblemAim aim) {
  if (!hasOrder(key)) return key.findings.empty();
  if (key.verdict != verdictOf(aim)) return false;
  for (const Finding& finding : key.findings) {
    const bool asks = finding.severity != Severity::note;
    // Another severity than the deciding one's may stand beside it: an order too much may be too often as
    // well.
    if (asks && finding.severity >= Severity::ask && aim != ProblemAim::tooMuch &&
        !isAimedAt(aim, finding.code))
      return false;
    if (finding.code == FindingCode::roundingDecides || finding.code == FindingCode::smallChildBsa)
      return false;
    if (finding.code == FindingCode::householdConstant) return false;
    if (isAimedAt(ProblemAim::tooLittle, finding.code) && !asks)
      return false;  // told, and no question: no lesson
  }
  return aim == ProblemAim::safe || isAimedAt(aim, key.findings[*key.deciding].code);
}

/// Within so many percent of the exact value; 0 wants it met.
bool isNear(const Number& exact, const std::optional<Number>& measured, int percent) {
  return measured && (*measured - exact).absolute() * Number(100) <= exact * Number(percent);
}

/// In one device: a line of a paper has room for one.
bool isMeasurable(const Worksheet& key, bool rounded) {
  if (key.give && key.give->pair) return false;
  if (key.give && !isNear(key.give->exact.value, key.give->measured, rounded ? 3 : 0)) return false;
  if (!key.rate) return true;
  const auto isSet = [&](const std::optional<Flow>& flow) {
    return !flow || isNear(flow->exact.value, flow->measured, rounded ? 2 : 0);
  };
  return isSet(key.rate->mlPerHour) && isSet(key.rate->dropsPerMinute);
}

/// The surface to 3 decimals or all of them is no teaching of how to measure: only the shipped sets decide
/// that.
const std::array<HouseRules, 6>& schools() {
  const auto with = [](HouseRules rules, std::optional<int> decimals) {
    rules.bsaDecimals = decimals;
    return rules;
  };
  static const std::array<HouseRules, 6> rules = {exactRules(),
                                                  classroomRules(),
                                                  with(exactRules(), 3),
                                                  with(exactRules(), std::nullopt),
                                                  with(classroomRules(), 3),
                                                  with(classroomRules(), std::nullopt)};
  return rules;
}

bool isBySurface(const Case& given) {
  return given.reference.high && given.reference.high->perSize == PerSize::m2;
}

bool isAboutRounding(CheckId id) {
  switch (id) {
    case CheckId::single:
    case CheckId::daily:
    case CheckId::period:
    case CheckId::maxSingle:
    case CheckId::maxDaily:
    case CheckId::low:
    case CheckId::rate:
    case CheckId::concentration:
    case CheckId::concentrationLow:
    case CheckId::infusionRate:
      return true;
    default:
      return false;
  }
}

/// No amount is within 3 % of what it is held against.
bool isClearOfLimits(const Worksheet& key) {
  return std::none_of(key.checks.begin(), key.checks.end(), [](const Check& check) {
    return isAboutRounding(check.id) && check.isMade() && check.ratio &&
           (*check.ratio - Number(1)).absolute() * Number(100) < Number(3);
  });
}

bool agree(const Worksheet& key, const Worksheet& other) {
  if (key.verdict != other.verdict || key.because() != other.because()) return false;
  for (std::size_t i = 0; i < key.checks.size(); ++i)
    if (key.checks[i].status != other.checks[i].status) return false;
  return true;
}

}  // namespace

bool isAsMeant(const Problem& problem, const ProblemSketch& sketch, ProblemAim aim) {
  const Worksheet& key = problem.key;
  if (!hasVerdictAimedAt(key, aim) || key.check(CheckId::size).status != CheckStatus::within) return false;
  if (!isClearOfLimits(key)) return false;
  return aim != ProblemAim::safe || isMeasurable(key, sketch.rounded);
}

bool isSameInEverySchool(const Problem& problem, const ProblemSketch& sketch, ProblemAim aim) {
  if (!hasOrder(problem.key)) return true;
  const std::size_t count = isBySurface(problem.given) ? schools().size() : 2;
  return std::all_of(schools().begin(), schools().begin() + static_cast<std::ptrdiff_t>(count),
                     [&](const HouseRules& rules) {
                       if (rules == problem.rules) return true;
                       const Worksheet other = workOut(problem.given, rules);
                       return agree(problem.key, other) && isClearOfLimits(other) &&
                              (aim != ProblemAim::safe || isMeasurable(other, sketch.rounded));
                     });
}

}  // namespace wardchalk
