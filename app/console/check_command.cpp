#include "app/console/commands.h"
#include "app/console/files.h"
#include "app/console/output.h"
#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/worksheet_file.h"
#include "core/words/working_markup.h"
#include "core/words/working_text.h"

namespace wardchalk::console {

namespace {

bool asJson(const CheckOptions& options) { return options.json || options.format == "json"; }

std::string formatted(const Worksheet& sheet, const CheckOptions& options) {
  if (options.format == "mathml") return workingMarkup(sheet, Markup::mathml);
  if (options.format == "latex") return workingMarkup(sheet, Markup::latex);
  if (!asJson(options)) return workingText(sheet);
  std::string out;
  writeWorksheet(out, sheet, WorksheetExtent::whole);
  return out + '\n';
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
  const Worksheet sheet = workOut(*inputs, *rules);
  return print(formatted(sheet, options), asJson(options) ? Output::Kind::json : Output::Kind::text);
}

}  // namespace wardchalk::console
