#pragma once

#include "core/record/case_draft.h"

namespace wardchalk {

/// Entries that are not in the form: taken out of it, to be hidden or to make room for another person's.
/// They live in no widget.
struct Shelved {
  CaseDraft draft;
  bool modified = false;  ///< entered or changed since it was last saved
};

}  // namespace wardchalk
