// Any bytes as an entry of a case: the first chooses the field, the rest is what was typed. It is refused
// with a part of what was typed, or read; a form that holds it says the same.
#include <string>

#include "core/record/case_draft.h"
#include "core/record/case_entry.h"
#include "core/words/sentences.h"
#include "tests/fuzz/demand.h"

namespace wardchalk::fuzz {

namespace {

void check(const Refusal& refusal, std::string_view path) {
  demand(refusal.path == path, "a refusal names its field");
  demand(refusal.typed.size() <= 64, "a refusal keeps the beginning of what was typed");
  demand(!sentence(refusal).empty(), "a refusal has a sentence");
}

void readAsForm(std::string_view path, std::string_view text) {
  CaseDraft draft;
  draft.set(path, text);
  draft.commit(path);
  const FieldState state = draft.state(path);
  demand(state != FieldState::pending, "a field that was committed is read or refused");
  demand((state == FieldState::refused) == draft.refusal(path).has_value(), "what is refused says why");
}

}  // namespace

void run(std::uint8_t field, std::string_view text) {
  const CaseEntry& entry = caseEntries()[field % caseEntries().size()];
  Case first;
  Case second;
  const auto refusal = setEntry(first, entry.path, text).refusalIfAny();
  demand(setEntry(second, entry.path, text).refusalIfAny() == refusal, "an entry is read alike each time");
  demand(first == second, "an entry makes the same case each time");
  if (refusal) check(*refusal, entry.path);
  readAsForm(entry.path, text);
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size > 0) wardchalk::fuzz::run(data[0], wardchalk::fuzz::textOf(data + 1, size - 1));
  return 0;
}
