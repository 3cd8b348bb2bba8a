#pragma once

#include <QString>

#include "core/record/case_draft.h"
#include "core/record/text_file.h"
#include "core/unit/conversion.h"
#include "ui/shell/dialogs.h"

namespace wardchalk::ui {

class CaseDocument;

/// What a person answered, and what stood there when the question was asked.
struct SaveAnswer {
  Overwrite what;
  KnownFile seen;
};

/// Asks what to do where something else stands than was believed: the document's own file, which somebody has
/// changed or taken away, or another that would be overwritten. What is not the same is told.
[[nodiscard]] SaveAnswer askBeforeSaving(QWidget* window, const CaseDocument& document, const QString& file,
                                         const CaseDraft& mine, Pounds pounds, Dialogs& dialogs);

/// Whether two names are those of one file.
[[nodiscard]] bool isSameFile(const QString& one, const QString& other);

}  // namespace wardchalk::ui
