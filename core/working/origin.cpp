#include "core/working/origin.h"

namespace wardchalk {

std::string Origin::text() const {
  switch (kind) {
    case Kind::none:
      return {};
    case Kind::field:
      return std::string(name);
    case Kind::step:
      return std::string("step:").append(name);
    case Kind::constant:
      return std::string("constant:").append(name);
    case Kind::rule:
      return std::string("rule:").append(name);
  }
  return {};
}

}  // namespace wardchalk
