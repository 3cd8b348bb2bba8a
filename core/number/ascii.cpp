#include "core/number/ascii.h"

namespace wardchalk {

std::string lowered(std::string_view text) {
  std::string low(text);
  for (char& c : low) c = lowered(c);
  return low;
}

}  // namespace wardchalk
