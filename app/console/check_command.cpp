#include "app/console/commands.h"
#include "app/console/files.h"
#include "app/console/output.h"
#include "core/check/shown.h"
#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/worksheet_file.h"
#include "core/words/working_markup.h"
#include "core/words/working_text.h"

namespace wardchalk::console {

namespace {

bool asJson(const CheckOptions& options) { return options.json || options.format == "json"; }

std::string asFile(const Worksheet& sheet) {
  std::string out;
  writeWorksheet(out, sheet, WorksheetExtent::whole);
  return out + '\n';
}

/// For the eye: what may be seen with the questions settled so.
std::string asWorking(Worksheet sheet, const CheckOptions& options) {
  std::vector<Answer> ways;
  for (const std::string& id : options.asked)
    if (const auto way = answerOf(id)) ways.push_back(*way);
  Answers answers = answersBy(sheet, ways);
  const Shown shown(std::move(sheet), std::move(answers));
  if (options.format == "mathml") return workingMarkup(shown, Markup::mathml);
  if (options.format == "latex") return workingMarkup(shown, Markup::latex);
  return workingText(shown);
}

}  // namespace

int check(const CheckOptions& options) {
  if (!oneFromInput({options.caseFile, options.rulesFile})) return unusable;
  const std::optional<HouseRules> rules = rulesFrom(options.rulesFile);
  if (!rules) return unusable;
  const Result<std::string> text = readInput(options.caseFile);
  const Result<Case> inputs = text ? readCase(*text) : Result<Case>(text.refusal());
  if (!inputs) {
    tell(inputName(options.caseFile), inputs.refusal());
    return unusable;
  }
  Worksheet sheet = workOut(*inputs, *rules);
  if (asJson(options)) return print(asFile(sheet), Output::Kind::json);
  return print(asWorking(std::move(sheet), options), Output::Kind::text);
}

}  // namespace wardchalk::console
