#include "core/check/preparing.h"

namespace wardchalk {

Worksheet withoutPreparation(Worksheet sheet) {
  sheet.give.reset();
  sheet.rate.reset();
  std::erase_if(sheet.steps, [](const Step& step) { return tellsAmount(step.id); });
  return sheet;
}

}  // namespace wardchalk
