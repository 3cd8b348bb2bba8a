#include "core/unit/quantity.h"

namespace wardchalk {

Unit unitOf(PerTime time) {
  switch (time) {
    case PerTime::none:
    case PerTime::dose:
      return Unit::dose;
    case PerTime::day:
      return Unit::day;
    case PerTime::week:
      return Unit::week;
    case PerTime::h:
      return Unit::h;
    case PerTime::min:
      return Unit::min;
  }
  return Unit::dose;
}

}  // namespace wardchalk
