#include "core/check/shown.h"

#include <algorithm>
#include <utility>

#include "core/check/preparing.h"

namespace wardchalk {

namespace {

/// Only what settles a question is an answer to it.
bool isSettled(const Answers& answers, FindingCode question) {
  const auto answer = answers.given.find(question);
  return answer != answers.given.end() && settles(answer->second, question);
}

bool tellsPreparation(const Worksheet& sheet) {
  return sheet.give || sheet.rate ||
         std::ranges::any_of(sheet.steps, [](const Step& step) { return tellsAmount(step.id); });
}

}  // namespace

Shown::Shown(Worksheet whole, Answers answers)
    : sheet_(std::move(whole)),
      answers_(std::move(answers)),
      questions_(questionsOf(sheet_)),
      open_(std::ranges::any_of(questions_,
                                [this](FindingCode question) { return !isSettled(answers_, question); })),
      asksFirst_(!questions_.empty() && tellsPreparation(sheet_)),
      awaitsSecond_(sheet_.given.reference.secondCheckRequired && !answers_.secondAgrees &&
                    tellsPreparation(sheet_)) {
  if (open_ || awaitsSecond_) sheet_ = withoutPreparation(std::move(sheet_));
}

std::optional<Answer> Shown::answerTo(FindingCode question) const {
  if (!isSettled(answers_, question)) return std::nullopt;
  return answers_.given.at(question);
}

}  // namespace wardchalk
