#include "core/session/questioning.h"

#include <algorithm>

namespace wardchalk {

void Questioning::follow(const Worksheet& sheet) {
  std::vector<FindingCode> questions = questionsOf(sheet);
  if (sheet.given == given_ && sheet.rules == rules_ && questions == questions_) return;
  given_ = sheet.given;
  rules_ = sheet.rules;
  questions_ = std::move(questions);
  voidAnswers();
}

bool Questioning::answer(FindingCode question, std::optional<Answer> how) {
  if (std::ranges::find(questions_, question) == questions_.end()) return false;
  if (how && !settles(*how, question)) return false;
  if (how)
    answers_.given.insert_or_assign(question, *how);
  else
    answers_.given.erase(question);
  return true;
}

}  // namespace wardchalk
