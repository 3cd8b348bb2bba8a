#include <algorithm>
#include <array>

#include "core/check/detail/telling.h"

namespace wardchalk::detail {

namespace {

bool isInPounds(const std::optional<MixedQuantity>& weight) {
  return weight && std::ranges::any_of(weight->parts, [](const Quantity& part) {
           return part.unit == Unit::lb || part.unit == Unit::oz;
         });
}

/// The same comparisons by 2.2 lb in 1 kg; everything else of the house stays.
Checks byTradePounds(Notebook& notes) {
  HouseRules rules = notes.rules;
  rules.pounds = Pounds::trade;
  Notebook again(notes.given, rules, Steps::unwritten);
  const Facts facts = findFacts(again);
  Checks checks = checkAmount(again, facts);
  if (again.failed) notes.failed = true;
  return checks;
}

void tellByTrade(Notebook& notes, const Check& check, const Check& again) {
  const auto& ordered = std::get<Quantity>(check.value);
  const auto& limit = std::get<Quantity>(check.limit);
  const auto& byTrade = std::get<Quantity>(again.limit);
  const int significant =
      std::max({digitsApart(ordered.value, limit.value), digitsApart(ordered.value, byTrade.value),
                digitsApart(limit.value, byTrade.value)});
  notes.tell(FindingCode::roundingDecides, path::weight,
             {{"ordered", ordered, significant},
              {"limit", limit, significant},
              {"by_trade", byTrade, significant},
              {"by", ArgumentWord::trade}},
             check.id);
}

}  // namespace

void notePounds(Notebook& notes, const Facts& facts, const Checks& checks) {
  const bool exact = notes.rules.pounds == Pounds::exact && isInPounds(notes.given.child.weight);
  if (!exact || facts.otherMedicine) return;
  constexpr std::array told = {CheckId::single, CheckId::daily, CheckId::maxSingle, CheckId::maxDaily};
  const auto isOutside = [&](CheckId id) { return checks.check(id).status == CheckStatus::outside; };
  if (std::ranges::none_of(told, isOutside)) return;
  const Checks again = byTradePounds(notes);
  const auto decided = std::ranges::find_if(
      told, [&](CheckId id) { return isOutside(id) && again.check(id).status == CheckStatus::within; });
  if (decided != told.end()) tellByTrade(notes, checks.check(*decided), again.check(*decided));
}

}  // namespace wardchalk::detail
