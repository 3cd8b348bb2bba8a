#pragma once

#include <utility>

#include "core/check/shown.h"

namespace wardchalk::test {

/// A worksheet with each of its questions settled in the first way that there is.
inline Shown settled(Worksheet sheet) {
  Answers answers;
  for (const FindingCode question : questionsOf(sheet))
    if (const std::vector<Answer> ways = whatSettles(question); !ways.empty())
      answers.given.emplace(question, ways.front());
  return {std::move(sheet), std::move(answers)};
}

}  // namespace wardchalk::test
