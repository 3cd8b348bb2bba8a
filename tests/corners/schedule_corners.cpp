// Every pair of schedules that the reader knows, one of an order and one of a reference: how many doses, what
// may be given in one dose and in 24 h, what is compared and how it ends, against a table of doses and
// fractions of whole numbers.
#include <cstdint>
#include <numeric>
#include <string>
#include <vector>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "core/record/case_entry.h"
#include "tests/corners/tally.h"

namespace wardchalk::corners::schedules {

namespace {

/// A fraction of whole numbers.
struct Part {
  std::int64_t over = 1;
  std::int64_t under = 1;

  [[nodiscard]] std::int64_t roundedUp() const { return (over + under - 1) / under; }
  [[nodiscard]] bool isWhole() const { return over % under == 0; }
  [[nodiscard]] Number number() const { return Number::ratio(over, under); }
};

bool isAtMost(const Part& a, const Part& b) { return a.over * b.under <= b.over * a.under; }
Part times(const Part& a, std::int64_t whole) { return {a.over * whole, a.under}; }

enum class How : std::uint8_t { repeated, once, continuous };

/// A schedule as it is typed and the doses a day that it means.
struct Known {
  std::string typed;
  How how;
  Part fewest;
  Part most;
};

Known repeated(std::string typed, Part fewest, Part most) {
  return {std::move(typed), How::repeated, fewest, most};
}

std::string text(int number) { return std::to_string(number); }

void addByWords(std::vector<Known>& known) {
  const std::vector<std::pair<const char*, int>> aDay = {
      {"bid", 2},   {"bd", 2},         {"tid", 3},        {"tds", 3},          {"qid", 4},      {"qds", 4},
      {"daily", 1}, {"once daily", 1}, {"once a day", 1}, {"once per day", 1}, {"every day", 1}};
  for (const auto& [typed, doses] : aDay) known.push_back(repeated(typed, {doses, 1}, {doses, 1}));
  for (const char* typed : {"weekly", "once weekly", "once a week", "once per week", "every week"})
    known.push_back(repeated(typed, {1, 7}, {1, 7}));
  known.push_back(repeated("every other day", {1, 2}, {1, 2}));
  known.push_back({"once", How::once, {}, {}});
  known.push_back({"continuous", How::continuous, {}, {}});
}

void addByHours(std::vector<Known>& known) {
  for (int hours = 1; hours <= 72; ++hours)
    known.push_back(repeated("every " + text(hours) + " h", {24, hours}, {24, hours}));
  for (const int hours : {4, 6, 8, 12, 24}) {
    known.push_back(repeated("q" + text(hours) + "h", {24, hours}, {24, hours}));
    known.push_back(repeated(text(hours) + " hourly", {24, hours}, {24, hours}));
  }
  for (int least = 1; least <= 12; ++least)
    for (int most = least + 1; most <= 12; ++most)
      known.push_back(repeated("every " + text(least) + " to " + text(most) + " h", {24, most}, {24, least}));
}

void addByTimes(std::vector<Known>& known) {
  for (int doses = 2; doses <= 24; ++doses)
    known.push_back(repeated(text(doses) + " times a day", {doses, 1}, {doses, 1}));
  for (int fewest = 1; fewest <= 6; ++fewest)
    for (int most = fewest + 1; most <= 6; ++most)
      known.push_back(repeated(text(fewest) + " to " + text(most) + " times a day", {fewest, 1}, {most, 1}));
  for (int doses = 2; doses <= 7; ++doses)
    known.push_back(repeated(text(doses) + " times a week", {doses, 7}, {doses, 7}));
}

void addByDays(std::vector<Known>& known) {
  for (int days = 2; days <= 28; ++days)
    known.push_back(repeated("every " + text(days) + " days", {1, days}, {1, days}));
  for (int weeks = 2; weeks <= 4; ++weeks)
    known.push_back(repeated("every " + text(weeks) + " weeks", {1, 7 * weeks}, {1, 7 * weeks}));
}

std::vector<Known> everySchedule() {
  std::vector<Known> known;
  addByWords(known);
  addByHours(known);
  addByTimes(known);
  addByDays(known);
  return known;
}

/// What the reference is stated per, and how much of it: chosen so that pairs fall on, below and above every
/// limit.
struct Stated {
  PerTime per;
  std::int64_t mg;
};
constexpr std::int64_t doseMg = 10;

/// What follows for a dose of 10 mg, by the rules and by fractions alone.
struct Wanted {
  bool fits = true;      ///< no dose under a rate
  Part limitDose;        ///< mg, by the reference's own schedule
  std::int64_t day = 0;  ///< mg ordered in 24 h
  CheckStatus single = CheckStatus::within;
  CheckStatus daily = CheckStatus::doesNotApply;
  CheckStatus period = CheckStatus::doesNotApply;
  CheckStatus schedule = CheckStatus::doesNotApply;
  CheckStatus mostDoses = CheckStatus::notChecked;
  VerdictKind verdict = VerdictKind::safe;
};

CheckStatus within(bool holds) { return holds ? CheckStatus::within : CheckStatus::outside; }

Part limitOfDose(const Stated& stated, const Known& own) {
  if (own.how == How::once || stated.per == PerTime::dose) return {stated.mg, 1};
  if (stated.per == PerTime::day) return {stated.mg, own.fewest.roundedUp()};
  const Part aWeek = times(own.fewest, 7);
  return isAtMost(aWeek, {1, 1}) ? Part{stated.mg, 1} : Part{stated.mg * aWeek.under, aWeek.over};
}

/// The reference's limit in 24 h; a week's has none.
std::int64_t limitOfDay(const Stated& stated, const Known& own) {
  if (stated.per == PerTime::day || own.how == How::once) return stated.mg;
  return stated.mg * own.most.roundedUp();
}

bool isLessThanDaily(const Known& one) { return one.how == How::repeated && !isAtMost({1, 1}, one.most); }

/// What is ordered in a week beside what the reference allows in one.
CheckStatus periodOf(const Known& order, const Known& own, const Stated& stated, const Part& limitDose) {
  const Part ordered = times(times(order.most, 7), doseMg);
  if (stated.per == PerTime::week) return within(isAtMost(ordered, {stated.mg, 1}));
  if (!isLessThanDaily(order) && !isLessThanDaily(own)) return CheckStatus::doesNotApply;
  if (own.how == How::once) return CheckStatus::notChecked;
  const Part aWeek = times(own.most, 7);
  return within(isAtMost(ordered, {limitDose.over * aWeek.over, limitDose.under * aWeek.under}));
}

bool isOddInterval(const Known& order) {
  const auto isOdd = [](const Part& doses) { return !isAtMost(doses, {1, 1}) && !doses.isWhole(); };
  return order.how == How::repeated && (isOdd(order.fewest) || isOdd(order.most));
}

void compareRepeated(Wanted& wanted, const Known& order, const Known& own, const Stated& stated) {
  wanted.day = doseMg * order.most.roundedUp();
  if (stated.per != PerTime::week) wanted.daily = within(wanted.day <= limitOfDay(stated, own));
  wanted.period = periodOf(order, own, stated, wanted.limitDose);
  wanted.schedule = within(own.how == How::repeated && isAtMost(own.fewest, order.fewest) &&
                           isAtMost(order.most, own.most));
  if (own.how == How::once) wanted.mostDoses = within(order.most.roundedUp() <= 1);
}

Wanted wantedFor(const Known& order, const Known& own, const Stated& stated) {
  Wanted wanted;
  if (order.how == How::continuous || own.how == How::continuous) {
    wanted.fits = false;
    wanted.verdict = VerdictKind::undecided;
    return wanted;
  }
  wanted.limitDose = limitOfDose(stated, own);
  wanted.single = within(isAtMost({doseMg, 1}, wanted.limitDose));
  wanted.day = doseMg;
  if (order.how == How::repeated) compareRepeated(wanted, order, own, stated);
  if (order.how == How::once && own.how == How::once) wanted.mostDoses = CheckStatus::within;
  for (const CheckStatus one : {wanted.single, wanted.daily, wanted.period, wanted.mostDoses})
    if (one == CheckStatus::outside) wanted.verdict = VerdictKind::unsafe;
  const bool asks = wanted.schedule == CheckStatus::outside || isOddInterval(order);
  if (wanted.verdict == VerdictKind::safe && asks) wanted.verdict = VerdictKind::ask;
  return wanted;
}

/// The order's and the reference's schedule as a form reads them.
struct ReadKnown {
  Known known;
  Schedule order;
  Schedule reference;
};

std::vector<ReadKnown> readAll(Tally& tally) {
  std::vector<ReadKnown> read;
  for (Known& known : everySchedule()) {
    tally.tried();
    Case one;
    const bool both =
        setEntry(one, "order.schedule", known.typed) && setEntry(one, "reference.schedule", known.typed);
    tally.expect(both, [&] { return "not read: " + known.typed; });
    if (!both) continue;
    const Schedule& schedule = *one.order.schedule;
    tally.expect(schedule == *one.reference.schedule, [&] { return known.typed + ": read in two ways"; });
    tally.expect(schedule.isRepeated() == (known.how == How::repeated) &&
                     schedule.isOnce() == (known.how == How::once),
                 [&] { return known.typed + ": of another kind"; });
    tally.expect(schedule.fewest == known.fewest.number() && schedule.most == known.most.number(), [&] {
      return known.typed + ": " + exactText(schedule.fewest) + " to " + exactText(schedule.most) + " a day";
    });
    read.push_back({std::move(known), schedule, *one.reference.schedule});
  }
  return read;
}

Case caseOf(const Schedule& order, const Schedule& reference, const Stated& stated) {
  Case given;
  given.order.medicine = "Wren";
  given.order.dose = DoseAmount{{Number(doseMg), Unit::mg}, PerSize::none, PerTime::dose};
  given.order.schedule = order;
  given.reference.high = DoseAmount{{Number(stated.mg), Unit::mg}, PerSize::none, stated.per};
  given.reference.limitOnly = true;
  given.reference.schedule = reference;
  return given;
}

void tryCheck(Tally& tally, const Worksheet& sheet, CheckId id, CheckStatus wanted,
              const std::string& words) {
  const CheckStatus status = sheet.check(id).status;
  tally.expect(status == wanted, [&] {
    return words + ": " + std::string(idOf(id)) + " is " + std::string(idOf(status)) + ", to be " +
           std::string(idOf(wanted));
  });
}

void tryPair(Tally& tally, const ReadKnown& order, const ReadKnown& reference, const Stated& stated) {
  tally.tried();
  const Worksheet sheet = workOut(caseOf(order.order, reference.reference, stated), exactRules());
  const Wanted wanted = wantedFor(order.known, reference.known, stated);
  const std::string words = order.known.typed + " under " + text(static_cast<int>(stated.mg)) + " mg/" +
                            std::string(idOf(unitOf(stated.per))) + ", " + reference.known.typed;
  tally.expect(sheet.verdict == wanted.verdict, [&] {
    return words + ": " + std::string(idOf(sheet.verdict)) + " (" + std::string(sheet.because()) +
           "), to be " + std::string(idOf(wanted.verdict));
  });
  if (!wanted.fits) return;
  tally.expect(sheet.orderedDay && sheet.orderedDay->value == Number(wanted.day),
               [&] { return words + ": another day"; });
  const Stated& by = stated;
  tally.expect(sheet.check(CheckId::single).ratio &&
                   *sheet.check(CheckId::single).ratio * wanted.limitDose.number() == Number(doseMg),
               [&] { return words + ": another limit of one dose, of " + text(static_cast<int>(by.mg)); });
  tryCheck(tally, sheet, CheckId::single, wanted.single, words);
  tryCheck(tally, sheet, CheckId::daily, wanted.daily, words);
  tryCheck(tally, sheet, CheckId::period, wanted.period, words);
  tryCheck(tally, sheet, CheckId::schedule, wanted.schedule, words);
  tryCheck(tally, sheet, CheckId::maxDoses, wanted.mostDoses, words);
}

}  // namespace

long tryWhole() {
  Tally reading("schedules read");
  const std::vector<ReadKnown> known = readAll(reading);
  reading.print();
  Tally pairs("schedules, pairs");
  for (const Stated& stated : {Stated{PerTime::dose, 10}, Stated{PerTime::dose, 20}, Stated{PerTime::day, 40},
                               Stated{PerTime::week, 210}})
    for (const ReadKnown& order : known)
      for (const ReadKnown& reference : known) tryPair(pairs, order, reference, stated);
  pairs.print();
  return reading.wrong() + pairs.wrong();
}

}  // namespace wardchalk::corners::schedules
