#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "core/check/slips/undoing.h"
#include "core/medicine/paths.h"

namespace wardchalk {

/// A known way to get an ordered dose, or what it is held against, wrong.
enum class Slip : std::uint8_t {
  orderTenTimesTooMuch,
  orderTenTimesTooLittle,
  orderThousandTimesTooMuch,
  orderThousandTimesTooLittle,
  orderHundredTimesTooMuch,
  orderHundredTimesTooLittle,
  dayAsDose,
  doseAsDay,
  dividedTwice,
  kgForM2,
  m2ForKg,
  sizeCountedTwice,
  perSizeAsTotal,
  orderFromPounds,
  scheduleNotOfReference,
  poundsAsKg,
  weightTenTimesTooMuch,
  weightTenTimesTooLittle,
  bsaTenTimesTooMuch,
  bsaTenTimesTooLittle,
  labelPer5AsPer1,
  labelPer1AsPerMore,
};

struct SlipInfo {
  Slip slip;
  /// Stable, and stands in files; one that a slip of weight or height bears as well is the same slip.
  std::string_view id;
  StaticText field;         ///< path of the entry that the question is about
  std::string_view errors;  ///< the numbers of the same mistakes in a student's line: "E20 E35"; may be empty
  Undoing (*undoing)(const SlipGround& ground);
};

// First the slips of the order, then those of other papers; within each, those first that reports of harm
// name first: ten-fold slips, units, a day's amount for a dose, kg and m², then the rest.
//
// Sources: the order of causes in Lesar, Arch Pediatr Adolesc Med 1998;152:340 and Doherty and McDonnell,
// Pediatrics 2012;129:916 (abstracts); the order of the rest is common practice, no source.
inline constexpr auto slipTable = std::to_array<SlipInfo>({
    {Slip::orderTenTimesTooMuch, "order-ten-times-too-much", path::dose, "E40", undoing::timesTenTo<-1>},
    {Slip::orderTenTimesTooLittle, "order-ten-times-too-little", path::dose, "E40", undoing::timesTenTo<1>},
    {Slip::orderThousandTimesTooMuch, "order-thousand-times-too-much", path::dose, "E06",
     undoing::timesTenTo<-3>},
    {Slip::orderThousandTimesTooLittle, "order-thousand-times-too-little", path::dose, "E06",
     undoing::timesTenTo<3>},
    {Slip::orderHundredTimesTooMuch, "order-hundred-times-too-much", path::dose, "E40",
     undoing::timesTenTo<-2>},
    {Slip::orderHundredTimesTooLittle, "order-hundred-times-too-little", path::dose, "E40",
     undoing::timesTenTo<2>},
    {Slip::dayAsDose, "day-as-dose", path::dose, "E20 E35", undoing::dividedOnce},
    {Slip::doseAsDay, "dose-as-day", path::dose, "E21", undoing::notPerDay},
    {Slip::dividedTwice, "divided-twice", path::dose, "E21", undoing::notDividedAgain},
    {Slip::kgForM2, "kg-for-m2", path::dose, "E18", undoing::byM2},
    {Slip::m2ForKg, "m2-for-kg", path::dose, "E19", undoing::byKg},
    {Slip::sizeCountedTwice, "size-counted-twice", path::dose, "E36", undoing::notForSize},
    {Slip::perSizeAsTotal, "per-size-as-total", path::dose, "", undoing::forSize},
    {Slip::orderFromPounds, "order-from-pounds", path::dose, "E01", undoing::withKilograms},
    {Slip::scheduleNotOfReference, "schedule-not-of-reference", path::schedule, "E23",
     undoing::onReferenceSchedule},
    {Slip::poundsAsKg, "pounds-as-kg", path::weight, "E01", undoing::weightInPounds},
    {Slip::weightTenTimesTooMuch, "weight-ten-times-too-much", path::weight, "",
     undoing::weightTimesTenTo<-1>},
    {Slip::weightTenTimesTooLittle, "weight-ten-times-too-little", path::weight, "",
     undoing::weightTimesTenTo<1>},
    {Slip::bsaTenTimesTooMuch, "bsa-ten-times-too-much", path::bsa, "", undoing::surfaceTimesTenTo<-1>},
    {Slip::bsaTenTimesTooLittle, "bsa-ten-times-too-little", path::bsa, "", undoing::surfaceTimesTenTo<1>},
    {Slip::labelPer5AsPer1, "label-per-5-as-per-1", path::strength, "E32", undoing::labelInFive},
    {Slip::labelPer1AsPerMore, "label-per-1-as-per-more", path::strength, "", undoing::labelInOne},
});

[[nodiscard]] constexpr const SlipInfo& infoOf(Slip slip) {
  return slipTable[static_cast<std::size_t>(slip)];
}
[[nodiscard]] constexpr std::string_view idOf(Slip slip) { return infoOf(slip).id; }
/// Whether the slip is one of the order, and not of another paper.
[[nodiscard]] constexpr bool isOfOrder(Slip slip) { return infoOf(slip).field.view().starts_with("order."); }
[[nodiscard]] inline Undoing undone(Slip slip, const SlipGround& ground) {
  return infoOf(slip).undoing(ground);
}

static_assert(
    [] {
      for (std::size_t i = 0; i < slipTable.size(); ++i)
        if (slipTable[i].slip != static_cast<Slip>(i)) return false;
      return slipTable.back().slip == Slip::labelPer1AsPerMore;
    }(),
    "every slip has its row, in the order of Slip");

}  // namespace wardchalk
