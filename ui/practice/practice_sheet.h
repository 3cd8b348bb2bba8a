#pragma once

#include <QString>
#include <vector>

#include "core/practice/sessions/set_file.h"
#include "ui/paper/sheet_layout.h"

namespace wardchalk::ui {

/// Questions with room for the working, or the key with every line worked.
enum class PracticeSheetKind : std::uint8_t { questions, key };

/// A set on paper, with the caution that everything is invented on each page. It has no room for a ward's
/// label and no signature: it can be taken for no bedside sheet.
[[nodiscard]] SheetLayout layOutPracticeSheet(const PracticeSet& set, PracticeSheetKind kind,
                                              const PaperFormat& format);

/// Writes it as a PDF of real text.
[[nodiscard]] Result<Done> writePracticePdf(const QString& file, const PracticeSet& set,
                                            PracticeSheetKind kind, PaperSize paper);

}  // namespace wardchalk::ui
