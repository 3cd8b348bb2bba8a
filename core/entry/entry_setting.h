#pragma once

#include <cstdint>
#include <optional>

#include "core/unit/unit.h"

namespace wardchalk {

/// Where an entry was written.
enum class EntryFrom : std::uint8_t {
  person,  ///< typed at the bedside, or chosen, pasted, dictated
  file,    ///< a case file, a table, a reference list: there is nobody to ask, and what was read once is read
           ///< for ever
};

/// What an entry is read by besides its field. Other entries of the case are none of it.
struct EntrySetting {
  EntryFrom from = EntryFrom::person;
  std::optional<Unit> bareHeight;  ///< the unit that stands in the line of an empty height before typing
  std::optional<Unit> bareWeight;  ///< likewise for a weight: only agreed house rules put it there
  /// Order and reference are in mcg, mg or g, so that a percent or a ratio has one meaning in mg/mL. It
  /// changes no reading: only whether that meaning is offered.
  bool drugInGrams = false;
};

}  // namespace wardchalk
