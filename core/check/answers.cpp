#include "core/check/answers.h"

#include <algorithm>

namespace wardchalk {

bool Answers::areSettled(const std::vector<FindingCode>& questions) const {
  return std::ranges::all_of(questions, [this](FindingCode question) { return isSettled(question); });
}

std::vector<FindingCode> questionsOf(const Worksheet& sheet) {
  std::vector<FindingCode> questions;
  if (sheet.verdict != VerdictKind::ask) return questions;
  for (const Finding& finding : sheet.findings)
    if (finding.severity == Severity::ask) questions.push_back(finding.code);
  return questions;
}

}  // namespace wardchalk
