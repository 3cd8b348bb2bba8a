#pragma once

#include "core/check/detail/size.h"
#include "core/check/detail/strengths.h"

namespace wardchalk::detail {

struct Limits;

/// So many doses in 24 h, and where that stands or was found.
struct MostDoses {
  Number count;
  Origin from;
};

/// What is ordered: how often, and how much of the medicine, as far as it is known.
struct Doses {
  bool once = false;
  bool isRate = false;
  bool open = false;             ///< repeated as needed, and the order does not say how many in 24 h at most
  bool oneDose = false;          ///< nobody says how often, and the house judges one dose (R15)
  std::optional<Number> n;       ///< most doses a day, capped
  StaticText nFrom;              ///< the entry that says so: the schedule, or the order's most doses
  std::optional<Chain> chain;    ///< the order for this child, per dose or per day; of a rate, in a day
  std::optional<Unit> unit;      ///< the drug unit that everything is shown in
  std::optional<Found> ordered;  ///< one dose
  std::optional<Found> dayAsOrdered;  ///< of an order per day, though nobody says in how many doses
  std::optional<Found> orderedDay;    ///< the most given in 24 h
  /// Of an open order: how many doses at most the reference leaves room for in 24 h, as far as that is known
  /// (R14).
  std::optional<MostDoses> fitting;
  bool mixingShown = false;  ///< the order is in mL, so that the strength stands before it

  /// The quantity's value in the order's drug unit; none when their dimensions differ.
  [[nodiscard]] std::optional<Number> inOrderUnit(const Quantity& quantity) const;
  /// Fewer doses fit into 24 h than the order would give, but one at least: so many are counted.
  [[nodiscard]] bool fewerFit() const;
};

/// How often, in which unit, and the order as a chain.
[[nodiscard]] Doses findDoses(Notebook& notes, const Size& size, const Strengths& strengths);

/// The ordered dose and the most given in 24 h. The reference decides how many doses those are where the
/// order leaves it open.
void findOrdered(Notebook& notes, Doses& doses, const Limits& limits);

/// A rate for this child, in the order's drug unit per `time`; none while a size it wants is not known.
[[nodiscard]] std::optional<Chain> rateChain(Notebook& notes, const Size& size, const Doses& doses,
                                             const DoseAmount& rate, StaticText path, Unit time);

/// How much of `time` a rate runs in a day, as factors: the run time that is stated where it ends within the
/// day, else all day.
[[nodiscard]] std::vector<Factor> runningInDay(const Infusion& infusion, Unit time);
/// The run time of a rate, where one is stated that ends within the day.
[[nodiscard]] std::optional<Quantity> endsWithinDay(const Infusion& infusion);

/// A reference per day that says how often.
[[nodiscard]] bool isDayShared(const Reference& reference);

/// ⌈x⌉, at least 1.
[[nodiscard]] Number ceilAtLeastOne(const Number& x);

}  // namespace wardchalk::detail
