#include "ui/board/stage_words.h"

#include <QStringList>

#include "core/number/decimal_text.h"
#include "core/words/phrasebook.h"
#include "core/words/spoken.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"
#include "ui/board/verdict_sheet.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

class StageSpeaker {
 public:
  explicit StageSpeaker(const BoardPage& page) : view_(page.view), stages_(page.stages) {}

  StageWords words(int stage) const {
    const Stage& what = stages_[static_cast<std::size_t>(stage)];
    switch (what.kind) {
      case StageKind::question:
        return {{}, question()};
      case StageKind::sum:
        return {{}, view_.sums[what.index]};
      case StageKind::factor:
        return factor(what.index);
      case StageKind::strike:
        return strike(what.index);
      case StageKind::underRoot:
        return {phrase(PhraseId::board_underRoot),
                phrase(PhraseId::board_underRootIs, {{"number", view_.underRoot.toStdString()}})};
      case StageKind::product:
        return product();
      case StageKind::rounded:
        return rounded();
      case StageKind::sides:
        return {{}, sides()};
      case StageKind::claim:
        return {phrase(PhraseId::board_trueOrFalse), claim(PhraseId::board_trueOrFalseSaid)};
      case StageKind::truth:
        return {view_.reason, withReason(truth())};
      case StageKind::amount:
        return {phrase(PhraseId::board_amount, {{"amount", exact()}}),
                phrase(PhraseId::board_amount, {{"amount", exact()}})};
      case StageKind::scale:
        return {scale(), scale()};
      case StageKind::reading:
        return {view_.reason, withReason(view_.conclusion)};
    }
    return {};
  }

  QString predict() const {
    if (std::holds_alternative<Comparison>(view_.step.body)) return phrase(PhraseId::board_predictTruth);
    if (std::holds_alternative<Measuring>(view_.step.body)) return phrase(PhraseId::board_predictReading);
    return phrase(PhraseId::board_predict, {{"units", wantedInWords()}});
  }

 private:
  QString phrase(PhraseId id, std::initializer_list<Filling> fillings = {}) const {
    return held(say(id, fillings));
  }

  QString withReason(const QString& said) const {
    if (view_.reason.isEmpty()) return said;
    return (said.endsWith(u'.') ? said.chopped(1) : said) + QStringLiteral("; ") + view_.reason;
  }

  QString question() const {
    if (view_.lookingFor.isEmpty()) return view_.question;
    return view_.question + u' ' +
           phrase(PhraseId::looking_for, {{"units", spokenUnits(view_.step.lookingFor)}});
  }

  /// "mg in one dose", "mL", "mcg/min".
  std::string wantedInWords() const {
    const Units& wanted = view_.step.lookingFor;
    const std::string over = unitsText(wanted.over, Spelling::printed);
    if (wanted.under == UnitProduct{Unit::dose}) return say(PhraseId::in_oneDose, {{"amount", over}});
    if (wanted.under == UnitProduct{Unit::day}) return say(PhraseId::in_24H, {{"amount", over}});
    return unitsText(wanted, Spelling::printed);
  }

  const Solved* solved() const { return std::get_if<Solved>(&view_.step.body); }
  bool isWhole() const { return !solved() || solved()->chain.rooted; }

  StageWords factor(int index) const {
    if (isWhole()) return {view_.reason, wholeFormula()};
    const auto& factors = solved()->chain.factors;
    const Factor& one = factors[static_cast<std::size_t>(index)];
    const std::string where = whereFrom(one).toStdString();
    QString caption = where.empty() ? QString() : phrase(PhraseId::board_from, {{"where", where}});
    const bool last = index + 1 == static_cast<int>(factors.size());
    if (last && !view_.reason.isEmpty())
      caption += (caption.isEmpty() ? QString() : QStringLiteral("; ")) + view_.reason;
    const std::string said = spokenFactor(one);
    return {caption, phrase(PhraseId::board_factorFrom, {{"factor", said}, {"where", where}})};
  }

