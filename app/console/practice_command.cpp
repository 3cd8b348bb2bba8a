#include <iostream>

#include "app/console/commands.h"
#include "core/practice/sessions/problem_file.h"
#include "core/practice/problem/problem_text.h"
#include "core/practice/sessions/set_file.h"

namespace wardchalk::console {

int practice(const PracticeOptions& options) {
  const std::optional<HouseRules> rules = rulesFrom(options.rulesFile);
  if (!rules) return unusable;
  const Topic topic = topicWithId(options.topic).value_or(Topic::mixed);
  const PracticeSet set{{}, options.seed, {topic}, options.level, options.count, *rules};
  std::vector<Problem> problems;
  for (int i = 0; i < set.count; ++i) {
    Problem problem = problemInSet(set, i);
    if (!options.json) {
      problems.push_back(std::move(problem));
      continue;
    }
    std::string line;
    writeProblem(line, problem);
    std::cout << line << '\n';
  }
  if (!options.json) std::cout << problemsText(problems, englishPhrases());
  std::cout << std::flush;
  return std::cout ? done : unusable;
}

}  // namespace wardchalk::console
