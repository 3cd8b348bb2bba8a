#include "core/practice/problem/problem_story.h"

#include <array>
#include <optional>

#include "core/medicine/paths.h"
#include "core/unit/print.h"
#include "core/words/given_words.h"
#include "core/words/phrasebook.h"
#include "core/words/read_back.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"

namespace wardchalk {

namespace {

template <std::size_t size>
PhraseId oneOf(const std::array<PhraseId, size>& phrases, std::uint64_t wording) {
  return phrases[wording % size];
}

constexpr std::array childPhrases = {PhraseId::story_childA, PhraseId::story_childB, PhraseId::story_childC};
constexpr std::array orderPhrases = {PhraseId::story_orderA, PhraseId::story_orderB, PhraseId::story_orderC};
constexpr std::array referencePhrases = {PhraseId::story_referenceA, PhraseId::story_referenceB,
                                         PhraseId::story_referenceC};
constexpr std::array liquidPhrases = {PhraseId::story_liquidA, PhraseId::story_liquidB};

class Story {
 public:
  Story(const Case& given, const HouseRules& rules, std::uint64_t wording)
      : case_(given), rules_(rules), wording_(wording) {}

  std::string take() {
    tellChild();
    if (case_.order.dose) tellOrder();
    if (case_.reference.high) tellReference();
    if (case_.stock.kind) tellStock();
    if (case_.infusion.volume) tellInfusion();
    return std::move(text_);
  }

 private:
  void paragraph(std::string_view text) { text_.append(text_.empty() ? "" : "\n").append(text); }

  void tellChild() {
    const Child& child = case_.child;
    const bool girl = child.sex == Sex::female;
    paragraph(say(oneOf(childPhrases, wording_),
                  {{"sex", say(girl ? PhraseId::story_girl : PhraseId::story_boy)},
                   {"age", child.age ? printed(child.age->written) : std::string()},
                   {"weight", child.weight ? printed(*child.weight) : std::string()},
                   {"height", child.height ? printed(*child.height) : std::string()}}));
  }

  std::string dose(std::string_view path) const { return readBack(path, case_, rules_); }

  void tellOrder() {
    const Order& order = case_.order;
    paragraph(
        say(oneOf(orderPhrases, wording_ / 3), {{"medicine", order.medicine}, {"order", orderWords(order)}}));
  }

  std::string band() const {
    const Band<Age>& age = case_.reference.age;
    const auto edge = [&](PhraseId phrase, const Age& years) {
      return say(phrase, {{"edge", printed(years.written)}});
    };
    if (age.from) return edge(PhraseId::band_from, *age.from);
    return age.below ? edge(PhraseId::band_below, *age.below) : std::string();
  }

  void tellReference() {
    const Reference& reference = case_.reference;
    std::string range = dose(path::high);
    if (reference.low)
      range = say(PhraseId::fact_range, {{"low", printed(reference.low->amount)}, {"high", range}});
    paragraph(say(oneOf(referencePhrases, wording_ / 9),
                  {{"medicine", case_.order.medicine},
                   {"range", range},
                   {"given", givenWords(reference.route, reference.schedule)}}));
    if (const std::string serves = band(); !serves.empty()) add(PhraseId::story_serves, {"band", serves});
    if (reference.maxPerDose)
      add(PhraseId::story_maxPerDose, {"amount", printed(reference.maxPerDose->amount)});
    if (reference.maxConcentration)
      add(PhraseId::story_maxConcentration, {"strength", concentration(*reference.maxConcentration)});
    if (reference.minInfusionTime)
      add(PhraseId::story_minTime, {"time", printed(*reference.minInfusionTime)});
  }

  /// "7.5 mg/mL", and "15 mg in 2 mL" where it is not stated in one.
  static std::string concentration(const Strength& strength) {
    if (strength.in.value != Number(1)) return printed(strength);
    return printed(strength.amount).append("/").append(infoOf(strength.in.unit).one);
  }

  void add(PhraseId phrase, const Filling& filling) { text_.append(" ").append(say(phrase, {filling})); }

  void tellStock() {
    if (*case_.stock.kind == StockKind::powder) return tellPowder();
    const Strength& strength = *case_.stock.strength;
    if (*case_.stock.kind == StockKind::solid) return tellSolid(strength);
    const bool bag = case_.order.dose && case_.order.dose->isRate();
    paragraph(say(bag ? PhraseId::story_bag : oneOf(liquidPhrases, wording_ / 27),
                  {{"medicine", case_.order.medicine}, {"strength", printed(strength)}}));
  }

