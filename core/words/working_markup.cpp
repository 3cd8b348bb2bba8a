#include "core/words/working_markup.h"

#include "core/words/notation.h"
#include "core/words/outline.h"
#include "core/words/phrasebook.h"
#include "core/words/step_words.h"

namespace wardchalk {

namespace {

std::string written(const OutlineLine& line, const Notation& notation) {
  using Kind = OutlineLine::Kind;
  switch (line.kind) {
    case Kind::line:
      return notation.paragraph(line.text);
    case Kind::heading:
      return notation.heading(line.text);
    case Kind::question:
      return notation.question(line.text);
    case Kind::settled:
    case Kind::note:
      return notation.note(line.text);
    case Kind::gap:
      break;
  }
  return {};
}

}  // namespace

std::string workingMarkup(const Shown& shown, Markup markup) {
  const Worksheet& sheet = shown.sheet();
  const Notation& notation = notationOf(markup);
  std::string out = notation.documentHead(say(PhraseId::sheet_title));
  for (const OutlineLine& line : outlineBefore(shown)) out += written(line, notation);
  if (!sheet.steps.empty()) out += notation.heading(say(PhraseId::heading_working));
  int number = 1;
  for (const Step& step : sheet.steps)
    out += notation.step(number++, question(step, sheet), lookingFor(step), stepMarkup(step, sheet, markup),
                         reason(step, sheet));
  for (const OutlineLine& line : outlineAfter(sheet)) out += written(line, notation);
  return out + notation.documentFoot();
}

}  // namespace wardchalk
