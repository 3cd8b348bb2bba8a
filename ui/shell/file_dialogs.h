#pragma once

#include "ui/shell/dialogs.h"

namespace wardchalk::ui {

/// Who asks before a file is overwritten: the dialog itself, or whoever wanted its name and can say what
/// stands in it.
enum class OverwriteAsked : std::uint8_t { inTheDialog, later };

/// Asks for files; none when none was chosen. A name to write under gets the ending of the filter where none
/// was typed. No name of a folder outlives the program: folders are called by children's names.
[[nodiscard]] QStringList askForFiles(QWidget* parent, const FileQuestion& question,
                                      OverwriteAsked asked = OverwriteAsked::inTheDialog);

/// Keeps Qt from writing down folders that were visited, in its own settings for all programs.
void keepFoldersUnwritten();

}  // namespace wardchalk::ui
