#include <iostream>

#include "app/console/commands.h"
#include "core/record/rules_file.h"
#include "core/record/text_file.h"
#include "core/words/sentences.h"

namespace wardchalk::console {

void tell(const std::string& file, const Refusal& refusal) {
  std::cerr << "wardchalk-console: " << file << ": ";
  if (!refusal.path.empty()) std::cerr << refusal.path << ": ";
  std::cerr << sentence(refusal, englishPhrases()) << '\n';
}

std::optional<HouseRules> rulesFrom(const std::string& option) {
  if (option.empty() || option == "exact") return exactRules();
  if (option == "classroom") return classroomRules();
  const Result<std::string> text = readTextFile(option);
  if (!text) {
    tell(option, text.refusal());
    return std::nullopt;
  }
  Result<HouseRules> rules = readRules(*text);
  if (!rules) {
    tell(option, rules.refusal());
    return std::nullopt;
  }
  return *rules;
}

}  // namespace wardchalk::console
