#include "core/words/outline.h"

#include "core/check/judgement.h"
#include "core/words/amount_words.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/rules_words.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

using LineKind = OutlineLine::Kind;

class Outline {
 public:
  explicit Outline(const Shown& shown) : shown_(shown), sheet_(shown.sheet()) {}

  std::vector<OutlineLine> before() {
    line(isolated(sheet_.given.title));
    if (!sheet_.given.title.empty()) gap();
    line(verdictTitle(sheet_));
    line(verdictReason(sheet_));
    line(weightUsed(sheet_));
    line(checksNotMade(sheet_));
    gap();
    amount();
    gap();
    notes();
    return std::move(lines_);
  }

 private:
  void add(LineKind kind, std::string text) {
    if (!text.empty()) lines_.push_back({kind, std::move(text)});
  }
  void line(std::string text) { add(LineKind::line, std::move(text)); }
  void gap() { lines_.push_back({LineKind::gap, {}}); }

  void amount() {
    const AmountWords words = amountWords(shown_);
    if (!words.asks.empty()) {
      add(LineKind::heading, say(PhraseId::heading_questions));
      for (const QuestionWords& ask : words.asks) question(ask);
    }
    line(words.done);
    line(words.none);
    if (words.measure.empty()) return;
    line(words.measure + " " + words.dose);
    line(words.when);
    line(words.prepare);
    line(words.device.empty() ? words.rounding : words.device + "; " + words.rounding);
    line(words.run);
    line(words.label);
  }

  void question(const QuestionWords& ask) {
    if (ask.settled.empty()) return add(LineKind::question, ask.text);
    add(LineKind::settled, say(PhraseId::question_settled, {{"question", ask.text}, {"how", ask.settled}}));
  }

  void notes() {
    bool first = true;
    for (const Finding* finding : findingsBeside(sheet_, sheet_.verdict == VerdictKind::ask)) {
      if (first) add(LineKind::heading, say(PhraseId::heading_findings));
      first = false;
      add(LineKind::note, sentence(*finding));
    }
    if (!first) gap();
  }

  const Shown& shown_;
  const Worksheet& sheet_;
  std::vector<OutlineLine> lines_;
};

}  // namespace

std::vector<OutlineLine> outlineBefore(const Shown& shown) { return Outline(shown).before(); }

std::vector<OutlineLine> outlineAfter(const Worksheet& sheet) {
  return {{LineKind::line, say(PhraseId::rules_used, {{"name", rulesTitle(sheet.rules)}})},
          {LineKind::line, say(PhraseId::caution)}};
}

}  // namespace wardchalk
