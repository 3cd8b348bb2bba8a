#include "ui/working/detail/landmarks.h"

#include <algorithm>

#include "core/unit/print.h"
#include "core/words/phrasebook.h"
#include "core/words/stated_words.h"
#include "core/words/step_words.h"
#include "core/words/unit_words.h"
#include "ui/theme/text.h"

namespace wardchalk::ui::detail {

namespace {

using Kind = Landmark::Kind;

const Quantity* amount(const Stated& compared) { return std::get_if<Quantity>(&compared); }

/// The checks that are made on one basis: how much in a dose, or how much in 24 h.
struct Basis {
  CheckId upper;
  CheckId maximum;
};
constexpr Basis oneDose{CheckId::single, CheckId::maxSingle};
constexpr Basis oneDay{CheckId::daily, CheckId::maxDaily};

class LandmarkFinder {
 public:
  explicit LandmarkFinder(const Worksheet& sheet) : sheet_(sheet) {}

  /// A comparison with the maximum shows it however far it is, and no low end beside it.
  std::vector<Landmark> onBasis(const Basis& basis, bool comparesMaximum = false) {
    const Quantity* ordered = orderedOn(basis);
    if (!ordered) return {};
    add(Kind::ordered, *ordered, PhraseId::mark_ordered);
    addLimit(basis.upper, Kind::limit, PhraseId::mark_limit);
    addLimit(basis.maximum, Kind::maximum, PhraseId::mark_maximum);
    const Check& low = sheet_.check(CheckId::low);
    const bool withLow = !comparesMaximum;
    if (withLow && amount(low.value) && *amount(low.value) == *ordered)
      addLimit(CheckId::low, Kind::low,
               sheet_.given.reference.low ? PhraseId::mark_low : PhraseId::mark_usualFrom);
    if (!comparesMaximum) dropFarMaximum();
    return std::move(found_);
  }

  /// Left and right of a comparison that stands alone.
  std::vector<Landmark> sides(const Comparison& comparison) {
    add(Kind::ordered, comparison.left, PhraseId::mark_ordered);
    const bool upper = comparison.relation == Relation::atMost;
    add(upper ? Kind::limit : Kind::low, comparison.right, upper ? PhraseId::mark_limit : PhraseId::mark_low);
    return std::move(found_);
  }

  const Quantity* orderedOn(const Basis& basis) const {
    if (const Quantity* value = amount(sheet_.check(basis.upper).value)) return value;
    return amount(sheet_.check(basis.maximum).value);
  }

 private:
  void add(Kind kind, const Number& value, const std::string& text, PhraseId phrase) {
    found_.push_back({kind, value, held(say(phrase, {{"amount", text}}))});
  }
  void add(Kind kind, const Quantity& value, PhraseId phrase) {
    add(kind, value.value, printed(value), phrase);
  }
  void add(Kind kind, const Side& side, PhraseId phrase) {
    add(kind, side.term.value, sideText(side), phrase);
  }

  void addLimit(CheckId id, Kind kind, PhraseId phrase) {
    if (const Quantity* limit = amount(sheet_.check(id).limit)) add(kind, *limit, phrase);
  }

  /// A maximum many times beyond everything else would leave nothing to be seen of the rest.
  void dropFarMaximum() {
    Number most;
    for (const Landmark& landmark : found_)
      if (landmark.kind != Kind::maximum) most = larger(most, landmark.value);
    std::erase_if(found_, [&](const Landmark& landmark) {
      return landmark.kind == Kind::maximum && landmark.value > most * Number(2);
    });
  }

  const Worksheet& sheet_;
  std::vector<Landmark> found_;
};

bool comparesWords(const Comparison& comparison) { return comparison.left.term.units.empty(); }

}  // namespace

std::vector<Landmark> landmarksOf(const Step& step, const Worksheet& sheet) {
  const auto& comparison = std::get<Comparison>(step.body);
  if (comparesWords(comparison)) return {};
  LandmarkFinder finder(sheet);
  const auto onBasis = [&](const Basis& basis) {
    const Quantity* ordered = finder.orderedOn(basis);
    return ordered && ordered->value == comparison.left.term.value && !isStated(comparison.left.stated) &&
           (comparison.left.under.empty() || comparison.left.under == UnitProduct{Unit::dose});
  };
  switch (step.id) {
    case StepId::compareSingle:
      return finder.onBasis(oneDose);
    case StepId::compareMaxSingle:
      return finder.onBasis(oneDose, /*comparesMaximum=*/true);
    case StepId::compareDaily:
      return finder.onBasis(oneDay);
    case StepId::compareMaxDaily:
      return finder.onBasis(oneDay, /*comparesMaximum=*/true);
    case StepId::compareLow:
      if (onBasis(oneDose)) return finder.onBasis(oneDose);
      if (onBasis(oneDay)) return finder.onBasis(oneDay);
      return finder.sides(comparison);
    case StepId::comparePeriod:
    case StepId::compareRate:
      return finder.sides(comparison);
    default:
      return {};  // what is compared there is no amount of the order
  }
}

std::string unitOfLine(const Comparison& comparison) {
  if (comparesWords(comparison)) return {};
  if (const auto* per = std::get_if<QuantityPer>(&comparison.left.stated)) return unitText(*per);
  return unitsText(comparison.left.units(), Spelling::printed);
}

}  // namespace wardchalk::ui::detail
