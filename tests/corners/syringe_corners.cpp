// Every volume from 0.01 to 130 mL, in hundredths, in every syringe of the house: what is measured stands on
// a mark, is the nearest that the rules allow, and differs from the dose as it is told. Reckoned here in
// whole hundredths of a mL.
#include <array>
#include <cstdint>
#include <cstdlib>
#include <optional>
#include <string>
#include <vector>

#include "core/check/work_out.h"
#include "core/number/decimal_text.h"
#include "tests/corners/tally.h"

namespace wardchalk::corners::syringes {

namespace {

constexpr int largest = 13000;  // hundredths of a mL, as everything here

struct Barrel {
  int holds;
  int marks;
};
/// The usual syringes, written a second time.
constexpr std::array<Barrel, 6> usual = {
    {{100, 1}, {300, 10}, {500, 20}, {1000, 20}, {2000, 100}, {6000, 100}}};

/// What the dose is held against: a far limit, or exactly the dose from above, from below, from both.
enum class Held : std::uint8_t { far, above, below, both };
constexpr std::array heldNames = {"far limit", "at its limit", "at its least", "at both"};

struct House {
  std::string name;
  std::vector<Barrel> barrels;  ///< none: no device follows from the route
  bool byMarks = true;
  bool mayBeTwo = true;
  int smallest = 10;
  int askPercent = 5;
};

/// What is to be measured, by the rules alone.
struct Wanted {
  int measured = 0;  ///< 0: nothing
  int count = 0;
  std::optional<Barrel> in;
  std::optional<Barrel> full;
};

bool keeps(Held held, int candidate, int volume) {
  if (held == Held::above) return candidate <= volume;
  if (held == Held::below) return candidate >= volume;
  return held == Held::far || candidate == volume;
}

const Barrel* smallestThatHolds(const House& house, int volume) {
  for (const Barrel& barrel : house.barrels)
    if (barrel.holds >= volume) return &barrel;
  return nullptr;
}

int stepFor(const House& house, const Barrel* barrel, int volume) {
  const int decimals = volume < 100 ? 1 : 10;
  return house.byMarks && barrel && barrel->marks > decimals ? barrel->marks : decimals;
}

/// The nearest of all steps closer than one step that may be; half goes up. `before` is drawn besides.
int nearestStep(Held held, int volume, int before, int step, int atMost) {
  int best = 0;
  for (int candidate = before + step; candidate <= atMost; candidate += step) {
    if (std::abs(candidate - volume) >= step || !keeps(held, candidate, volume)) continue;
    if (best == 0 || std::abs(candidate - volume) <= std::abs(best - volume)) best = candidate;
  }
  return best;
}

/// The change by rounding is above so many percent.
bool isAsked(int measured, int volume, int percent) {
  return std::abs(measured - volume) * 100 > percent * volume;
}

Wanted drawnAlone(const House& house, Held held, int volume) {
  const Barrel* barrel = smallestThatHolds(house, volume);
  if (!barrel && !house.barrels.empty()) barrel = &house.barrels.back();
  Wanted wanted;
  if (barrel) wanted.in = *barrel;
  wanted.measured = nearestStep(held, volume, 0, stepFor(house, barrel, volume), 2 * largest);
  if (barrel) wanted.count = (wanted.measured + barrel->holds - 1) / barrel->holds;
  return wanted;
}

Wanted drawnInTwo(const House& house, Held held, int volume) {
  Wanted best;
  for (const Barrel& full : house.barrels) {  // rising: of two as close the later is the larger
    const int rest = volume - full.holds;
    const Barrel* barrel = rest > 0 && rest >= house.smallest ? smallestThatHolds(house, rest) : nullptr;
    if (!barrel) continue;
    const int measured =
        nearestStep(held, volume, full.holds, stepFor(house, barrel, rest), full.holds + barrel->holds);
    if (measured == 0) continue;
    if (best.measured == 0 || std::abs(measured - volume) <= std::abs(best.measured - volume))
      best = {measured, 2, *barrel, full};
  }
  return best;
}

Wanted wantedFor(const House& house, Held held, int volume) {
  if (volume < house.smallest) return {};
  const Wanted alone = drawnAlone(house, held, volume);
  const bool fits =
      alone.measured != 0 && !isAsked(alone.measured, volume, house.askPercent) && alone.count <= 1;
  if (fits || house.barrels.empty() || !house.byMarks || !house.mayBeTwo) return alone;
  const Wanted two = drawnInTwo(house, held, volume);
  if (two.measured == 0 || isAsked(two.measured, volume, house.askPercent)) return alone;
  if (alone.measured == 0) return two;
  const int changeAlone = std::abs(alone.measured - volume);
  const int changeTwo = std::abs(two.measured - volume);
  return alone.count > 1 ? (changeTwo <= changeAlone ? two : alone)
                         : (2 * changeTwo <= changeAlone ? two : alone);
}

Number inMl(int hundredths) { return Number::ratio(hundredths, 100); }

Quantity mg(int hundredths) { return {inMl(hundredths), Unit::mg}; }

/// An order of so many mg of 1 mg in 1 mL: a hundredth of a mg is a hundredth of a mL.
Case caseOf(std::optional<Route> route, Held held, int volume) {
  Case given;
  given.order.medicine = "Wren";
  given.order.dose = DoseAmount{mg(volume), PerSize::none, PerTime::dose};
  given.order.route = route;
  given.order.schedule = givenOnce();
  const bool least = held == Held::below || held == Held::both;
  const bool most = held == Held::above || held == Held::both;
  given.reference.high = DoseAmount{most ? mg(volume) : mg(100 * largest), PerSize::none, PerTime::dose};
  if (least) given.reference.low = DoseAmount{mg(volume), PerSize::none, PerTime::dose};
  given.reference.limitOnly = !least;
  given.reference.schedule = givenOnce();
  given.stock.kind = StockKind::liquid;
  given.stock.strength = Strength{{Number(1), Unit::mg}, {Number(1), Unit::mL}};
  return given;
}

bool isThis(const std::optional<Syringe>& syringe, const std::optional<Barrel>& barrel) {
  if (!syringe || !barrel) return !syringe && !barrel;
  return syringe->holdsMl == inMl(barrel->holds) && syringe->marksMl == inMl(barrel->marks);
}

bool isDrawnIn(const Give& give, const Wanted& wanted) {
  if (!wanted.full) return !give.pair && isThis(give.syringe, wanted.in) && give.syringes == wanted.count;
  return give.pair && !give.syringe && give.syringes == 2 && isThis(give.pair->full, wanted.full) &&
         isThis(give.pair->of, wanted.in) && give.pair->rest == inMl(wanted.measured - wanted.full->holds);
}

/// What is drawn into a syringe stands on a mark of it, and is no more than it holds, or than so many hold.
bool isOnMarks(const Give& give) {
  if (give.pair)
    return (give.pair->rest / give.pair->of.marksMl).isWhole() && give.pair->rest <= give.pair->of.holdsMl &&
           give.pair->rest + give.pair->full.holdsMl == *give.measured;
  return !give.syringe || ((*give.measured / give.syringe->marksMl).isWhole() &&
                           *give.measured <= give.syringe->holdsMl * Number(give.syringes));
}

void tryMeasured(Tally& tally, const House& house, const Worksheet& sheet, const Wanted& wanted, int volume,
                 const std::string& words) {
  const Give& give = *sheet.give;
  const int off = std::abs(wanted.measured - volume);
  tally.expect(*give.measured == inMl(wanted.measured), [&] {
    return words + ": measured " + exactText(*give.measured) + ", to be " + std::to_string(wanted.measured);
  });
  tally.expect(isDrawnIn(give, wanted), [&] { return words + ": another syringe"; });
  tally.expect(!house.byMarks || isOnMarks(give), [&] { return words + ": on no mark"; });
  tally.expect(give.percentChange && *give.percentChange == Number::ratio(off * 100, volume),
               [&] { return words + ": another change is told"; });
  tally.expect(give.doseGiven && give.doseGiven->value == *give.measured,
               [&] { return words + ": another dose"; });
  tally.expect((sheet.finding(FindingCode::roundingChangesDose) != nullptr) ==
                   isAsked(wanted.measured, volume, house.askPercent),
               [&] { return words + ": asked where it need not be, or not asked"; });
}

void tryOne(Tally& tally, const House& house, const HouseRules& rules, std::optional<Route> route, Held held,
            int volume) {
  tally.tried();
  const Worksheet sheet = workOut(caseOf(route, held, volume), rules);
  const Wanted wanted = wantedFor(house, held, volume);
  const std::string words = house.name + ", " + heldNames[static_cast<std::size_t>(held)] + ", " +
                            std::to_string(volume) + " hundredths";
  tally.expect(sheet.give.has_value(),
               [&] { return words + ": no amount, " + std::string(sheet.because()); });
  if (!sheet.give) return;
  tally.expect(sheet.give->exact == Quantity{inMl(volume), Unit::mL},
               [&] { return words + ": another volume"; });
  const bool tooSmall = volume < house.smallest;
  tally.expect((sheet.finding(FindingCode::tooSmallToMeasure) != nullptr) == tooSmall,
               [&] { return words + ": too small, or not"; });
  tally.expect((sheet.finding(FindingCode::notMeasurable) != nullptr) == (wanted.measured == 0 && !tooSmall),
               [&] { return words + ": not measurable, or it is"; });
  tally.expect(sheet.give->measured.has_value() == (wanted.measured != 0),
               [&] { return words + ": measured or not, to be " + std::to_string(wanted.measured); });
  if (sheet.give->measured && wanted.measured != 0) tryMeasured(tally, house, sheet, wanted, volume, words);
}

long tryHouse(const House& house, const HouseRules& rules, std::optional<Route> route) {
  Tally tally("syringes, " + house.name);
  for (const Held held : {Held::far, Held::above, Held::below, Held::both})
    for (int volume = 1; volume <= largest; ++volume) tryOne(tally, house, rules, route, held, volume);
  tally.print();
  return tally.wrong();
}

std::vector<Barrel> usualBarrels() { return {usual.begin(), usual.end()}; }

/// The house's syringes by the routes that each kind serves, and none where none follows.
long tryRoutes() {
  const HouseRules& exact = exactRules();
  return tryHouse({"by mouth", usualBarrels()}, exact, Route::oral) +
         tryHouse({"by tube", usualBarrels()}, exact, Route::enteral) +
         tryHouse({"into a vein", usualBarrels()}, exact, Route::intravenous) +
         tryHouse({"into a muscle", usualBarrels(), true, false}, exact, Route::intramuscular) +
         tryHouse({"under the skin", usualBarrels(), true, false}, exact, Route::subcutaneous) +
         tryHouse({"no device", {}}, exact, Route::rectal) + tryHouse({"no route", {}}, exact, std::nullopt) +
         tryHouse({"by mouth, classroom", usualBarrels(), false, false, 2, 6}, classroomRules(), Route::oral);
}

/// A house with one syringe alone of each kind.
long tryAlone(const Barrel& barrel, SyringeKind kind) {
  HouseRules rules = exactRules();
  rules.syringes = {{inMl(barrel.holds), inMl(barrel.marks), kind}};
  const bool oral = kind == SyringeKind::oral;
  const std::string name = std::to_string(barrel.holds / 100) + " mL alone, " + (oral ? "oral" : "injection");
  return tryHouse({name, {barrel}}, rules, oral ? Route::oral : Route::intravenous);
}

}  // namespace

long tryWhole() {
  long wrong = tryRoutes();
  for (const Barrel& barrel : usual)
    wrong += tryAlone(barrel, SyringeKind::oral) + tryAlone(barrel, SyringeKind::injection);
  return wrong;
}

}  // namespace wardchalk::corners::syringes
