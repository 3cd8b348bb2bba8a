#pragma once

#include <functional>

#include "core/check/detail/giving.h"

namespace wardchalk::detail {

/// What an amount is measured by.
struct Ground {
  Notebook& notes;
  const Facts& facts;
  const Checks& checks;
};

/// The two amounts around one that can be measured; equal where it can be measured itself.
struct Neighbours {
  Number below;
  Number above;
};

[[nodiscard]] Neighbours neighboursOf(const Number& amount, const Number& step);

/// What can be given in place of an amount, and the nearer one that was passed over because a check forbids
/// it.
struct Choice {
  std::optional<Number> measured;
  std::optional<Number> passedOver;
};

/// Whether an amount can be measured at all by what is in hand.
using Measurable = std::function<bool(const Number& candidate)>;

/// The nearer of the two neighbours that can be measured and that keeps every check which the ordered dose
/// kept (R9).
[[nodiscard]] Choice nearest(const Ground& ground, const Number& amount, const Neighbours& around,
                             const Measurable& canBe);

/// By how many percent the dose changes when one amount is given in place of another.
[[nodiscard]] Number percentChange(const Number& measured, const Number& exact);

/// A count of syringes, vials or tablets; more than a million are told as a million.
[[nodiscard]] int ceilToInt(const Number& value);
void askAboutCount(Notebook& notes, ArgumentWord what, int count);

/// Keeps what is measured and the dose that it is; asks where that is too far from the ordered one.
void keepMeasured(const Ground& ground, Give& give, const Choice& choice);
void askNotMeasurable(Notebook& notes, Give& give, const Neighbours& around);
void writeMeasuring(Notebook& notes, Measuring body);

/// How a powder is made ready, as far as its papers say (R22).
[[nodiscard]] std::optional<Prepare> howToPrepare(const Stock& stock, const StrengthFound& strength);

/// Measures an amount in mL: what it is measured with, and what can be measured of it.
void measureVolume(const Ground& ground, Give& give);

}  // namespace wardchalk::detail
