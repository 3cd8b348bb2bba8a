#include <iostream>

#include "app/console/commands.h"
#include "app/console/files.h"
#include "core/record/rules_file.h"
#include "core/words/sentences.h"
#include "core/words/visible_text.h"

namespace wardchalk::console {

/// The parts are made fit for a terminal one by one, so that none of them can pass for another.
void tell(const std::string& file, const Refusal& refusal) {
  Refusal shown = refusal;
  // a character that nobody sees is named by the sentence itself, and must be there to be named
  if (refusal.code != RefusalCode::unseenCharacter) shown.typed = visibleLine(refusal.typed);
  shown.suggestion = visibleLine(refusal.suggestion);
  std::cerr << "wardchalk-console: " << visibleLine(file) << ": ";
  if (!refusal.path.empty()) std::cerr << visibleLine(refusal.path) << ": ";
  std::cerr << sentence(shown) << '\n';
}

std::optional<HouseRules> rulesFrom(const std::string& option) {
  if (option.empty() || option == "exact") return exactRules();
  if (option == "classroom") return classroomRules();
  const Result<std::string> text = readInput(option);
  if (!text) {
    tell(inputName(option), text.refusal());
    return std::nullopt;
  }
  Result<HouseRules> rules = readRules(*text);
  if (!rules) {
    tell(inputName(option), rules.refusal());
    return std::nullopt;
  }
  return *rules;
}

}  // namespace wardchalk::console
