#include "core/unit/unit.h"

namespace wardchalk {

std::optional<Unit> unitWithId(std::string_view id) {
  if (id == "m²") return Unit::m2;
  for (std::size_t i = 0; i < unitTable.size(); ++i)
    if (unitTable[i].id == id) return static_cast<Unit>(i);
  return std::nullopt;
}

}  // namespace wardchalk
