#include <iostream>

#include "app/console/commands.h"
#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/text_file.h"
#include "core/record/worksheet_file.h"
#include "core/words/working_markup.h"
#include "core/words/working_text.h"

namespace wardchalk::console {

namespace {

std::string formatted(const Worksheet& sheet, const CheckOptions& options) {
  if (options.format == "mathml") return workingMarkup(sheet, englishPhrases(), Markup::mathml);
  if (options.format == "latex") return workingMarkup(sheet, englishPhrases(), Markup::latex);
  if (!options.json && options.format != "json") return workingText(sheet, englishPhrases());
  std::string out;
  writeWorksheet(out, sheet, WorksheetExtent::whole);
  return out + '\n';
}

}  // namespace

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
  std::cout << formatted(sheet, options) << std::flush;
  return std::cout ? done : unusable;
}

}  // namespace wardchalk::console
