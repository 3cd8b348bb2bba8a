#include "core/words/outline.h"

#include "core/words/amount_words.h"
#include "core/words/isolated.h"
#include "core/words/rules_words.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

using Kind = OutlineLine::Kind;

class Outline {
 public:
  Outline(const Worksheet& sheet, const Phrasebook& book) : sheet_(sheet), book_(book) {}

  std::vector<OutlineLine> before() {
    line(isolated(sheet_.given.title));
    if (!sheet_.given.title.empty()) gap();
    line(verdictTitle(sheet_, book_));
    line(verdictReason(sheet_, book_));
    line(checksNotMade(sheet_, book_));
    gap();
    amount();
    gap();
    notes();
    return std::move(lines_);
  }

 private:
  void add(Kind kind, std::string text) {
    if (!text.empty()) lines_.push_back({kind, std::move(text)});
  }
  void line(std::string text) { add(Kind::line, std::move(text)); }
  void gap() { lines_.push_back({Kind::gap, {}}); }

  void amount() {
    const AmountWords words = amountWords(sheet_, book_);
    if (!words.asks.empty()) {
      add(Kind::heading, say(book_, PhraseId::heading_questions));
      for (const std::string& ask : words.asks) add(Kind::question, ask);
      if (!words.measure.empty()) line(say(book_, PhraseId::amount_afterAsking));
    }
    line(words.none);
    if (words.measure.empty()) return;
    line(words.measure + " " + words.dose);
    line(words.when);
    line(words.device.empty() ? words.rounding : words.device + "; " + words.rounding);
    line(words.run);
    line(words.label);
  }

  void notes() {
    bool first = true;
    for (const Finding* finding : findingsBeside(sheet_, sheet_.verdict == VerdictKind::ask)) {
      if (first) add(Kind::heading, say(book_, PhraseId::heading_findings));
      first = false;
      add(Kind::note, sentence(*finding, book_));
    }
    if (!first) gap();
  }

  const Worksheet& sheet_;
  const Phrasebook& book_;
  std::vector<OutlineLine> lines_;
};

}  // namespace

std::vector<OutlineLine> outlineBefore(const Worksheet& sheet, const Phrasebook& book) {
  return Outline(sheet, book).before();
}

std::vector<OutlineLine> outlineAfter(const Worksheet& sheet, const Phrasebook& book) {
  return {{Kind::line, say(book, PhraseId::rules_used, {{"name", rulesTitle(sheet.rules, book)}})},
          {Kind::line, say(book, PhraseId::caution)}};
}

}  // namespace wardchalk