  void tellSolid(const Strength& strength) {
    const bool capsule = strength.in.unit == Unit::capsule;
    const int parts = case_.stock.dividesInto.value_or(1);
    const PhraseId phrase = capsule      ? PhraseId::story_capsules
                            : parts == 4 ? PhraseId::story_tabletsQuartered
                            : parts == 2 ? PhraseId::story_tabletsHalved
                                         : PhraseId::story_tablets;
    paragraph(say(phrase, {{"medicine", case_.order.medicine}, {"amount", printed(strength.amount)}}));
  }

  void tellPowder() {
    const Stock& stock = case_.stock;
    const std::string content = printed(*stock.content), diluent = printed(*stock.diluent);
    if (stock.finalVolume)
      return paragraph(say(PhraseId::story_powderFinal, {{"medicine", case_.order.medicine},
                                                         {"content", content},
                                                         {"diluent", diluent},
                                                         {"final", printed(*stock.finalVolume)}}));
    paragraph(say(PhraseId::story_powderDisplacement,
                  {{"medicine", case_.order.medicine},
                   {"content", content},
                   {"diluent", diluent},
                   {"displacement", stock.displacement ? printed(*stock.displacement) : std::string()}}));
  }

  void tellInfusion() {
    const Infusion& infusion = case_.infusion;
    paragraph(say(PhraseId::story_infusion,
                  {{"volume", printed(*infusion.volume)},
                   {"time", infusion.over ? printed(*infusion.over) : std::string()},
                   {"drops", infusion.dropFactor ? printed(*infusion.dropFactor) : std::string()}}));
  }

  const Case& case_;
  const HouseRules& rules_;
  std::uint64_t wording_;
  std::string text_;
};

/// "mg/mL"; a thing that is counted stands in the plural: "tablets", "drops/min".
std::string unitText(const Units& wanted) {
  if (wanted.over.size() != 1) return unitsText(wanted, Spelling::printed);
  std::string text(infoOf(wanted.over.front()).many);
  return text + perText(wanted.under, Spelling::printed);
}

/// Whether the question says already what the answer is in: "How many mL per hour?"
bool namesItsUnit(StepId id, const Units& wanted) {
  if (id == StepId::give) return wanted.over == UnitProduct{Unit::mL};
  return id == StepId::height || id == StepId::weight || id == StepId::rate || id == StepId::drops;
}

/// What is asked in words of practice: each stands by itself on the paper, and tells neither the verdict nor
/// that a maximum counts. None where the ward's own question does so.
std::optional<PhraseId> ownQuestion(StepId id, const Problem& problem) {
  const bool range = problem.given.reference.low.has_value();
  switch (id) {
    case StepId::bsa:
      return PhraseId::ask_surface;
    case StepId::limitDose:
      return range ? PhraseId::ask_mostDose : PhraseId::ask_limitDose;
    case StepId::limitDay:
      return range ? PhraseId::ask_mostDay : PhraseId::ask_limitDay;
    case StepId::lowDose:
      return PhraseId::ask_leastDose;
    case StepId::lowDay:
      return PhraseId::ask_leastDay;
    case StepId::strength:
      return PhraseId::question_strength;
    case StepId::give:
      return problem.given.stock.kind == StockKind::solid ? PhraseId::ask_giveSolid : PhraseId::ask_give;
    case StepId::rate:
      return PhraseId::question_rate;
    case StepId::drops:
      return PhraseId::question_drops;
    default:
      return std::nullopt;
  }
}

}  // namespace

std::string storyOf(const Case& given, const HouseRules& rules, std::uint64_t wording) {
  return Story(given, rules, wording).take();
}

std::string askQuestion(StepId id, const Problem& problem) {
  const auto phrase = ownQuestion(id, problem);
  if (phrase) return say(*phrase);
  const Step* step = problem.key.step(id);
  return step ? question(*step, problem.key) : std::string();
}

std::string askedPrecision(const Ask& ask) {
  if (!ask.decimals) return {};
  const std::string n = std::to_string(*ask.decimals);
  if (ask.decimalsBelowOne)
    return say(PhraseId::ask_decimalsBelowOne, {{"n", n}, {"below", std::to_string(*ask.decimalsBelowOne)}},
               *ask.decimals);
  if (*ask.decimals == 0) return say(PhraseId::ask_whole);
  return say(PhraseId::ask_decimals, {{"n", n}}, *ask.decimals);
}

std::string askText(const Ask& ask, const Problem& problem) {
  if (ask.isVerdict()) return say(PhraseId::ask_verdict);
  const std::string question = askQuestion(*ask.step, problem);
  const std::string precision = askedPrecision(ask);
  if (namesItsUnit(*ask.step, ask.wanted))
    return say(PhraseId::ask_withPrecision, {{"question", question}, {"precision", precision}});
  return say(PhraseId::ask_inUnit,
             {{"question", question}, {"unit", unitText(ask.wanted)}, {"precision", precision}});
}

}  // namespace wardchalk
