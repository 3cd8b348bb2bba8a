#include "core/check/detail/giving.h"

namespace wardchalk::detail {

namespace {

/// Into these nothing runs over a time. A nebuliser can be fed at a rate (from memory).
bool isGivenAtOnce(Route route, bool atRate) {
  return route == Route::oral || route == Route::rectal || route == Route::topical ||
         (route == Route::inhaled && !atRate);
}

void ask(Notebook& notes, StaticText field, ArgumentWord form, const std::optional<Route>& route) {
  std::vector<Argument> arguments = {{"form", form}};
  if (route) arguments.push_back({"route", *route});
  notes.tell(FindingCode::formDiffersFromRoute, field, std::move(arguments));
}

}  // namespace

bool formFits(Notebook& notes) {
  const Case& given = notes.given;
  const auto& route = given.order.route;
  const bool infused = given.infusion.isStated();
  const bool atRate = given.order.dose && given.order.dose->isRate();
  const bool solid = given.stock.kind == StockKind::solid;
  if (solid && route && isInjection(*route))
    ask(notes, path::route, ArgumentWord::solid, route);
  else if ((infused || atRate) && route && isGivenAtOnce(*route, atRate && !infused))
    ask(notes, path::route, ArgumentWord::infusion, route);
  else if ((infused || atRate) && solid)
    ask(notes, path::stockKind, ArgumentWord::solid, std::nullopt);
  else
    return true;
  return false;
}

}  // namespace wardchalk::detail
