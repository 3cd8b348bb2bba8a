#include <iostream>

#include "app/console/commands.h"
#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/text_file.h"
#include "core/record/worksheet_file.h"
#include "core/words/working_text.h"

namespace wardchalk::console {

int check(const CheckOptions& options) {
  const std::optional<HouseRules> rules = rulesFrom(options.rulesFile);
  if (!rules) return unusable;
  const Result<std::string> text = readTextFile(options.caseFile);
  if (!text) {
    tell(options.caseFile, text.refusal());
    return unusable;
  }
  const Result<Case> inputs = readCase(*text);
  if (!inputs) {
    tell(options.caseFile, inputs.refusal());
    return unusable;
  }
  const Worksheet sheet = workOut(*inputs, *rules);
  std::string out;
  if (options.json) {
    writeWorksheet(out, sheet, WorksheetExtent::whole);
    out.push_back('\n');
  } else {
    out = workingText(sheet, englishPhrases());
  }
  std::cout << out << std::flush;
  return std::cout ? done : unusable;
}

}  // namespace wardchalk::console
