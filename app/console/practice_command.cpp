#include "app/console/commands.h"
#include "app/console/output.h"
#include "core/practice/problem/problem_text.h"
#include "core/practice/sessions/problem_file.h"
#include "core/practice/sessions/set_file.h"

namespace wardchalk::console {

int practice(const PracticeOptions& options) {
  const std::optional<HouseRules> rules = rulesFrom(options.rulesFile);
  if (!rules) return unusable;
  const Topic topic = topicWithId(options.topic).value_or(Topic::mixed);
  const PracticeSet set{{}, options.seed, {topic}, options.level, options.count, *rules};
  Output out(options.json ? Output::Kind::json : Output::Kind::text);
  std::vector<Problem> problems;
  for (int i = 0; i < set.count && out.isWritten(); ++i) {
    Problem problem = problemInSet(set, i);
    if (!options.json) {
      problems.push_back(std::move(problem));
      continue;
    }
    std::string line;
    writeProblem(line, problem);
    out.add(line.append("\n"));
  }
  if (!options.json) out.add(problemsText(problems));
  return out.close(done);
}

}  // namespace wardchalk::console
