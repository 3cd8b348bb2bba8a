#pragma once

#include "core/check/detail/checks.h"
#include "core/check/detail/factors.h"

namespace wardchalk::detail {

/// What a comparison reads, and the checks that it adds to.
struct Comparing {
  Comparing(Notebook& book, const Facts& facts, Checks& into)
      : notes(book),
        given(book.given),
        rules(book.rules),
        size(facts.size),
        doses(facts.doses),
        limits(facts.limits),
        strengths(facts.strengths),
        checks(into) {}

  Notebook& notes;
  const Case& given;
  const HouseRules& rules;
  const Size& size;
  const Doses& doses;
  const Limits& limits;
  const Strengths& strengths;
  Checks& checks;

  [[nodiscard]] Check& check(CheckId id) { return checks.all[static_cast<std::size_t>(id)]; }
  void notChecked(CheckId id, WhyNot why);
  void doesNotApply(CheckId id, std::optional<WhyNot> why = std::nullopt);
};

/// What was found as a side of a comparison.
[[nodiscard]] Side sideOf(const Found& found);
/// How much stands on a side, without what it is per: for where the check itself says that.
[[nodiscard]] Quantity amountOf(const Side& side);
/// A side that is found by a chain of its own, which stands with it.
[[nodiscard]] std::optional<Side> sideBy(Notebook& notes, Chain chain, const Units& wanted);
/// A side stated in one unit per another ("5 mg/mL"), found by the chain; the chain stands with it when it is
/// more than one factor.
[[nodiscard]] std::optional<Side> sidePer(Notebook& notes, Chain chain, const Units& wanted);

/// Compares two sides stated per something, sets the check and tells `outside` of an outside one. A side that
/// could not be worked out is not compared.
void compareSides(Comparing& comparing, CheckId id, std::optional<Side> left, Relation relation,
                  std::optional<Side> right, FindingCode outside, StaticText field);

/// What was compared of the ordered dose or rate is judged again for one that can be measured or set.
void keepBound(Comparing& comparing, CheckId id, Relation relation);

/// Keeps what a rate was compared by in terms that are written for each kg or m² of the child: those of the
/// order (its value) or those of a limit. An outside check, just told, tells them beside its own.
enum class WrittenIn : std::uint8_t { value, limit };
void keepAsWritten(Comparing& comparing, CheckId id, const DoseAmount& written, WrittenIn side);

/// What the order gives in 24 h at most, whole doses and at least one: by its schedule, or without one by the
/// most doses that it states.
[[nodiscard]] MostDoses orderedCount(const Comparing& comparing);

/// Writes the comparison as a step and sets the check. Sides in different units fail the whole reckoning.
void compare(Comparing& comparing, CheckId id, Side left, Relation relation, Side right, bool holds);

void compareDose(Comparing& comparing);
void compareMaxDoses(Comparing& comparing);
void compareLow(Comparing& comparing);
void compareRate(Comparing& comparing);
void compareInfusion(Comparing& comparing);
void compareSchedule(Comparing& comparing);
/// An interval that does not divide the day: every 5 h (R4). It is asked about whatever the reference says.
void askForInterval(Comparing& comparing);
void compareBands(Comparing& comparing);
void compareSize(Comparing& comparing);

}  // namespace wardchalk::detail
