#include "ui/working/step_views.h"

#include "core/check/judgement.h"
#include "core/number/decimal_text.h"
#include "core/words/phrasebook.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"
#include "ui/theme/text.h"
#include "ui/working/detail/landmarks.h"

namespace wardchalk::ui {

namespace {

/// Decimals that stand for "all digits are kept": then no rounding is shown.
constexpr int allDigits = 20;

class ViewBuilder {
 public:
  explicit ViewBuilder(const Worksheet& sheet) : sheet_(sheet) {}

  StepView build(const Step& step, int number) {
    StepView view;
    view.step = step;
    view.number = number;
    view.question = held(question(step, sheet_));
    view.lookingFor = held(lookingFor(step));
    view.reason = held(reason(step, sheet_));
    view.sentence = fromCore(sentence(step, sheet_));
    view.conclusion = held(conclusion(step));
    for (const Sum& sum : step.sums) view.sums << held(sumLine(sum));
    if (const auto* solved = std::get_if<Solved>(&step.body)) addSolved(view, *solved);
    if (const auto* formula = std::get_if<SurfaceByFormula>(&step.body)) addFormula(view, *formula);
    if (const auto* comparison = std::get_if<Comparison>(&step.body)) addComparison(view, *comparison);
    return view;
  }

 private:
  void addTag(StepView& view, const Term& term) {
    const QString origin = fromCore(term.origin.text());
    if (!origin.isEmpty() && !view.tags.contains(origin))
      view.tags.insert(origin, fromCore(tag(term.origin, sheet_)));
  }

  void addTags(StepView& view, const Chain& chain) {
    for (const Factor& factor : chain.factors) {
      addTag(view, factor.over);
      addTag(view, factor.under);
    }
  }

  /// Says how the result was rounded, if it was; `unrounded` is what stood before.
  void addRounding(StepView& view, const std::string& unrounded, bool exact) {
    const auto& rounding = view.step.rounding;
    if (!rounding || rounding->decimals >= allDigits) {
      view.productExact = concludesExactly(view.step);
      if (!view.productExact) view.conclusion = view.conclusion.mid(1).trimmed();
      return;
    }
    view.product = held(unrounded);
    view.productExact = exact;
    const int decimals = rounding->decimals;
    view.rounding =
        held(decimals == 0 ? say(PhraseId::rounding_whole)
                           : say(PhraseId::rounding_decimals, {{"n", std::to_string(decimals)}}, decimals));
  }

  void addSolved(StepView& view, const Solved& solved) {
    addTags(view, solved.chain);
    const Number& exact = solved.product.exact;
    const std::string units = unitsText(view.step.lookingFor, Spelling::printed);
    if (!solved.chain.rooted) {
      std::string unrounded = amountText(exact, -1, view.step.lookingFor);
      if (!show(exact).exact) unrounded.erase(0, std::string_view("≈").size());
      addRounding(view, unrounded, show(exact).exact);
      if (solved.result == exact) view.rounding.clear();  // it needed none
      return;
    }
    const ShownNumber under = show(exact, Grouping::commas);
    view.underRoot = held(under.text + " " + unitsText(Units{{Unit::m2, Unit::m2}, {}}, Spelling::printed));
    view.underRootExact = under.exact;
    const bool exactRoot = exact.hasExactRoot() && solved.result * solved.result == exact;
    addRounding(view, unroundedText(view.step) + " " + units, exactRoot);
    if (exactRoot) view.rounding.clear();  // nothing was rounded: 0.7 is only written 0.70
  }

  void addFormula(StepView& view, const SurfaceByFormula& formula) {
    for (const Term* term : {&formula.factor, &formula.height, &formula.weight}) addTag(view, *term);
    addRounding(view, unroundedText(view.step) + " " + unitsText(view.step.lookingFor, Spelling::printed),
                false);
  }

  void addComparison(StepView& view, const Comparison& comparison) {
    const int significant = digitsApart(comparison.left.term.value, comparison.right.term.value);
    view.left = held(sideText(comparison.left, significant));
    view.right = held(sideText(comparison.right, significant));
    view.relation = fromCore(relationSign(comparison));
    for (const Side* side : {&comparison.left, &comparison.right}) {
      addTag(view, side->term);
      if (side->chain) addTags(view, *side->chain);
    }
    if (comparison.left.chain) view.leftChain = held(sideText(comparison.left));
    if (comparison.right.chain) view.rightChain = held(sideText(comparison.right));
    view.judges = callsAnythingSafe(sheet_);
    view.landmarks = detail::landmarksOf(view.step, sheet_);
    view.unit = fromCore(detail::unitOfLine(comparison));
  }

  const Worksheet& sheet_;
};

}  // namespace

std::vector<StepView> stepViews(const Worksheet& sheet) {
  std::vector<StepView> views;
  ViewBuilder builder(sheet);
  for (const Step& step : sheet.steps)
    views.push_back(builder.build(step, static_cast<int>(views.size()) + 1));
  return views;
}

}  // namespace wardchalk::ui