  /// "103 centimetres times 17.2 kilograms …", as far as it stands under the root or in the formula.
  QString wholeFormula() const {
    QStringList parts;
    if (solved())
      for (const Factor& one : solved()->chain.factors) parts << fromCore(spokenFactor(one));
    if (const auto* formula = std::get_if<SurfaceByFormula>(&view_.step.body))
      for (const Term* term : {&formula->factor, &formula->height, &formula->weight})
        parts << fromCore(spokenTerm(*term));
    const QString chain = parts.join(fromCore(say(PhraseId::say_times)));
    return solved() ? phrase(PhraseId::say_root, {{"chain", chain.toStdString()}}) : chain;
  }

  QString whereFrom(const Factor& factor) const {
    QStringList tags;
    for (const Term* term : {&factor.over, &factor.under}) {
      const QString word = view_.tags.value(fromCore(term->origin.text()));
      if (!word.isEmpty() && !tags.contains(word)) tags << word;
    }
    return tags.join(QStringLiteral(", "));
  }

  StageWords strike(int index) const {
    const UnitInfo& unit = infoOf(solved()->product.pairs[static_cast<std::size_t>(index)].unit);
    return {phrase(PhraseId::board_strike, {{"unit", std::string(unit.one)}}),
            phrase(PhraseId::board_strikeSaid, {{"units", std::string(unit.words)}})};
  }

  StageWords product() const {
    const bool root = isWhole();
    const QString said = view_.rounding.isEmpty() ? result() : view_.product;
    return {phrase(root ? PhraseId::board_root : PhraseId::board_multiply), said};
  }

  StageWords rounded() const {
    return {phrase(PhraseId::board_rounded, {{"rule", view_.rounding.toStdString()}}),
            phrase(PhraseId::board_roundedTo, {{"result", result().toStdString()}})};
  }

  QString result() const {
    if (const Solved* chain = solved())
      return fromCore(spokenAmount(chain->result, chain->fixedDecimals, view_.step.lookingFor));
    return view_.conclusion;
  }

  const Comparison& comparison() const { return std::get<Comparison>(view_.step.body); }

  QString sides() const {
    const int significant = digitsApart(comparison().left.term.value, comparison().right.term.value);
    return phrase(PhraseId::board_sides, {{"left", spokenSide(comparison().left, significant)},
                                          {"right", spokenSide(comparison().right, significant)}});
  }

  QString claim(PhraseId ending) const { return fromCore(spokenClaim(comparison(), say(ending))); }
  QString truth() const { return claim(comparison().holds ? PhraseId::truth_true : PhraseId::truth_false); }

  QString scale() const {
    const bool pair = std::get<Measuring>(view_.step.body).full.has_value();
    return phrase(pair ? PhraseId::board_scalePair : PhraseId::board_scale, {{"amount", exact()}});
  }
  std::string exact() const { return givenText(std::get<Measuring>(view_.step.body).exact); }

  const StepView& view_;
  const std::vector<Stage>& stages_;
};

StageWords verdictWords(const BoardStory& story, int stage) {
  if (stage == 0) return {{}, fromCore(say(PhraseId::board_verdict))};
  return {{}, verdictSpoken(story)};
}

QString stepHeading(const BoardStory& story, const BoardPage& page) {
  return fromCore(say(PhraseId::board_step,
                      {{"n", std::to_string(page.number)}, {"count", std::to_string(story.count())}}));
}

}  // namespace

StageWords stageWords(const BoardStory& story, const BoardPlace& place) {
  const BoardPage& page = story.page(place);
  StageWords words =
      page.isVerdict ? verdictWords(story, place.stage) : StageSpeaker(page).words(place.stage);
  if (place.predicting) {
    words.caption =
        page.isVerdict ? fromCore(say(PhraseId::board_predictVerdict)) : StageSpeaker(page).predict();
    words.spoken = words.caption;
  } else if (place.stage == 0) {
    words.spoken.prepend(stepHeading(story, page) + QStringLiteral(". "));
  }
  words.spoken = loosed(words.spoken);
  return words;
}

QString spokenSoFar(const BoardStory& story, const BoardPlace& place) {
  QStringList said;
  for (int stage = 0; stage <= place.stage; ++stage)
    said << stageWords(story, {place.page, stage, false}).spoken;
  return said.join(QStringLiteral(". "));
}

}  // namespace wardchalk::ui
