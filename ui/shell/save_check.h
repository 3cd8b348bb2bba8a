#pragma once

#include <QString>

#include "core/record/case_draft.h"
#include "core/unit/conversion.h"
#include "core/words/phrasebook.h"
#include "ui/shell/dialogs.h"

namespace wardchalk::ui {

class CaseDocument;

/// Whether the document may be saved over its own file. When somebody else has changed it or taken it away,
/// that is told with what is not the same, and asked.
[[nodiscard]] Overwrite mayOverwrite(QWidget* window, const CaseDocument& document, const CaseDraft& mine,
                                     Pounds pounds, Dialogs& dialogs, const Phrasebook& book);

}  // namespace wardchalk::ui
