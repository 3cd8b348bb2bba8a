#include "core/words/spoken_verdict.h"

#include <initializer_list>

#include "core/medicine/paths.h"
#include "core/unit/print.h"
#include "core/words/amount_words.h"
#include "core/words/fact_words.h"
#include "core/words/field_names.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

/// One after the other, each with a point at its end.
std::string inSentences(std::initializer_list<std::string> parts) {
  std::string all;
  for (const std::string& part : parts) {
    if (part.empty()) continue;
    if (!all.empty()) all += ' ';
    all += part;
    if (std::string_view(".?!:").find(part.back()) == std::string_view::npos) all += '.';
  }
  return all;
}

bool isBeingChanged(const Worksheet& sheet) {
  const Finding* finding = sheet.finding(FindingCode::finishTyping);
  return finding && !finding->argument<ArgumentWord>("reason");
}

std::string doseJudged(const Worksheet& sheet) {
  return sheet.orderedDose ? printed(*sheet.orderedDose) : enteredWords(path::dose, sheet.given);
}

/// Whether the text names this figure, and not a longer one that ends alike.
bool isNamedIn(std::string_view text, std::string_view figure) {
  for (std::size_t at = text.find(figure); at != std::string_view::npos; at = text.find(figure, at + 1))
    if (at == 0 || std::string_view("0123456789.,").find(text[at - 1]) == std::string_view::npos) return true;
  return false;
}

/// The dose, where the reason does not name it: a verdict without its figure could be one of before.
std::string ordered(const Worksheet& sheet, const std::string& reason) {
  const std::string dose = doseJudged(sheet);
  if (dose.empty() || sheet.verdict == VerdictKind::undecided || isNamedIn(reason, dose)) return {};
  return say(PhraseId::spoken_ordered, {{"dose", dose}});
}

std::string firstOfAmount(const AmountWords& words) {
  return words.measure.empty() ? words.none : words.measure + " " + words.dose;
}

}  // namespace

std::string spokenVerdict(const Shown& shown) {
  if (isBeingChanged(shown.sheet())) return {};
  const std::string reason = belowTitle(shown.sheet());
  const AmountWords amount = amountWords(shown);
  return inSentences({verdictTitle(shown.sheet()), ordered(shown.sheet(), reason), reason, amount.done,
                      firstOfAmount(amount)});
}

std::string spokenWhole(const Shown& shown) {
  const std::string reason = belowTitle(shown.sheet());
  const AmountWords amount = amountWords(shown);
  return inSentences({verdictTitle(shown.sheet()), ordered(shown.sheet(), reason), reason,
                      checksNotMade(shown.sheet()), amount.done, firstOfAmount(amount), amount.prepare,
                      amount.run, amount.label, amount.device, amount.when, amount.rounding});
}

std::string spokenRefusal(const Refusal& refusal, std::string_view path,
                          std::span<const std::string> writes) {
  const std::string title = say(PhraseId::title_cannotBeRead, {{"field", fieldName(path)}});
  std::string keys = say(PhraseId::spoken_goThere);
  if (writes.size() == 1) keys = say(PhraseId::spoken_goAndWrite, {{"safe", writes.front()}});
  if (writes.size() > 1)
    keys = say(PhraseId::spoken_goAndChoose, {{"first", writes.front()}, {"second", writes[1]}});
  return inSentences({title, sentence(refusal), keys});
}

}  // namespace wardchalk
