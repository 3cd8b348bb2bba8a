#include "core/check/detail/measuring.h"

namespace wardchalk::detail {

namespace {

Quantity millilitres(const Number& mL) { return {mL, Unit::mL}; }

}  // namespace

// Never by a powder whose own volume nobody counted.
std::optional<Prepare> howToPrepare(const Stock& stock, const StrengthFound& strength) {
  if (*stock.kind != StockKind::powder || !stock.content) return std::nullopt;
  Prepare prepare{stock.diluent, stock.finalVolume, strength};
  if (stock.finalVolume && !stock.diluent && stock.displacement) {
    const Number rest = inMl(*stock.finalVolume) - inMl(*stock.displacement);
    if (rest > Number(0)) prepare.add = millilitres(rest);
  }
  if (stock.diluent && !stock.finalVolume && stock.displacement)
    prepare.makes = millilitres(inMl(*stock.diluent) + inMl(*stock.displacement));
  const bool powderIgnored =
      stock.diluent && stock.finalVolume && inMl(*stock.diluent) == inMl(*stock.finalVolume);
  if (powderIgnored) prepare.makes.reset();
  if (!prepare.add && !prepare.makes) return std::nullopt;
  return prepare;
}

}  // namespace wardchalk::detail
