#include "core/check/answers.h"

#include <algorithm>

namespace wardchalk {

namespace {

template <typename List>
bool contains(const List& list, const typename List::value_type& wanted) {
  return std::ranges::find(list, wanted) != list.end();
}

}  // namespace

std::optional<Answer> answerOf(std::string_view id) {
  const auto found = std::ranges::find(answerIds, id);
  if (found == answerIds.end()) return std::nullopt;
  return static_cast<Answer>(found - answerIds.begin());
}

bool Answers::areSettled(const std::vector<FindingCode>& questions) const {
  return std::ranges::all_of(questions, [this](FindingCode question) { return isSettled(question); });
}

std::vector<FindingCode> questionsOf(const Worksheet& sheet) {
  std::vector<FindingCode> questions;
  if (sheet.verdict != VerdictKind::ask) return questions;
  for (const Finding& finding : sheet.findings)
    if (finding.severity == Severity::ask && !contains(questions, finding.code))
      questions.push_back(finding.code);
  return questions;
}

std::vector<Answer> whatSettles(FindingCode question) {
  switch (question) {
    case FindingCode::secondDiffers:
    case FindingCode::maxDosesOpen:
      return {};
    case FindingCode::weightUnlikely:
    case FindingCode::weightOld:
      return {Answer::weighedAgain};
    case FindingCode::heightUnlikely:
      return {Answer::measuredAgain};
    case FindingCode::sizeImplausible:
    case FindingCode::weightUnlikelyForHeight:
      return {Answer::weighedAgain, Answer::measuredAgain};
    case FindingCode::bsaDiffers:
      return {Answer::weighedAgain, Answer::measuredAgain, Answer::chart};
    case FindingCode::strengthDiffers:
    case FindingCode::finalSmallerThanDiluent:
      return {Answer::labelReadAgain, Answer::pharmacist};
    default:
      return {Answer::prescriber, Answer::pharmacist, Answer::seniorNurse, Answer::chart};
  }
}

bool settles(Answer answer, FindingCode question) { return contains(whatSettles(question), answer); }

Answers answersBy(const Worksheet& sheet, const std::vector<Answer>& ways) {
  Answers answers;
  for (const FindingCode question : questionsOf(sheet)) {
    const auto way = std::ranges::find_if(ways, [&](Answer one) { return settles(one, question); });
    if (way != ways.end()) answers.given.emplace(question, *way);
  }
  return answers;
}

}  // namespace wardchalk
