#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/number/number.h"
#include "core/rules/unit_system.h"
#include "core/unit/conversion.h"
#include "core/unit/quantity.h"

namespace wardchalk {

/// Which published formula turns height and weight into body surface area (R3).
enum class BsaFormula : std::uint8_t { mosteller, haycock, duBois, gehanGeorge };

/// What an amount is rounded to: the marks of the device in hand, or decimals alone.
enum class RoundTo : std::uint8_t { marks, decimals };

/// What becomes of a reference that does not say how often, and of an order that does not (R15). The second
/// values are a class's and not for a bedside.
enum class ReferenceScheduleMissing : std::uint8_t { ask, note };
enum class OrderScheduleMissing : std::uint8_t { needed, oneDose };

/// What becomes of a weight that is unlikely for the height where no age is stated. A textbook's child often
/// has neither age nor a likely shape, so a class may note it; a bedside knows the age and asks.
enum class SizeWithoutAge : std::uint8_t { ask, note };

/// Oral syringes never serve an injection, nor the other way round (T33).
enum class SyringeKind : std::uint8_t { oral, injection };

/// A measuring syringe: what it holds and how far apart its marks stand, both in mL.
struct Syringe {
  Number holdsMl;
  Number marksMl;
  SyringeKind kind;
  friend bool operator==(const Syringe&, const Syringe&) = default;
};

/// The ward's or school's conventions: everything about the method on which honest sources differ. The
/// defaults are the *exact* set. Every rounding and threshold used in a working names the rule it came from.
struct HouseRules {
  Pounds pounds = Pounds::exact;
  std::optional<int> kilogramDecimals;  ///< kg rounded once, before anything else; none: never
  BsaFormula bsaFormula = BsaFormula::mosteller;
  std::optional<int> bsaDecimals = 2;  ///< 2 to 4; none: all digits are kept (to 20 places)
  RoundTo roundTo = RoundTo::marks;
  int volumeDecimalsBelow1Ml = 2;                ///< 0 to 4
  int volumeDecimalsFrom1Ml = 1;                 ///< 0 to 4
  int rateDecimals = 1;                          ///< 0 to 4
  Number askBelowPercent{90};                    ///< of the usual dose; below it the order is asked about
  Number askLowPercent{97};                      ///< of a stated low end; from it on a dose below is a note
  Number askRoundingPercent{5};                  ///< change by rounding above which it is asked about
  Number bsaDiffersPercent{5};                   ///< charted against computed
  std::optional<MixedQuantity> weightOlderThan;  ///< a weight older than this is asked about; none: never
  Number gracePercent{0};  ///< 0 to 10: over a reference by no more than this is asked about (T19)
  ReferenceScheduleMissing referenceScheduleMissing = ReferenceScheduleMissing::ask;
  OrderScheduleMissing orderScheduleMissing = OrderScheduleMissing::needed;
  SizeWithoutAge sizeWithoutAge = SizeWithoutAge::ask;
  int manyUnits = 3;  ///< more tablets, vials or syringes than this are asked about (T23)
  Quantity smallestVolume{Number::ratio(1, 10), Unit::mL};  ///< less cannot be measured reliably (T34)
  std::vector<Syringe> syringes;                            ///< rising by what they hold within each kind
  /// What a bare height or weight is in; absent: the user chooses, and a bare weight is asked about.
  std::optional<UnitSystem> unitSystem;
  int idleMinutes = 5;
  std::string name;
  std::string agreedBy;
  std::string agreedOn;

  friend bool operator==(const HouseRules&, const HouseRules&) = default;
};

/// The shipped set that converts exactly and rounds to the marks of the device.
[[nodiscard]] const HouseRules& exactRules();

/// The shipped set that nursing schools teach: 2.2 lb in 1 kg, kg to hundredths, amounts to decimals.
[[nodiscard]] const HouseRules& classroomRules();

/// Decimals that the body surface area is worked to: what the rule says, or 20 when every digit is kept.
[[nodiscard]] int bsaWorkingDecimals(const HouseRules& rules);

}  // namespace wardchalk
